#pragma once

#include "core/boards/board_spec.h"
#include "core/case/choices.h"
#include "core/documents/json_tree.h"
#include "core/documents/level.h"
#include "core/documents/words.h"
#include "core/project/presets.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace frontwright::documents {

/// What goes along through one reading. Once `error` is set nothing more is read.
struct ReadState {
    explicit ReadState(const JsonTree& t) : tree(t), taken(t.next(t.root())) {}

    const JsonTree& tree;
    std::vector<char> taken; ///< by node: this version knows the member
    std::optional<Error> error;
    std::int32_t nextId = firstFreeId;
    std::size_t openings = 0;
    const Presets* presets = nullptr; ///< once read; before that, and in catalogues, there are none
};

/// Where a value stands, and who keeps what is not known below it.
struct Place {
    ReadState& state;
    NodeIndex node = noNode;
    Unknowns* keep = nullptr; ///< nullptr: unknown members are refused
    const Level* level = nullptr;

    [[nodiscard]] JsonKind kind() const { return state.tree.kind(node); }
    void fail(Phrase what, Phrase remedy = {}) const;
    /// Fails with "expected WHAT, found …".
    void failExpecting(Phrase what) const;
    /// True where it is of that kind; else fails.
    [[nodiscard]] bool demand(JsonKind kind) const;
};

enum class Sign : std::uint8_t { Any, NotNegative };

void readValue(const Place&, std::string&);
void readValue(const Place&, WrittenLength&); // not negative
void readValue(const Place&, Length&);        // not negative
void readValue(const Place&, Mass&);
void readValue(const Place&, SpecificGravity&); // 0.05 … 1.5
void readValue(const Place&, Percent&);         // not negative
void readValue(const Place&, Temperature&);
/// "left 6 in reach 1 in"
void readValue(const Place&, FastenerToReach&);
void readValue(const Place&, Force&); // in newtons, of at most six decimals; not negative
/// A number that is not negative, of at most six decimals.
void readMillionths(const Place&, std::int64_t&);
void readValue(const Place&, SideFit&);
void readValue(const Place&, PerSide<bool>&);
void readValue(const Place&, PerSide<Rare<SideFit>>&);
void readLength(const Place&, WrittenLength&, Sign);
void readWhole(const Place&, std::int64_t&, Whole);
/// The place of the text in `words`; 0 and a failed state where it is none of them.
std::size_t readWord(const Place&, std::span<const std::string_view> words);
/// An entry's id, or what stands for it as long as it has none.
std::string_view idOf(const Place&);

/// Reads one object member by member; what nobody asked for is unknown. Names are asked for in the
/// order in which they are written, so that each is found at once in a file of our own.
class Reading {
public:
    explicit Reading(const Place& at);

    /// noNode where there is none. The member counts as known from here on.
    NodeIndex take(std::string_view name) { return m_left == 0 ? noNode : search(name); }
    [[nodiscard]] bool failed() const { return m_at.state.error.has_value(); }
    [[nodiscard]] Place placeOf(NodeIndex member, const Level* level) const {
        return {m_at.state, member, m_at.keep, level};
    }
    const Place& at() const { return m_at; }
    /// From here on the object's unknown members, and those below it, are kept there.
    void keepUnknownsIn(Unknowns& unknowns) {
        m_at.keep = &unknowns;
        m_at.level = nullptr;
    }
    /// Keeps the members that nobody asked for, or refuses them.
    void finish();

