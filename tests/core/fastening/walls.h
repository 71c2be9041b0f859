#pragma once

#include "core/fastening/mounting.h"

// Box walls, fronts and screws for tests, with sizes of the shop.
namespace frontwright::testing {

/// No. 8 (ASME B18.6.1: 0.164 in, head 0.332 in by 0.100 in), drills of a common shop chart,
/// stocked from 1/2 in to 1 in by 1/8 in and to 2 in by 1/4 in.
inline WoodScrew numberEight() {
    WoodScrew screw;
    screw.id = "wood-screw-8";
    screw.shankDiameter = Length::fromNanometres(164 * 25'400);
    screw.headDiameter = Length::fromNanometres(332 * 25'400);
    screw.headHeight = Length::fromNanometres(100 * 25'400);
    screw.clearanceHole = Length::inches(0, 11);
    screw.pilotHole = Length::inches(0, 7);
    for (std::int64_t n : {32, 40, 48, 56, 64, 80, 96, 112, 128})
        screw.lengths.push_back(Length::fromSixtyFourths(n));
    return screw;
}

/// 4 mm, head 8 mm by 2.4 mm, from memory.
inline WoodScrew fourMillimetre() {
    WoodScrew screw;
    screw.id = "wood-screw-4mm";
    screw.shankDiameter = Length::millimetres(4);
    screw.headDiameter = Length::millimetres(8);
    screw.headHeight = Length::fromMicrometres(2'400);
    screw.clearanceHole = Length::fromMicrometres(4'500);
    screw.pilotHole = Length::fromMicrometres(2'800);
    for (std::int64_t mm : {12, 16, 20, 25, 30, 35, 40})
        screw.lengths.push_back(Length::millimetres(mm));
    return screw;
}

/// Walls and sides 1/2 in thick; the bottom's top at 1/2 in; the wall's lower left corner at
/// `onFront` in the front's frame.
inline BoxPlan box(Length width, Length height, FrontPoint onFront) {
    BoxPlan plan;
    plan.width = width;
    plan.height = height;
    plan.wallThickness = Length::inches(0, 32);
    plan.sideThickness = Length::inches(0, 32);
    plan.bottomUnderside = Length::inches(0, 16);
    plan.bottomTop = Length::inches(0, 32);
    plan.wall = WallRect::atOrigin(width, height);
    plan.wallOnFront = onFront;
    return plan;
}

/// A box 12 in by 5 in behind a front 13 in by 6 in, 3/4 in thick, with square edges: the wall
/// begins 1/2 in in from the front's left and lower edge. Everything can be changed before `place`.
struct Mounted {
    WoodScrew screw = numberEight();
    MountingSpec spec;
    Limits limits;
    Profile profile;
    FrontRect front = FrontRect::atOrigin(Length::inches(13), Length::inches(6));
    Length thickness = Length::inches(0, 48);
    BoxPlan wall =
        box(Length::inches(12), Length::inches(5), {Length::inches(0, 32), Length::inches(0, 32)});
    std::optional<HardwarePlan> hardware;

    Mounted() {
        spec.screw = "wood-screw-8";
        spec.toolDiameter = Length::inches(0, 48); // a countersink's collar of 3/4 in
    }

    [[nodiscard]] MountingPlace place() const {
        return {wall,
                {front, field(profile, front), thickness, &profile, wall.wallThickness},
                hardware ? &*hardware : nullptr,
                nullptr,
                Length{}};
    }
    [[nodiscard]] MountingPlan plan() const { return planMounting(spec, screw, limits, place()); }
    [[nodiscard]] Obstacle obstacle(WallPoint p) const {
        return obstacleAt(spec, plan(), limits, place(), p);
    }
    /// One screw, put there by hand.
    [[nodiscard]] MountingHole holeAt(WallPoint p) {
        spec.pattern = ScrewPattern::ByHand;
        spec.placed = {p};
        return plan().holes.at(0);
    }
};

/// Handle holes at these places of the front; sizes of an 8-32 bolt in round numbers: hole 3/16 in,
/// counterbore 1/2 in, access hole 5/8 in.
inline HardwarePlan handleWith(std::vector<FrontPoint> holes, MountingWay way) {
    HardwarePlan plan;
    plan.holes = std::move(holes);
    plan.chosen = way;
    plan.holeDiameter = Length::inches(0, 12);
    plan.counterboreDiameter = Length::inches(0, 32);
    plan.accessDiameter = Length::inches(0, 40);
    return plan;
}

inline std::vector<WallPoint> pointsOf(const MountingPlan& plan) {
    std::vector<WallPoint> points;
    for (const MountingHole& hole : plan.holes)
        points.push_back(hole.at);
    return points;
}

} // namespace frontwright::testing
