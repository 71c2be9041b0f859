#include "core/documents/document.h"
#include "core/findings/finding.h"

#include "files.h"

#include <array>
#include <map>

using namespace frontwright;
using namespace frontwright::testing;

namespace {

Catalogue programsCatalogue() {
    Catalogue catalogue;
    for (const auto& file : filesBelow(sourceFolder() / "resources/catalogue", ".json")) {
        const Result<Catalogue> read = readCatalogue(contentOf(file), file.filename().string());
        if (!read.ok()) {
            ADD_FAILURE() << read.error().sentence();
            continue;
        }
        catalogue = merged(catalogue, read.value());
    }
    return catalogue;
}

/// A sample with all that follows from it; the plan refers into the rest.
struct Sample {
    explicit Sample(const std::string& name) {
        const auto file = sourceFolder() / "samples" / name / (name + ".frontwright");
        Result<Project> read = readDocument(contentOf(file));
        EXPECT_TRUE(read.ok()) << read.error().sentence();
        project = std::move(read).value();
        catalogue = merged(programsCatalogue(), project.own);
        Result<Plan> made = makePlan(project, catalogue);
        EXPECT_TRUE(made.ok()) << made.error().sentence();
        plan = std::move(made).value();
    }
    Sample(const Sample&) = delete;
    Sample& operator=(const Sample&) = delete;

    /// "opening's name or label: finding", with how often each is found.
    [[nodiscard]] std::map<std::string, int> findings() const {
        std::map<std::string, int> found;
        for (const Finding& finding : judge(project, plan)) {
            const FrontPlan* front =
                finding.where.opening ? plan.frontOf(*finding.where.opening) : nullptr;
            const std::string where = front == nullptr ? "case" : label(project, *front);
            ++found[where + ": " + std::string(key(finding.code))];
        }
        return found;
    }

    Project project;
    Catalogue catalogue;
    Plan plan;
};

using Findings = std::map<std::string, int>;

} // namespace

TEST(Samples, HaveALineOnWhatToLookAtAndASoundPlan) {
    for (const auto& file : sampleFiles()) {
        const Sample sample(file.stem().string());
        EXPECT_FALSE(sample.project.title.empty()) << file;
        EXPECT_GT(sample.project.note.size(), 20U) << file;
        EXPECT_EQ(sample.project.note.find('\n'), std::string::npos) << file;
        EXPECT_EQ(brokenInvariant(sample.plan), "") << file;
    }
}

// Nothing grave but the two sets of bolts that come too short.
TEST(Samples, GlazeChestHasOnlyItsShortBolts) {
    EXPECT_EQ(Sample("glaze-chest").findings(), (Findings{{"Test tiles: bolt_too_short", 1},
                                                          {"Moulds: bolt_too_short", 1},
                                                          {"C1: slot_for_movement", 1},
                                                          {"case: anchor_case", 1}}));
}

// Lower than the published scope by 2 mm, but its drawers alone are heavy and large enough: that is
// to know, and says what the scope is.
TEST(Samples, PlanChestIsCleanAndAsksOnlyToBeAnchored) {
    EXPECT_EQ(Sample("plan-chest").findings(), (Findings{{"case: anchor_case", 1}}));
}