    template<class T>
    void required(std::string_view name, T& value) {
        if (!readIfThere(name, value) && !failed())
            failMissing(name);
    }
    /// `value` is a std::optional or a Rare.
    void optional(std::string_view name, auto& value) {
        if (const NodeIndex member = take(name); member != noNode && !failed())
            read(name, member, value.emplace());
    }
    /// Missing stands for `absent`, which is not written.
    template<class T>
    void defaulted(std::string_view name, T& value, const T& absent) {
        if (!readIfThere(name, value))
            value = absent;
    }
    /// Missing leaves the value as it is; it is always written.
    template<class T>
    void always(std::string_view name, T& value) {
        readIfThere(name, value);
    }
    template<class T>
    void whole(std::string_view name, T& value, Whole range) {
        const NodeIndex member = take(name);
        if (member == noNode || failed())
            return;
        std::int64_t number = 0;
        readWhole(placeOf(member, nullptr), number, range);
        value = static_cast<T>(number);
    }
    /// Missing stands for `absent`, which is not written.
    template<class T>
    void whole(std::string_view name, T& value, Whole range, std::int64_t absent) {
        value = static_cast<T>(absent);
        whole(name, value, range);
    }
    void millionths(std::string_view name, std::int64_t& value) {
        if (const NodeIndex member = take(name); member != noNode && !failed())
            readMillionths(placeOf(member, nullptr), value);
        else if (!failed())
            failMissing(name);
    }
    void fixed(std::string_view name, std::string_view) { take(name); }
    /// The member has a value that cannot be.
    void refuse(std::string_view name, Text expected);
    void failMissing(std::string_view name) const;

private:
    NodeIndex search(std::string_view name);
    template<class T>
    bool readIfThere(std::string_view name, T& value) {
        const NodeIndex member = take(name);
        if (member == noNode || failed())
            return false;
        read(name, member, value);
        return true;
    }
    template<class T>
    void read(std::string_view name, NodeIndex member, T& value) {
        const Level level{m_at.level, name};
        readValue(placeOf(member, &level), value);
    }

    Place m_at;
    NodeIndex m_next; ///< where the next member is looked for first
    NodeIndex m_end;
    std::uint32_t m_left; ///< members that nobody asked for yet
};

template<class E>
requires std::is_enum_v<E>
void readValue(const Place& at, E& value) {
    value = static_cast<E>(readWord(at, wordsOf<E>));
}

template<class Frame>
void readValue(const Place& at, PointIn<Frame>& point) {
    const JsonTree& tree = at.state.tree;
    if (at.kind() != JsonKind::Array || tree.childCount(at.node) != 2)
        return at.failExpecting(text("a point such as [\"1 in\", \"2 in\"]"));
    WrittenLength x;
    WrittenLength y;
    const NodeIndex first = tree.firstChild(at.node);
    readLength({at.state, first, nullptr, nullptr}, x, Sign::Any);
    readLength({at.state, tree.next(first), nullptr, nullptr}, y, Sign::Any);
    point = {x.length, y.length};
}

template<class T>
void readValue(const Place& at, std::vector<T>& list) {
    if (!at.demand(JsonKind::Array))
        return;
    const JsonTree& tree = at.state.tree;
    list.clear();
    list.reserve(tree.childCount(at.node));
    const NodeIndex end = tree.next(at.node);
    for (NodeIndex i = tree.firstChild(at.node); i < end && !at.state.error; i = tree.next(i)) {
        const Place item{at.state, i, at.keep, at.level};
        if constexpr (isKnownByPlace<T>) {
            const std::string place = std::to_string(list.size());
            const Level level{at.level, place};
            readValue(Place{at.state, i, at.keep, &level}, list.emplace_back());
        } else if constexpr (HasId<T>) {
            const Level level{at.level, idOf(item)};
            readValue(Place{at.state, i, at.keep, &level}, list.emplace_back());
        } else {
            readValue(item, list.emplace_back());
        }
    }
}

inline constexpr Text eitherAllOrEach = text("no side beside \"all\"");

/// Either "all" or each of the four.
template<class T>
void readValue(const Place& at, PerSide<T>& sides) {
    if (!at.demand(JsonKind::Object))
        return;
    Reading object(at);
    std::optional<T> all;
    object.optional("all", all);
    if (all)
        sides = PerSide<T>::all(*all);
    for (const Side side : allSides) {
        if (all)
            object.refuse(wordOf(side), eitherAllOrEach);
        else
            object.required(wordOf(side), sides[side]);
    }
    object.finish();
}

/// A form: an object whose members `members` describes.
template<class T>
requires requires(Reading& reading, T& value) {
    members(reading, value);
}
void readValue(const Place& at, T& value) {
    if (!at.demand(JsonKind::Object))
        return;
    Reading object(at);
    if constexpr (requires { value.unknowns; })
        object.keepUnknownsIn(value.unknowns);
    members(object, value);
    object.finish();
}

} // namespace frontwright::documents
