#pragma once

#include "core/lengths/length.h"

#include <QPointF>
#include <QRectF>
#include <QString>
#include <Qt>

namespace frontwright {

/// One pointer event in the case's millimetres.
struct PointerAt {
    QPointF mm;
    Qt::KeyboardModifiers modifiers;
    double pixelsPerMm = 1;
    QRectF visible; ///< what the view shows of the case, mm
    [[nodiscard]] double millimetres(double pixels) const { return pixels / pixelsPerMm; }
};

/// A gesture of the elevation. The view tells the running tool what happens; the tool previews and
/// commits edits through the session, and says what is to be emphasised. A press that becomes a
/// drag goes press → moved … → released; cancel() ends it from any state without a trace.
class Tool {
public:
    Tool() = default;
    Tool(const Tool&) = delete;
    Tool& operator=(const Tool&) = delete;
    virtual ~Tool() = default;

    virtual void begin(const PointerAt&) = 0;
    virtual void moved(const PointerAt&) = 0;
    virtual void released(const PointerAt&) = 0;
    virtual void cancel() = 0;

    /// Moves by exactly this far: the sign is the drag's direction, so that "1/2" while dragging
    /// down means half an inch down. From then on the mouse no longer moves it.
    virtual void typed(Length distance) = 0;
    [[nodiscard]] virtual bool isTyped() const = 0;
    /// What a typed distance would do: "Move by".
    [[nodiscard]] virtual QString asks() const = 0;
    /// Why it does not come to lie where it is wanted; empty where it does.
    [[nodiscard]] virtual QString heldBecause() const = 0;
    /// What the status bar says meanwhile.
    [[nodiscard]] virtual QString hint() const = 0;
    /// Undo, redo or another edit came in between: nothing more is to be moved.
    [[nodiscard]] virtual bool isOvertaken() const = 0;
};

} // namespace frontwright