// Worked by hand: 1500 less two stiles of 45 leaves 1410; two doors' openings of 400 and two stiles
// of 40 leave 530 for the bank. Of the height, 900 − 45 − 60 = 795, the open space takes 190 and
// three rails 90: 515 for drawers that grow by 20: 152 + 172 + 191 (the odd millimetres last).
TEST(Samples, LinenCupboardHasDoorsSizedLikeItsFronts) {
    const Sample sample("linen-cupboard");
    EXPECT_EQ(sample.findings(), (Findings{{"case: anchor_case", 1}}));
    ASSERT_EQ(sample.plan.fronts.size(), 5U);
    ASSERT_EQ(sample.plan.spaces.size(), 1U);
    const FrontPlan& door = sample.plan.fronts[0];
    EXPECT_EQ(door.use, OpeningUse::Door);
    EXPECT_EQ(door.rect.width(), Length::millimetres(420));
    EXPECT_EQ(door.rect.height(), Length::millimetres(815));
    EXPECT_EQ(sample.plan.fronts[1].rect.width(), Length::millimetres(550));
    EXPECT_EQ(sample.plan.fronts[1].rect.height(), Length::millimetres(171));
    EXPECT_EQ(sample.plan.spaces[0].rect.height(), Length::millimetres(190));
    EXPECT_EQ(sample.plan.fronts[4].hinge, HingeSide::Right);
    // Gaps: stile 40 less two overlays of 10
    for (const Spacer& spacer : sample.plan.spacers)
        if (sample.plan.members[spacer.member].kind == MemberKind::Stile) {
            EXPECT_EQ(spacer.width, Length::millimetres(20));
        }
}

// The lock's key lies 20 mm below the top, two let-in rings and a label beside it.
TEST(Samples, ShellCabinetIsCleanAndHoldsItsFittingsByScrews) {
    const Sample sample("shell-cabinet");
    EXPECT_EQ(sample.findings(), (Findings{{"case: anchor_case", 1}}));
    for (const FrontPlan& front : sample.plan.fronts) {
        EXPECT_FALSE(front.hardware);
        ASSERT_TRUE(front.fittings);
        for (const FittingPlan& fitting : *front.fittings)
            EXPECT_TRUE(fitting.screwLength) << fitting.form->id;
    }
    EXPECT_EQ(sample.plan.fronts.front().fittings->size(), 3U); // a label and two rings
    EXPECT_EQ(sample.plan.fronts.back().fittings->size(), 4U);
}

// Worked by hand: 29 in less two rails of 1 3/4 in are 25 1/2 in; below 4 1/2 in and a rail of
// 1 1/4 in 19 3/4 in are left: two openings of 9 1/4 in with a rail of 1 1/4 in at the left, at the
// right the same of one box.
TEST(Samples, SinkBaseHasTwoFrontsOnTheBinsBoxInLineWithTheBankBesideThem) {
    const Sample sample("sink-base");
    EXPECT_EQ(sample.findings(), (Findings{{"case: anchor_case", 1}}));
    ASSERT_EQ(sample.plan.fronts.size(), 9U);
    ASSERT_EQ(sample.plan.faces.size(), 2U); // the doors, the bin
    EXPECT_EQ(sample.plan.faces[1].rect.height(), Length::inches(19, 48));
    for (std::size_t row = 1; row <= 2; ++row) {
        EXPECT_EQ(sample.plan.fronts[row].openingRect.height(), Length::inches(9, 16));
        EXPECT_EQ(sample.plan.fronts[row + 6].rect.upright(),
                  sample.plan.fronts[row].rect.upright());
    }
    ASSERT_EQ(sample.plan.fillers.size(), 1U);
    EXPECT_EQ(sample.plan.fillers[0].width, Length::inches(0, 32)); // 1 1/4 − 3/8 − 3/8
    const FrontPlan& sink = sample.plan.fronts[3];
    EXPECT_EQ(sink.use, OpeningUse::FixedFront);
    EXPECT_EQ(sink.mounting.holes.size(), 4U);
}

TEST(Samples, FirstTryHasItsFiveMistakes) {
    EXPECT_EQ(Sample("first-try").findings(),
              (Findings{{"Long screw: screw_through_show_face", 1},
                        {"Low holes: hole_in_bottom", 1},
                        {"No room for the tool: recess_tool_blocked", 1},
                        {"Bolts as supplied: bolt_too_short", 1},
                        {"Backplate too high: backplate_off_field", 1},
                        {"Backplate too high: slot_for_movement", 1},
                        {"case: anchor_case", 1}}));
}

