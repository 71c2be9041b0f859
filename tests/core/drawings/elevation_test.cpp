#include "core/drawings/elevation.h"

#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::exactly;

using testing::DrawnCase;
using testing::shapesOn;

Profile chamfer(Length width) {
    Profile profile;
    profile.family = ProfileFamily::Chamfer;
    profile.width = width;
    profile.depth = Length::inches(0, 16);
    return profile;
}

BoxMm boxOf(const PathMark& path) {
    BoxMm box;
    for (const PointMm& p : path.points)
        box.extend(p);
    return box;
}
void expectSame(const BoxMm& drawn, const BoxMm& planned) {
    EXPECT_NEAR((drawn.min() - planned.min()).norm(), 0, exactly);
    EXPECT_NEAR((drawn.max() - planned.max()).norm(), 0, exactly);
}

TEST(Elevation, HasEveryFrontsEdgesWhereThePlanHasThem) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        const auto edges = shapesOn<PathMark>(drawn.elevation(), Layer::FrontEdge, "front edge");
        ASSERT_EQ(edges.size(), drawn.plan.fronts.size());
        for (std::size_t i = 0; i < edges.size(); ++i) {
            EXPECT_EQ(edges[i].first.part.opening, drawn.plan.fronts[i].opening);
            expectSame(boxOf(edges[i].second), toMm(drawn.plan.fronts[i].rect));
        }
    }
}

TEST(Elevation, HasTheCasesOutline) {
    const DrawnCase drawn(testing::banks(2, 3));
    const auto outline = shapesOn<PathMark>(drawn.elevation(), Layer::CaseOutline);
    ASSERT_EQ(outline.size(), 1U);
    expectSame(boxOf(outline[0].second), toMm(drawn.plan.outline));
}

// Opening 13 × 6 in behind overlays of 1/4 in: its four edges are hidden.
TEST(Elevation, DashesAnOpeningsEdgesBehindAnOverlayFront) {
    const DrawnCase drawn(testing::bank(1));
    const auto hidden = shapesOn<LineMark>(drawn.elevation(), Layer::OpeningEdge);
    ASSERT_EQ(hidden.size(), 4U);
    BoxMm box;
    for (const auto& [mark, line] : hidden)
        box.extend(line.from).extend(line.to);
    expectSame(box, toMm(drawn.plan.fronts[0].openingRect));
}

TEST(Elevation, ShowsAnOpeningsEdgesRoundAnInsetFront) {
    Project project = testing::bank(1);
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::inches(0, 8)});
    const DrawnCase drawn(project);
    const Drawing drawing = drawn.elevation(0.5);
    EXPECT_TRUE(shapesOn<LineMark>(drawing, Layer::OpeningEdge).empty());
    EXPECT_EQ(shapesOn<LineMark>(drawing, Layer::MemberEdge, "opening edge").size(), 4U);
}

// Overlay at the left, inset above: the left edge is hidden as far as the front reaches and seen
// in the gap above it.
TEST(Elevation, ShowsTheOpeningsEdgeWhereAMixedFrontLeavesItFree) {
    Project project = testing::bank(1);
    project.fronts.fit.top = {Fit::Inset, Length::inches(0, 8)};
    const DrawnCase drawn(project);
    const auto seen = shapesOn<LineMark>(drawn.elevation(0.5), Layer::MemberEdge, "opening edge");
    // The whole upper edge; 1/8 in of the left and of the right one.
    ASSERT_EQ(seen.size(), 3U);
    double shortPieces = 0;
    for (const auto& [mark, line] : seen)
        if (line.from.x() == line.to.x())
            shortPieces += (line.to - line.from).norm();
    EXPECT_NEAR(shortPieces, 2 * 25.4 / 8, exactly);
}

