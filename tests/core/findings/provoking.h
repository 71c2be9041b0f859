#pragma once

#include "core/findings/finding.h"
#include "tests/core/findings/provoking_surroundings.h"
#include "tests/core/plan/board_case.h"
#include "tests/core/plan/faced.h"
#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/shorthand.h"

#include <algorithm>
#include <string>
#include <vector>

// One case for each FindingCode that provokes it, and one just this side of the limit that does
// not. All are variations of the small case: openings 13 in × 6 in, fronts 3/4 in with 1/4 in
// overlays, box walls and sides 1/2 in, bottom's top at 1/2 in, No. 8 screws (head 5/16 in across
// and 3/32 in high) set 1/8 in deep with a 5/8 in tool, a 20 mm knob bolted through the wall.
namespace frontwright::testing {

constexpr Length um(std::int64_t n) {
    return Length::fromMicrometres(n);
}

struct Provocation {
    FindingCode code;
    Project beyond; ///< provokes it, by the smallest step there is
    Project within; ///< does not
};

using Change = std::function<void(Project&)>;

inline Project changed(const Change& change, std::size_t rows = 2) {
    Project project = bank(rows);
    change(project);
    return project;
}
inline Provocation provoked(FindingCode code, const std::function<void(Project&, Length)>& change,
                            Length beyond, Length within, std::size_t rows = 2) {
    return {code, changed([&](Project& p) { change(p, beyond); }, rows),
            changed([&](Project& p) { change(p, within); }, rows)};
}

inline std::vector<Provocation> screwProvocations() {
    using enum FindingCode;
    const auto length = [](Project& p, Length l) { p.fronts.mounting.length = l; };
    const auto recess = [](Project& p, Length l) { p.fronts.mounting.recess = l; };
    const auto thickness = [](Project& p, Length l) { p.fronts.thickness = l; };
    // Rows 1 in above the lower edge and l below the upper; the box is 5 5/8 in high.
    const auto rowsApart = [](Project& p, Length l) {
        p.fronts.mounting.fromBottom = n64(64);
        p.fronts.mounting.fromTop = n64(5 * 64 + 40 - 64) - l;
    };
    // The same on an opening of 9 in; the box is 8 5/8 in high.
    const auto tallRowsApart = [](Project& p, Length l) {
        p = oneOpening(Length::inches(13), Length::inches(9));
        p.fronts.mounting.fromBottom = n64(64);
        p.fronts.mounting.fromTop = n64(8 * 64 + 40 - 64) - l;
    };
    return {
        // 1/2 in wall − 1/8 in recess + 3/4 in front = 1 1/8 in reaches the show face.
        provoked(ScrewThroughShowFace, length, n64(72), n64(71)),
        provoked(TipCoverThin, length, n64(65), n64(64)),
        // 1/2 in − 1/8 in + 3/8 in = 3/4 in is the least.
        provoked(PenetrationShort, length, n64(47), n64(48)),
        // A 1/2 in front takes 3/4 in screws and no other.
        provoked(NoScrewFits, thickness, n64(31), n64(32)),
        // 1/2 in wall − 3/32 in head − 3/16 in left = 7/32 in.
        provoked(WallThinUnderHead, recess, n64(15), n64(14)),
        // 3 in / 96 = 1/32 in, the play of a 3/16 in hole round a 5/32 in shank.
        provoked(SlotForMovement, rowsApart, n64(3 * 64 + 1), n64(3 * 64)),
        // A front of 9 1/2 in wants 2 3/8 in between its rows.
        provoked(ScrewRowsNear, tallRowsApart, n64(151), n64(152)),
    };
}

inline std::vector<Provocation> holeProvocations() {
    using enum FindingCode;
    const auto fromBottom = [](Project& p, Length l) { p.fronts.mounting.fromBottom = l; };
    const auto fromSides = [](Project& p, Length l) { p.fronts.mounting.fromSides = l; };
    const auto fromTop = [](Project& p, Length l) { p.fronts.mounting.fromTop = l; };
    // The knob's hole lies 6 7/16 in across and 2 7/8 in up the wall.
    const auto besideKnob = [](Project& p, Length l) {
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{n64(6 * 64 + 28) + l, n64(2 * 64 + 56)}};
    };
    // The front's left edge lies 1 in inside the opening, the wall's 1/16 in.
    const auto leftOfFront = [](Project& p, Length l) {
        p.fronts.fit.left = {Fit::Inset, n64(64)};
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{l, n64(128)}};
    };
    return {
        // bottom's top 1/2 in + head's radius 5/32 in
        provoked(HoleInBottom, fromBottom, n64(41), n64(42)),
        // bottom's top 1/2 in + tool's radius 5/16 in
        provoked(RecessToolBlocked, fromBottom, n64(51), n64(52)),
        // side 1/2 in + tool's radius 5/16 in
        provoked(HoleAtBoxSide, fromSides, n64(51), n64(52)),
        // tool's radius 5/16 in, more than head's radius 5/32 in + margin 1/8 in
        provoked(HoleAtTopEdge, fromTop, n64(19), n64(20)),
        // bolt hole's radius 3/32 in + tool's radius 5/16 in + 1/4 in of wood
        provoked(HoleAtHardware, besideKnob, n64(41), n64(42)),
        provoked(HoleOffFront, leftOfFront, n64(59), n64(60)),
    };
}

