#pragma once

#include "core/catalogue/catalogue.h"
#include "tests/core/shorthand.h"

namespace frontwright::testing {

/// Runners of which more is known than clearances; sizes in round numbers.
inline std::vector<RunnerKind> knownRunners(const Source& source) {
    const auto n64 = [](std::int64_t n) { return Length::fromSixtyFourths(n); };
    const auto inches = [](std::initializer_list<std::int64_t> lengths) {
        std::vector<Length> all;
        for (const std::int64_t length : lengths)
            all.push_back(Length::inches(length));
        return all;
    };
    RunnerKind rails{"rails", "Rails", n64(4), n64(8), n64(16), source};
    rails.form = RunnerForm::Wooden;
    rails.section = {n64(96), n64(48)};
    rails.kicker = UprightSize{n64(64), n64(48)};
    rails.guideHeight = n64(48);

    RunnerKind hung{"hung", "Hung runners", n64(32), n64(16), n64(32), source};
    hung.form = RunnerForm::SideMounted;
    hung.lengths = inches({12, 14, 16, 18});
    hung.setback = n64(8);
    hung.section = {n64(32), n64(112)};
    hung.top = n64(128);
    hung.tolerance = n64(2);

    RunnerKind hidden{"hidden", "Hidden runners", n64(12), n64(36), n64(16), source};
    hidden.form = RunnerForm::UnderMounted;
    hidden.lengths = inches({12, 15, 18});
    hidden.setback = n64(8);
    hidden.section = {n64(112), n64(64)};
    hidden.top = n64(32);
    hidden.forSides = n64(40);
    hidden.tolerance = n64(2);
    hidden.backNotch = UprightSize{n64(88), n64(32)};
    hidden.clearZone = UprightSize{n64(128), n64(64)};

    RunnerKind middle{"middle", "Middle runner", n64(8), n64(16), n64(16), source};
    middle.form = RunnerForm::Centre;
    middle.lengths = inches({12, 14, 16, 18});
    middle.setback = n64(8);
    middle.section = {n64(80), n64(28)};
    middle.top = n64(12);
    middle.backNotch = UprightSize{n64(96), n64(16)};
    middle.wallNotch = UprightSize{n64(96), n64(16)};
    middle.clearZone = UprightSize{n64(128), n64(64)};
    return {rails, hung, hidden, middle};
}

/// One of each kind with round numbers: made for tests, not for the shop.
inline Catalogue smallCatalogue() {
    const Source source{SourceKind::CommonPractice, "common practice, no source"};
    Catalogue catalogue;

    WoodScrew screw;
    screw.id = "wood-screw-8";
    screw.name = "No. 8 flat-head wood screw";
    screw.shankDiameter = n64(10);
    screw.headDiameter = n64(20);
    screw.headHeight = n64(6);
    screw.clearanceHole = n64(12);
    screw.pilotHole = n64(8);
    for (std::int64_t length : {40, 48, 56, 64, 72, 80, 96})
        screw.lengths.push_back(n64(length));
    screw.source = source;
    screw.rootDiameter = n64(9);
    catalogue.woodScrews.push_back(screw);

    Bolt bolt;
    bolt.id = "bolt-8-32";
    bolt.name = "8-32 pan head";
    bolt.thread = "8-32 UNC";
    bolt.majorDiameter = n64(10);
    bolt.headDiameter = n64(20);
    bolt.headHeight = n64(6);
    bolt.clearanceHole = n64(12);
    for (std::int64_t length : {48, 64, 80, 96, 112, 128})
        bolt.lengths.push_back(n64(length));
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
    label.footprint = {FootprintShape::Rectangle, n64(192), n64(64)};
    label.projection = n64(8);
    label.plate = n64(4);
    label.screw = screw.id;
    label.screws = {{n64(-80), {}}, {n64(80), {}}};
    label.source = source;
    catalogue.fittings.push_back(label);

    // The key 3/4 in below the selvedge; body 7/16 in deep, 1/16 in plates.
    FittingForm lock = label;
    lock.id = "lock";
    lock.name = "Half-mortise lock, 2 in";
    lock.kind = FittingKind::Lock;
    lock.bearsOn = FrontFace::Back;
    lock.footprint = {FootprintShape::Rectangle, n64(128), n64(96)};
    lock.projection = {};
    lock.screws = {{n64(-56), n64(-20)}, {n64(56), n64(-20)}};
    lock.bores = {{{}, n64(20), std::nullopt, FrontFace::Show}};
    const auto plate = [&](std::int64_t x, std::int64_t low, std::int64_t high) {
        return FrontRect{n64(-x), n64(low), n64(x), n64(high)};
    };
    lock.mortises = {{FrontFace::Back, plate(64, -48, 48), n64(4)},
                     {FrontFace::Back, plate(48, -40, 48), n64(28)},
                     {FrontFace::TopEdge, plate(64, 0, 20), n64(4)}};
    lock.belowTop = n64(48);
    catalogue.fittings.push_back(lock);

    RunnerKind wooden;
    wooden.id = "wooden";
    wooden.name = "Wooden runners";
    wooden.sideClearance = n64(4);
    wooden.clearanceBelow = n64(8);
    wooden.clearanceAbove = n64(16);
    wooden.source = source;
    catalogue.runners.push_back(wooden);

    RunnerKind sideMounted = wooden;
    sideMounted.id = "side-mounted";
    sideMounted.name = "Side-mounted metal runners";
    sideMounted.sideClearance = n64(32);
    sideMounted.rating = Mass::pounds(75);
    catalogue.runners.push_back(sideMounted);

    for (const RunnerKind& known : knownRunners(source))
        catalogue.runners.push_back(known);

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
