#include "core/drawings/board_section.h"
#include "core/drawings/elevation.h"
#include "tests/core/drawings/drawn.h"
#include "tests/core/plan/board_case.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

std::vector<const Mark*> named(const Drawing& drawing, std::string_view name) {
    std::vector<const Mark*> found;
    for (const Mark& mark : drawing.marks)
        if (mark.part.name == name)
            found.push_back(&mark);
    return found;
}

BoxMm boxOf(const Drawing& drawing, std::string_view name) {
    BoxMm box;
    for (const Mark* mark : named(drawing, name))
        if (const auto* path = std::get_if<PathMark>(&mark->shape))
            for (const PointMm& p : path->points)
                box.extend(p);
    return box;
}

std::vector<std::string> figures(const Drawing& drawing) {
    std::vector<std::string> all;
    for (const Mark& mark : drawing.marks)
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape))
            all.push_back(dimension->text);
    return all;
}

bool has(const std::vector<std::string>& all, const std::string& one) {
    return std::find(all.begin(), all.end(), one) != all.end();
}

Project withFastener(std::optional<WrittenLength> pullOut) {
    return withOpenings(boardOverDrawer(), [&](Opening& opening, std::size_t) {
        if (!opening.board)
            return;
        opening.board->pullOut = pullOut;
        opening.board->keeper.fasteners = {{Side::Left, Length::inches(8), Length::inches(1)}};
    });
}

TEST(ElevationOfABoard, ShowsItsEdgeInTheOpeningAndWhatCarriesItDashed) {
    // The opening begins 1 1/2 in from the left and lies 7 1/2 in up; 1/16 of play, and half of
    // 1 − 3/4 in below the board.
    const Planned desk(boardOverDrawer());
    const Drawing drawing = caseElevation(desk.project, desk.plan, {});
    const BoxMm edge = boxOf(drawing, "board edge");
    EXPECT_NEAR(edge.min().x(), (1.5 + 1.0 / 16) * inch, 1e-6);
    EXPECT_NEAR(edge.min().y(), (7.5 + 1.0 / 8) * inch, 1e-6);
    EXPECT_NEAR(edge.sizes().x(), 17.875 * inch, 1e-6);
    EXPECT_NEAR(edge.sizes().y(), 0.75 * inch, 1e-6);
    for (const char* hidden : {"furring", "runner", "keeper strip"}) {
        ASSERT_EQ(named(drawing, hidden).size(), 2U) << hidden;
        EXPECT_EQ(named(drawing, hidden)[0]->layer, Layer::BoxEdge);
    }
}

TEST(ElevationOfABoard, HasNoFurringWhereThereIsNone) {
    const Planned desk(withOpenings(boardOverDrawer(), [](Opening& opening, std::size_t) {
        if (opening.board)
            opening.board->furred = Furred::No;
    }));
    EXPECT_TRUE(named(caseElevation(desk.project, desk.plan, {}), "furring").empty());
}

TEST(SectionOfABoard, ShowsItClosedAndPulledOut) {
    const Planned desk(withFastener(Length::inches(6)));
    const Drawing drawing = boardSection(desk.plan, 0, {{Unit::Inch, 16}});
    const BoxMm closed = boxOf(drawing, "board");
    EXPECT_NEAR(closed.min().x(), 0, 1e-6);
    EXPECT_NEAR(closed.max().x(), 20.25 * inch, 1e-6);
    const BoxMm out = boxOf(drawing, "board, pulled out");
    EXPECT_NEAR(out.min().x(), -6 * inch, 1e-6);
    EXPECT_EQ(named(drawing, "board, pulled out").front()->layer, Layer::Moved);
}

TEST(SectionOfABoard, InterruptsTheKeeperRoundAFastener) {
    // 8 in ± (1/2 + 1/8): pieces from 3/4 to 7 3/8 and from 8 5/8 to 20 3/4
    const Planned desk(withFastener(Length::inches(6)));
    const Drawing drawing = boardSection(desk.plan, 0, {{Unit::Inch, 16}});
    const BoxMm first = boxOf(drawing, "keeper piece 1"), second = boxOf(drawing, "keeper piece 2");
    EXPECT_NEAR(first.min().x(), 0.75 * inch, 1e-6);
    EXPECT_NEAR(first.max().x(), 7.375 * inch, 1e-6);
    EXPECT_NEAR(second.min().x(), 8.625 * inch, 1e-6);
    EXPECT_NEAR(second.max().x(), 20.75 * inch, 1e-6);
    const Drawing right = boardSection(desk.plan, 0, {{Unit::Inch, 16}, 0.25, Side::Right});
    EXPECT_TRUE(named(right, "keeper piece 2").empty());
}

TEST(SectionOfABoard, IsDimensioned) {
    const Planned desk(withFastener(Length::inches(6)));
    const auto all = figures(boardSection(desk.plan, 0, {{Unit::Inch, 16}}));
    for (const char* figure :
         {"pulled out 6", "board 20 1/4", "free 1/2", "inside 20 3/4", "piece 6 5/8",
          "piece 12 1/8", "begins at 3/4", "runner block 1/8", "keeper block 25/32", "opening 1"})
        EXPECT_TRUE(has(all, figure)) << figure;
}

