#pragma once

#include "core/drawings/drawing.h"
#include "ui/session/session.h"

#include <QScrollArea>

class QComboBox;
class QLabel;
class QSpinBox;
class QVBoxLayout;

namespace frontwright {

class AirForm;
class AirStateRow;
class DrawingView;
class PropertyForm;
struct InputField;

/// The wood of the selected fronts, or of the case, the air it lives in, and what follows: sizes
/// over the year in words, the case at its driest and wettest with the change exaggerated by
/// choice, and the smallest gap over humidity with today's point.
class WoodPanel : public QScrollArea {
    Q_OBJECT
public:
    explicit WoodPanel(Session&, QWidget* parent = nullptr);

    /// Selects what the decision is of, and puts the keyboard there: to the wood's field of that
    /// label, or to the air where the place has no label. Null where there is none.
    QWidget* goTo(const InputField&);

private:
    enum class Time { WhenCut, Driest, Wettest };

    void addPicture(QVBoxLayout& column);
    void addChart(QVBoxLayout& column);
    void showSelection();
    void refresh();
    [[nodiscard]] QString summary() const;
    [[nodiscard]] std::optional<Drawing> picture(double widthMm, double heightMm) const;
    [[nodiscard]] std::optional<Drawing> chart(double widthMm, double heightMm) const;
    [[nodiscard]] double moistureShown() const;

    Session& m_session;
    PropertyForm* m_wood;
    AirForm* m_air;
    QLabel* m_heading;
    QLabel* m_follows;
    QWidget* m_pictures; ///< all that needs air
    QComboBox* m_time;
    QSpinBox* m_times;
    AirStateRow* m_today;
    bool m_isTodaySet = false; ///< by the maker; else it is the shop's
    DrawingView* m_elevation;
    DrawingView* m_chart;
};

} // namespace frontwright
