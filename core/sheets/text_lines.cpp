#include "core/sheets/text_lines.h"

#include "core/drawings/lettering.h"

namespace frontwright {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// A unit stays with its figure, a fraction with its whole inches.
bool staysWithPrevious(std::string_view word) {
    for (std::string_view unit : {"in", "mm"})
        if (word.substr(0, unit.size()) == unit &&
            (word.size() == unit.size() ||
             word.find_first_not_of(".,;:", unit.size()) == word.npos))
            return true;
    return isDigit(word.front()) && word.find('/') != word.npos;
}

/// Words, each with what has to stay on its line.
std::vector<std::string> unbroken(std::string_view utf8) {
    std::vector<std::string> pieces;
    while (!utf8.empty()) {
        const std::string_view word = utf8.substr(0, utf8.find(' '));
        utf8.remove_prefix(std::min(utf8.size(), word.size() + 1));
        if (word.empty())
            continue;
        if (!pieces.empty() && isDigit(pieces.back().back()) && staysWithPrevious(word))
            pieces.back() += " " + std::string(word);
        else
            pieces.emplace_back(word);
    }
    return pieces;
}

} // namespace

std::vector<std::string> wrapped(std::string_view utf8, double capHeight, double width) {
    std::vector<std::string> lines;
    for (std::string& piece : unbroken(utf8)) {
        if (!lines.empty() && textWidth(lines.back() + " " + piece, capHeight) <= width)
            lines.back() += " " + piece;
        else
            lines.push_back(std::move(piece));
    }
    return lines;
}

Phrase listed(const std::vector<std::string>& names, std::size_t most) {
    if (names.size() <= most)
        return listed(std::vector<Phrase>(names.begin(), names.end()));
    std::string first;
    for (std::size_t i = 0; i < most; ++i)
        first += (i == 0 ? "" : ", ") + names[i];
    return phrase("%1 and %2 more", first, std::to_string(names.size() - most));
}

} // namespace frontwright
