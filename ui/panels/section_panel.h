#pragma once

#include "core/drawings/section.h"
#include "ui/session/session.h"

#include <QWidget>

namespace frontwright {

/// The section through the selected front's screw, with the real dimensions; follows the selection.
class SectionPanel : public QWidget {
    Q_OBJECT
public:
    explicit SectionPanel(Session&, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override { return {360, 300}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {220, 180}; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    [[nodiscard]] std::optional<std::uint32_t> shownFront() const;
    /// The drawing at the scale at which it fills the room, with its pixels per millimetre.
    struct Fitted {
        Drawing drawing;
        double pixelsPerMm = 0;
    };
    [[nodiscard]] Fitted fitted(std::uint32_t front) const;

    Session& m_session;
};

} // namespace frontwright