inline std::vector<Provocation> handleProvocations() {
    using enum FindingCode;
    const auto bolt = [](Project& p, Length l) { p.fronts.hardware.boltLength = l; };
    const auto thickness = [](Project& p, Length l) { p.fronts.thickness = l; };
    const auto counterbore = [](Project& p, Length l) {
        p.fronts.hardware.way = MountingWay::FrontCounterbore;
        p.fronts.hardware.counterbore = l;
    };
    const auto fromTop = [](Project& p, Length l) {
        p.fronts.hardware.placing = Placing::FromTop;
        p.fronts.hardware.distance = l;
    };
    const auto fromTopOfBevelled = [&](Project& p, Length l) {
        fromTop(p, l);
        p.fronts.profile = {ProfileFamily::Chamfer, um(20'000), um(5'000), {}, {}};
        p.fronts.profile.sides = PerSide<bool>::all(true);
    };
    // Two 110 mm pulls on a 13 1/2 in front: at 34 % their centres are 109.7 mm apart.
    const auto twoPulls = [](Project& p, Length l) {
        p.fronts.hardware.form = "pull-96";
        p.fronts.hardware.twoPast = n64(10 * 64);
        p.fronts.hardware.twoAtPercent = l.nanometres();
    };
    return {
        // 3/4 in front + 1/2 in wall = 31.75 mm; 6 mm hold at least, 16 mm go in.
        provoked(BoltTooShort, bolt, um(37'749), um(37'750)),
        provoked(BoltBottomsOut, bolt, um(47'751), um(47'750)),
        // The longest stocked is 2 in = 50.8 mm = 32.1 mm + 12.7 mm + 6 mm.
        provoked(NoBoltFits, thickness, um(32'101), um(32'100)),
        // 1/4 in of the 3/4 in front must stay.
        provoked(CounterboreTooDeep, counterbore, n64(33), n64(32)),
        // profile 20 mm + base's radius 10 mm
        provoked(BackplateOffField, fromTopOfBevelled, um(29'999), um(30'000)),
        provoked(HandleOffFront, fromTop, um(9'999), um(10'000)),
        // The wall ends 1/2 in below the front; hole's radius 3/32 in.
        provoked(AccessHoleOffWall, fromTop, n64(37), n64(38)),
        provoked(HandlesCollide, twoPulls, Length::fromNanometres(34), Length::fromNanometres(33)),
    };
}

