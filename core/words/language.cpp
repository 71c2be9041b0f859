#include "core/words/language.h"

#include "core/words/approximate.h"

#include <algorithm>

namespace frontwright {

std::string withMark(std::string number, DecimalMark mark) {
    if (mark == DecimalMark::Comma)
        std::replace(number.begin(), number.end(), '.', ',');
    return number;
}

std::string withApproximateResults(std::string figures) {
    constexpr std::string_view both = "= ≈";
    for (auto at = figures.find(both); at != std::string::npos; at = figures.find(both, at))
        figures.erase(at, 2);
    return figures;
}

std::string told(const Phrase& phrase, const Language& language) {
    if (phrase.m_pattern.empty())
        return phrase.m_asIs;
    const std::string pattern = language.translated(phrase.m_pattern);
    std::string words;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        if (phrase.m_parts.empty() || !isPlace(pattern, i)) {
            words += pattern[i];
            continue;
        }
        const auto part = static_cast<std::size_t>(pattern[++i] - '1');
        if (part < phrase.m_parts.size())
            words += told(phrase.m_parts[part], language);
    }
    return withApproximateResults(std::move(words));
}

std::string told(Text text, const Language& language) {
    return language.translated(text.english);
}

} // namespace frontwright
