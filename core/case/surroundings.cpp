#include "core/case/surroundings.h"

#include <algorithm>
#include <concepts>

namespace frontwright {

namespace {

constexpr std::array besideKinds{SurroundKind::OpenSide, SurroundKind::Wall,
                                 SurroundKind::NeighbouringCase, SurroundKind::Moulding};
constexpr std::array aboveKinds{SurroundKind::OpenSide, SurroundKind::OverhangingTop,
                                SurroundKind::Moulding, SurroundKind::Wall,
                                SurroundKind::NeighbouringCase};
constexpr std::array belowKinds{SurroundKind::OpenSide, SurroundKind::Plinth, SurroundKind::Legs,
                                SurroundKind::Moulding, SurroundKind::NeighbouringCase};

/// What `pick` takes of the kind that is there; nullptr where it takes nothing of that kind.
template<class Any, class Pick>
auto picked(Any& surround, Pick pick) {
    using Found = std::conditional_t<std::is_const_v<Any>, const WrittenLength*, WrittenLength*>;
    return std::visit(
        [&](auto& one) -> Found {
            if constexpr (std::invocable<Pick, decltype(one)>)
                return pick(one);
            else
                return nullptr;
        },
        surround);
}

template<class Any>
auto lengthIn(Any& any, SurroundMeasure measure) {
    switch (measure) {
    case SurroundMeasure::Distance:
        return picked(
            any, [](auto& s) requires requires { s.distance; } { return &s.distance; });
    case SurroundMeasure::FrontFromEdge:
        return picked(
            any, [](auto& s) requires requires { s.frontFromEdge; } { return &s.frontFromEdge; });
    case SurroundMeasure::Thickness:
        return picked(
            any, [](auto& s) requires requires { s.thickness; } { return &s.thickness; });
    case SurroundMeasure::Height:
        return picked(
            any, [](auto& s) requires requires { s.height; } { return &s.height; });
    case SurroundMeasure::Width:
        return picked(
            any, [](auto& s) requires requires { s.width; } { return &s.width; });
    case SurroundMeasure::OverFront:
        return picked(
            any, [](auto& s) requires requires { s.overFront; } { return &s.overFront; });
    case SurroundMeasure::OverSides:
        return picked(
            any, [](auto& s) requires requires { s.overSides; } { return &s.overSides; });
    case SurroundMeasure::Projection:
        return picked(
            any, [](auto& s) requires requires { s.projection; } { return &s.projection; });
    case SurroundMeasure::Setback:
        return picked(
            any, [](auto& s) requires requires { s.setback; } { return &s.setback; });
    case SurroundMeasure::Lip:
        return picked(
            any, [](auto& s) requires requires { s.lip; } { return &s.lip; });
    case SurroundMeasure::Gap:
        break;
    }
    return picked(
        any, [](auto& s) requires requires { s.gap; } { return &s.gap; });
}

struct LimitOf {
    using Limit = std::optional<EdgeLimit>;
    Limit operator()(const OpenSide&) const { return std::nullopt; }
    Limit operator()(const Wall& s) const { return EdgeLimit{s.distance, s.gap}; }
    Limit operator()(const NeighbouringCase& s) const {
        return EdgeLimit{s.distance.length + s.frontFromEdge.length, s.gap};
    }
    Limit operator()(const OverhangingTop& s) const {
        if (s.overFront.length <= Length{} && s.lip.length <= Length{})
            return std::nullopt;
        return EdgeLimit{-s.lip.length, s.gap};
    }
    Limit operator()(const Moulding& s) const { return EdgeLimit{-s.height.length, s.gap}; }
    Limit operator()(const Plinth& s) const {
        return s.lip.length > Length{} ? Limit(EdgeLimit{-s.lip.length, s.gap}) : std::nullopt;
    }
    Limit operator()(const Legs&) const { return std::nullopt; }
};

} // namespace

Surround surroundOf(SurroundKind kind) {
    switch (kind) {
    case SurroundKind::OpenSide:
        return OpenSide{};
    case SurroundKind::Wall:
        return Wall{};
    case SurroundKind::NeighbouringCase:
        return NeighbouringCase{};
    case SurroundKind::OverhangingTop:
        return OverhangingTop{};
    case SurroundKind::Moulding:
        return Moulding{};
    case SurroundKind::Plinth:
        return Plinth{};
    case SurroundKind::Legs:
        break;
    }
    return Legs{};
}

Surround usualSurround(SurroundKind kind, Unit unit) {
    const auto inOr = [unit](std::int64_t sixtyFourths, std::int64_t tenthsOfMillimetre) {
        return WrittenLength(unit == Unit::Inch
                                 ? Length::fromSixtyFourths(sixtyFourths)
                                 : Length::fromMicrometres(tenthsOfMillimetre * 100));
    };
    const WrittenLength none, gap = inOr(8, 30);
    switch (kind) {
    case SurroundKind::OpenSide:
        return OpenSide{};
    case SurroundKind::Wall:
        return Wall{none, gap};
    case SurroundKind::NeighbouringCase:
        return NeighbouringCase{none, inOr(4, 15), gap};
    case SurroundKind::OverhangingTop:
        return OverhangingTop{inOr(64, 250), inOr(96, 400), inOr(32, 100), none, gap};
    case SurroundKind::Moulding:
        return Moulding{inOr(48, 200), inOr(48, 200), gap};
    case SurroundKind::Plinth:
        return Plinth{inOr(256, 1000), inOr(192, 500), none, gap};
    case SurroundKind::Legs:
        break;
    }
    return Legs{inOr(320, 1200), inOr(112, 400), inOr(64, 300)};
}

std::span<const SurroundKind> kindsAt(Side side) {
    switch (side) {
    case Side::Left:
    case Side::Right:
        return besideKinds;
    case Side::Bottom:
        return belowKinds;
    case Side::Top:
        break;
    }
    return aboveKinds;
}

bool canStandAt(Side side, SurroundKind kind) {
    return std::ranges::find(kindsAt(side), kind) != kindsAt(side).end();
}

const WrittenLength* lengthOf(const Surround& surround, SurroundMeasure measure) {
    return lengthIn(surround, measure);
}

WrittenLength* lengthOf(Surround& surround, SurroundMeasure measure) {
    return lengthIn(surround, measure);
}

std::optional<EdgeLimit> edgeLimit(const Surround& surround) {
    return std::visit(LimitOf(), surround);
}

PerSide<Length> standingOut(const Surroundings& surroundings) {
    PerSide<Length> out;
    if (const auto* top = std::get_if<OverhangingTop>(&surroundings.top)) {
        out.top = top->thickness;
        out.left = out.right = top->overSides;
    }
    if (const auto* plinth = std::get_if<Plinth>(&surroundings.bottom))
        out.bottom = plinth->height;
    if (const auto* legs = std::get_if<Legs>(&surroundings.bottom))
        out.bottom = legs->height;
    return out;
}

} // namespace frontwright