inline std::vector<Provocation> frontProvocations() {
    using enum FindingCode;
    // Rails are 1 1/4 in; the lower front's overlay grows.
    const auto ofLower = [](Project& p, Length upper, Length lower) {
        p.fronts.fit.bottom = {Fit::Overlay, upper};
        p.fronts.fit.top = {Fit::Overlay, lower};
    };
    const auto collide = [=](Project& p, Length l) { ofLower(p, n64(40), l); };
    const auto tight = [=](Project& p, Length l) { ofLower(p, n64(38), l); };
    const auto uneven = [](Project& p, Length l) {
        p = withChoices(std::move(p), 0, [&](FrontChoices& choices) {
            choices.fit.bottom = SideFit{Fit::Overlay, l};
        });
    };
    const auto left = [](Project& p, Length l) { p.fronts.fit.left = {Fit::Overlay, l}; };
    const auto profile = [](Project& p, Length width, Length depth) {
        p.fronts.profile = {ProfileFamily::Chamfer, width, depth, {}, PerSide<bool>::all(true)};
    };
    return {
        provoked(FrontsCollide, collide, n64(41), n64(40)),
        provoked(GapTight, tight, n64(39), n64(38)),
        provoked(GapsUneven, uneven, n64(17), n64(16), 3),
        // The stile is 1 1/2 in.
        provoked(FrontOffCase, left, n64(97), n64(96)),
        provoked(OverlayMissing, left, n64(0), n64(1)),
        // The front is 6 1/2 in high.
        provoked(
            FieldEmpty, [=](Project& p, Length l) { profile(p, l, n64(8)); }, n64(208), n64(207)),
        provoked(
            ProfileTooDeep, [=](Project& p, Length l) { profile(p, n64(32), l); }, n64(48),
            n64(47)),
    };
}

inline std::vector<Provocation> boxProvocations() {
    using enum FindingCode;
    const auto clearance = [](Project& p, Length l) { p.fronts.box.sideClearance = l; };
    const auto height = [](Project& p, Length l) { p.fronts.box.height = l; };
    const auto depth = [](Project& p, Length l) { p.fronts.box.depth = l; };
    const auto groove = [](Project& p, Length l) { p.fronts.box.grooveHeight = l; };
    const Project tall = oneOpening(Length::inches(13), Length::inches(24));
    const Project lower = oneOpening(Length::inches(13), Length::inches(24) - n64(1));
    return {
        // 13 in − 2 × 6 in − 2 × 1/2 in
        provoked(BoxNoRoom, clearance, n64(384), n64(383)),
        // 6 in opening − 1/8 in below
        provoked(BoxTooTall, height, n64(377), n64(376)),
        // 3/4 in frame + 20 in inside
        provoked(BoxTooDeep, depth, n64(20 * 64 + 49), n64(20 * 64 + 48)),
        // The box is 5 5/8 in high, the bottom 1/4 in thick.
        provoked(BottomOutOfWall, groove, n64(5 * 64 + 24), n64(5 * 64 + 23)),
        {AnchorCase, tall, lower},
    };
}