// The rail between two fronts of a bank ends at both stiles; 3/4 in of each end shows.
TEST(Elevation, ShowsAMembersEndsOnlyWhereNoFrontHidesThem) {
    const DrawnCase drawn(testing::bank(2));
    const MemberPlan* rail = nullptr;
    for (const MemberPlan& member : drawn.plan.members)
        if (member.kind == MemberKind::Rail)
            rail = &member;
    ASSERT_NE(rail, nullptr);
    double length = 0;
    for (const auto& [mark, line] :
         shapesOn<LineMark>(drawn.elevation(), Layer::MemberEdge, "member end"))
        if (mark.part.member == rail->id)
            length += (line.to - line.from).norm();
    EXPECT_NEAR(length, 2 * 0.75 * 25.4, exactly);
}

TEST(Elevation, HasTheProfileLineWhereTheFieldBegins) {
    Project project = testing::bank(1);
    project.fronts.profile = chamfer(Length::inches(0, 32));
    const DrawnCase drawn(project);
    const FrontPlan& front = drawn.plan.fronts[0];
    const auto lines = shapesOn<LineMark>(drawn.elevation(), Layer::ProfileLine);
    ASSERT_EQ(lines.size(), 8U); // four sides of the field, four mitres
    const BoxMm field = toMm(front.field.movedBy(FrontPoint{front.rect.left, front.rect.bottom}));
    int sides = 0;
    for (const auto& [mark, line] : lines) {
        const BoxMm span(line.from.cwiseMin(line.to), line.from.cwiseMax(line.to));
        if (span.sizes().minCoeff() == 0) {
            ++sides;
            EXPECT_TRUE(BoxMm(field.min() - PointMm(exactly, exactly),
                              field.max() + PointMm(exactly, exactly))
                            .contains(span));
        }
    }
    EXPECT_EQ(sides, 4);
}

TEST(Elevation, LeavesAnOpeningsEdgeOutThatWouldRunIntoTheFronts) {
    const DrawnCase drawn(testing::bank(1)); // 1/4 in: 0.3 mm at 1:20
    EXPECT_TRUE(shapesOn<LineMark>(drawn.elevation(0.05), Layer::OpeningEdge).empty());
    EXPECT_EQ(shapesOn<LineMark>(drawn.elevation(0.1), Layer::OpeningEdge).size(), 4U);
}

TEST(Elevation, LeavesAProfileLineOutThatWouldRunIntoTheEdge) {
    // 1/16 in at 1:10 is 0.16 mm.
    Project project = testing::bank(1);
    project.fronts.profile = chamfer(Length::inches(0, 4));
    const DrawnCase drawn(project);
    EXPECT_TRUE(shapesOn<LineMark>(drawn.elevation(0.1), Layer::ProfileLine).empty());
    EXPECT_FALSE(shapesOn<LineMark>(drawn.elevation(1), Layer::ProfileLine).empty());
}

TEST(Elevation, MarksEveryHoleByItsTrueDiameterAndAThinCross) {
    const DrawnCase drawn(testing::banks(2, 2));
    const Drawing drawing = drawn.elevation();
    for (const FrontPlan& front : drawn.plan.fronts)
        for (std::size_t i = 0; i < front.mounting.holes.size(); ++i) {
            const std::string name = "hole " + std::to_string(i + 1);
            const PointMm at =
                toMm(front.rect.lowerLeft()) + toMm(toFront(front.box, front.mounting.holes[i].at));
            int circles = 0, strokes = 0;
            for (const auto& [mark, circle] : shapesOn<CircleMark>(drawing, Layer::Hole, name))
                if (mark.part.opening == front.opening) {
                    ++circles;
                    EXPECT_NEAR((circle.centre - at).norm(), 0, exactly);
                    EXPECT_NEAR(2 * circle.radius, front.mounting.pilotHole.inMillimetres(),
                                exactly);
                }
            for (const auto& [mark, line] : shapesOn<LineMark>(drawing, Layer::Hole, name))
                if (mark.part.opening == front.opening) {
                    ++strokes;
                    EXPECT_NEAR(((line.from + line.to) / 2 - at).norm(), 0, exactly);
                }
            EXPECT_EQ(circles, 1);
            EXPECT_EQ(strokes, 2);
        }
}

