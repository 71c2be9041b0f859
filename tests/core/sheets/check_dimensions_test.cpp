#include "core/sheets/check_dimensions.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

constexpr LengthStyle metric{Unit::Millimetre, 16};
const Length width = Length::millimetres(400);
const Length height = Length::millimetres(150);

struct Hole {
    Length x;
    Length y;
};

Template checkedWith(const std::vector<Hole>& holes) {
    TemplateDraft draft(TemplateKind::Front, text("Front A1"),
                        BoxMm(PointMm(0, 0), PointMm(400, 150)), OpeningId{5});
    const PointMm through =
        holes.empty() ? PointMm(200, 75)
                      : PointMm(holes.front().x.inMillimetres(), holes.front().y.inMillimetres());
    addChecks(draft, metric, width, height, firstToLast(holes, [](const Hole& h) { return h.x; }),
              firstToLast(holes, [](const Hole& h) { return h.y; }), through);
    return draft.finished({}, {}, {});
}
std::vector<std::string> checks(const Template& part) {
    std::vector<std::string> texts;
    for (const TemplateLabel& label : part.labels)
        texts.push_back(label.lines.front());
    return texts;
}
Hole at(std::int64_t x, std::int64_t y) {
    return {Length::millimetres(x), Length::millimetres(y)};
}

TEST(FirstToLast, IsTheDistanceOfTheOuterHolesInAnyOrder) {
    const std::vector<Hole> holes{at(150, 75), at(40, 75), at(310, 75)};
    const CheckedStretch stretch = firstToLast(holes, [](const Hole& h) { return h.x; });
    EXPECT_DOUBLE_EQ(stretch.from, 40);
    EXPECT_DOUBLE_EQ(stretch.to, 310);
    EXPECT_EQ(stretch.value, Length::millimetres(270));
}

TEST(FirstToLast, OfOneHoleOrNoneIsNothing) {
    const auto x = [](const Hole& h) { return h.x; };
    EXPECT_TRUE(firstToLast(std::vector<Hole>{at(40, 75)}, x).value.isZero());
    EXPECT_TRUE(firstToLast(std::vector<Hole>{}, x).value.isZero());
}

TEST(OverallChecks, WithoutHolesRunFromEdgeToEdge) {
    const std::vector<std::string> expected{"overall check: 400 mm", "overall check: 150 mm"};
    EXPECT_EQ(checks(checkedWith({})), expected);
    EXPECT_EQ(checks(checkedWith({at(200, 75)})), expected);
}

TEST(OverallChecks, OfHolesFarApartReplaceTheWidth) {
    const std::vector<std::string> expected{"overall check: 320 mm", "overall check: 150 mm"};
    EXPECT_EQ(checks(checkedWith({at(40, 75), at(360, 75)})), expected);
}

// 96 mm of 400 mm would leave most joints unproved.
TEST(OverallChecks, OfHolesNearTogetherStandBesideTheWidth) {
    const std::vector<std::string> expected{"overall check: 96 mm", "overall check: 400 mm",
                                            "overall check: 150 mm"};
    EXPECT_EQ(checks(checkedWith({at(152, 75), at(248, 75)})), expected);
}

TEST(OverallChecks, OfFourCornersRunBothWays) {
    const std::vector<std::string> expected{"overall check: 340 mm", "overall check: 110 mm"};
    EXPECT_EQ(checks(checkedWith({at(30, 20), at(370, 20), at(30, 130), at(370, 130)})), expected);
}

TEST(OverallChecks, StayInsideThePart) {
    for (const auto& holes : {std::vector<Hole>{}, std::vector<Hole>{at(40, 75), at(360, 75)}})
        for (const TemplateLabel& label : checkedWith(holes).labels) {
            const auto& line = std::get<LineMark>(label.beside);
            const BoxMm whole(PointMm(0, 0), PointMm(400, 150));
            EXPECT_TRUE(whole.contains(line.from) && whole.contains(line.to));
        }
}

} // namespace
} // namespace frontwright
