#pragma once

#include "core/catalogue/catalogue.h"

namespace frontwright::testing {

/// One of each kind with round numbers: made for tests, not for the shop.
inline Catalogue smallCatalogue() {
    const Source source{SourceKind::CommonPractice, "common practice, no source"};
    const auto sixtyFourths = [](std::int64_t n) { return Length::fromSixtyFourths(n); };
    Catalogue catalogue;

    WoodScrew screw;
    screw.id = "wood-screw-8";
    screw.name = "No. 8 flat-head wood screw";
    screw.shankDiameter = sixtyFourths(10);
    screw.headDiameter = sixtyFourths(20);
    screw.headHeight = sixtyFourths(6);
    screw.clearanceHole = sixtyFourths(12);
    screw.pilotHole = sixtyFourths(8);
    for (std::int64_t length : {40, 48, 56, 64, 72, 80, 96})
        screw.lengths.push_back(sixtyFourths(length));
    screw.source = source;
    screw.rootDiameter = sixtyFourths(9);
    catalogue.woodScrews.push_back(screw);

    Bolt bolt;
    bolt.id = "bolt-8-32";
    bolt.name = "8-32 pan head";
    bolt.thread = "8-32 UNC";
    bolt.majorDiameter = sixtyFourths(10);
    bolt.headDiameter = sixtyFourths(20);
    bolt.headHeight = sixtyFourths(6);
    bolt.clearanceHole = sixtyFourths(12);
    for (std::int64_t length : {48, 64, 80, 96, 112, 128})
        bolt.lengths.push_back(sixtyFourths(length));
    bolt.source = source;
    catalogue.bolts.push_back(bolt);

    HardwareForm knob;
    knob.id = "knob-32";
    knob.name = "Round knob, 32 mm";
    knob.kind = HardwareKind::Knob;
    knob.holes = {{}};
    knob.footprint = {FootprintShape::Round, Length::millimetres(20), Length::millimetres(20)};
    knob.projection = Length::millimetres(28);
    knob.bolt = bolt.id;
    knob.threadDepth = Length::millimetres(16);
    knob.leastEngagement = Length::millimetres(6);
    knob.source = source;
    catalogue.hardware.push_back(knob);

    HardwareForm pull = knob;
    pull.id = "pull-96";
    pull.name = "Pull, 96 mm centre to centre";
    pull.kind = HardwareKind::Pull;
    pull.holes = {{Length::millimetres(-48), {}}, {Length::millimetres(48), {}}};
    pull.footprint = {FootprintShape::Rectangle, Length::millimetres(110), Length::millimetres(14)};
    catalogue.hardware.push_back(pull);

    FittingForm label;
    label.id = "label-holder";
    label.name = "Label holder, 3 × 1 in";
    label.footprint = {FootprintShape::Rectangle, sixtyFourths(192), sixtyFourths(64)};
    label.projection = sixtyFourths(8);
    label.plate = sixtyFourths(4);
    label.screw = screw.id;
    label.screws = {{sixtyFourths(-80), {}}, {sixtyFourths(80), {}}};
    label.source = source;
    catalogue.fittings.push_back(label);

    // The key 3/4 in below the selvedge; body 7/16 in deep, 1/16 in plates.
    FittingForm lock = label;
    lock.id = "lock";
    lock.name = "Half-mortise lock, 2 in";
    lock.kind = FittingKind::Lock;
    lock.bearsOn = FrontFace::Back;
    lock.footprint = {FootprintShape::Rectangle, sixtyFourths(128), sixtyFourths(96)};
    lock.projection = {};
    lock.screws = {{sixtyFourths(-56), sixtyFourths(-20)}, {sixtyFourths(56), sixtyFourths(-20)}};
    lock.bores = {{{}, sixtyFourths(20), std::nullopt, FrontFace::Show}};
    const auto plate = [&](std::int64_t x, std::int64_t low, std::int64_t high) {
        return FrontRect{sixtyFourths(-x), sixtyFourths(low), sixtyFourths(x), sixtyFourths(high)};
    };
    lock.mortises = {{FrontFace::Back, plate(64, -48, 48), sixtyFourths(4)},
                     {FrontFace::Back, plate(48, -40, 48), sixtyFourths(28)},
                     {FrontFace::TopEdge, plate(64, 0, 20), sixtyFourths(4)}};
    lock.belowTop = sixtyFourths(48);
    catalogue.fittings.push_back(lock);

    RunnerKind wooden;
    wooden.id = "wooden";
    wooden.name = "Wooden runners";
    wooden.sideClearance = sixtyFourths(4);
    wooden.clearanceBelow = sixtyFourths(8);
    wooden.clearanceAbove = sixtyFourths(16);
    wooden.source = source;
    catalogue.runners.push_back(wooden);

    RunnerKind sideMounted = wooden;
    sideMounted.id = "side-mounted";
    sideMounted.name = "Side-mounted metal runners";
    sideMounted.sideClearance = sixtyFourths(32);
    sideMounted.rating = Mass::pounds(75);
    catalogue.runners.push_back(sideMounted);

    catalogue.species.push_back({"cherry", "Black cherry"});
    catalogue.species.push_back({"oak",
                                 "Oak",
                                 WoodKind::Hardwood,
                                 SpecificGravity{630, GravityBasis::At12Percent},
                                 {},
                                 {},
                                 {MovementCoefficients{1250, 2500, source}, std::nullopt}});
    catalogue.species.push_back(
        {"pine", "Pine", WoodKind::Softwood, SpecificGravity{350, GravityBasis::At12Percent}});
    return catalogue;
}

} // namespace frontwright::testing
