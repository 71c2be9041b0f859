#include "core/plan/quantity.h"

#include "core/lengths/format.h"
#include "core/lengths/parse.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::millimetres;
using testing::n64;
using testing::sixteenths;
using testing::sixtyFourths;

using testing::banks;
using testing::Planned;
using testing::randomProject;
using testing::sideBySide;
using testing::withChoices;

Derivation derived(const Planned& planned, Quantity quantity, LengthStyle style) {
    auto derivation = derive(planned.project, planned.plan, quantity, style);
    EXPECT_TRUE(derivation.has_value()) << key(quantity.kind);
    return derivation.value_or(Derivation{});
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
        const auto high = sum(figures.substr(second + bound.size()));
        const auto middle =
            sum(figures.substr(first + bound.size(), second - first - bound.size()));
        const bool isInOrder = low && high && middle && *low <= *middle && *middle <= *high;
        return isInOrder ? middle : std::nullopt;
    }
    /// What all the roundings in the figures together may come to: half a step for each number,
    /// steps of the decimals that terms are written with where no fraction is exact.
    [[nodiscard]] Length tolerance(const std::string& figures) const {
        const bool inInches = m_style.unit == Unit::Inch;
        const Length step = inInches ? Length::fromNanometres(2'540) : Length::fromMicrometres(1);
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
        if (!derivation.value.isLength())
            continue; // forces and weights: holding_quantities_test.cpp
        EXPECT_EQ(derivation.value, valueOf(planned.plan, quantity));
        const auto computed = reader.computed(derivation.figures.english());
        ASSERT_TRUE(computed.has_value())
            << derivation.name << ": cannot read " << derivation.figures;
        EXPECT_LE((*computed - derivation.value.length()).magnitude(),
                  reader.tolerance(derivation.figures.english()))
            << derivation.name << " = " << derivation.formula << ": " << derivation.figures;
        EXPECT_NE(derivation.figures.english().find(shown(quantity.kind, derivation.value, style)),
                  std::string::npos)
            << derivation.figures;
        EXPECT_FALSE(derivation.formula.empty());
        EXPECT_FALSE(derivation.source.title.empty());
        EXPECT_FALSE(derivation.inputs.empty());
    }
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
