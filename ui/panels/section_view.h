#pragma once

#include "core/drawings/board_section.h"
#include "core/drawings/section.h"
#include "ui/session/session.h"

#include <QWidget>

#include <functional>

namespace frontwright {

/// Shows the section through the selected hole, handle or front, with the real dimensions, as large
/// as its figures stay readable.
class SectionView : public QWidget {
    Q_OBJECT
public:
    explicit SectionView(Session&, QWidget* parent = nullptr);

    enum class Plane : std::uint8_t { Upright, Level };
    void setPlane(Plane);
    [[nodiscard]] Plane plane() const { return m_plane; }

    [[nodiscard]] QSize sizeHint() const override { return {360, 300}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {220, 180}; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    [[nodiscard]] std::optional<std::uint32_t> shownFront() const;
    /// Index into Plan::boards.
    [[nodiscard]] std::optional<std::uint32_t> shownBoard() const;
    /// The drawing at the scale at which it fills the room, with its pixels per millimetre.
    struct Fitted {
        Drawing drawing;
        double pixelsPerMm = 0;
    };
    [[nodiscard]] Fitted fitted(const std::function<Drawing(double paperScale)>& draw) const;
    [[nodiscard]] Drawing drawnFront(std::uint32_t front, double paperScale) const;
    /// Upright, at the side whose keeper strip bears more.
    [[nodiscard]] Drawing drawnBoard(std::uint32_t board, double paperScale) const;

    Session& m_session;
    Plane m_plane = Plane::Upright;
};

} // namespace frontwright
