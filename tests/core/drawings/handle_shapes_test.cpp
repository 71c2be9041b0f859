#include "core/drawings/handle_shapes.h"

#include "tests/core/drawings/drawn.h"
#include "tests/core/plan/small_catalogue.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

HardwareForm formOf(HardwareKind kind, FootprintShape shape, std::int64_t width,
                    std::int64_t height) {
    HardwareForm form = *testing::smallCatalogue().hardwareForm("knob-32");
    form.kind = kind;
    form.footprint = {shape, Length::millimetres(width), Length::millimetres(height)};
    return form;
}

constexpr std::array allKinds{HardwareKind::Knob, HardwareKind::Pull, HardwareKind::CupPull,
                              HardwareKind::RingPull};

BoxMm drawnBox(const HardwareForm& form, const PointMm& centre) {
    Sketch sketch(1);
    drawHandle(sketch, form, centre, {});
    return sketch.finished(0).extent;
}

TEST(Handle, FillsItsFootprintAndNoMore) {
    for (const HardwareKind kind : allKinds)
        for (const auto& [width, height] : {std::pair{96, 20}, std::pair{30, 90}}) {
            const BoxMm box =
                drawnBox(formOf(kind, FootprintShape::Rectangle, width, height), {100, 50});
            EXPECT_NEAR(box.sizes().x(), width, 0.5) << static_cast<int>(kind);
            EXPECT_NEAR(box.sizes().y(), height, 0.5) << static_cast<int>(kind);
            EXPECT_LE(box.sizes().x(), width + 1e-9);
            EXPECT_LE(box.sizes().y(), height + 1e-9);
            EXPECT_NEAR(box.center().x(), 100, 1e-9);
        }
}

TEST(Handle, OnARoundRoseIsItsCircle) {
    for (const HardwareKind kind :
         {HardwareKind::Knob, HardwareKind::Pull, HardwareKind::RingPull}) {
        Sketch sketch(1);
        drawHandle(sketch, formOf(kind, FootprintShape::Round, 32, 0), {0, 0}, {});
        const auto circles = testing::shapesOn<CircleMark>(sketch.finished(0), Layer::Handle);
        ASSERT_FALSE(circles.empty());
        EXPECT_DOUBLE_EQ(circles[0].second.radius, 16);
    }
}

TEST(Handle, IsTheSameOnBothSidesOfItsMiddle) {
    for (const HardwareKind kind : allKinds) {
        Sketch sketch(1);
        drawHandle(sketch, formOf(kind, FootprintShape::Rectangle, 96, 30), {0, 0}, {});
        BoxMm box;
        for (const auto& [mark, path] :
             testing::shapesOn<PathMark>(sketch.finished(0), Layer::Handle))
            for (const PointMm& p : path.points)
                box.extend(p);
        if (!box.isEmpty()) {
            EXPECT_NEAR(box.min().x(), -box.max().x(), 1e-9);
        }
    }
}

TEST(Handle, OfAPullStandsOnAFootAtEachHole) {
    const HardwareForm pull = *testing::smallCatalogue().hardwareForm("pull-96");
    Sketch sketch(1);
    drawHandle(sketch, pull, {200, 80}, {});
    const auto feet = testing::shapesOn<CircleMark>(sketch.finished(0), Layer::Handle);
    ASSERT_EQ(feet.size(), 2U);
    EXPECT_TRUE(feet[0].second.centre.isApprox(PointMm(152, 80)));
    EXPECT_TRUE(feet[1].second.centre.isApprox(PointMm(248, 80)));
}

TEST(Handle, FromTheSideStandsOutFromTheShowFace) {
    for (const HardwareKind kind : allKinds) {
        HardwareForm form = formOf(kind, FootprintShape::Rectangle, 96, 30);
        Sketch sketch(1);
        drawHandleFromSide(sketch, form, -19, 60, {});
        const BoxMm box = sketch.finished(0).extent;
        EXPECT_NEAR(box.max().x(), -19, 1e-9) << static_cast<int>(kind);
        EXPECT_GE(box.min().x(), -19 - 28 - 1e-9);
        EXPECT_LE(box.min().x(), -19 - 0.8 * 28);
        EXPECT_LE(box.sizes().y(), 30 + 1e-9);
    }
}

TEST(Handle, ThatDoesNotStandOutHasNoSideView) {
    HardwareForm form = formOf(HardwareKind::Knob, FootprintShape::Round, 32, 0);
    form.projection = Length{};
    Sketch sketch(1);
    drawHandleFromSide(sketch, form, -19, 60, {});
    EXPECT_TRUE(sketch.marks().empty());
}

} // namespace
} // namespace frontwright