TEST(Elevation, ShowsWhatIsAskedFor) {
    const DrawnCase drawn(testing::bank(2));
    ElevationOptions options = drawn.at(0.1);
    options.dimensions = Shown::No;
    options.holes = Shown::No;
    const Drawing bare = elevation(drawn.project, drawn.plan, options);
    EXPECT_TRUE(testing::dimensionsOf(bare).empty());
    EXPECT_TRUE(shapesOn<CircleMark>(bare, Layer::Hole).empty());
    EXPECT_TRUE(shapesOn<PathMark>(bare, Layer::BoxEdge).empty());
    EXPECT_TRUE(shapesOn<PathMark>(bare, Layer::AllowedRegion).empty());
    EXPECT_TRUE(shapesOn<LineMark>(bare, Layer::BottomPanel).empty());
    EXPECT_TRUE(shapesOn<PathMark>(bare, Layer::FieldEdge).empty());
    options.boxes = options.allowedRegion = Shown::Yes;
    const Drawing boxes = elevation(drawn.project, drawn.plan, options);
    EXPECT_TRUE(shapesOn<LineMark>(boxes, Layer::BottomPanel).empty());
    options.bottoms = options.fields = Shown::Yes;
    const Drawing full = elevation(drawn.project, drawn.plan, options);
    EXPECT_EQ(shapesOn<PathMark>(full, Layer::FieldEdge).size(), 2U);
    EXPECT_EQ(shapesOn<PathMark>(full, Layer::BoxEdge).size(), 2U);
    EXPECT_EQ(shapesOn<LineMark>(full, Layer::BottomPanel).size(), 4U);
    EXPECT_GE(shapesOn<PathMark>(full, Layer::AllowedRegion).size(), 2U);
}

TEST(Elevation, ShowsTheBoxWhereThePlanHasIt) {
    const DrawnCase drawn(testing::bank(1));
    ElevationOptions options = drawn.at(0.1);
    options.boxes = options.bottoms = Shown::Yes;
    const BoxPlan& box = drawn.plan.fronts[0].box;
    const Drawing drawing = elevation(drawn.project, drawn.plan, options);
    const auto outline = shapesOn<PathMark>(drawing, Layer::BoxEdge);
    ASSERT_EQ(outline.size(), 1U);
    const PointMm origin = toMm(box.origin);
    expectSame(
        boxOf(outline[0].second),
        BoxMm(origin, origin + PointMm(box.width.inMillimetres(), box.height.inMillimetres())));
    const auto bottom = shapesOn<LineMark>(drawing, Layer::BottomPanel);
    EXPECT_NEAR(bottom.back().second.from.y() - origin.y(), box.bottomTop.inMillimetres(), exactly);
}

TEST(Elevation, IsTheCaseThenEveryFrontThenTheDimensions) {
    const DrawnCase drawn(testing::banks(2, 2));
    const ElevationOptions options = drawn.at(0.1);
    std::size_t count = caseElevation(drawn.project, drawn.plan, options).marks.size() +
                        elevationDimensions(drawn.project, drawn.plan, options).marks.size();
    for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i)
        count += frontElevation(drawn.project, drawn.plan, i, options).marks.size();
    const Drawing whole = elevation(drawn.project, drawn.plan, options);
    const std::size_t notes = shapesOn<TextMark>(whole, Layer::Note, "note").size();
    EXPECT_EQ(whole.marks.size(), count + notes);
}

TEST(Elevation, HasEverythingWithinItsExtent) {
    for (std::uint64_t seed = 30; seed < 40; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        const Drawing drawing = drawn.elevation(0.05);
        const PlainMarks marks = plain(drawing);
        for (const StrokeMark& stroke : marks.strokes)
            for (const PointMm& p : stroke.points)
                EXPECT_TRUE(drawing.extent.contains(p));
        for (const LabelMark& label : marks.labels)
            EXPECT_TRUE(drawing.extent.contains(textBox(label.text, drawing.paperScale)));
    }
}

