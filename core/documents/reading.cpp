#include "core/documents/reading.h"

#include "core/documents/decimal.h"
#include "core/documents/json_text.h"
#include "core/lengths/parse.h"

#include <charconv>

namespace frontwright::documents {

namespace {

constexpr Text aLength = text("a length such as \"12 5/8 in\" or \"320 mm\"");
constexpr Text aSideFit =
    text("a fit such as \"overlay 1/4 in\", \"gap 1/8 in\" or \"inset 2 mm\"");

/// In a notation that can give it back: 1/10 in is no whole number of 64ths, and becomes 0.1 in.
WrittenLength keepable(WrittenLength length) {
    const bool isFraction =
        length.notation == Notation::InchFraction || length.notation == Notation::FeetInches;
    const std::int64_t nm = length.length.nanometres();
    constexpr std::int64_t endsAsInchDecimal = 127; // nm; 1 in is 200 000 of them
    if (isFraction && nm % Length::nanometresPer64th != 0)
        length.notation =
            nm % endsAsInchDecimal == 0 ? Notation::InchDecimal : Notation::Millimetre;
    return length;
}

void failWithReason(const Place& at, Text expected, const Error& error) {
    at.fail(
        phrase("expected %1, found %2 (%3)", expected, at.state.tree.found(at.node), error.what),
        error.remedy);
}

/// "a, b or c"
Phrase oneOf(std::span<const std::string_view> words) {
    Phrase list;
    for (std::size_t i = 0; i < words.size(); ++i) {
        std::string word;
        appendQuoted(word, words[i]);
        if (i == 0)
            list = std::move(word);
        else if (i + 1 < words.size())
            list = phrase("%1, %2", std::move(list), std::move(word));
        else
            list = phrase("%1 or %2", std::move(list), std::move(word));
    }
    return list;
}

} // namespace

void Place::fail(Phrase what, Phrase remedy) const {
    if (!state.error)
        state.error = state.tree.errorAt(node, std::move(what), std::move(remedy));
}

void Place::failExpecting(Phrase what) const {
    if (!state.error)
        fail(phrase("expected %1, found %2", std::move(what), state.tree.found(node)));
}

bool Place::demand(JsonKind wanted) const {
    if (kind() == wanted)
        return true;
    failExpecting(nameOf(wanted));
    return false;
}

void readValue(const Place& at, std::string& text) {
    if (at.demand(JsonKind::String))
        text = at.state.tree.text(at.node);
}

void readLength(const Place& at, WrittenLength& length, Sign sign) {
    if (at.kind() != JsonKind::String)
        return at.failExpecting(aLength);
    const Result<WrittenLength> read = parseWrittenLength(at.state.tree.text(at.node));
    if (!read.ok())
        return failWithReason(at, aLength, read.error());
    if (sign == Sign::NotNegative && read.value().length < Length{})
        return at.failExpecting(text("a length that is not negative"));
    length = keepable(read.value());
}

void readValue(const Place& at, WrittenLength& length) {
    readLength(at, length, Sign::NotNegative);
}

void readValue(const Place& at, Length& length) {
    WrittenLength read;
    readLength(at, read, Sign::NotNegative);
    length = read.length;
}

void readValue(const Place& at, Mass& mass) {
    constexpr Text aWeight = text("a weight such as \"25 lb\" or \"11.3 kg\"");
    if (at.kind() != JsonKind::String)
        return at.failExpecting(aWeight);
    const Result<Mass> read = parseMass(at.state.tree.text(at.node));
    if (!read.ok())
        return failWithReason(at, aWeight, read.error());
    mass = read.value();
}

void readValue(const Place& at, SpecificGravity& gravity) {
    constexpr Text aGravity = text("a specific gravity from 0.05 to 1.5 and its basis, such as "
                                   "\"0.5 at-12-percent\", \"0.45 green\" or \"0.53 ovendry\"");
    if (at.kind() != JsonKind::String)
        return at.failExpecting(aGravity);
    const std::string_view written = at.state.tree.text(at.node);
    const std::size_t space = written.find(' ');
    const auto number = millionthsFrom(written.substr(0, space));
    constexpr std::int64_t least = 50'000, greatest = 1'500'000;
    const bool isNumber = number && *number % 1000 == 0 && *number >= least && *number <= greatest;
    for (std::size_t i = 0; isNumber && i < wordsOf<GravityBasis>.size(); ++i)
        if (space != std::string_view::npos &&
            written.substr(space + 1) == wordsOf<GravityBasis>[i]) {
            gravity = {*number / 1000, static_cast<GravityBasis>(i)};
            return;
        }
    at.failExpecting(aGravity);
}

void readMillionths(const Place& at, std::int64_t& value) {
    const auto number =
        at.kind() == JsonKind::Number ? millionthsFrom(at.state.tree.text(at.node)) : std::nullopt;
    if (!number)
        return at.failExpecting(text("a number that is not negative, of at most six decimals"));
    value = *number;
}

void readValue(const Place& at, FastenerToReach& fastener) {
    constexpr Text aFastener = text("a side, a depth and a diameter such as \"left 6 in reach 1 "
                                    "in\"");
    constexpr std::string_view between = " reach ";
    if (at.kind() != JsonKind::String)
        return at.failExpecting(aFastener);
    const std::string_view written = at.state.tree.text(at.node);
    const std::size_t afterSide = written.find(' '), reach = written.find(between);
    const std::string_view side = written.substr(0, afterSide);
    if ((side != wordOf(Side::Left) && side != wordOf(Side::Right)) ||
        reach == std::string_view::npos || reach <= afterSide)
        return at.failExpecting(aFastener);
    const auto depth = parseWrittenLength(written.substr(afterSide + 1, reach - afterSide - 1));
    const auto diameter = parseWrittenLength(written.substr(reach + between.size()));
    if (!depth.ok() || !diameter.ok() || depth.value().length < Length{} ||
        diameter.value().length < Length{})
        return at.failExpecting(aFastener);
    fastener = {side == wordOf(Side::Left) ? Side::Left : Side::Right, depth.value(),
                diameter.value()};
}

void readValue(const Place& at, Force& force) {
    std::int64_t micronewtons = 0;
    readMillionths(at, micronewtons);
    force = Force::fromMicronewtons(micronewtons);
}

void readValue(const Place& at, Percent& percent) {
    const auto number =
        at.kind() == JsonKind::Number ? millionthsFrom(at.state.tree.text(at.node)) : std::nullopt;
    if (!number || *number % 1000 != 0)
        return at.failExpecting(
            text("a number of per cent that is not negative, of at most three decimals"));
    percent = Percent::fromThousandths(*number / 1000);
}

void readValue(const Place& at, Temperature& temperature) {
    constexpr Text aTemperature = text("a temperature such as \"20 °C\" or \"70.5 °F\"");
    if (at.kind() != JsonKind::String)
        return at.failExpecting(aTemperature);
    std::string_view written = at.state.tree.text(at.node);
    const bool isCelsius = written.ends_with(" °C");
    if (!isCelsius && !written.ends_with(" °F"))
        return at.failExpecting(aTemperature);
    written.remove_suffix(std::string_view(" °C").size());
    const bool isNegative = written.starts_with('-');
    const auto number = millionthsFrom(isNegative ? written.substr(1) : written);
    if (!number || *number % 1000 != 0)
        return at.failExpecting(aTemperature);
    temperature = {(isNegative ? -1 : 1) * (*number / 1000),
                   isCelsius ? TemperatureUnit::Celsius : TemperatureUnit::Fahrenheit};
}

void readValue(const Place& at, SideFit& side) {
    if (at.kind() != JsonKind::String)
        return at.failExpecting(aSideFit);
    const std::string_view written = at.state.tree.text(at.node);
    const std::size_t space = written.find(' ');
    const std::string_view word = written.substr(0, space);
    for (std::size_t i = 0; i < wordsOf<Fit>.size(); ++i) {
        if (word != wordsOf<Fit>[i] || space == std::string_view::npos)
            continue;
        const Result<WrittenLength> amount = parseWrittenLength(written.substr(space + 1));
        if (!amount.ok())
            return failWithReason(at, aSideFit, amount.error());
        side = {static_cast<Fit>(i), keepable(amount.value())};
        return;
    }
    at.failExpecting(aSideFit);
}

void readValue(const Place& at, PerSide<bool>& sides) {
    if (!at.demand(JsonKind::Array))
        return;
    sides = PerSide<bool>::all(false);
    const JsonTree& tree = at.state.tree;
    const NodeIndex end = tree.next(at.node);
    for (NodeIndex i = tree.firstChild(at.node); i < end && !at.state.error; i = tree.next(i)) {
        const Place item{at.state, i, nullptr, nullptr};
        bool& carries = sides[static_cast<Side>(readWord(item, wordsOf<Side>))];
        if (carries)
            item.failExpecting(text("each side only once"));
        carries = true;
    }
}

void readValue(const Place& at, PerSide<Rare<SideFit>>& sides) {
    if (!at.demand(JsonKind::Object))
        return;
    Reading object(at);
    Rare<SideFit> all;
    object.optional("all", all);
    sides = PerSide<Rare<SideFit>>::all(all);
    for (const Side side : allSides) {
        if (all)
            object.refuse(wordOf(side), eitherAllOrEach);
        else
            object.optional(wordOf(side), sides[side]);
    }
    object.finish();
}

void readWhole(const Place& at, std::int64_t& number, Whole range) {
    const std::string_view written =
        at.kind() == JsonKind::Number ? at.state.tree.text(at.node) : std::string_view{};
    const char* const last = written.data() + written.size();
    const auto [end, error] = std::from_chars(written.data(), last, number);
    const bool isWhole = error == std::errc() && end == last;
    if (!isWhole || number < range.least || number > range.greatest)
        at.failExpecting(phrase("a whole number from %1 to %2", std::to_string(range.least),
                                std::to_string(range.greatest)));
}

std::size_t readWord(const Place& at, std::span<const std::string_view> words) {
    if (at.kind() == JsonKind::String)
        for (std::size_t i = 0; i < words.size(); ++i)
            if (at.state.tree.text(at.node) == words[i])
                return i;
    at.failExpecting(oneOf(words));
    return 0;
}

std::string_view idOf(const Place& at) {
    const JsonTree& tree = at.state.tree;
    if (at.kind() == JsonKind::Object)
        for (NodeIndex i = tree.firstChild(at.node); i < tree.next(at.node); i = tree.next(i))
            if (tree.name(i) == "id" && tree.kind(i) == JsonKind::String)
                return tree.text(i);
    return "?";
}

Reading::Reading(const Place& at)
    : m_at(at),
      m_next(at.state.tree.firstChild(at.node)),
      m_end(at.state.tree.next(at.node)),
      m_left(at.state.tree.childCount(at.node)) {}

NodeIndex Reading::search(std::string_view name) {
    const JsonTree& tree = m_at.state.tree;
    const auto took = [&](NodeIndex member) {
        m_at.state.taken[member] = 1;
        m_next = tree.next(member);
        --m_left;
        return member;
    };
    for (NodeIndex i = m_next; i < m_end; i = tree.next(i))
        if (tree.name(i) == name && m_at.state.taken[i] == 0)
            return took(i);
    for (NodeIndex i = tree.firstChild(m_at.node); i < m_next; i = tree.next(i))
        if (tree.name(i) == name && m_at.state.taken[i] == 0)
            return took(i);
    return noNode;
}

void Reading::finish() {
    const JsonTree& tree = m_at.state.tree;
    if (m_left == 0 || failed())
        return;
    for (NodeIndex i = tree.firstChild(m_at.node); i < m_end; i = tree.next(i)) {
        if (m_at.state.taken[i] != 0)
            continue;
        if (m_at.keep == nullptr)
            return placeOf(i, nullptr)
                .fail(phrase("unknown member \"%1\"", std::string(tree.name(i))));
        m_at.keep->emplace_back(unknownKey(m_at.level, tree.name(i)),
                                withoutWhiteSpace(tree.raw(i)));
    }
}

void Reading::refuse(std::string_view name, Text expected) {
    const JsonTree& tree = m_at.state.tree;
    for (NodeIndex i = tree.firstChild(m_at.node); i < m_end; i = tree.next(i))
        if (tree.name(i) == name)
            placeOf(i, nullptr).failExpecting(expected);
}

void Reading::failMissing(std::string_view name) const {
    m_at.fail(phrase("expected a member \"%1\", found none", std::string(name)));
}

} // namespace frontwright::documents
