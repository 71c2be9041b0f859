#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

// What a maker reads, word for word, of every finding at its limit: the figures in the sentence and
// in the reason are those of the small case that stands in provoking.h, worked by hand there.
// Handles and their bolts, whose sizes are metric, are in wording_in_millimetres_test.cpp.
namespace frontwright {
namespace {

using testing::allProvocations;
using testing::Found;
using testing::Provocation;

struct Told {
    FindingCode code;
    const char* place;
    const char* sentence;
    const char* reason;
};

const std::vector<Told> toldAtTheLimit{
    {FindingCode::ScrewThroughShowFace, "Front A1, screw hole 1",
     "The screw's tip is level with the show face: 1 1/8 in screw, set 1/8 in deep, 1/2 in wall, "
     "3/4 in front behind the hole.",
     "tip cover = front behind the hole − (screw + recess − wall) = 3/4 in − (1 1/8 in + 1/8 in − "
     "1/2 in) = 0 in; it must be more than 0"},
    {FindingCode::TipCoverThin, "Front A1, screw hole 1",
     "Only 7/64 in of wood is left before the screw's tip, less than 1/8 in: 1 1/64 in screw, set "
     "1/8 in deep, 1/2 in wall, 3/4 in front behind the hole.",
     "tip cover = front behind the hole − (screw + recess − wall) = 3/4 in − (1 1/64 in + 1/8 in − "
     "1/2 in) = 7/64 in; at least 1/8 in"},
    {FindingCode::PenetrationShort, "Front A1",
     "The screw goes only 23/64 in into the front, less than 3/8 in: 47/64 in screw, set 1/8 in "
     "deep, 1/2 in wall.",
     "penetration = screw + recess − wall = 47/64 in + 1/8 in − 1/2 in = 23/64 in; at least 3/8 "
     "in"},
    {FindingCode::NoScrewFits, "Front A1",
     "No screw can fit: it has to be at least 3/4 in long to hold and at most 47/64 in not to come "
     "too near the show face.",
     "least = wall − recess + least penetration = 1/2 in − 1/8 in + 3/8 in = 3/4 in; greatest = "
     "wall − recess + front − least tip cover = 1/2 in − 1/8 in + 31/64 in − 1/8 in = 47/64 in"},
    {FindingCode::WallThinUnderHead, "Front A1",
     "Only 11/64 in of wall is left under the screw's head, less than 3/16 in: 1/2 in wall, 15/64 "
     "in recess, head 3/32 in high.",
     "wall under the head = wall − recess − head = 1/2 in − 15/64 in − 3/32 in = 11/64 in; at "
     "least 3/16 in"},
    {FindingCode::FrontMissesWall, "Front A1, bottom",
     "The screws miss the wall: it lies behind 11/16 in of the front's height, and they need more "
     "than 45/64 in.",
     "needed = what bottom, sides, top edge, tool and the front's own edges keep free = 45/64 in; "
     "there is 11/16 in"},
    {FindingCode::FillerNoThickness, "Fronts A1 and A2",
     "No filler strip fits in the gap: the edges beside it are 3/4 in thick, and it should lie 3/4 "
     "in back.",
     "thickness = thinner edge − shadow = 3/4 in − 3/4 in = 0 in; it must be more than 0"},
    {FindingCode::FillerBends, "Fronts A1 and A2",
     "The filler strip bends by about 1/64 in when a hand pushes on it, more than ≈ 1/64 in: it is "
     "5/8 in thick and should be at least ≈ 41/64 in.",
     "bend = F l³ / (4 E w t³) with F = 44.5 N, l = 11 1/8 in between the screws beside it, E = 10 "
     "000 N/mm², w = 3/4 in, t = 5/8 in; the wall behind it is not counted"},
    {FindingCode::FixedFrontNoRoom, "Front A1, bottom",
     "Nowhere does the fixed front overlap the frame enough for a screw: 11/16 in at the most, and "
     "45/64 in is needed.",
     "least overlay = what the tool and the head need of the member + least distance of a screw "
     "from the front's edge = 45/64 in"},
    {FindingCode::HoleOffMember, "Front A1, screw hole 1",
     "The screw hole at 1 13/64 in across and 4 in up the front misses the members behind it, or "
     "comes too near to an edge.",
     "a screw of a fixed front goes through a member, its head and tool away from the member's "
     "edges, into wood away from the front's edges"},
    {FindingCode::SlotForMovement, "Front A1",
     "A solid front moves: between screw rows 3 1/64 in apart by about 1/32 in from dry air to "
     "damp, and the clearance holes give only 1/32 in; drill one row ≈ 13/64 in or make its holes "
     "slots, up and down. It is the same with A2.",
     "movement ≈ rows apart / 96 = 3 1/64 in / 96 = 0.031 in ≈ 1/32 in (1/8 in for each foot "
     "across the grain, grain running from left to right); play = clearance hole − shank = 1/32 "
     "in"},
    {FindingCode::ScrewRowsNear, "Front A1",
     "The front is 9 1/2 in high, and its rows of screws stand only 2 23/64 in apart, less than 2 "
     "3/8 in: solid wood can cup and tilt on them.",
     "least distance of the rows = height / 4 = 2 3/8 in; told of solid fronts from 8 in high "
     "whose grain runs from left to right"},
    {FindingCode::HoleInBottom, "Front A1, screw hole 1",
     "The screw hole goes 1/64 in into the bottom: hole 41/64 in above the box's lower edge, "
     "bottom's top 1/2 in, radius of the head 5/32 in.",
     "least height = bottom's top + head's radius + margin = 1/2 in + 5/32 in + 1/8 in = 25/32 in; "
     "the hole is at 41/64 in"},
    {FindingCode::RecessToolBlocked, "Front A1, screw hole 1",
     "The hole clears the bottom, but the tool for its recess meets it by 1/64 in: hole 51/64 in "
     "above the box's lower edge, bottom's top 1/2 in, radius of the tool 5/16 in.",
     "least height = bottom's top + tool's radius = 1/2 in + 5/16 in = 13/16 in; the hole is at "
     "51/64 in"},
    {FindingCode::HoleAtBoxSide, "Front A1, screw hole 1",
     "The tool for the screw's recess meets the box's left side by 1/64 in: hole 51/64 in from it, "
     "side 1/2 in thick, radius of the tool 5/16 in.",
     "least distance = side + tool's radius = 1/2 in + 5/16 in = 13/16 in; the hole is at 51/64 "
     "in"},
    {FindingCode::HoleAtTopEdge, "Front A1, screw hole 3",
     "The screw hole is too near the wall's top edge: its centre is 19/64 in below it; 5/16 in is "
     "needed.",
     "least distance = the larger of tool's radius and head's radius + margin = 5/16 in; the hole "
     "is at 19/64 in"},
    {FindingCode::HoleAtHardware, "Front A1, screw hole 1",
     "Only 15/64 in of wood is left between the screw hole and what is drilled for handle hole 1, "
     "less than 1/4 in: 41/64 in from centre to centre.",
     "least distance = both radii + wood between = 13/32 in + 1/4 in = 21/32 in; the holes are "
     "41/64 in apart"},
    {FindingCode::HoleOffFront, "Front A1, screw hole 1",
     "There is no front behind the screw hole: the box wall reaches past it there.",
     "least thickness = least penetration + least tip cover = 3/8 in + 1/8 in = 1/2 in; behind the "
     "hole it is 0 in"},
    {FindingCode::CounterboreTooDeep, "Front A1",
     "The counterbore leaves only 15/64 in of wood under the bolt's head, less than 1/4 in: 33/64 "
     "in deep in 3/4 in of wood.",
     "wood under the head = wood − counterbore = 3/4 in − 33/64 in = 15/64 in; at least 1/4 in"},
    {FindingCode::AccessHoleOffWall, "Front A1, handle hole 1",
     "The 3/16 in hole through the box wall for the handle's bolt runs 1/64 in past the wall's top "
     "edge.",
     "past the free part of the wall = hole / 2 − centre to it = 3/16 in / 2 − 5/64 in = 1/64 in; "
     "it must be 0 or less"},
    {FindingCode::FrontsCollide, "Fronts A1 and A2",
     "The fronts overlap on a part 13 1/2 in wide and 1/64 in high: they cannot both close.",
     "common part of the two fronts = 13 1/2 in × 1/64 in; there must be none"},
    {FindingCode::GapTight, "Fronts A1 and A2",
     "The gap between the fronts is only 3/64 in, less than 1/16 in.",
     "gap = member − overlay − overlay = 1 1/4 in − 19/32 in − 39/64 in = 3/64 in; at least 1/16 "
     "in"},
    {FindingCode::GapsUneven, "Fronts A1 and A2",
     "The gaps down bank A differ by 1/64 in: 47/64 in here, 3/4 in at the widest; their rails are "
     "alike, so an overlay is not.",
     "difference = widest − narrowest gap = 3/4 in − 47/64 in = 1/64 in; here gap = member − "
     "overlay − overlay = 1 1/4 in − 17/64 in − 1/4 in = 47/64 in"},
    {FindingCode::FrontOffCase, "Front A1, left",
     "The front reaches 1/64 in past the case at the left.",
     "past the case = overlay − from the opening to the case's edge = 1 33/64 in − 1 1/2 in = 1/64 "
     "in; it should be 0 or less"},
    {FindingCode::OverlayMissing, "Front A1, left",
     "The front only just reaches its opening's left edge and does not cover it.",
     "overlay = 0 in; an overlay front needs more than 0"},
    {FindingCode::FieldEmpty, "Front A1",
     "The edge profiles meet: nothing flat is left of a front 13 1/2 in × 6 1/2 in with a profile "
     "3 1/4 in wide.",
     "field = front − profile at both sides: 13 1/2 in − 2 × 3 1/4 in = 7 in wide, 6 1/2 in − 2 × "
     "3 1/4 in = 0 in high, where all four carry it"},
    {FindingCode::ProfileTooDeep, "Front A1, left",
     "The edge profile leaves no edge: it is 3/4 in deep in a front 3/4 in thick.",
     "edge = thickness − profile's depth = 3/4 in − 3/4 in = 0 in; it must be more than 0"},
    {FindingCode::BoxNoRoom, "Front A1",
     "There is no room for a drawer box: it would be 1 in wide, 5 5/8 in high and 16 in deep, with "
     "sides 1/2 in thick.",
     "width = opening − 2 × side clearance = 1 in; between the sides 1 in − 2 × 1/2 in = 0 in; "
     "height = opening − clearances = 5 5/8 in; each must be more than 0"},
    {FindingCode::BoxTooTall, "Front A1",
     "The drawer box is 1/64 in too tall: 5 57/64 in, and the opening leaves 5 7/8 in.",
     "room = opening − clearance below − clearance above = 6 in − 1/8 in − 0 in = 5 7/8 in; the "
     "box is 5 57/64 in"},
    {FindingCode::BoxTooDeep, "Front A1",
     "The drawer box is 1/64 in too deep: 20 49/64 in, and the case leaves 20 3/4 in.",
     "room = frame + case inside − setback = 3/4 in + 20 in − 0 in = 20 3/4 in; the box is 20 "
     "49/64 in"},
    {FindingCode::BottomOutOfWall, "Front A1",
     "The bottom does not lie in the box wall: it reaches from 5 3/8 in to 5 5/8 in above the "
     "box's lower edge, and the wall is 5 5/8 in high.",
     "top of the bottom = groove height + its thickness = 5 3/8 in + 1/4 in = 5 5/8 in; it must be "
     "0 or more, and less than 5 5/8 in"},
    {FindingCode::AnchorCase, "The case",
     "The case is 27 in tall (weight not known, 2.4 ft³ of storage): anchor it to the wall, and "
     "follow the local codes.",
     "clothing storage is in the published scope from 27 in tall, 30.0 lb and 3.2 ft³ on, all "
     "three at once; here height 27 in, weight not known, storage 2.4 ft³; nothing has been tested "
     "here, and local codes decide"},
    {FindingCode::HoldingWeak, "Front A1, screw hole 1",
     "The mounting screws hold less than they should for a pull of 50 lbf at the handle: of that, "
     "50 lbf falls to this screw, which holds 239 lbf at the most and 50 lbf to design with.",
     "safety = withdrawal / share of the pull = 239 lbf / 50 lbf = 4.8 ultimate, 50 lbf / 50 lbf = "
     "1.0 by design value; at least 1"},
    {FindingCode::ScrewNearEdge, "Front A1, screw hole 1",
     "The screw is 49/64 in from the front's left end, less than 25/32 in: it may split the front.",
     "least distance to the end, along the grain = 5.0 × the shank of 5/32 in = 25/32 in"},
    {FindingCode::ScrewsCrowded, "Front A1, screw hole 1",
     "Two screws stand 1 35/64 in apart in one row along the grain, less than 1 9/16 in: they may "
     "split the front.",
     "least spacing along the grain = 10.0 × the shank of 5/32 in = 1 9/16 in"},
    // 70 % of a root of 0.1406 in less 1/128 in; 90 % of it and 1/128 in more.
    {FindingCode::PilotHoleMissing, "Front A1",
     "No pilot hole is drilled, and the wood (Oak) is dense enough to need one of 1/8 in.",
     "specific gravity, ovendry, 0.68 > 0.50; from 0.091 in to 0.134 in at a root of 0.141 in"},
    {FindingCode::PilotHoleWrong, "Front A1",
     "The pilot hole of 0.141 in leaves the screw's thread too little to hold in: at most 0.134 "
     "in.",
     "from 0.091 in to 0.134 in at a root of 0.141 in"},
    {FindingCode::ClearanceHoleTight, "Front A1",
     "The clearance hole of 9/64 in is smaller than the screw's shank of 5/32 in: the thread holds "
     "in the wall and does not draw the front up.",
     "clearance hole 9/64 in; at least 5/32 in"},
    {FindingCode::HeadBearsLittle, "Front A1",
     "The screws' heads of 5/16 in bear on only 1/64 in of wood round their clearance holes of "
     "9/32 in, less than 1/32 in: put a washer under each, or use screws with a washer head.",
     "bearing all round = (head − clearance hole) / 2 = (5/16 in − 9/32 in) / 2 = 1/64 in; at "
     "least "
     "1/32 in"},
    {FindingCode::RunnerOverloaded, "Front A1",
     "The drawer loads its runners with 81.6 lb, more than the 75.0 lb that they are rated for.",
     "load = front + box + contents = 1.7 lb + 4.9 lb + 75.0 lb = 81.6 lb; at most 75.0 lb"},
    {FindingCode::HoleAtRunner, "Front A1, screw hole 1",
     "The screw hole lies in the runner's clear zone in the wall's lower corner: 2 19/64 in from "
     "the box's side and 1 in up; the zone with the tool's radius reaches 2 5/16 in inwards and 1 "
     "5/16 in up.",
     "a hole must be 2 5/16 in or more away that way, or 1 5/16 in or more up; it is at 2 19/64 in "
     "and 1 in"},
    {FindingCode::RunnerTooLong, "Front A1",
     "The runner is 1/64 in too long for the case: 20 41/64 in, and 20 5/8 in is left behind its "
     "front end.",
     "room = frame + case inside − runner's setback = 20 5/8 in; the box is 20 5/8 in deep; the "
     "runner must be no longer than either"},
    {FindingCode::NoRunnerFits, "Front A1",
     "No stocked length of this runner fits (Hung runners): the shortest is 12 in, the case leaves "
     "20 5/8 in, and the box is 11 63/64 in deep.",
     "room = frame + case inside − runner's setback = 20 5/8 in; the box is 11 63/64 in deep; the "
     "runner must be no longer than either"},
    {FindingCode::BoxOffRunner, "Front A1",
     "The box is 1/64 in deeper than its runners are long: their hooks do not reach its back. The "
     "box is 15 1/64 in deep, the runners are 15 in long.",
     "box depth = runner length = 15 in; the box is 15 1/64 in"},
    {FindingCode::BoxLowForRunner, "Front A1",
     "The box is 1/64 in too low for the runner at its side: it is 1 63/64 in high, and the "
     "runner's top lies 2 in above its lower edge.",
     "runner's top = its lower edge + its height = 1/4 in + 1 3/4 in = 2 in; the box is 1 63/64 in "
     "high"},
    {FindingCode::BoxNarrowForRunner, "Front A1",
     "The box is 1/32 in too narrow for what runs under it: 1 7/32 in between its sides, and 1 1/4 "
     "in is needed.",
     "needed between the sides: what the runners take under the bottom = 1 1/4 in; the box has 1 "
     "7/32 in"},
    {FindingCode::BottomOnRunner, "Front A1",
     "The bottom lies 1/64 in too low for the runner under it: its underside is at 31/64 in, the "
     "runner's top at 1/2 in above the box's lower edge.",
     "least height of the groove = the higher of runner's top and notch = 1/2 in; the groove is at "
     "31/64 in"},
    {FindingCode::RunnerOutOfOpening, "Front A1",
     "The runner reaches 1/64 in below the opening: it takes 1/2 in below the box, and the "
     "clearance there is 31/64 in.",
     "least clearance below = what the runner takes below the box = 1/2 in; there is 31/64 in"},
    {FindingCode::SideClearanceOff, "Front A1",
     "The box has 1/64 in too little clearance at each side for its runners: 19/64 in, and 5/16 in "
     "is needed.",
     "needed = the runner's side clearance + sides that it is for − sides = 3/16 in + 5/8 in − 1/2 "
     "in = 5/16 in, up to 1/32 in more; there is 19/64 in"},
    {FindingCode::BoxSticks, "Front A1",
     "The box sticks in damp air: it grows ≈ 7/64 in higher, and the play above it is 7/64 in.",
     "growth = box height × the sides' change from when they are cut to the wettest air, "
     "flat-sawn; of 5 49/64 in that is 0.1153 in; the play above is 7/64 in"},
    {FindingCode::FittingOffField, "Front A1, fitting 1",
     "The plate (Label holder, 3 × 1 in) reaches 1/64 in past the field onto the top edge profile "
     "and would rock: plate 1 in, field 5 1/2 in that way.",
     "past the field = plate / 2 − centre to its edge = 1 in / 2 − 31/64 in = 1/64 in; it must be "
     "0 or less"},
    {FindingCode::FittingOffFront, "Front A1, fitting 1",
     "The fitting (Label holder, 3 × 1 in) reaches 1/64 in past the front's top edge: 1 in high in "
     "a front of 6 1/2 in.",
     "plate, holes and mortises must lie on the front; they reach 1/64 in past it"},
    {FindingCode::FittingScrewThrough, "Front A1, fitting 1",
     "The fitting's screw (Label holder, 3 × 1 in) ends level with the face beyond: 13/16 in "
     "screw, "
     "1/16 in plate, 3/4 in of wood before it.",
     "wood left = wood before the screw − (screw − plate) = 3/4 in − (13/16 in − 1/16 in) = 0 in; "
     "it must be more than 0"},
    {FindingCode::FittingScrewThin, "Front A1, fitting 1",
     "Only 7/64 in of wood is left before the fitting's screw (Label holder, 3 × 1 in), less than "
     "1/8 in: 45/64 in screw, 3/4 in of wood.",
     "wood left = wood before the screw − (screw − plate) = 3/4 in − (45/64 in − 1/16 in) = 7/64 "
     "in; at least 1/8 in"},
    {FindingCode::FittingScrewShort, "Front A1, fitting 1",
     "The fitting's screw (Label holder, 3 × 1 in) goes only 23/64 in into the front, less than "
     "3/8 "
     "in: 27/64 in screw.",
     "penetration = screw − plate = 27/64 in − 1/16 in = 23/64 in; at least 3/8 in"},
    {FindingCode::NoFittingScrewFits, "Front A1, fitting 1",
     "No stocked screw fits the fitting (Label holder, 3 × 1 in): it has to be from 7/16 in to "
     "39/64 in long.",
     "least = plate + least penetration = 1/16 in + 3/8 in = 7/16 in; greatest = plate + wood − "
     "least tip cover = 1/16 in + 43/64 in − 1/8 in = 39/64 in"},
    {FindingCode::MortiseTooDeep, "Front A1, fitting 1",
     "The mortise (Half-mortise lock, 2 in) leaves only 7/64 in of wood behind it, less than 1/8 "
     "in: 7/16 in deep in 35/64 in of wood.",
     "wood left = front there − depth of the mortise = 35/64 in − 7/16 in = 7/64 in; at least 1/8 "
     "in"},
    {FindingCode::HoleAtFitting, "Front A1, screw hole 1",
     "Only 15/64 in of wood is left between the mounting screw and what is cut for the fitting "
     "(Label holder, 3 × 1 in), less than 1/4 in.",
     "wood between = centre to the cut − screw's radius = 5/16 in − 5/64 in = 15/64 in; at least "
     "1/4 in"},
    {FindingCode::FrontAtWall, "Front A1, left",
     "The front stays only 1 1/4 in from the wall; 1 5/16 in are wanted, for no wall is straight.",
     "distance = to the case's edge + beyond it = 1 1/4 in + 0 in = 1 1/4 in; at least 1 5/16 in"},
    {FindingCode::FrontAtNeighbour, "Front A1, right",
     "The gap to the neighbouring case's front is 1 5/16 in; 1 3/8 in are chosen.",
     "distance = to the case's edge + beyond it = 1 1/4 in + 1/16 in = 1 5/16 in; at least 1 3/8 "
     "in"},
    {FindingCode::FrontAtTrim, "Front A1, top",
     "The front stays only 1/16 in from the moulding; 1/8 in are wanted.",
     "distance = to the case's edge − what covers it = 1 1/4 in − 1 3/16 in = 1/16 in; at least "
     "1/8 in"},
    {FindingCode::StepOffPitch, "Front A2",
     "The fronts of bank A do not step by the system holes' pitch: 7 1/4 in to the next, 1/4 in "
     "off.",
     "step = front + gap above it = 7 1/4 in; nearest is 7 in, a whole number of 1 3/4 in: then "
     "the runners behind all fronts take the same holes"},
    {FindingCode::FitsMixed, "Front A1",
     "The front lies in the opening (left) and on the frame (right, bottom, top) at once: with a "
     "flat back it can do only one of them, unless it is rabbeted.",
     "an inset side lies 3/4 in, the front's thickness, behind the frame's face; an overlay side "
     "lies on it"},
    {FindingCode::OfBoard, "Pull-out board A2", "The board is deeper than its case by 1/64 in.",
     "frame and depth inside are 20 3/4 in, the board's depth is 20 49/64 in. What helps: Make the "
     "board at most 20 3/4 in deep"},
};

const Provocation& provocationOf(const std::vector<Provocation>& all, FindingCode code) {
    return *std::find_if(all.begin(), all.end(),
                         [code](const Provocation& p) { return p.code == code; });
}

TEST(WordingByCode, IsWordForWord) {
    const auto provocations = allProvocations();
    for (const Told& expected : toldAtTheLimit) {
        const Found found(provocationOf(provocations, expected.code).beyond);
        const FindingText text = found.told(expected.code);
        EXPECT_EQ(text.place, expected.place);
        EXPECT_EQ(text.sentence, expected.sentence);
        EXPECT_EQ(text.reason, expected.reason);
    }
}

} // namespace
} // namespace frontwright
