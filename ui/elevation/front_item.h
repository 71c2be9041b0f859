#pragma once

#include "core/drawings/elevation.h"
#include "core/drawings/plain_marks.h"
#include "ui/look/theme.h"

#include <QGraphicsItem>

#include <string>

namespace frontwright {

/// Shows one front, and nothing else: takes its plan, compares it with what it last drew, and
/// repaints where that differs. Scene units are the case's millimetres, y up.
class FrontItem : public QGraphicsItem {
public:
    FrontItem();

    void sync(const Project&, const Plan&, std::uint32_t front, const ElevationOptions&, Theme);

    [[nodiscard]] QRectF boundingRect() const override;
    void paint(QPainter*, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    /// Everything that the look of a front depends on, by value.
    struct Seen {
        FrontPlan plan;
        Profile profile;
        std::string name; ///< the maker's; what the label is made of besides bank and place
        ElevationOptions options;
    };
    [[nodiscard]] bool shows(const FrontPlan&, const ElevationOptions&) const;

    std::optional<Seen> m_seen;
    PlainMarks m_marks;
    QRectF m_bounds;
    Theme m_theme = Theme::Paper;
};

} // namespace frontwright
