#include "core/sheets/correction.h"

#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

#include <map>

namespace frontwright {
namespace {

using testing::coveredBy;
using testing::laid;
using testing::onPaper;
using testing::says;
using testing::shopWith;

/// A 14 in × 8 in opening with a handle: several A4 tiles.
std::unique_ptr<testing::Shop> drawer() {
    Project project = testing::oneOpening(Length::inches(14), Length::inches(8));
    project.fronts.hardware.form = "pull-96";
    return shopWith(std::move(project));
}
SheetOptions corrected(double across, double up, const char* paper = "A4") {
    SheetOptions options = onPaper(paper);
    options.calibration[0] = {across, up};
    options.printer = "Shop printer";
    return options;
}
/// Lengths of the bars by name, as they are drawn.
std::map<std::string, double> bars(const Page& page) {
    std::map<std::string, PointMm> ends;
    for (const PageMark& mark : testing::marksOfKind(page, "check-bar"))
        ends[mark.part] = {mark.x, mark.y};
    std::map<std::string, double> lengths;
    for (const auto& [name, at] : ends)
        if (const auto to = name.rfind(" / to"); to != std::string::npos)
            lengths[name.substr(0, to)] = (at - ends.at(name.substr(0, to) + " / from")).norm();
    return lengths;
}

TEST(Correction, DrawsEveryBarLongerByItsDirectionsFactor) {
    const auto shop = drawer();
    for (const Page& page : laid(*shop, corrected(1.01, 0.99))) {
        EXPECT_NEAR(bars(page).at("100 mm across"), 101.0, 1e-9);
        EXPECT_NEAR(bars(page).at("100 mm up"), 99.0, 1e-9);
        EXPECT_NEAR(bars(page).at("4 in across"), 101.6 * 1.01, 1e-9);
    }
}

TEST(Correction, KeepsThePapersSizeAndTheMarginsOnIt) {
    const auto shop = drawer();
    for (const auto& [across, up] : {std::array{1.02, 1.02}, {0.98, 0.98}, {1.015, 0.985}})
        for (const char* paper : {"A4", "Letter", "A2"}) {
            const SheetOptions options = corrected(across, up, paper);
            const double m = options.margin.inMillimetres() * std::min({1.0, across, up}) - 1e-5;
            for (const Page& page : laid(*shop, options)) {
                EXPECT_NEAR(page.width, options.paper.width.inMillimetres(), 1e-5);
                EXPECT_NEAR(page.height, options.paper.height.inMillimetres(), 1e-5);
                const BoxMm inside(PointMm(m, m), PointMm(page.width - m, page.height - m));
                for (const Mark& mark : page.drawing.marks)
                    EXPECT_TRUE(inside.contains(coveredBy(mark)))
                        << paper << " " << across << " " << page.label;
            }
        }
}

TEST(Correction, IsToldOnEveryPageAndSoIsItsAbsence) {
    const auto shop = drawer();
    for (const Page& page : laid(*shop, corrected(1.0042, 0.9983)))
        EXPECT_TRUE(
            says(page, "corrected for Shop printer: \u00d7 1.0042 across, \u00d7 0.9983 up"));
    for (const Page& page : laid(*shop, onPaper("A4")))
        EXPECT_TRUE(says(page, "not corrected"));
}

TEST(Correction, OfUprightPagesLeavesLandscapeOnesAlone) {
    const auto shop = drawer();
    SheetOptions options = corrected(1.01, 1.01);
    options.orientation = Orientation::Landscape;
    for (const Page& page : laid(*shop, options)) {
        EXPECT_NEAR(bars(page).at("100 mm across"), 100.0, 1e-9);
        EXPECT_TRUE(says(page, "not corrected"));
    }
    options.calibration[1] = {1, 1.005};
    for (const Page& page : laid(*shop, options))
        EXPECT_NEAR(bars(page).at("100 mm up"), 100.5, 1e-9);
}

TEST(Correction, LeavesDrillCirclesRoundAndOfTheirSize) {
    const auto shop = drawer();
    const auto radii = [](const std::vector<Page>& pages) {
        std::multiset<double> all;
        for (const Page& page : pages)
            for (const Mark& mark : page.drawing.marks)
                if (const auto* circle = std::get_if<CircleMark>(&mark.shape);
                    circle != nullptr && mark.layer == Layer::Hole)
                    all.insert(circle->radius);
        return std::set<double>(all.begin(), all.end());
    };
    EXPECT_EQ(radii(laid(*shop, corrected(1.02, 0.98))), radii(laid(*shop, onPaper("A4"))));
}

TEST(FactorText, HasFourDecimals) {
    EXPECT_EQ(factorText(1), "1.0000");
    EXPECT_EQ(factorText(1.00416), "1.0042");
    EXPECT_EQ(factorText(0.98), "0.9800");
    EXPECT_EQ(factorText(0.999951), "1.0000");
}

} // namespace
} // namespace frontwright
