// Live sizes, the difference and why a member is held stand apart.

#include "ui/elevation/tag_boxes.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

using Tags = std::vector<Emphasis::Tag>;

/// Where they come to lie, in pixels, y down.
std::vector<QRectF> placed(const Tags& tags, double pixelsPerMm) {
    std::vector<QRectF> boxes = tagBoxes(tags, pixelsPerMm);
    for (std::size_t i = 0; i < boxes.size(); ++i)
        boxes[i].translate(tags[i].at.x() * pixelsPerMm, -tags[i].at.y() * pixelsPerMm);
    return boxes;
}

TEST(TagBoxes, StandRoundTheirPlacesWhereThereIsRoom) {
    const Tags tags{{{0, 0}, QStringLiteral("5 1/2 in"), {}},
                    {{0, 100}, QStringLiteral("6 1/2 in"), {}}};
    for (const QRectF& box : tagBoxes(tags, 1)) {
        EXPECT_NEAR(box.center().x(), 0, 1);
        EXPECT_NEAR(box.center().y(), 0, 1);
    }
}

TEST(TagBoxes, NeverMeetHoweverNearTheirPlacesAre) {
    const Tags tags{{{0, 30}, QStringLiteral("5 1/2 in"), {}},
                    {{0, -30}, QStringLiteral("6 1/2 in"), {}},
                    {{0, 0}, QStringLiteral("+0 in"), {}},
                    {{4, -2}, QStringLiteral("sizes above are locked"), {}},
                    {{4, -2}, QStringLiteral("sizes below are locked"), {}}};
    for (const double pixelsPerMm : {0.05, 0.2, 0.6, 1.0, 5.0}) {
        const auto boxes = placed(tags, pixelsPerMm);
        for (std::size_t i = 0; i < boxes.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                EXPECT_FALSE(boxes[i].intersects(boxes[j]))
                    << tags[i].text.toStdString() << " meets " << tags[j].text.toStdString()
                    << " at " << pixelsPerMm;
    }
}

} // namespace
} // namespace frontwright::testing