// Worked by hand: 44 in less two stiles of 1 3/4 in is 40 1/2 in; a bank is half of that less the
// stile between, 19 1/2 in. Below the 5 in row and its 1 1/4 in rail 25 3/4 in are left: four
// openings and three rails of 1 1/4 in, so 22 in = 4 + 5 + 6 + 7 in. Overlays of 1/4 in all round.
TEST(Samples, GlazeChestHasAGraduatedBankAndOneWideDrawerWithTwoPulls) {
    const Sample sample("glaze-chest");
    ASSERT_EQ(sample.plan.fronts.size(), 8U);
    const FrontPlan& wide = sample.plan.fronts[0];
    EXPECT_EQ(wide.rect.width(), Length::inches(41));
    EXPECT_EQ(wide.rect.height(), Length::inches(5, 32));
    ASSERT_TRUE(wide.hardware);
    EXPECT_EQ(wide.hardware->handles.size(), 2U);
    for (std::size_t i = 1; i <= 4; ++i) {
        const FrontPlan& front = sample.plan.fronts[i];
        EXPECT_EQ(front.rect.width(), Length::inches(20));
        EXPECT_EQ(front.rect.height(), Length::inches(3 + static_cast<std::int64_t>(i), 32));
        EXPECT_EQ(front.hardware->handles.size(), 1U);
    }
    for (const Spacer& spacer : sample.plan.spacers) {
        const bool isBetweenBanks = sample.plan.members[spacer.member].kind == MemberKind::Stile;
        EXPECT_EQ(spacer.width, isBetweenBanks ? Length::inches(1) : Length::inches(0, 48));
    }
}

// Worked by hand: 684 mm less rails of 36 and 40 mm and seven of 16 mm is 496 mm, eight openings of
// 62 mm; 2 mm less on each side leaves fronts of 58 mm by 1160 − 2 × 45 − 4 = 1066 mm.
TEST(Samples, PlanChestHasEightFrontsOfOneSize) {
    const Sample sample("plan-chest");
    ASSERT_EQ(sample.plan.fronts.size(), 8U);
    for (const FrontPlan& front : sample.plan.fronts) {
        EXPECT_EQ(front.rect.width(), Length::millimetres(1066));
        EXPECT_EQ(front.rect.height(), Length::millimetres(58));
        EXPECT_EQ(front.hardware->handles.size(), 2U);
        EXPECT_EQ(front.box.setback, Length::millimetres(19));
    }
}

// White oak, flat-sawn, 0.00365 for each 1 % (Wood Handbook, table 13-5). Moisture by the
// handbook's equation 4-5: 8.5 % when cut, 6.2 % at the driest, 10.8 % at the wettest; 58 mm ×
// 0.00365 × 2.3 is 0.49 mm. What is held at the lower row goes away from there, so that no gap
// takes it all.
TEST(Samples, PlanChestKeepsItsGapsOpenThroughTheYear) {
    const Sample sample("plan-chest");
    ASSERT_TRUE(sample.plan.season);
    EXPECT_NEAR(sample.plan.season->whenCut, 8.5, 0.1);
    EXPECT_NEAR(sample.plan.season->driest, 6.2, 0.1);
    EXPECT_NEAR(sample.plan.season->wettest, 10.8, 0.1);
    for (const FrontPlan& front : sample.plan.fronts) {
        ASSERT_TRUE(front.season);
        EXPECT_NEAR(front.season->height.least.inMillimetres(), 57.5, 0.05);
        EXPECT_NEAR(front.season->height.greatest.inMillimetres(), 58.5, 0.05);
        EXPECT_EQ(front.season->width.least, front.season->width.greatest);
        for (const Side side : allSides)
            EXPECT_GT(front.season->gap[side].least, sample.project.limits.leastGap);
    }
}