// A case that is its own mirror image: what is drawn at x is drawn at width − x as well.
TEST(Elevation, OfASymmetricCaseIsSymmetric) {
    const DrawnCase drawn(testing::banks(2, 3));
    const double width = drawn.plan.outline.width().inMillimetres();
    ElevationOptions options = drawn.at(0.1);
    options.dimensions = Shown::No;
    const Drawing drawing = elevation(drawn.project, drawn.plan, options);
    const auto isDrawn = [&](Layer layer, const PointMm& centre) {
        for (const Mark& mark : drawing.marks) {
            BoxMm box;
            if (const auto* line = std::get_if<LineMark>(&mark.shape))
                box.extend(line->from).extend(line->to);
            else if (const auto* path = std::get_if<PathMark>(&mark.shape))
                box = boxOf(*path);
            else if (const auto* circle = std::get_if<CircleMark>(&mark.shape))
                box.extend(circle->centre);
            if (!box.isEmpty() && mark.layer == layer && (box.center() - centre).norm() < 1e-6)
                return true;
        }
        return false;
    };
    for (const Mark& mark : drawing.marks) {
        BoxMm box;
        if (const auto* line = std::get_if<LineMark>(&mark.shape))
            box.extend(line->from).extend(line->to);
        else if (const auto* circle = std::get_if<CircleMark>(&mark.shape))
            box.extend(circle->centre);
        else
            continue;
        const PointMm mirrored(width - box.center().x(), box.center().y());
        EXPECT_TRUE(isDrawn(mark.layer, mirrored)) << mark.part.name;
    }
}

TEST(Label, IsTheFrontsNameWithItsSizeUnderIt) {
    const DrawnCase drawn(testing::bank(1));
    // Opening 13 × 6 in, overlays 1/4 in: front 13 1/2 × 6 1/2 in. At 1:2 there is room.
    const auto texts = shapesOn<TextMark>(drawn.elevation(0.5), Layer::Note, "label");
    ASSERT_EQ(texts.size(), 2U);
    EXPECT_EQ(texts[0].second.text, "A1");
    EXPECT_EQ(texts[1].second.text, "13 1/2 × 6 1/2");
    EXPECT_LT(texts[1].second.at.y(), texts[0].second.at.y());
}

TEST(Label, LiesInTheFieldClearOfHandlesAndOtherTexts) {
    for (const double scale : {0.5, 0.2, 0.1, 0.05})
        for (std::uint64_t seed = 50; seed < 60; ++seed) {
            const DrawnCase drawn(testing::randomProject(seed));
            for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i) {
                const FrontPlan& front = drawn.plan.fronts[i];
                const Drawing drawing =
                    frontElevation(drawn.project, drawn.plan, i, drawn.at(scale));
                const auto boxes = testing::allTextBoxes(drawing);
                EXPECT_TRUE(testing::overlapping(boxes).empty());
                for (const BoxMm& box : boxes) {
                    EXPECT_TRUE(toMm(front.rect).contains(box));
                    for (const HandlePlan& handle : front.hardware->handles)
                        EXPECT_FALSE(testing::haveCommonArea(
                            box, toMm(CaseRect{front.rect.left + handle.footprint.left,
                                               front.rect.bottom + handle.footprint.bottom,
                                               front.rect.left + handle.footprint.right,
                                               front.rect.bottom + handle.footprint.top})));
                }
            }
        }
}

TEST(Label, IsLeftOutWhereAFrontIsTooSmallForIt) {
    const DrawnCase drawn(testing::oneOpening(Length::inches(4), Length::inches(1)));
    EXPECT_TRUE(shapesOn<TextMark>(drawn.elevation(0.02), Layer::Note, "label").empty());
}

TEST(Elevation, CopesWithAFrontThatHasNoHandle) {
    Project project = testing::bank(2);
    project.fronts.hardware.form.clear();
    const DrawnCase drawn(project);
    EXPECT_TRUE(shapesOn<CircleMark>(drawn.elevation(), Layer::Handle).empty());
    // Without a handle the label takes the middle.
    const FrontPlan& front = drawn.plan.fronts[0];
    const Drawing drawing = frontElevation(drawn.project, drawn.plan, 0, drawn.at(0.5));
    const auto texts = shapesOn<TextMark>(drawing, Layer::Note, "label");
    ASSERT_FALSE(texts.empty());
    EXPECT_NEAR(texts[0].second.at.x(), toMm(front.rect).center().x(), exactly);
}

} // namespace
} // namespace frontwright
