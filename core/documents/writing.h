#pragma once

#include "core/boards/board_spec.h"
#include "core/case/choices.h"
#include "core/documents/level.h"
#include "core/documents/words.h"
#include "core/project/presets.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace frontwright::documents {

/// What goes along through one writing.
struct WriteState {
    Unit unit; ///< the document's
    const Presets& presets;
};

/// Where a value goes, and who kept what was not known below it.
struct Target {
    std::string& out; ///< JSON without white space; see layOutJson
    const WriteState& state;
    const Unknowns* kept = nullptr;
    const Level* level = nullptr;
};

void writeValue(const Target&, std::string_view);
void writeValue(const Target&, std::int64_t);
void writeValue(const Target&, WrittenLength);
void writeValue(const Target&, Length);
void writeValue(const Target&, Mass);
void writeValue(const Target&, SpecificGravity);
void writeValue(const Target&, Percent);
void writeValue(const Target&, Temperature);
void writeValue(const Target&, Force);
void writeValue(const Target&, const FastenerToReach&);
void writeValue(const Target&, const SideFit&);
void writeValue(const Target&, const PerSide<bool>&);
void writeValue(const Target&, const PerSide<Rare<SideFit>>&);

/// Writes one object member by member; the counterpart of Reading, under the same names.
class Writing {
public:
    explicit Writing(const Target& to);

    template<class T>
    void required(std::string_view name, const T& value) {
        const Level level{m_to.level, name};
        writeValue(begin(name, &level), value);
    }
    /// `value` is a std::optional or a Rare.
    void optional(std::string_view name, const auto& value) {
        if (value)
            required(name, *value);
    }
    template<class T>
    void defaulted(std::string_view name, const T& value, const T& absent) {
        if (!(value == absent) || keptBelow(name))
            required(name, value);
    }
    template<class T>
    void always(std::string_view name, const T& value) {
        required(name, value);
    }
    void whole(std::string_view name, std::int64_t value, Whole) { required(name, value); }
    void whole(std::string_view name, std::int64_t value, Whole, std::int64_t absent) {
        if (value != absent)
            required(name, value);
    }
    void millionths(std::string_view name, std::int64_t value);
    /// `value`, unless another one was kept: a newer version's number.
    void fixed(std::string_view name, std::string_view value);
    void refuse(std::string_view, Text) {}
    /// Writes what was kept of this object, and ends it.
    void finish();

    /// Names the next member; what is written to the result is its value.
    Target begin(std::string_view name, const Level* level);

private:
    [[nodiscard]] bool keptBelow(std::string_view name) const;
    [[nodiscard]] bool isWritten(std::string_view name) const;

    Target m_to;
    bool m_isFirst = true;
    std::vector<std::string> m_names; ///< written so far; only where something was kept
};

template<class E>
requires std::is_enum_v<E>
void writeValue(const Target& to, E value) {
    writeValue(to, wordOf(value));
}

template<class Frame>
void writeValue(const Target& to, const PointIn<Frame>& point) {
    to.out += '[';
    writeValue(to, point.x);
    to.out += ',';
    writeValue(to, point.y);
    to.out += ']';
}

template<class T>
void writeValue(const Target& to, const std::vector<T>& list) {
    to.out += '[';
    for (const T& item : list) {
        if (&item != &list.front())
            to.out += ',';
        if constexpr (isKnownByPlace<T>) {
            const std::string place = std::to_string(&item - list.data());
            const Level level{to.level, place};
            writeValue(Target{to.out, to.state, to.kept, &level}, item);
        } else if constexpr (HasId<T>) {
            const Level level{to.level, item.id};
            writeValue(Target{to.out, to.state, to.kept, &level}, item);
        } else {
            writeValue(to, item);
        }
    }
    to.out += ']';
}

template<class T>
void writeValue(const Target& to, const PerSide<T>& sides) {
    Writing object(to);
    if (sides == PerSide<T>::all(sides.left))
        object.required("all", sides.left);
    else
        for (const Side side : allSides)
            object.required(wordOf(side), sides[side]);
    object.finish();
}

/// The same place, but below it the value's own unknown members are written, where it keeps some.
template<class T>
Target keptIn(const Target& to, const T& value) {
    if constexpr (requires { value.unknowns; })
        return {to.out, to.state, &value.unknowns, nullptr};
    else
        return to;
}

/// A form: an object whose members `members` describes.
template<class T>
requires requires(Writing& writing, const T& value) {
    members(writing, value);
}
void writeValue(const Target& to, const T& value) {
    Writing object(keptIn(to, value));
    members(object, value);
    object.finish();
}

} // namespace frontwright::documents
