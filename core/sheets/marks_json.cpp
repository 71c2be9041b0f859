#include "core/sheets/sheets.h"

#include <array>
#include <charconv>
#include <cmath>

namespace frontwright {

namespace {

/// At most six decimals, with a point, never "-0".
std::string number(double value) {
    std::array<char, 400> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, 6);
    std::string result(text.data(), end.ptr);
    result.erase(result.find_last_not_of('0') + 1);
    if (result.back() == '.')
        result.pop_back();
    return result == "-0" ? "0" : result;
}

std::string quoted(std::string_view text) {
    static constexpr std::string_view hex = "0123456789abcdef";
    std::string result = "\"";
    for (char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            result += std::string("\\") + c;
        else if (byte < 0x20)
            result += std::string("\\u00") + hex[byte >> 4U] + hex[byte & 0xfU];
        else
            result += c;
    }
    return result + '"';
}

std::string object(const PageMark& mark) {
    return "{\"kind\": " + quoted(mark.kind) + ", \"part\": " + quoted(mark.part) +
           ", \"x\": " + number(mark.x) + ", \"y\": " + number(mark.y) + "}";
}

std::string object(const Page& page, std::size_t pageNumber) {
    std::string text = "    {\n      \"number\": " + std::to_string(pageNumber) +
                       ",\n      \"label\": " + quoted(page.label.english()) +
                       ",\n      \"width\": " + number(page.width) +
                       ",\n      \"height\": " + number(page.height) + ",\n      \"marks\": [";
    const char* before = "\n        ";
    for (const PageMark& mark : page.marks) {
        text += before + object(mark);
        before = ",\n        ";
    }
    return text + (page.marks.empty() ? "]\n    }" : "\n      ]\n    }");
}

} // namespace

std::string marksJson(std::span<const Page> all) {
    std::string text = "{\n  \"unit\": \"mm\",\n  \"pages\": [";
    const char* before = "\n";
    for (std::size_t i = 0; i < all.size(); ++i) {
        text += before + object(all[i], i + 1);
        before = ",\n";
    }
    return text + (all.empty() ? "]\n}\n" : "\n  ]\n}\n");
}

} // namespace frontwright
