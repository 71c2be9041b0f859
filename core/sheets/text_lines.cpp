#include "core/sheets/text_lines.h"

#include "core/drawings/lettering.h"

namespace frontwright {

std::vector<std::string> wrapped(std::string_view utf8, double capHeight, double width) {
    std::vector<std::string> lines;
    while (!utf8.empty()) {
        const std::string word(utf8.substr(0, utf8.find(' ')));
        utf8.remove_prefix(std::min(utf8.size(), word.size() + 1));
        if (word.empty())
            continue;
        if (!lines.empty() && textWidth(lines.back() + " " + word, capHeight) <= width)
            lines.back() += " " + word;
        else
            lines.push_back(word);
    }
    return lines;
}

std::string listed(const std::vector<std::string>& names, std::size_t most) {
    const std::size_t shown = names.size() <= most ? names.size() : most;
    std::string text;
    for (std::size_t i = 0; i < shown; ++i) {
        const bool isLast = i + 1 == names.size();
        text += (i == 0 ? "" : isLast ? " and " : ", ") + names[i];
    }
    if (shown < names.size())
        text += " and " + std::to_string(names.size() - shown) + " more";
    return text;
}

} // namespace frontwright
