#pragma once

#include <QCursor>
#include <QPointF>
#include <Qt>

class QKeyEvent;

namespace frontwright {

/// One pointer event in the case's millimetres.
struct PointerAt {
    QPointF mm;
    Qt::KeyboardModifiers modifiers;
    double pixelsPerMm = 1;
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
};

} // namespace frontwright