inline std::vector<Provocation> seasonProvocations() {
    using enum FindingCode;
    // Between 6 and 14 % moisture oak changes by 8 × 0.0025 = 0.02 of its size.
    const auto swelling = [](Project& p) { oakInAir(p, 6, 6, 14); };
    const auto shrinking = [](Project& p) { oakInAir(p, 14, 6, 14); };
    const auto gap = [=](Project& p, Length l) {
        swelling(p);
        p.fronts.fit.bottom = p.fronts.fit.top = {Fit::Gap, l};
    };
    const auto inset = [=](Project& p, Length l) {
        swelling(p);
        p.fronts.fit.top = {Fit::Inset, l};
    };
    const auto overlay = [=](Project& p, Length l) {
        shrinking(p);
        p.fronts.fit.top = {Fit::Overlay, l};
    };
    const auto rows = [=](Project& p, Length l) {
        swelling(p);
        p.fronts.mounting.fromBottom = n64(64);
        p.fronts.mounting.fromTop = n64(5 * 64 + 40 - 64) - l;
    };
    // Fronts 6 and 9 in high, each with 1/2 in of overlays.
    const auto unequal = [=](Length seen) {
        Project p =
            projectWith(testing::rows({fixed(Length::inches(3), opening()),
                                       fixed(Length::inches(6), opening()), share(opening())},
                                      Length::inches(1, 16)),
                        Length::inches(16), Length::inches(3 + 18) + Length::inches(2, 32));
        swelling(p);
        p.limits.unevenGaps = seen;
        return p;
    };
    const auto at = [](int whenCut, Percent wettest) {
        Project p = bank(2);
        oakInAir(p, whenCut, 6, 14);
        p.air->wettest.reading = wettest;
        return p;
    };
    Project unknown = at(8, Percent::whole(14));
    unknown.fronts.stock.species = "cherry"; // of the small catalogue, without figures
    return {
        // From row to row the fronts have opening + rail − gap = 7 1/4 in − gap between them to
        // move: 9.1/64 in at a gap of 9/64 in.
        provoked(GapCloses, gap, n64(9), n64(10)),
        // 9.02/64 in of 13/64 in leave 3.98/64 in; the least gap is 1/16 in.
        provoked(GapTightens, gap, n64(13), n64(14)),
        provoked(InsetBinds, inset, n64(6), n64(7)),
        provoked(OverlayLost, overlay, n64(6), n64(7)),
        // (9 1/2 in − 6 1/2 in) × 0.02 = 0.06 in, 3.84/64 in
        {GapsGoUneven, unequal(n64(3)), unequal(n64(4))},
        // A 3/16 in hole round a 5/32 in shank leaves 1/64 in on each side: 50/64 in × 0.02.
        provoked(ClearanceSmall, rows, n64(51), n64(50)),
        {MoistureBeyondRange, at(8, Percent::fromThousandths(14'001)), at(8, Percent::whole(14))},
        {WoodUnknown, unknown, at(8, Percent::whole(14))},
    };
}

/// In oak, of specific gravity 0.63 on volume at 12 %; screws' root 9/64 in.
inline std::vector<Provocation> holdingProvocations() {
    using enum FindingCode;
    const auto inOak = [](const std::function<void(Project&, Length)>& change) {
        return [change](Project& p, Length l) {
            p.fronts.stock.species = "oak";
            change(p, l);
        };
    };
    const auto pilot = inOak([](Project& p, Length l) { p.fronts.mounting.pilotHole = l; });
    const auto clearance = inOak([](Project& p, Length l) { p.fronts.mounting.clearanceHole = l; });
    const auto fromEnd = inOak([](Project& p, Length l) {
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{l, n64(128)}};
    });
    const auto apart = inOak([](Project& p, Length l) {
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{n64(100), n64(128)}, {n64(100) + l, n64(128)}};
    });
    // One screw behind a knob that is bolted to the front alone bears the whole 222.4 N.
    const auto oneScrew = inOak([](Project& p, Length l) {
        p.fronts.hardware.way = MountingWay::FrontAccessHole;
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{n64(6 * 64 + 28), n64(2 * 64 + 56)}};
        p.fronts.mounting.length = l;
    });
    const auto load = inOak([](Project& p, Length l) {
        p.fronts.box.runner = "side-mounted"; // rated for 75 lb
        p.fronts.box.load = Mass::pounds(l.nanometres());
    });
    const auto left = inOak([](Project& p, Length l) {
        if (!l.isZero())
            p.fronts.fit.left = {Fit::Inset, l};
    });
    return {
        // G ovendry 0.675: 90 % of 9/64 in is 8.1/64 in; half a 64th more may be.
        provoked(PilotHoleWrong, pilot, n64(9), n64(8)),
        provoked(PilotHoleMissing, pilot, n64(0), n64(6)),
        // shank 10/64 in
        provoked(ClearanceHoleTight, clearance, n64(9), n64(10)),
        // head 20/64 in: 2/64 in all round a hole of 16/64 in
        provoked(HeadBearsLittle, clearance, n64(18), n64(16)),
        // 5 shanks are 50/64 in; the wall begins 20/64 in from the front's end.
        provoked(ScrewNearEdge, fromEnd, n64(29), n64(30)),
        // 10 shanks are 100/64 in.
        provoked(ScrewsCrowded, apart, n64(99), n64(100)),
        // 19.65 · 0.675² · 3.969 mm holds 35.5 N for each mm: 222.4 N want 6.26 mm of thread, and
        // 9.525 mm of wall and recess come first.
        provoked(HoldingWeak, oneScrew, um(15'760), um(15'800)),
        provoked(RunnerOverloaded, load, Length::fromNanometres(75), Length::fromNanometres(60)),
        provoked(FitsMixed, left, n64(4), n64(0)),
    };
}

