#include "core/drawings/rendering.h"

#include "core/drawings/rendering_parts.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/plan/board_case.h"
#include "tests/core/plan/faced.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

struct RenderedCase : DrawnCase {
    explicit RenderedCase(Project made, double reveals = 1)
        : DrawnCase(std::move(made)),
          places(reveals == 1 ? placesAsPlanned(plan) : placesExaggerated(project, plan, reveals)) {
    }
    [[nodiscard]] Drawing drawn(double paperScale = 0.2) const {
        return rendering({project, catalogue, plan, places, paperScale});
    }
    FrontPlaces places;
};

std::vector<std::pair<Mark, ToneMark>> washes(const Drawing& drawing, const std::string& name) {
    return shapesOn<ToneMark>(drawing, Layer::Wash, name);
}

BoxMm boxOf(const std::vector<PointMm>& points) {
    BoxMm box;
    for (const PointMm& p : points)
        box.extend(p);
    return box;
}

Project profiled(ProfileFamily family) {
    Project project = bank(2);
    project.fronts.profile = {family, Length::inches(0, 48), Length::inches(0, 16),
                              Length::inches(0, 4), PerSide<bool>::all(true)};
    return project;
}

TEST(Rendering, ShowsEveryFrontWhereThePlanHasIt) {
    const RenderedCase rendered(bank(3));
    const auto faces = washes(rendered.drawn(), "front");
    ASSERT_EQ(faces.size(), 3U);
    for (const auto& [mark, wash] : faces) {
        const FrontPlan* front = rendered.plan.frontOf(*mark.part.opening);
        ASSERT_NE(front, nullptr);
        EXPECT_TRUE(boxOf(wash.points).isApprox(toMm(front->rect)));
    }
}

// Closed, it fills its opening but for its plays, and lies flush with the frame.
TEST(Rendering, ShowsTheEdgeOfAClosedBoardBeforeTheDarkInside) {
    const RenderedCase desk(boardOverDrawer());
    const auto edges = washes(desk.drawn(), "board edge");
    ASSERT_FALSE(edges.empty());
    const BoxMm edge = boxOf(edges.front().second.points);
    EXPECT_NEAR(edge.sizes().x(), 17.875 * inch, 1e-6);
    EXPECT_NEAR(edge.sizes().y(), 0.75 * inch, 1e-6);
    EXPECT_EQ(edges.front().second.tone.opacity, 255);
    const RenderedCase wide(boardOverDrawer(), 10);
    const BoxMm opening = wide.places.spaces.at(0);
    EXPECT_TRUE(opening.contains(boxOf(washes(wide.drawn(), "board edge").front().second.points)));
}

// The gap between two fronts on one box is closed by a strip that stands back: darker than they
// are.
TEST(Rendering, ClosesTheGapBetweenFrontsOnOneBoxWithTheirFillerStrip) {
    for (const double reveals : {1.0, 10.0}) {
        const RenderedCase rendered(faced(bank(2)), reveals);
        const Drawing drawing = rendered.drawn();
        const auto strips = washes(drawing, "filler strip");
        ASSERT_FALSE(strips.empty());
        const BoxMm strip = boxOf(strips.front().second.points);
        const Filler& filler = rendered.plan.fillers.at(0);
        const BoxMm &lower = rendered.places.fronts[filler.lower],
                    &upper = rendered.places.fronts[filler.upper];
        EXPECT_NEAR(strip.min().y(), lower.max().y(), 1e-6);
        EXPECT_NEAR(strip.max().y(), upper.min().y(), 1e-6);
        EXPECT_NEAR(strip.min().x(), lower.min().x(), 1e-6);
        const Tone &back = strips.front().second.tone,
                   &face = washes(drawing, "front").front().second.tone;
        EXPECT_LT(back.red + back.green + back.blue, face.red + face.green + face.blue);
    }
}

TEST(Rendering, LooksIntoTheDarkCaseWhereNothingStands) {
    const RenderedCase rendered(bank(2));
    const auto inside = washes(rendered.drawn(), "case inside");
    ASSERT_EQ(inside.size(), 1U);
    EXPECT_TRUE(boxOf(inside.front().second.points).isApprox(toMm(rendered.plan.outline)));
    EXPECT_EQ(inside.front().second.tone.opacity, 255);
    EXPECT_LT(inside.front().second.tone.red,
              washes(rendered.drawn(), "member").front().second.tone.red);
}

TEST(Rendering, OfTheSameCaseIsTheSameToTheByte) {
    const RenderedCase first(profiled(ProfileFamily::Cove)), second(profiled(ProfileFamily::Cove));
    EXPECT_EQ(svg(first.drawn(), "x"), svg(second.drawn(), "x"));
}

