#include "core/sheets/calibration_sheet.h"

#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::coveredBy;
using testing::says;

/// Length of a bar as it is drawn, by the beginning of its name.
double drawn(const Page& page, const std::string& name) {
    PointMm from(0, 0), to(0, 0);
    for (const PageMark& mark : page.marks)
        if (mark.part.rfind(name, 0) == 0)
            (mark.part.ends_with("from") ? from : to) = {mark.x, mark.y};
    return (to - from).norm();
}

CalibrationRequest onA(const char* paper, Orientation orientation = Orientation::Portrait) {
    CalibrationRequest request;
    request.paper = paperNamed(paper).value();
    request.orientation = orientation;
    request.printer = "Shop printer";
    return request;
}

TEST(TestPage, HasABarEachWayAsLongAsItIsToldToBe) {
    for (const char* paper : {"A5", "A4", "Letter", "A3", "A0", "roll 610 mm"})
        for (Orientation orientation : {Orientation::Portrait, Orientation::Landscape})
            for (Unit unit : {Unit::Millimetre, Unit::Inch}) {
                CalibrationRequest request = onA(paper, orientation);
                request.unit = unit;
                const auto sheet = calibrationSheet(request);
                ASSERT_TRUE(sheet.ok()) << paper << ": " << sheet.error().sentence();
                const Page& page = sheet.value().page;
                EXPECT_NEAR(drawn(page, "A, "), sheet.value().nominal.across.inMillimetres(), 1e-6);
                EXPECT_NEAR(drawn(page, "B, "), sheet.value().nominal.up.inMillimetres(), 1e-6);
                EXPECT_GT(sheet.value().nominal.across.inMillimetres(), 0.6 * page.width) << paper;
                EXPECT_GT(sheet.value().nominal.up.inMillimetres(), 0.6 * page.height) << paper;
            }
}

TEST(TestPage, OfTheFirstPrintIsNotCorrectedAndSaysSo) {
    const Page page = calibrationSheet(onA("A4")).value().page;
    EXPECT_NEAR(drawn(page, "100 mm across"), 100, 1e-9);
    EXPECT_TRUE(says(page, "Nothing on this page is corrected."));
    EXPECT_TRUE(says(page, "Printer Shop printer, paper A4, upright."));
    EXPECT_TRUE(says(page, "Print at 100 % / Actual size, not Fit."));
}

TEST(TestPage, OfTheProofIsDrawnWithTheFactors) {
    CalibrationRequest request = onA("Letter", Orientation::Landscape);
    request.factors = {1.01, 0.99};
    const auto sheet = calibrationSheet(request).value();
    EXPECT_NEAR(drawn(sheet.page, "A, "), sheet.nominal.across.inMillimetres() * 1.01, 1e-6);
    EXPECT_NEAR(drawn(sheet.page, "B, "), sheet.nominal.up.inMillimetres() * 0.99, 1e-6);
    EXPECT_TRUE(says(sheet.page, "\u00d7 1.0100 across, \u00d7 0.9900 up."));
}

TEST(TestPage, KeepsItsMarginsAndItsTextsApart) {
    for (const char* paper : {"A5", "A4", "Letter", "Tabloid", "roll 24 in"})
        for (Orientation orientation : {Orientation::Portrait, Orientation::Landscape})
            for (double factor : {1.0, 0.98, 1.02}) {
                CalibrationRequest request = onA(paper, orientation);
                request.factors = {factor, factor};
                const Page page = calibrationSheet(request).value().page;
                const double m = 10 * std::min(1.0, factor) - 1e-5;
                const BoxMm inside(PointMm(m, m), PointMm(page.width - m, page.height - m));
                for (const Mark& mark : page.drawing.marks) {
                    EXPECT_TRUE(inside.contains(coveredBy(mark))) << paper << " " << factor;
                    const auto* text = std::get_if<TextMark>(&mark.shape);
                    for (const Mark& other : page.drawing.marks) {
                        if (text == nullptr || &other == &mark)
                            continue;
                        const BoxMm common = coveredBy(mark).intersection(coveredBy(other));
                        EXPECT_TRUE(common.isEmpty() || common.sizes().minCoeff() <= 0)
                            << paper << ": " << text->text;
                    }
                }
            }
}

TEST(TestPage, IsRefusedWhereThePaperIsTooSmall) {
    CalibrationRequest request = onA("A4");
    request.paper = sheetOf(Length::millimetres(90), Length::millimetres(120)).value();
    EXPECT_FALSE(calibrationSheet(request).ok());
}

} // namespace
} // namespace frontwright
