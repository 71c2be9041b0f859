#include "core/plan/quantity.h"

#include "core/lengths/format.h"
#include "core/lengths/parse.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::bank;
using testing::banks;
using testing::oneOpening;
using testing::opening;
using testing::Planned;
using testing::projectWith;
using testing::randomProject;
using testing::share;
using testing::sideBySide;
using testing::withChoices;

using enum QuantityKind;

constexpr LengthStyle sixteenths{Unit::Inch, 16};
constexpr LengthStyle sixtyFourths{Unit::Inch, 64};
constexpr LengthStyle millimetres{Unit::Millimetre, 16};

constexpr Length n64(std::int64_t n) {
    return Length::fromSixtyFourths(n);
}

Derivation derived(const Planned& planned, Quantity quantity, LengthStyle style = sixteenths) {
    auto derivation = derive(planned.project, planned.plan, quantity, style);
    EXPECT_TRUE(derivation.has_value()) << key(quantity.kind);
    return derivation.value_or(Derivation{});
}
std::string figuresOf(const Planned& planned, Quantity quantity, LengthStyle style = sixteenths) {
    return derived(planned, quantity, style).figures;
}

/// A tiny reader of figures: what stands before the result is computed by the length parser, which
/// knows sums, products and brackets. "a ≤ b ≤ c" stands for b where it is in order.
class FiguresReader {
public:
    explicit FiguresReader(LengthStyle style) : m_style(style) {}

    [[nodiscard]] std::optional<Length> computed(const std::string& figures) const {
        const std::string bound = " ≤ ";
        const auto first = figures.find(bound);
        if (first == std::string::npos)
            return sum(withoutResult(figures));
        const auto second = figures.find(bound, first + bound.size());
        const auto low = sum(figures.substr(0, first));
        const auto high = sum(withoutResult(figures.substr(second + bound.size())));
        const auto middle =
            sum(figures.substr(first + bound.size(), second - first - bound.size()));
        const bool isInOrder = low && high && middle && *low <= *middle && *middle <= *high;
        return isInOrder ? middle : std::nullopt;
    }
    /// What all the roundings in the figures together may come to: half a step for each number.
    [[nodiscard]] Length tolerance(const std::string& figures) const {
        const bool inInches = m_style.unit == Unit::Inch;
        const Length step = inInches ? n64(64 / m_style.denominator) : Length::fromMicrometres(100);
        const std::string unit = inInches ? " in" : " mm";
        std::int64_t numbers = 1; // the result
        for (auto at = figures.find(unit); at != std::string::npos; at = figures.find(unit, at + 1))
            ++numbers;
        return Length::fromNanometres(step.nanometres() * numbers / 2);
    }

private:
    /// The result follows the last " = ", or the last " ≈ " that ends no term.
    static std::string withoutResult(const std::string& figures) {
        auto end = figures.rfind(" = ");
        if (end == std::string::npos) {
            end = figures.rfind(" ≈ ");
            if (end != std::string::npos && end > 0 && isOperator(figures, end))
                end = std::string::npos;
        }
        return figures.substr(0, end);
    }
    static bool isOperator(const std::string& figures, std::size_t end) {
        return figures[end - 1] == '+' || figures.substr(0, end).ends_with("−");
    }
    [[nodiscard]] std::optional<Length> sum(std::string text) const {
        replaceAll(text, "≈ ", "");
        replaceAll(text, "×", "*");
        const auto read = parseLength(text, m_style.unit);
        return read.ok() ? std::optional<Length>(read.value().length.length) : std::nullopt;
    }
    static void replaceAll(std::string& text, const std::string& from, const std::string& to) {
        for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at))
            text.replace(at, from.size(), to);
    }

    LengthStyle m_style;
};

void expectFiguresGiveTheValue(const Planned& planned, LengthStyle style) {
    const FiguresReader reader(style);
    for (const Quantity quantity : allQuantities(planned.plan)) {
        const Derivation derivation = derived(planned, quantity, style);
        EXPECT_EQ(derivation.value, valueOf(planned.plan, quantity));
        const auto computed = reader.computed(derivation.figures);
        ASSERT_TRUE(computed.has_value())
            << derivation.name << ": cannot read " << derivation.figures;
        EXPECT_LE((*computed - derivation.value).magnitude(), reader.tolerance(derivation.figures))
            << derivation.name << " = " << derivation.formula << ": " << derivation.figures;
        EXPECT_TRUE(derivation.figures.ends_with(shown(derivation.value, style)))
            << derivation.figures;
        EXPECT_FALSE(derivation.formula.empty());
        EXPECT_FALSE(derivation.source.title.empty());
        EXPECT_FALSE(derivation.inputs.empty());
    }
}