TEST(Rendering, IsTheCaseAndThenEveryFront) {
    const RenderedCase rendered(bank(2));
    const RenderingSubject subject{rendered.project, rendered.catalogue, rendered.plan,
                                   rendered.places, 0.2};
    const std::size_t parts = caseRendering(subject).marks.size() +
                              frontRendering(subject, 0).marks.size() +
                              frontRendering(subject, 1).marks.size();
    EXPECT_EQ(rendered.drawn().marks.size(), parts);
}

TEST(Rendering, HasTheToneOfItsSpeciesAndAMiddlingBrownWhereThereIsNone) {
    DrawnCase bare(bank(1));
    bare.catalogue.species = {{"cherry", "Black cherry"}};
    bare.catalogue.species[0].tone = WoodTone{181, 118, 74, 22};
    const FrontPlaces places = placesAsPlanned(bare.plan);
    const auto face = [&] {
        return washes(rendering({bare.project, bare.catalogue, bare.plan, places, 0.2}), "front")
            .at(0)
            .second.tone;
    };
    EXPECT_NEAR(face().red, 181, 8);
    EXPECT_NEAR(face().blue, 74, 8);
    bare.catalogue.species.clear();
    EXPECT_NEAR(face().red, middlingBrown.red, 8);
    EXPECT_NEAR(face().blue, middlingBrown.blue, 8);
}

TEST(Rendering, HasTheFigureOfEachFrontsOwnStock) {
    const auto figure = [](Grain grain) {
        Project project = withChoices(bank(2), 0, [grain](FrontChoices& choices) {
            choices.stock.emplace() = {"cherry", Cut::QuarterSawn, grain, Build::Solid};
        });
        const RenderedCase rendered(project);
        return washes(
            frontRendering(
                {rendered.project, rendered.catalogue, rendered.plan, rendered.places, 0.2}, 0),
            "figure");
    };
    for (const auto& [mark, line] : figure(Grain::AlongLength)) {
        const PointMm size = boxOf(line.points).sizes();
        EXPECT_GT(size.x(), size.y());
    }
    const auto upright = figure(Grain::AlongHeight);
    ASSERT_FALSE(upright.empty());
    for (const auto& [mark, line] : upright) {
        const PointMm size = boxOf(line.points).sizes();
        EXPECT_GT(size.y(), 5 * size.x());
    }
}

TEST(Rendering, OfOverlayFrontsThrowsTheirShadowToTheLowerRight) {
    const RenderedCase rendered(bank(1));
    const BoxMm front = toMm(rendered.plan.fronts[0].rect);
    const auto shadows = washes(rendered.drawn(), "front shadow");
    ASSERT_FALSE(shadows.empty());
    for (const auto& [mark, wash] : shadows) {
        EXPECT_GT(boxOf(wash.points).max().x(), front.max().x());
        EXPECT_LT(boxOf(wash.points).min().y(), front.min().y());
    }
    EXPECT_TRUE(washes(rendered.drawn(), "reveal").empty());
}

TEST(Rendering, OfInsetFrontsShowsADarkGapAsWideAsPlanned) {
    Project project = bank(1);
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::fromSixtyFourths(6)});
    const RenderedCase rendered(project);
    const auto gaps = washes(rendered.drawn(), "reveal");
    ASSERT_FALSE(gaps.empty());
    EXPECT_TRUE(boxOf(gaps[0].second.points).isApprox(toMm(rendered.plan.fronts[0].openingRect)));
    EXPECT_LT(gaps[0].second.tone.red, 60);
    EXPECT_TRUE(washes(rendered.drawn(), "front shadow").empty());
}

TEST(Rendering, WithExaggeratedRevealsSaysSo) {
    const RenderedCase rendered(bank(2), exaggeratedReveals);
    const std::vector<std::string> expected{"Reveals ×10, not to scale"};
    EXPECT_EQ(textsOn(rendered.drawn(), Layer::Note), expected);
    EXPECT_TRUE(textsOn(RenderedCase(bank(2)).drawn(), Layer::Note).empty());
}

TEST(Rendering, OfTooLittlePaperLeavesDetailOut) {
    const RenderedCase rendered(profiled(ProfileFamily::Round));
    EXPECT_LT(3 * rendered.drawn(0.02).marks.size(), rendered.drawn(0.5).marks.size());
}