// The bottom's top lies at 1/2 in: a hole at 1/2 in is in the panel, at 13/16 in
// the hole clears and the 3/4 in tool does not, at 1 in all is well. Common practice, no source.
// 22 in less stiles of 1 1/2 in leave openings of 19 in; 3/4 in + 20 in − 1/8 in are 20 5/8 in for
// runners, 20 in behind the frame.
TEST(Samples, ToolCabinetRunsOnFourKinds) {
    const Sample sample("tool-cabinet");
    const auto& fronts = sample.plan.fronts;
    ASSERT_EQ(fronts.size(), 4U);
    const std::array forms{RunnerForm::Wooden, RunnerForm::Centre, RunnerForm::SideMounted,
                           RunnerForm::UnderMounted};
    const std::array lengths{20, 20, 20, 18};
    const std::array depths{19, 20, 20, 18};
    for (std::size_t i = 0; i < fronts.size(); ++i) {
        ASSERT_TRUE(fronts[i].runner);
        EXPECT_EQ(fronts[i].runner->kind->form, forms[i]);
        EXPECT_EQ(fronts[i].runner->reach.length, Length::inches(lengths[i])) << i;
        EXPECT_EQ(fronts[i].box.depth, Length::inches(depths[i])) << i;
    }
    EXPECT_EQ(fronts[2].box.width, Length::inches(18));
    EXPECT_EQ(fronts[3].box.width, Length::inches(18, 40)); // 19 − 2 × 3/16
    EXPECT_EQ(fronts[0].runner->furring, Length::inches(0, 48));
}

// Only to know: so tall a front moves between its rows of screws, and so tall a case is anchored.
TEST(Samples, ToolCabinetIsClean) {
    EXPECT_EQ(Sample("tool-cabinet").findings(),
              (Findings{{"Power tools: slot_for_movement", 1}, {"case: anchor_case", 1}}));
}

TEST(Samples, FirstTryHasItsHolesAtTheHeightsItTellsOf) {
    const Sample sample("first-try");
    const auto lowestHole = [&](std::size_t front) {
        return sample.plan.fronts[front].mounting.holes.front().at.y;
    };
    EXPECT_EQ(sample.plan.fronts[3].box.bottomTop, Length::inches(0, 32));
    EXPECT_EQ(lowestHole(2), Length::inches(1));
    EXPECT_EQ(lowestHole(3), Length::inches(0, 32));
    EXPECT_EQ(lowestHole(4), Length::inches(0, 52));
}

// Worked by hand: 38 in less two stiles of 1 1/2 in and one of 2 1/4 in is 32 3/4 in, two openings
// of 16 3/8 in; less 2 × 1/16 in of play. Panels of 3/4 in at the stiles' outer edges, and in the
// middle of the one between, leave 3/4 in on every side, less 1/32 in. What stays free round the
// fasteners at 6 in and 14 in reaches 1/2 in + 1/8 in to both sides.
TEST(Samples, WritingChestHasABoardOverEachBank) {
    const Sample sample("writing-chest");
    ASSERT_EQ(sample.plan.boards.size(), 2U);
    for (const PlannedBoard& board : sample.plan.boards) {
        EXPECT_EQ(board.fitted.board.width, Length::inches(16, 16));
        EXPECT_EQ(board.fitted.board.furring.left, Length::inches(0, 46));
        EXPECT_EQ(board.fitted.board.furring.right, Length::inches(0, 46));
        EXPECT_GE(board.fitted.safe.pullOut, Length::inches(9));
    }
    const auto& pieces = sample.plan.boards[0].fitted.strips.left.pieces;
    ASSERT_EQ(pieces.size(), 3U);
    EXPECT_EQ(pieces[0].along, (Span{Length::inches(0, 48), Length::inches(5, 24)}));
    EXPECT_EQ(pieces[1].along, (Span{Length::inches(6, 40), Length::inches(13, 24)}));
    EXPECT_EQ(pieces[2].along, (Span{Length::inches(14, 40), Length::inches(20)}));
    for (const Finding& finding : judge(sample.project, sample.plan))
        EXPECT_NE(finding.code, FindingCode::OfBoard) << key(finding);
}