// Common practice, no source: opening 12 5/8 in with 1/4 in all round takes a front of 13 1/8 in.
TEST(Derivation, OfAFrontIsItsOpeningPlusBothOverlays) {
    const Planned planned(oneOpening(Length::inches(12, 40), Length::inches(6)));
    const Derivation width = derived(planned, {FrontWidth});
    EXPECT_EQ(width.name, "Front width");
    EXPECT_EQ(width.value, Length::inches(13, 8));
    EXPECT_EQ(width.formula, "opening + left overlay + right overlay");
    EXPECT_EQ(width.figures, "12 5/8 in + 1/4 in + 1/4 in = 13 1/8 in");
    EXPECT_EQ(width.source.title, "common practice, no source");
    EXPECT_EQ(width.inputs, (std::vector{InputPlace::Divisions, InputPlace::Fit}));
}

TEST(Derivation, OfAnInsetFrontTakesItsGapsAway) {
    Project project = oneOpening(Length::inches(12, 40), Length::inches(6));
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(4)});
    const Planned planned(std::move(project));
    EXPECT_EQ(derived(planned, {FrontWidth}).formula, "opening − left gap − right gap");
    EXPECT_EQ(figuresOf(planned, {FrontWidth}), "12 5/8 in − 1/16 in − 1/16 in = 12 1/2 in");
    EXPECT_EQ(figuresOf(planned, {GapLeft}), "1/16 in");
    EXPECT_FALSE(valueOf(planned.plan, {OverlayLeft}).has_value());
}

// Common practice, no source: rail 1 1/4 in, overlays 1/4 in, spacer 3/4 in.
TEST(Derivation, OfASpacerIsTheMemberLessBothOverlays) {
    const Planned planned(bank(2));
    EXPECT_EQ(figuresOf(planned, {SpacerWidth}), "1 1/4 in − 1/4 in − 1/4 in = 3/4 in");
    EXPECT_EQ(figuresOf(planned, {GapBottom, 0}), "1 1/4 in − 1/4 in − 1/4 in = 3/4 in");
    EXPECT_EQ(figuresOf(planned, {MemberReveal, 4}), "1 1/4 in − 1/4 in − 1/4 in = 3/4 in");
}

TEST(Derivation, OfAStopTellsBothWaysToSetItUp) {
    const Planned planned(oneOpening(Length::inches(12), Length::inches(6)));
    EXPECT_EQ(figuresOf(planned, {StopFromFarEdge}), "1 1/2 in − 1/4 in = 1 1/4 in");
    EXPECT_EQ(figuresOf(planned, {StopFromOpening}), "1/4 in");
}

TEST(Derivation, OfOverlaysThatFollowFromAGapHalvesWhatItLeaves) {
    const SideFit gap{Fit::Gap, n64(8)};
    const Planned both(sideBySide(gap, gap, Length::inches(2)));
    EXPECT_EQ(figuresOf(both, {OverlayRight, 0}), "(2 in − 1/8 in) / 2 = 15/16 in");
    EXPECT_EQ(figuresOf(both, {GapRight, 0}), "1/8 in");
    EXPECT_EQ(derived(both, {GapRight, 0}).source.kind, SourceKind::Maker);
    const Planned one(sideBySide(gap, {Fit::Overlay, n64(16)}, Length::inches(2)));
    EXPECT_EQ(figuresOf(one, {OverlayRight, 0}), "2 in − 1/8 in − 1/4 in = 1 5/8 in");
    EXPECT_EQ(figuresOf(one, {GapLeft, 1}), "2 in − 1/4 in − 1 5/8 in = 1/8 in");
}

TEST(Derivation, OfABoxFollowsTheRunnersClearances) {
    const Planned planned(oneOpening(Length::inches(13), Length::inches(6)));
    EXPECT_EQ(figuresOf(planned, {BoxWidth}), "13 in − 2 × 1/16 in = 12 7/8 in");
    EXPECT_EQ(figuresOf(planned, {BoxHeight}), "6 in − 1/8 in − 1/4 in = 5 5/8 in");
    EXPECT_EQ(figuresOf(planned, {BottomTop}), "1/4 in + 1/4 in = 1/2 in");
    EXPECT_EQ(figuresOf(planned, {BoxSetback}), "0 in");
    EXPECT_EQ(derived(planned, {BoxDepth}).source.kind, SourceKind::Maker);
}