/// Runners of the small catalogue: the case leaves 3/4 in + 20 in − 1/8 in = 20 5/8 in for them.
inline std::vector<Provocation> runnerProvocations() {
    using enum FindingCode;
    const auto on = [](const char* runner, WrittenLength BoxSpec::*part) {
        return [=](Project& p, Length l) {
            p.fronts.box.runner = runner;
            p.fronts.box.*part = l;
        };
    };
    const auto onOptional = [](const char* runner, std::optional<WrittenLength> BoxSpec::*part) {
        return [=](Project& p, Length l) {
            p.fronts.box.runner = runner;
            p.fronts.box.*part = l;
        };
    };
    const auto length = [](Project& p, Length l) {
        p.fronts.box.runner = "hung";
        p.fronts.box.depth = n64(20 * 64 + 40);
        p.fronts.box.runnerLength = l;
    };
    const auto hole = [](Project& p, Length l) {
        p.fronts.box.runner = "hidden";
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{l, n64(64)}};
    };
    // Oak of 6 % swells by 8 × 0.0025 of 6 in − 1/8 in − clearance.
    const auto swelling = [](Project& p, Length l) {
        oakInAir(p, 6, 6, 14);
        p.fronts.box.wood = "oak";
        p.fronts.box.clearanceAbove = l;
    };
    return {
        // clear zone 2 in + tool's radius 5/16 in
        provoked(HoleAtRunner, hole, n64(147), n64(148)),
        provoked(RunnerTooLong, length, n64(20 * 64 + 41), n64(20 * 64 + 40)),
        // The shortest is 12 in long.
        provoked(NoRunnerFits, on("hung", &BoxSpec::depth), n64(12 * 64 - 1), n64(12 * 64)),
        provoked(BoxOffRunner, on("hidden", &BoxSpec::depth), n64(15 * 64 + 1), n64(15 * 64)),
        provoked(BoxLowForRunner, onOptional("hung", &BoxSpec::height), n64(127), n64(128)),
        // 13 in − 2 × 5 3/8 in − 2 × 1/2 in = 1 1/4 in
        provoked(BoxNarrowForRunner, onOptional("middle", &BoxSpec::sideClearance), n64(345),
                 n64(344)),
        provoked(BottomOnRunner, on("hidden", &BoxSpec::grooveHeight), n64(31), n64(32)),
        // It takes 1/2 in below the box.
        provoked(RunnerOutOfOpening, onOptional("hidden", &BoxSpec::clearanceBelow), n64(31),
                 n64(32)),
        // 3/16 in for sides of 5/8 in are 5/16 in for sides of 1/2 in.
        provoked(SideClearanceOff, onOptional("hidden", &BoxSpec::sideClearance), n64(19), n64(20)),
        // (376 − 7)/64 in × 0.02 = 7.38/64 in; (376 − 8)/64 in × 0.02 = 7.36/64 in
        provoked(BoxSticks, swelling, n64(7), n64(8)),
    };
}

