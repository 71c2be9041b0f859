#pragma once

#include "core/lengths/length.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <utility>

namespace frontwright {

// Three coordinate frames, three families of types; only the functions of boxes/box.h lead
// from one to another. All are right-handed and seen from the front of the case: x to the
// right, y up.
struct CaseFrame {};  ///< origin: the case's lower left corner
struct FrontFrame {}; ///< origin: the front's lower left corner, on its show face
struct WallFrame {};  ///< origin: the box wall's lower left corner, seen from the front

template<class Frame>
struct PointIn {
    Length x;
    Length y;
    friend bool operator==(const PointIn&, const PointIn&) = default;
    friend PointIn operator+(PointIn p, PointIn q) { return {p.x + q.x, p.y + q.y}; }
    friend PointIn operator-(PointIn p, PointIn q) { return {p.x - q.x, p.y - q.y}; }
};
using CasePoint = PointIn<CaseFrame>;
using FrontPoint = PointIn<FrontFrame>;
using WallPoint = PointIn<WallFrame>;

enum class Side : std::uint8_t { Left, Right, Bottom, Top };
inline constexpr std::array<Side, 4> allSides{Side::Left, Side::Right, Side::Bottom, Side::Top};
Side opposite(Side side);
constexpr bool isLeftOrRight(Side side) {
    return side == Side::Left || side == Side::Right;
}

/// One value for each side of a rectangle.
template<class T>
struct PerSide {
    T left{};
    T right{};
    T bottom{};
    T top{};

    T& operator[](Side side) { return const_cast<T&>(std::as_const(*this)[side]); }
    const T& operator[](Side side) const {
        switch (side) {
        case Side::Left:
            return left;
        case Side::Right:
            return right;
        case Side::Bottom:
            return bottom;
        case Side::Top:
            break;
        }
        return top;
    }
    static PerSide all(const T& value) { return {value, value, value, value}; }
    friend bool operator==(const PerSide&, const PerSide&) = default;
};

/// A closed stretch along one axis; empty where high < low.
struct Span {
    Length low;
    Length high;
    [[nodiscard]] Length size() const { return high - low; }
    [[nodiscard]] Length middle() const { return low + size().half(); }
    [[nodiscard]] bool isEmpty() const { return high < low; }
    [[nodiscard]] bool contains(Length v) const { return low <= v && v <= high; }
    [[nodiscard]] Span common(Span other) const {
        return {greatest(low, other.low), least(high, other.high)};
    }
    friend bool operator==(const Span&, const Span&) = default;
};

/// An axis-parallel rectangle, closed; empty where a span is.
template<class Frame>
struct RectIn {
    Length left;
    Length bottom;
    Length right;
    Length top;

    static RectIn atOrigin(Length width, Length height) { return {{}, {}, width, height}; }
    [[nodiscard]] Length width() const { return right - left; }
    [[nodiscard]] Length height() const { return top - bottom; }
    [[nodiscard]] Span across() const { return {left, right}; }
    [[nodiscard]] Span upright() const { return {bottom, top}; }
    [[nodiscard]] PointIn<Frame> lowerLeft() const { return {left, bottom}; }
    [[nodiscard]] PointIn<Frame> centre() const { return {across().middle(), upright().middle()}; }
    [[nodiscard]] bool isEmpty() const { return right < left || top < bottom; }
    [[nodiscard]] bool contains(PointIn<Frame> p) const {
        return left <= p.x && p.x <= right && bottom <= p.y && p.y <= top;
    }
    [[nodiscard]] bool contains(const RectIn& r) const {
        return left <= r.left && r.right <= right && bottom <= r.bottom && r.top <= top;
    }
    /// The common part; empty where they do not meet.
    [[nodiscard]] RectIn common(const RectIn& r) const {
        return {greatest(left, r.left), greatest(bottom, r.bottom), least(right, r.right),
                least(top, r.top)};
    }
    /// Smaller by d on every side (greater for d < 0).
    [[nodiscard]] RectIn inset(Length d) const {
        return {left + d, bottom + d, right - d, top - d};
    }
    [[nodiscard]] RectIn movedBy(PointIn<Frame> d) const {
        return {left + d.x, bottom + d.y, right + d.x, top + d.y};
    }
    friend bool operator==(const RectIn&, const RectIn&) = default;
};
using CaseRect = RectIn<CaseFrame>;
using FrontRect = RectIn<FrontFrame>;
using WallRect = RectIn<WallFrame>;

/// A round place: a hole, or what must stay clear of one.
template<class Frame>
struct DiscIn {
    PointIn<Frame> centre;
    Length radius;
    friend bool operator==(const DiscIn&, const DiscIn&) = default;
};
using FrontDisc = DiscIn<FrontFrame>;
using WallDisc = DiscIn<WallFrame>;

/// Squared distance is exact only as a double; compare with `isWithin`, which decides at 1 nm.
template<class Frame>
bool isWithin(PointIn<Frame> p, PointIn<Frame> centre, Length radius) {
    const double dx = (p.x - centre.x).inMillimetres();
    const double dy = (p.y - centre.y).inMillimetres();
    const double r = radius.inMillimetres();
    return dx * dx + dy * dy < r * r;
}

} // namespace frontwright
