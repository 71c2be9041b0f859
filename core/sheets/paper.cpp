#include "core/sheets/paper.h"

#include "core/lengths/format.h"
#include "core/lengths/parse.h"

#include <algorithm>
#include <array>
#include <optional>

namespace frontwright {

namespace {

constexpr std::string_view rollWord = "Roll ";             ///< begins a roll's name
constexpr Length samePaper = Length::fromMicrometres(500); ///< drivers tell whole points

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
        return Error{text("paper"),
                     phrase("the roll's width \"%1\" can't be read", std::string(widthText)),
                     text("write it with its unit: roll 610 mm")};
    Result<Paper> made = rollOf(width.value());
    if (!made.ok())
        return made;
    Paper paper = std::move(made).value();
    paper.name = std::string(rollWord) + std::string(widthText);
    return paper;
}

/// "300 x 400 mm": both sides are of the unit that stands last. Nothing where it reads otherwise.
std::optional<Paper> sheet(std::string_view text) {
    const auto times = text.find_first_of("xX");
    if (times == std::string_view::npos)
        return std::nullopt;
    const std::string_view first = trimmed(text.substr(0, times));
    const std::string_view second = trimmed(text.substr(times + 1));
    const auto unitAt = second.find_last_of(" 0123456789");
    if (unitAt == std::string_view::npos || unitAt + 1 == second.size())
        return std::nullopt;
    const auto one =
        parseWrittenLength(std::string(first) + " " + std::string(second.substr(unitAt + 1)));
    const auto other = parseWrittenLength(second);
    if (!one.ok() || !other.ok())
        return std::nullopt;
    const Result<Paper> made = sheetOf(one.value(), other.value());
    return made.ok() ? std::optional<Paper>(made.value()) : std::nullopt;
}

std::string allNames() {
    std::string names;
    for (const Paper& paper : knownPapers())
        names += (names.empty() ? "" : ", ") + paper.name;
    return names;
}

} // namespace

Phrase nameOf(const Paper& paper) {
    return paper.isRoll() && paper.name.starts_with(rollWord)
               ? phrase("Roll %1", paper.name.substr(rollWord.size()))
               : Phrase(paper.name);
}

std::span<const Paper> knownPapers() {
    static const std::array<Paper, 19> papers{
        metric("A0", 841, 1189), metric("A1", 594, 841), metric("A2", 420, 594),
        metric("A3", 297, 420),  metric("A4", 210, 297), metric("A5", 148, 210),
        inch("Letter", 17, 22),  inch("Legal", 17, 28),  inch("Tabloid", 22, 34),
        inch("ANSI A", 17, 22),  inch("ANSI B", 22, 34), inch("ANSI C", 34, 44),
        inch("ANSI D", 44, 68),  inch("ANSI E", 68, 88), inch("ARCH A", 18, 24),
        inch("ARCH B", 24, 36),  inch("ARCH C", 36, 48), inch("ARCH D", 48, 72),
        inch("ARCH E", 72, 96)};
    return papers;
}

Result<Paper> paperNamed(std::string_view name) {
    const std::string_view asked = trimmed(name);
    for (const Paper& paper : knownPapers())
        if (lower(paper.name) == lower(asked))
            return paper;
    if (const auto width = rollWidth(asked))
        return roll(*width);
    if (auto custom = sheet(asked))
        return *custom;
    return Error{text("paper"), phrase("no paper is called \"%1\"", std::string(asked)),
                 phrase("use one of %1, a sheet by its size: 300 x 400 mm, or a roll by its width: "
                        "roll 610 mm",
                        allNames())};
}

Result<Paper> rollOf(Length width) {
    if (width <= Length{})
        return Error{text("paper"), text("a roll needs a width above zero"),
                     text("write roll 610 mm")};
    return Paper{std::string(rollWord) + exact(width, Unit::Millimetre), width, {}};
}

Result<Paper> sheetOf(Length one, Length other) {
    const Length width = least(one, other), height = greatest(one, other);
    if (width <= Length{})
        return Error{text("paper"), text("a sheet needs a width and a height above zero"),
                     text("write them like 300 mm and 400 mm")};
    const auto known =
        std::find_if(knownPapers().begin(), knownPapers().end(), [&](const Paper& paper) {
            return (paper.width - width).magnitude() <= samePaper &&
                   (paper.height - height).magnitude() <= samePaper;
        });
    if (known != knownPapers().end())
        return *known;
    const std::string name = exact(width, Unit::Millimetre);
    return Paper{name.substr(0, name.find(" mm")) + " \u00d7 " + exact(height, Unit::Millimetre),
                 width, height};
}

} // namespace frontwright