/// A label holder of 3 in × 1 in on fronts of 13 1/2 in × 6 1/2 in, its screws 1 1/4 in from its
/// centre, its plate 1/16 in; and a lock 7/16 in deep.
inline std::vector<Provocation> fittingProvocations() {
    using enum FindingCode;
    const auto fromTop = [](Project& p, Length l) {
        p.fronts.hardware.fittings = {
            {"label-holder", FittingAcross::Middle, {}, FittingUpright::FromTop, l, std::nullopt}};
    };
    const auto fromTopOfBevelled = [=](Project& p, Length l) {
        fromTop(p, l);
        p.fronts.profile = {ProfileFamily::Chamfer, n64(32), n64(8), {}, PerSide<bool>::all(true)};
    };
    const auto screw = [=](Project& p, Length l) {
        fromTop(p, n64(96));
        p.fronts.hardware.fittings.front().screwLength = l;
    };
    const auto thickness = [=](Project& p, Length l) {
        fromTop(p, n64(96));
        p.fronts.thickness = l;
    };
    const auto lock = [](Project& p, Length thick) {
        p.fronts.hardware.fittings.emplace_back().form = "lock";
        p.fronts.thickness = thick;
    };
    // The label's right screw lies 8 in across and 5 in up the front, 7 11/16 in and 4 5/8 in of
    // the wall: 432 + 80 = 512, less 20; 416 − 96 = 320, less 24 sixty-fourths.
    const auto besideScrew = [=](Project& p, Length l) {
        fromTop(p, n64(96));
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{n64(492) + l, n64(296)}};
    };
    // The other front's pull so far between centres, beside one of 96 mm.
    const auto otherPull = [](Project& p, Length l) {
        p.fronts.hardware.form = "pull-96";
        HardwareForm other = *smallCatalogue().hardwareForm("pull-96");
        other.id = "pull-other";
        other.name = "Other pull";
        other.holes = {{{}, {}}, {l, {}}};
        p.own.hardware = {other};
        p = withChoices(std::move(p), 1, [&](FrontChoices& choices) {
            choices.hardware = p.fronts.hardware;
            choices.hardware->form = other.id;
        });
    };
    return {
        // profile 1/2 in + half the label 1/2 in
        provoked(FittingOffField, fromTopOfBevelled, n64(63), n64(64)),
        provoked(FittingOffFront, fromTop, n64(31), n64(32)),
        // plate 1/16 in + front 3/4 in
        provoked(FittingScrewThrough, screw, n64(52), n64(51)),
        provoked(FittingScrewThin, screw, n64(45), n64(44)),
        // plate 1/16 in + 3/8 in
        provoked(FittingScrewShort, screw, n64(27), n64(28)),
        // The shortest stocked is 5/8 in = plate 1/16 in + front 11/16 in − 1/8 in.
        provoked(NoFittingScrewFits, thickness, n64(43), n64(44)),
        // body 7/16 in + 1/8 in
        provoked(MortiseTooDeep, lock, n64(35), n64(36)),
        // The knob reaches to 208 + 25.2 sixty-fourths up the front.
        provoked(FittingsCollide, fromTop, n64(151), n64(150)),
        // both shanks' radii 5/64 in + 1/4 in of wood
        provoked(HoleAtFitting, besideScrew, n64(25), n64(26)),
        // 2 mm beside 96 mm
        provoked(CentresMixed, otherPull, um(98'000), um(98'001)),
    };
}

inline std::vector<Provocation> surroundProvocations() {
    using enum FindingCode;
    return {
        // 1 1/4 in to the wall
        provoked(FrontAtWall, standAtLeft, n64(84), n64(80)),
        // 1 1/4 in + 1/16 in to the neighbour's front
        provoked(FrontAtNeighbour, standAtRight, n64(88), n64(84)),
        // 1 1/4 in less the moulding's height; 1/8 in is to stay.
        provoked(FrontAtTrim, standAtTop, n64(76), n64(72)),
        // 4 × 1 13/16 in are 7 1/4 in.
        provoked(StepOffPitch, boreEvery, n64(112), n64(116)),
    };
}

