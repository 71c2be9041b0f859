#pragma once

#include "core/hardware/bolts.h"

// Handles, bolts and fronts for tests, with sizes of the shop.
namespace frontwright::testing {

/// 8-32 with a recessed pan head (ASME B18.6.3: 0.322 in by 0.120 in), normal hole (ASME B18.2.8:
/// 0.196 in), in steps of 1/8 in to 1 in and 1/4 in to 2 in.
inline Bolt inchBolt() {
    Bolt bolt;
    bolt.id = "bolt-8-32";
    bolt.majorDiameter = Length::fromNanometres(164 * 25'400);
    bolt.headDiameter = Length::fromNanometres(322 * 25'400);
    bolt.headHeight = Length::fromNanometres(120 * 25'400);
    bolt.clearanceHole = Length::fromNanometres(196 * 25'400);
    for (std::int64_t n : {24, 32, 40, 48, 56, 64, 80, 96, 112, 128})
        bolt.lengths.push_back(Length::fromSixtyFourths(n));
    return bolt;
}

/// M4 with a pan head (ISO 7045: 8 mm by 3.1 mm), medium hole (ISO 273: 4.5 mm).
inline Bolt metricBolt() {
    Bolt bolt;
    bolt.id = "bolt-m4";
    bolt.majorDiameter = Length::millimetres(4);
    bolt.headDiameter = Length::millimetres(8);
    bolt.headHeight = Length::fromMicrometres(3'100);
    bolt.clearanceHole = Length::fromMicrometres(4'500);
    for (std::int64_t mm : {10, 12, 16, 20, 25, 30, 35, 40})
        bolt.lengths.push_back(Length::millimetres(mm));
    return bolt;
}

/// Thread 1/2 in deep, 1/4 in of it must hold; base 3/4 in.
inline HardwareForm knob() {
    HardwareForm form;
    form.id = "knob";
    form.kind = HardwareKind::Knob;
    form.holes = {FrontPoint{}};
    form.footprint = {FootprintShape::Round, Length::inches(0, 48), Length::inches(0, 48)};
    form.bolt = "bolt-8-32";
    form.threadDepth = Length::inches(0, 32);
    form.leastEngagement = Length::inches(0, 16);
    return form;
}

/// Thread 10 mm deep, 5 mm of it must hold; holes 96 mm apart, 106 mm by 10 mm on the front.
inline HardwareForm pull() {
    HardwareForm form;
    form.id = "pull";
    form.kind = HardwareKind::Pull;
    form.holes = {{Length::millimetres(-48), {}}, {Length::millimetres(48), {}}};
    form.footprint = {FootprintShape::Rectangle, Length::millimetres(106), Length::millimetres(10)};
    form.bolt = "bolt-m4";
    form.threadDepth = Length::millimetres(10);
    form.leastEngagement = Length::millimetres(5);
    return form;
}

/// A front with square edges, 3/4 in thick, on a wall of 1/2 in.
inline FrontStock squareFront(Length width, Length height) {
    static const Profile square;
    const FrontRect front = FrontRect::atOrigin(width, height);
    return {front, front, Length::inches(0, 48), &square, Length::inches(0, 32)};
}

inline FrontStock profiledFront(Length width, Length height, const Profile& profile) {
    FrontStock stock = squareFront(width, height);
    stock.profile = &profile;
    stock.field = field(profile, stock.front);
    return stock;
}

} // namespace frontwright::testing
