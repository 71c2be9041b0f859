// Every mark that a page promises is found in the finished PDF, where it promises it, by mupdf.

#include "tests/paper/readers.h"
#include "tests/paper/sample_pages.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace frontwright::testing {
namespace {

constexpr double tolerance = 0.001; // mm

double distanceToNearest(const std::vector<PointMm>& points, const PointMm& at) {
    double nearest = 1e9;
    for (const PointMm& p : points)
        nearest = std::min(nearest, (p - at).norm());
    return nearest;
}

std::vector<PointMm> centresOf(const ReadPage& page) {
    std::vector<PointMm> centres;
    for (const ReadCircle& circle : page.circles)
        centres.push_back(circle.centre);
    return centres;
}

std::vector<PointMm> middlesOf(const ReadPage& page) {
    std::vector<PointMm> middles;
    for (const auto& [from, to] : page.lines)
        middles.emplace_back((from + to) / 2);
    return middles;
}

/// A hole that the page cuts off is an open path round its centre: every point of it is read back
/// and is as far from the centre as all others.
bool isCutOffHole(const Page& page, const ReadPage& read, const PointMm& centre) {
    return std::any_of(page.drawing.marks.begin(), page.drawing.marks.end(), [&](const Mark& mark) {
        const auto* path = std::get_if<PathMark>(&mark.shape);
        if (!path || mark.layer != Layer::Hole || path->points.size() < 3)
            return false;
        const double radius = (path->points.front() - centre).norm();
        return std::all_of(path->points.begin(), path->points.end(), [&](const PointMm& p) {
            return std::abs((p - centre).norm() - radius) < tolerance &&
                   distanceToNearest(read.ends, p) < tolerance;
        });
    });
}

/// Holes are centres of circles, register crosses middles of lines, all else ends of lines.
double offBy(const Page& page, const ReadPage& read, const PageMark& mark) {
    const PointMm at(mark.x, mark.y);
    if (mark.kind == "hole")
        return isCutOffHole(page, read, at) ? 0 : distanceToNearest(centresOf(read), at);
    if (mark.kind == "register")
        return distanceToNearest(middlesOf(read), at);
    return distanceToNearest(read.ends, at);
}

using Pages = std::vector<Page>;
using ReadPages = std::vector<ReadPage>;

void expectEveryMark(const Pages& all, const ReadPages& read) {
    std::set<std::string> kinds;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (const PageMark& mark : all[i].marks) {
            kinds.insert(mark.kind);
            EXPECT_LE(offBy(all[i], read[i], mark), tolerance)
                << all[i].label << ": " << mark.kind << " " << mark.part << " at " << mark.x << ", "
                << mark.y;
        }
    for (const char* kind : {"hole", "corner", "check-bar", "trim", "register", "dimension"})
        EXPECT_TRUE(kinds.contains(kind)) << kind;
}

/// 100 mm and 4 in, level and upright, on every page.
void expectCheckBars(const Pages& all, const ReadPages& read) {
    for (std::size_t i = 0; i < all.size(); ++i)
        for (const double length : {100.0, 101.6}) {
            int level = 0;
            int upright = 0;
            for (const auto& [from, to] : read[i].lines) {
                const PointMm size = (to - from).cwiseAbs();
                level += std::abs(size.x() - length) < tolerance && size.y() < tolerance;
                upright += std::abs(size.y() - length) < tolerance && size.x() < tolerance;
            }
            EXPECT_GE(level, 1) << all[i].label << ", " << length;
            EXPECT_GE(upright, 1) << all[i].label << ", " << length;
        }
}

void expectEveryCircle(const Pages& all, const ReadPages& read) {
    int compared = 0;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (const Mark& mark : all[i].drawing.marks) {
            const auto* circle = std::get_if<CircleMark>(&mark.shape);
            if (!circle)
                continue;
            ++compared;
            EXPECT_TRUE(std::any_of(read[i].circles.begin(), read[i].circles.end(),
                                    [&](const ReadCircle& found) {
                                        return (found.centre - circle->centre).norm() < tolerance &&
                                               std::abs(found.radius - circle->radius) < tolerance;
                                    }))
                << all[i].label << ": " << mark.part.name;
        }
    EXPECT_GT(compared, 0);
}

class PrintedTemplates : public ::testing::TestWithParam<OnPaper> {};

// One test, since reading the pages back is what takes time.
TEST_P(PrintedTemplates, HaveMarksBarsAndCirclesWhereThePagesSayIt) {
    const Pages all = pagesOf(GetParam());
    const PdfFile file(pdfBytes(all));
    const ReadPages read = pagesReadByMupdf(file.path());
    ASSERT_EQ(read.size(), all.size());
    expectEveryMark(all, read);
    expectCheckBars(all, read);
    expectEveryCircle(all, read);
}

INSTANTIATE_TEST_SUITE_P(EverySample, PrintedTemplates, ::testing::ValuesIn(allOnPaper()),
                         [](const auto& given) { return nameOf(given.param); });

} // namespace
} // namespace frontwright::testing