inline std::vector<Provocation> faceProvocations() {
    using enum FindingCode;
    const auto shared = [](Project& p, Length l) {
        p = faced(std::move(p));
        p.fronts.box.height = l;
    };
    const auto shadow = [](Project& p, Length l) {
        p = faced(std::move(p));
        p.limits.fillerShadow = l;
    };
    const auto bend = [](Project& p, Length l) {
        p = faced(std::move(p));
        p.limits.fillerBend = l;
    };
    const auto overlap = [](Project& p, Length l) { p = fixedFronts(std::move(p), l); };
    const auto byHand = [](Project& p, Length l) {
        p = fixedFronts(std::move(p), n64(96));
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{l, Length::inches(4)}};
    };
    Project frameless = fixedFronts(bank(1), Length::inches(1));
    frameless.casework.construction = Construction::Frameless;
    return {
        // The upper front begins 6 7/8 up the wall, its screws 25/64 higher; the tool's radius,
        // 5/16, stays free below the top.
        provoked(FrontMissesWall, shared, n64(7 * 64 + 36), n64(7 * 64 + 37)),
        // 3/4 in edges
        provoked(FillerNoThickness, shadow, n64(48), n64(47)),
        // 0.3292 mm, see shared_box_test.cpp
        provoked(FillerBends, bend, um(329), um(330)),
        // 25/64 to the front's edge, 20/64 to the member's
        provoked(FixedFrontNoRoom, overlap, n64(44), n64(45), 1),
        // The opening begins 96/64 in from the front's left edge.
        provoked(HoleOffMember, byHand, n64(77), n64(76), 1),
        {FixedFrontNoFrame, frameless, fixedFronts(bank(1), Length::inches(1))},
    };
}

/// The second opening for a board, of the depth given; its case is 20 3/4 in deep with the frame.
inline std::vector<Provocation> boardProvocations() {
    const auto deep = [](Project& p, Length depth) {
        p = withBoard(std::move(p), 1);
        p = withOpenings(std::move(p), [&](Opening& opening, std::size_t) {
            if (opening.board)
                opening.board->depth = depth;
        });
    };
    return {provoked(FindingCode::OfBoard, deep, n64(20 * 64 + 49), n64(20 * 64 + 48))};
}

/// All but those that only a catalogue can provoke, see judge_holding_test.cpp.
inline std::vector<Provocation> allProvocations() {
    std::vector<Provocation> all;
    for (const auto& some :
         {screwProvocations(), holeProvocations(), handleProvocations(), frontProvocations(),
          boxProvocations(), seasonProvocations(), holdingProvocations(), runnerProvocations(),
          fittingProvocations(), surroundProvocations(), faceProvocations(), boardProvocations()})
        all.insert(all.end(), some.begin(), some.end());
    return all;
}

/// A Project, its Plan and what is found in it.
struct Found : Planned {
    explicit Found(const Project& from) : Planned(from), findings(judge(project, plan)) {}
    Found(const Project& from, const Catalogue& entries)
        : Planned(from, entries),
          findings(judge(project, plan)) {}

    /// The first of that code; nullptr where there is none.
    [[nodiscard]] const Finding* find(FindingCode code) const {
        const auto it = std::find_if(findings.begin(), findings.end(),
                                     [&](const Finding& f) { return f.code == code; });
        return it == findings.end() ? nullptr : &*it;
    }
    [[nodiscard]] bool has(FindingCode code) const { return find(code) != nullptr; }
    [[nodiscard]] std::size_t count(FindingCode code) const {
        return static_cast<std::size_t>(std::count_if(
            findings.begin(), findings.end(), [&](const Finding& f) { return f.code == code; }));
    }
    [[nodiscard]] FindingText told(FindingCode code) const {
        return describe(*find(code), project, plan, {Unit::Inch, 16});
    }

    const std::vector<Finding> findings;
};

} // namespace frontwright::testing