// The opening is 1 in high, a third of the block's words; between fasteners at 6 and 14 in the
// first piece is 4 5/8 long, shorter than its own words.
TEST(SectionOfABoard, RunsNoExtensionLineThroughAnyWords) {
    const Planned desk(withOpenings(boardOverDrawer(), [](Opening& opening, std::size_t) {
        const Length inch = Length::inches(1);
        if (opening.board)
            opening.board->keeper.fasteners = {{Side::Left, 6 * inch, inch},
                                               {Side::Left, 14 * inch, inch}};
    }));
    for (const double scale : {0.11, 0.125, 0.25, 0.5}) {
        const Drawing drawing = boardSection(desk.plan, 0, {{Unit::Inch, 16}, scale});
        for (const DimensionMark& words : dimensionsOf(drawing)) {
            const BoxMm text = textBox(figureOf(words, scale).text, scale);
            for (const DimensionMark& other : dimensionsOf(drawing))
                for (const LineMark& line : figureOf(other, scale).extensions)
                    EXPECT_FALSE(haveCommonArea(
                        text, BoxMm(line.from.cwiseMin(line.to) - PointMm(1e-3, 1e-3),
                                    line.from.cwiseMax(line.to) + PointMm(1e-3, 1e-3))))
                        << words.text << " under a line of " << other.text << " at " << scale;
        }
    }
}

TEST(SectionOfABoard, IsDrawnClosedOnlyWhereItMayNotComeOut) {
    const Planned desk(withFastener(Length{}));
    const Drawing drawing = boardSection(desk.plan, 0, {{Unit::Inch, 16}});
    EXPECT_TRUE(named(drawing, "board, pulled out").empty());
}

TEST(SectionOfABoard, FramelessLiesBetweenThePanelsThemselves) {
    Project project = boardOverDrawer();
    project.casework.construction = Construction::Frameless;
    const Planned desk(std::move(project));
    const BoxMm below = boxOf(boardSection(desk.plan, 0, {{Unit::Inch, 16}}), "member below");
    EXPECT_NEAR(below.max().x(), 20 * inch, 1e-6);
}

// The opening is 18 in wide and begins 1 1/2 in from the case's left edge; the board has 1/16 of
// play at each side. Its side panels' inner faces lie 3/4 in from the edge: 3/4 in to fill, less
// 1/16 of working allowance.
TEST(LevelSectionOfABoard, ShowsTheBoardBetweenItsFurring) {
    const Planned desk(withFastener(Length::inches(6)));
    const Drawing drawing = boardLevelSection(desk.plan, 0, {{Unit::Inch, 16}});
    const PlannedBoard& planned = desk.plan.boards[0];
    const BoxMm board = boxOf(drawing, "board");
    EXPECT_NEAR(board.min().x(), inch / 16, 1e-6);
    EXPECT_NEAR(board.max().x(), (18 - 1.0 / 16) * inch, 1e-6);
    EXPECT_NEAR(board.min().y(), 0, 1e-6);
    EXPECT_NEAR(board.max().y(), 20.25 * inch, 1e-6);
    const BoxMm left = boxOf(drawing, "furring left"), right = boxOf(drawing, "furring right");
    const double furring = planned.fitted.board.furring.left.inMillimetres();
    ASSERT_GT(furring, 0);
    EXPECT_NEAR(left.sizes().x(), furring, 1e-6);
    EXPECT_NEAR(board.min().x() - left.max().x(),
                planned.fitted.board.insideGap.left.inMillimetres(), 1e-6);
    // The same at both sides
    EXPECT_NEAR(right.min().x() - board.max().x(), board.min().x() - left.max().x(), 1e-6);
    EXPECT_NEAR(boxOf(drawing, "side panel left").max().x(), left.min().x(), 1e-6);
    EXPECT_NEAR(boxOf(drawing, "board, pulled out").min().y(), -6 * inch, 1e-6);
}

TEST(LevelSectionOfABoard, IsDimensioned) {
    const Planned desk(withFastener(Length::inches(6)));
    const auto all = figures(boardLevelSection(desk.plan, 0, {{Unit::Inch, 16}}));
    for (const char* figure : {"side play 1/16", "board 17 7/8", "opening 18", "pulled out 6",
                               "board 20 1/4", "free 1/2", "inside 20 3/4", "furring 23/32"})
        EXPECT_TRUE(has(all, figure)) << figure;
    EXPECT_EQ(std::ranges::count_if(all, [](const auto& f) { return f.starts_with("furring"); }),
              2);
}

TEST(LevelSectionOfABoard, HasNoFurringWhereThereIsNone) {
    const Planned desk(withOpenings(boardOverDrawer(), [](Opening& opening, std::size_t) {
        if (opening.board)
            opening.board->furred = Furred::No;
    }));
    const Drawing drawing = boardLevelSection(desk.plan, 0, {{Unit::Inch, 16}});
    EXPECT_TRUE(named(drawing, "furring left").empty());
    EXPECT_FALSE(named(drawing, "side panel left").empty());
}

TEST(LevelSectionOfABoard, FramelessLiesBetweenThePanelsThemselves) {
    Project project = boardOverDrawer();
    project.casework.construction = Construction::Frameless;
    const Planned desk(std::move(project));
    const Drawing drawing = boardLevelSection(desk.plan, 0, {{Unit::Inch, 16}});
    EXPECT_TRUE(named(drawing, "member left").empty());
    EXPECT_NEAR(boxOf(drawing, "side panel left").max().x(), 0, 1e-6);
    EXPECT_NEAR(boxOf(drawing, "side panel left").min().y(), 0, 1e-6);
}

TEST(LevelSectionOfABoard, LetsNoTextOverlapAnother) {
    const Planned desk(withFastener(Length::inches(6)));
    for (const double scale : {0.11, 0.25, 0.5})
        EXPECT_TRUE(
            overlapping(textBoxes(boardLevelSection(desk.plan, 0, {{Unit::Inch, 16}, scale})))
                .empty())
            << scale;
}

} // namespace
} // namespace frontwright::testing
