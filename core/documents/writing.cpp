#include "core/documents/writing.h"

#include "core/documents/decimal.h"
#include "core/documents/json_text.h"
#include "core/lengths/format.h"

#include <cstdlib>

#include <algorithm>

namespace frontwright::documents {

void writeValue(const Target& to, std::string_view text) {
    appendQuoted(to.out, text);
}

void writeValue(const Target& to, std::int64_t number) {
    to.out += std::to_string(number);
}

void writeValue(const Target& to, WrittenLength length) {
    appendQuoted(to.out, written(length, to.state.unit));
}

void writeValue(const Target& to, Length length) {
    writeValue(to, WrittenLength(length));
}

void writeValue(const Target& to, Mass mass) {
    appendQuoted(to.out, exact(mass));
}

void writeValue(const Target& to, SpecificGravity gravity) {
    appendQuoted(to.out, textOfMillionths(gravity.thousandths * 1000) + ' ' +
                             std::string(wordOf(gravity.basis)));
}

void writeValue(const Target& to, const FastenerToReach& fastener) {
    appendQuoted(to.out, std::string(wordOf(fastener.side)) + ' ' +
                             written(fastener.depth, to.state.unit) + " reach " +
                             written(fastener.reach, to.state.unit));
}

void writeValue(const Target& to, Force force) {
    to.out += textOfMillionths(force.micronewtons());
}

void writeValue(const Target& to, Percent percent) {
    to.out += textOfMillionths(percent.thousandths() * 1000);
}

void writeValue(const Target& to, Temperature temperature) {
    const bool isCelsius = temperature.unit == TemperatureUnit::Celsius;
    appendQuoted(to.out, (temperature.thousandths < 0 ? "-" : "") +
                             textOfMillionths(std::abs(temperature.thousandths) * 1000) +
                             (isCelsius ? " °C" : " °F"));
}

void writeValue(const Target& to, const SideFit& side) {
    appendQuoted(to.out, std::string(wordOf(side.fit)) + ' ' + written(side.amount, to.state.unit));
}

void writeValue(const Target& to, const PerSide<bool>& sides) {
    to.out += '[';
    for (const Side side : allSides) {
        if (!sides[side])
            continue;
        if (to.out.back() != '[')
            to.out += ',';
        writeValue(to, wordOf(side));
    }
    to.out += ']';
}

void writeValue(const Target& to, const PerSide<Rare<SideFit>>& sides) {
    Writing object(to);
    if (sides.left && sides == PerSide<Rare<SideFit>>::all(sides.left))
        object.optional("all", sides.left);
    else
        for (const Side side : allSides)
            object.optional(wordOf(side), sides[side]);
    object.finish();
}

Writing::Writing(const Target& to) : m_to(to) {
    m_to.out += '{';
}

Target Writing::begin(std::string_view name, const Level* level) {
    if (!m_isFirst)
        m_to.out += ',';
    m_isFirst = false;
    if (m_to.kept != nullptr && !m_to.kept->empty())
        m_names.emplace_back(name);
    appendQuoted(m_to.out, name);
    m_to.out += ':';
    return {m_to.out, m_to.state, m_to.kept, level};
}

void Writing::fixed(std::string_view name, std::string_view value) {
    if (m_to.kept != nullptr)
        for (const auto& [key, kept] : *m_to.kept)
            if (key == unknownKey(m_to.level, name)) {
                begin(name, nullptr).out += kept;
                return;
            }
    required(name, value);
}

void Writing::millionths(std::string_view name, std::int64_t value) {
    begin(name, nullptr).out += textOfMillionths(value);
}

bool Writing::keptBelow(std::string_view name) const {
    if (m_to.kept == nullptr || m_to.kept->empty())
        return false;
    const Level level{m_to.level, name};
    const std::string prefix = keyPrefix(&level);
    return std::any_of(m_to.kept->begin(), m_to.kept->end(),
                       [&](const auto& member) { return member.first.starts_with(prefix); });
}

bool Writing::isWritten(std::string_view name) const {
    return std::find(m_names.begin(), m_names.end(), name) != m_names.end();
}

void Writing::finish() {
    if (m_to.kept != nullptr && !m_to.kept->empty()) {
        const std::string prefix = keyPrefix(m_to.level);
        for (const auto& [key, value] : *m_to.kept) {
            const std::string_view step =
                std::string_view(key).substr(std::min(prefix.size(), key.size()));
            if (!key.starts_with(prefix) || step.find('/') != std::string_view::npos)
                continue;
            // What this version knows by now is not written a second time.
            if (const std::string name = nameOfKey(step); !isWritten(name))
                begin(name, nullptr).out += value;
        }
    }
    m_to.out += '}';
}

} // namespace frontwright::documents