TEST(Derivation, OfAScrewTellsItsWindow) {
    const Planned planned(oneOpening(Length::inches(13), Length::inches(6)));
    EXPECT_EQ(figuresOf(planned, {ScrewLeastLength}), "1/2 in − 1/8 in + 3/8 in = 3/4 in");
    EXPECT_EQ(figuresOf(planned, {ScrewGreatestLength}),
              "1/2 in − 1/8 in + 3/4 in − 1/8 in = 1 in");
    EXPECT_EQ(figuresOf(planned, {ScrewLength}), "3/4 in ≤ 1 in ≤ 1 in = 1 in");
    EXPECT_EQ(figuresOf(planned, {ScrewPenetration}), "1 in + 1/8 in − 1/2 in = 5/8 in");
    EXPECT_EQ(figuresOf(planned, {ScrewTipCover}), "3/4 in − 5/8 in = 1/8 in");
}

TEST(Derivation, OfTheLeastHoleHeightNamesWhatDecidesIt) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    const Planned byTool(project);
    EXPECT_EQ(figuresOf(byTool, {LeastHoleHeight}), "1/2 in + 5/16 in = 13/16 in");
    project.fronts.mounting.toolDiameter = n64(24);
    const Planned byMargin(project);
    EXPECT_EQ(figuresOf(byMargin, {LeastHoleHeight}, sixtyFourths),
              "1/2 in + 5/32 in + 1/8 in = 25/32 in");
    EXPECT_EQ(derived(byMargin, {LeastHoleHeight}).formula,
              "top of the bottom + head radius + margin");
}

TEST(Derivation, OfAHandleHoleStartsFromTheHandlesCentre) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.form = "pull-96";
    const Planned planned(std::move(project));
    EXPECT_EQ(figuresOf(planned, {HandleX, 0, 0}, millimetres),
              "342.9 mm / 2 − 48 mm ≈ 123.5 mm"); // 123.45 mm
    EXPECT_EQ(figuresOf(planned, {HandleX, 0, 1}, millimetres), "342.9 mm / 2 + 48 mm ≈ 219.5 mm");
    EXPECT_EQ(figuresOf(planned, {HandleY, 0, 0}), "6 1/2 in / 2 = 3 1/4 in");
}

TEST(Derivation, OfABoltAddsUpWhatItGoesThrough) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.counterbore = n64(8);
    const Planned planned(std::move(project));
    EXPECT_EQ(figuresOf(planned, {BoltGrip, 0, 0}), "3/4 in + 1/2 in − 1/8 in = 1 1/8 in");
    EXPECT_EQ(figuresOf(planned, {BoltGrip, 0, 1}), "3/4 in − 1/8 in = 5/8 in");
    EXPECT_EQ(derived(planned, {BoltGrip, 0, 0}).formula, "front + wall − counterbore");
    EXPECT_EQ(figuresOf(planned, {BoltLeastLength, 0, 1}, millimetres),
              "≈ 15.9 mm + 6 mm ≈ 21.9 mm"); // 21.875 mm
}

TEST(Derivation, CallsAMakersDecisionWhatItIs) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.mounting.length = n64(80);
    project.limits.leastPenetration = n64(20);
    const Planned planned(std::move(project));
    const Derivation length = derived(planned, {ScrewLength});
    EXPECT_EQ(length.formula, "as given");
    EXPECT_EQ(length.figures, "1 1/4 in");
    EXPECT_EQ(length.source, (Source{SourceKind::Maker, "as the maker decided"}));
    EXPECT_EQ(derived(planned, {ScrewLeastLength}).source.kind, SourceKind::Maker);
    EXPECT_EQ(derived(planned, {ScrewGreatestLength}).source.kind, SourceKind::CommonPractice);
}

TEST(Derivation, IsMissingWhereThePlanHasNoSuchNumber) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.form.clear();
    project.fronts.thickness = n64(24); // nothing fits
    const Planned planned(std::move(project));
    const auto has = [&](Quantity quantity) {
        return derive(planned.project, planned.plan, quantity, sixteenths).has_value();
    };
    EXPECT_FALSE(has({ScrewLength}));
    EXPECT_FALSE(has({ScrewTipCover}));
    EXPECT_TRUE(has({ScrewLeastLength}));
    EXPECT_FALSE(has({HandleX}));
    EXPECT_FALSE(has({BoltGrip}));
    EXPECT_FALSE(has({SpacerWidth}));
    EXPECT_FALSE(has({FrontWidth, 1}));
    EXPECT_FALSE(has({FrontWidth, 0, 1}));
    EXPECT_FALSE(has({HoleX, 0, 4}));
    EXPECT_FALSE(has({MemberWidth, 4}));
}

