#pragma once

#include "core/plan/quantity.h"
#include "ui/fields/length_field.h"
#include "ui/session/session.h"

#include <QFrame>

namespace frontwright {

class ElevationView;

/// The small field that opens where a number stands on the drawing, or beside a drag. One edit,
/// one undo step; Esc closes it without a trace; what can't be changed says why.
class ValueEntry : public QFrame {
    Q_OBJECT
public:
    ValueEntry(Session&, ElevationView&);

    void open(Quantity, QRect viewportRect);
    void openForDrag(const QString& typed, QPoint viewportPos);

private:
    enum class For : std::uint8_t { Nothing, Number, Drag };
    void place(QPoint topLeft);
    void decideDrag(Length);
    void decideNumber(const WrittenLength&);
    void finish();

    Session& m_session;
    ElevationView& m_view;
    LengthField* m_field;
    class QLabel* m_title;
    Quantity m_quantity;
    For m_for = For::Nothing;
};

} // namespace frontwright
