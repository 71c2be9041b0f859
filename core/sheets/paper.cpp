#include "core/sheets/paper.h"

#include "core/lengths/parse.h"

#include <algorithm>
#include <array>
#include <optional>

namespace frontwright {

namespace {

Paper metric(const char* name, std::int64_t width, std::int64_t height) {
    return {name, Length::millimetres(width), Length::millimetres(height)};
}
/// Half inches.
Paper inch(const char* name, std::int64_t halfInchesWide, std::int64_t halfInchesHigh) {
    return {name, Length::fromSixtyFourths(32 * halfInchesWide),
            Length::fromSixtyFourths(32 * halfInchesHigh)};
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}
std::string lower(std::string_view text) {
    std::string result(text);
    std::transform(result.begin(), result.end(), result.begin(), [](char c) { return lower(c); });
    return result;
}
std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// "a roll" is asked for: what stands behind the word.
std::optional<std::string_view> rollWidth(std::string_view name) {
    constexpr std::string_view word = "roll";
    if (name.size() <= word.size() || lower(name.substr(0, word.size())) != word)
        return std::nullopt;
    return trimmed(name.substr(word.size()));
}

Result<Paper> roll(std::string_view widthText) {
    const Result<WrittenLength> width = parseWrittenLength(widthText);
    if (!width.ok())
        return Error{"paper", "the roll's width \"" + std::string(widthText) + "\" can't be read",
                     "write it with its unit: roll 610 mm"};
    if (width.value().length <= Length{})
        return Error{"paper", "a roll needs a width above zero", "write roll 610 mm"};
    return Paper{"Roll " + std::string(widthText), width.value(), {}};
}

std::string allNames() {
    std::string names;
    for (const Paper& paper : knownPapers())
        names += (names.empty() ? "" : ", ") + paper.name;
    return names;
}

} // namespace

std::span<const Paper> knownPapers() {
    static const std::array<Paper, 14> papers{
        metric("A0", 841, 1189), metric("A1", 594, 841), metric("A2", 420, 594),
        metric("A3", 297, 420),  metric("A4", 210, 297), metric("A5", 148, 210),
        inch("Letter", 17, 22),  inch("Legal", 17, 28),  inch("Tabloid", 22, 34),
        inch("ANSI A", 17, 22),  inch("ANSI B", 22, 34), inch("ANSI C", 34, 44),
        inch("ANSI D", 44, 68),  inch("ANSI E", 68, 88)};
    return papers;
}

Result<Paper> paperNamed(std::string_view name) {
    const std::string_view asked = trimmed(name);
    for (const Paper& paper : knownPapers())
        if (lower(paper.name) == lower(asked))
            return paper;
    if (const auto width = rollWidth(asked))
        return roll(*width);
    return Error{"paper", "no paper is called \"" + std::string(asked) + "\"",
                 "use one of " + allNames() + ", or a roll by its width: roll 610 mm"};
}

} // namespace frontwright