// By hand: light from (−0.45, 0.62, 0.643). A slope of 45° towards the top gets (0.62 + 0.643) /
// √2 / 0.643 = 1.389 of the flat field's light, one towards the bottom (0.643 − 0.62) / √2 / 0.643
// = 0.0253. Half the contrast: 1 + 0.5 · 0.389 = 1.194; 1 − 0.5 · 0.975 = 0.513.
TEST(LightOnASlope, ComesFromTheUpperLeft) {
    EXPECT_NEAR(lightOnSlope(Side::Top, 1), 1.194, 0.001);
    EXPECT_NEAR(lightOnSlope(Side::Bottom, 1), 0.513, 0.001);
    EXPECT_NEAR(lightOnSlope(Side::Left, 1), 1 + 0.5 * (1.093 / 1.41421 / 0.643 - 1), 0.001);
    EXPECT_LT(lightOnSlope(Side::Right, 1), 1);
    for (const Side side : allSides)
        EXPECT_DOUBLE_EQ(lightOnSlope(side, 0), 1);
}

TEST(ProfileBands, OfAChamferAreOnePerEdgeAndLighterTowardsTheLight) {
    const RenderedCase rendered(profiled(ProfileFamily::Chamfer));
    const auto bands =
        washes(frontRendering(
                   {rendered.project, rendered.catalogue, rendered.plan, rendered.places, 0.2}, 0),
               "profile");
    ASSERT_EQ(bands.size(), 4U); // bottom, right, top, left
    const auto lightness = [&](std::size_t i) { return bands[i].second.tone.green; };
    EXPECT_LT(lightness(0), lightness(1));
    EXPECT_LT(lightness(1), lightness(3));
    EXPECT_LT(lightness(3), lightness(2));
}

TEST(ProfileBands, LieOnlyAtEdgesThatCarryTheProfile) {
    Project project = profiled(ProfileFamily::Chamfer);
    project.fronts.profile.sides = {false, false, false, true};
    const RenderedCase rendered(project);
    const auto bands =
        washes(frontRendering(
                   {rendered.project, rendered.catalogue, rendered.plan, rendered.places, 0.2}, 0),
               "profile");
    ASSERT_EQ(bands.size(), 1U);
    const BoxMm front = toMm(rendered.plan.fronts[0].rect);
    const BoxMm band = boxOf(bands[0].second.points);
    EXPECT_NEAR(band.max().y(), front.max().y(), 1e-9);
    EXPECT_NEAR(band.min().y(), front.max().y() - 19.05, 1e-9);
    EXPECT_NEAR(band.sizes().x(), front.sizes().x(), 1e-9);
}

TEST(ProfileBands, OfACoveDarkenTowardsTheField) {
    Sketch sketch(2);
    const Profile cove{ProfileFamily::Cove,
                       Length::millimetres(12),
                       Length::millimetres(12),
                       Length(),
                       {false, false, true, false}};
    drawProfileBands(sketch, {PointMm(0, 0), PointMm(300, 100)}, cove, {200, 160, 120, 255}, {});
    const auto bands = washes(sketch.finished(0), "");
    ASSERT_EQ(bands.size(), 12U);
    for (std::size_t i = 1; i < bands.size(); ++i)
        EXPECT_LE(bands[i].second.tone.red, bands[i - 1].second.tone.red);
    EXPECT_LT(bands[11].second.tone.red, bands[0].second.tone.red);
}

TEST(HandleInMetal, StaysOnItsFootprintAndItsShadowDoesNot) {
    for (const HardwareKind kind :
         {HardwareKind::Knob, HardwareKind::Pull, HardwareKind::CupPull, HardwareKind::RingPull})
        for (const FootprintShape shape : {FootprintShape::Round, FootprintShape::Rectangle}) {
            HardwareForm form = *smallCatalogue().hardwareForm("knob-32");
            form.kind = kind;
            form.footprint = {shape, Length::millimetres(60), Length::millimetres(60)};
            Sketch sketch(1);
            drawHandleTones(sketch, form, {0, 0}, {{}, {}, "handle 1"});
            const auto metal = washes(sketch.finished(0), "handle 1");
            const auto shadow = washes(sketch.finished(0), "handle 1 shadow");
            ASSERT_FALSE(metal.empty());
            ASSERT_FALSE(shadow.empty());
            for (const auto& [mark, wash] : metal)
                for (const PointMm& p : wash.points)
                    EXPECT_LE(p.cwiseAbs().maxCoeff(), 30 + 1e-6) << static_cast<int>(kind);
            EXPECT_GT(boxOf(shadow[0].second.points).max().x(), 30);
        }
}

} // namespace
} // namespace frontwright