TEST(Quantities, AreThePlansOwnNumbers) {
    const Planned planned(bank(2));
    const FrontPlan& front = planned.front(1);
    const auto value = [&](QuantityKind kind, std::uint32_t index = 0) {
        return valueOf(planned.plan, {kind, 1, index});
    };
    EXPECT_EQ(value(OpeningHeight), front.openingRect.height());
    EXPECT_EQ(value(FrontHeight), front.rect.height());
    EXPECT_EQ(value(FrontThickness), front.thickness);
    EXPECT_EQ(value(OverlayTop), front.overlay.top);
    EXPECT_EQ(value(GapTop), front.neighbours.top.gap);
    EXPECT_EQ(value(FieldHeight), front.field.height());
    EXPECT_EQ(value(BoxDepth), front.box.depth);
    EXPECT_EQ(value(ScrewLength), front.mounting.length);
    EXPECT_EQ(value(HoleX, 2), front.mounting.holes[2].at.x);
    EXPECT_EQ(value(HandleY), front.hardware->holes[0].y);
    EXPECT_EQ(value(BoltGreatestLength, 1), front.hardware->ways[1].greatestLength);
    EXPECT_EQ(value(WoodUnderHead, 2), front.hardware->ways[2].leftUnderHead);
    EXPECT_EQ(valueOf(planned.plan, {CaseWidth}), planned.plan.outline.width());
    EXPECT_EQ(valueOf(planned.plan, {MemberLength, 4}), planned.plan.members[4].rect.width());
}

TEST(Quantities, OfAFrontComeInTheOrderInWhichTheyAreShown) {
    const Planned planned(bank(2));
    const auto listed = quantitiesOfFront(planned.plan, 1);
    EXPECT_TRUE(std::is_sorted(listed.begin(), listed.end()));
    EXPECT_EQ(listed.front(), (Quantity{OpeningWidth, 1}));
    EXPECT_EQ(listed.back(), (Quantity{WoodUnderHead, 1, 2}));
    for (const Quantity quantity : listed)
        EXPECT_EQ(quantity.item, 1U);
}

TEST(Quantities, AreAllListedOnce) {
    const Planned planned(banks(2, 3));
    const auto all = allQuantities(planned.plan);
    EXPECT_EQ(std::set<Quantity>(all.begin(), all.end()).size(), all.size());
    std::set<QuantityKind> kinds;
    for (const Quantity quantity : all)
        kinds.insert(quantity.kind);
    EXPECT_EQ(kinds.size(), static_cast<std::size_t>(StopFromOpening) + 1);
}

TEST(QuantityKeys, AreStableNamesInLowerCaseAllDifferent) {
    EXPECT_EQ(key(FrontWidth), "front_width");
    EXPECT_EQ(key(OverlayLeft), "overlay_left");
    EXPECT_EQ(key(StopFromFarEdge), "stop_from_far_edge");
    std::set<std::string_view> keys, names;
    for (int kind = 0; kind <= static_cast<int>(StopFromOpening); ++kind) {
        keys.insert(key(static_cast<QuantityKind>(kind)));
        names.insert(nameOf(static_cast<QuantityKind>(kind)));
    }
    EXPECT_EQ(keys.size(), static_cast<std::size_t>(StopFromOpening) + 1);
    EXPECT_EQ(names.size(), keys.size());
}

TEST(Derivations, SumUpInEveryStyle) {
    for (const LengthStyle style : {sixteenths, sixtyFourths, millimetres}) {
        expectFiguresGiveTheValue(Planned(banks(2, 3)), style);
        expectFiguresGiveTheValue(
            Planned(sideBySide({Fit::Gap, n64(8)}, {Fit::Inset, n64(4)}, Length::inches(2))),
            style);
    }
}

TEST(Derivations, SumUpForEveryPlacingAndWay) {
    for (const Placing placing : {Placing::CentredOnFront, Placing::CentredInField,
                                  Placing::FromTop, Placing::OpticalCentre})
        for (const MountingWay way : allMountingWays) {
            Project project = banks(2, 2);
            project.fronts.profile = {ProfileFamily::Raised, n64(48), n64(16), n64(8),
                                      PerSide<bool>{true, false, true, true}};
            HardwareSpec& hardware = project.fronts.hardware;
            hardware.form = "pull-96";
            hardware.placing = placing;
            hardware.way = way;
            hardware.distance = n64(100);
            hardware.twoPast = Length::inches(10);
            hardware.boltLength = n64(72);
            project = withChoices(std::move(project), 1, [&](FrontChoices& choices) {
                choices.hardware = testing::smallDefaults().hardware;
                choices.hardware->placedAt = FrontPoint{n64(300), n64(200)};
            });
            expectFiguresGiveTheValue(Planned(std::move(project)), sixtyFourths);
        }
}

TEST(Derivations, SumUpInCasesByChance) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const Planned planned(randomProject(seed));
        expectFiguresGiveTheValue(planned, sixtyFourths);
        expectFiguresGiveTheValue(planned, millimetres);
    }
}

} // namespace
} // namespace frontwright
