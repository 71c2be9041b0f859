// One page as poppler draws it at 600 dots per inch, measured in dots.

#include "tests/paper/readers.h"
#include "tests/paper/sample_pages.h"

#include <gtest/gtest.h>

#include <cmath>
#include <optional>

namespace frontwright::testing {
namespace {

constexpr int dotsPerInch = 600;
constexpr double mmPerDot = 25.4 / dotsPerInch;
constexpr double dotTolerance = 0.05; // mm
constexpr int dark = 128;

class DrawnPage {
public:
    explicit DrawnPage(QImage image, double heightMm)
        : m_image(std::move(image)),
          m_height(heightMm) {}

    /// Grey in 0 (black) … 255 at a dot.
    [[nodiscard]] int grey(int x, int y) const {
        if (!m_image.valid(x, y))
            return 255;
        return m_image.constScanLine(y)[x];
    }
    [[nodiscard]] int dotX(double mm) const { return static_cast<int>(std::floor(mm / mmPerDot)); }
    [[nodiscard]] int dotY(double mm) const {
        return static_cast<int>(std::floor((m_height - mm) / mmPerDot));
    }
    /// Weighted middle in mm of the ink on a level line of dots between two places; the page's x.
    [[nodiscard]] std::optional<double> inkAcross(double xFrom, double xTo, double y) const {
        double ink = 0;
        double moment = 0;
        for (int x = dotX(xFrom); x <= dotX(xTo); ++x) {
            const double weight = 255 - grey(x, dotY(y));
            ink += weight;
            moment += weight * (x + 0.5) * mmPerDot;
        }
        return ink < dark ? std::nullopt : std::optional(moment / ink);
    }
    /// The same on an upright line of dots; the page's y.
    [[nodiscard]] std::optional<double> inkUp(double yFrom, double yTo, double x) const {
        double ink = 0;
        double moment = 0;
        for (int y = dotY(yTo); y <= dotY(yFrom); ++y) {
            const double weight = 255 - grey(dotX(x), y);
            ink += weight;
            moment += weight * (m_height - (y + 0.5) * mmPerDot);
        }
        return ink < dark ? std::nullopt : std::optional(moment / ink);
    }

private:
    QImage m_image;
    double m_height;
};

std::optional<PointMm> markAt(const Page& page, const std::string& kind, const std::string& part) {
    for (const PageMark& mark : page.marks)
        if (mark.kind == kind && mark.part.find(part) != std::string::npos)
            return PointMm(mark.x, mark.y);
    return std::nullopt;
}

class DrawnTemplate : public ::testing::Test {
protected:
    void SetUp() override {
        const auto all = pagesOf({"glaze-chest", "A4", Orientation::Portrait});
        std::size_t index = 0;
        while (index < all.size() && !markAt(all[index], "hole", "hole"))
            ++index;
        ASSERT_LT(index, all.size());
        page = all[index];
        const PdfFile file(pdfBytes(all));
        QImage image = pageDrawnByPoppler(file.path(), static_cast<int>(index) + 1, dotsPerInch);
        ASSERT_FALSE(image.isNull());
        EXPECT_NEAR(image.width() * mmPerDot, page.width, mmPerDot);
        EXPECT_NEAR(image.height() * mmPerDot, page.height, mmPerDot);
        drawn.emplace(std::move(image), page.height);
    }
    Page page;
    std::optional<DrawnPage> drawn;
};

TEST_F(DrawnTemplate, HasALevelCheckBarOf100Millimetres) {
    const auto from = markAt(page, "check-bar", "100 mm across / from");
    const auto to = markAt(page, "check-bar", "100 mm across / to");
    ASSERT_TRUE(from && to);
    // Beside the bar itself, where only the end ticks are.
    const double beside = from->y() + 0.5;
    const auto left = drawn->inkAcross(from->x() - 0.4, from->x() + 0.4, beside);
    const auto right = drawn->inkAcross(to->x() - 0.4, to->x() + 0.4, beside);
    ASSERT_TRUE(left && right);
    EXPECT_NEAR(*right - *left, 100, dotTolerance);
    EXPECT_NEAR(*left, from->x(), dotTolerance);
}

TEST_F(DrawnTemplate, HasAnUprightCheckBarOf100Millimetres) {
    const auto from = markAt(page, "check-bar", "100 mm up / from");
    const auto to = markAt(page, "check-bar", "100 mm up / to");
    ASSERT_TRUE(from && to);
    const double beside = from->x() - 0.5;
    const auto low = drawn->inkUp(from->y() - 0.4, from->y() + 0.4, beside);
    const auto high = drawn->inkUp(to->y() - 0.4, to->y() + 0.4, beside);
    ASSERT_TRUE(low && high);
    EXPECT_NEAR(*high - *low, 100, dotTolerance);
    EXPECT_NEAR(*low, from->y(), dotTolerance);
}

TEST_F(DrawnTemplate, HasAHoleAtItsPlace) {
    const PointMm at = *markAt(page, "hole", "hole");
    const CircleMark* circle = nullptr;
    for (const Mark& mark : page.drawing.marks)
        if (const auto* found = std::get_if<CircleMark>(&mark.shape))
            if (mark.layer == Layer::Hole && (found->centre - at).norm() < 1e-6)
                circle = found;
    ASSERT_NE(circle, nullptr);
    // Where lines just off its cross, clear of the centre lines, meet its rim on both sides.
    const double off = circle->radius / 2;
    const double half = std::sqrt(circle->radius * circle->radius - off * off);
    const auto left = drawn->inkAcross(at.x() - half - 0.25, at.x() - half + 0.25, at.y() + off);
    const auto right = drawn->inkAcross(at.x() + half - 0.25, at.x() + half + 0.25, at.y() + off);
    const auto low = drawn->inkUp(at.y() - half - 0.25, at.y() - half + 0.25, at.x() + off);
    const auto high = drawn->inkUp(at.y() + half - 0.25, at.y() + half + 0.25, at.x() + off);
    ASSERT_TRUE(left && right && low && high);
    EXPECT_NEAR((*left + *right) / 2, at.x(), dotTolerance);
    EXPECT_NEAR((*low + *high) / 2, at.y(), dotTolerance);
    EXPECT_NEAR(*right - *left, 2 * half, 2 * dotTolerance);
    EXPECT_NEAR(*high - *low, 2 * half, 2 * dotTolerance);
}

} // namespace
} // namespace frontwright::testing
