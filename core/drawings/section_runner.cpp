#include "core/drawings/section_parts.h"

#include <algorithm>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

/// One runner in the sections' common frame.
class RunnerDraft {
public:
    RunnerDraft(Sketch& sketch, const SectionSubject& subject, const RunnerPlan& runner)
        : m_sketch(sketch),
          m_subject(subject),
          m_runner(runner),
          m_kind(*runner.kind),
          m_front((runner.reach.setback - subject.front.box.setback).inMillimetres()),
          m_end(subject.boxEnd()),
          m_foot(subject.boxFoot()) {}

    void draw() const {
        if (m_subject.isLevel())
            drawLevel();
        else
            drawUpright();
    }

private:
    /// From its front end to the break, where it goes on.
    void drawBroken(Layer layer, double low, double high, const std::string& name) const {
        if (m_front < m_end && low < high)
            drawFrom(layer, m_front, low, high, name);
    }
    void drawFrom(Layer layer, double front, double low, double high,
                  const std::string& name) const {
        m_sketch.path(layer, {{m_end, low}, {front, low}, {front, high}, {m_end, high}},
                      PathMark::End::Open, {m_subject.front.opening, std::nullopt, name});
    }

    void drawUpright() const {
        const double low = m_foot + m_runner.foot.inMillimetres();
        const double high = m_foot + m_runner.top.inMillimetres();
        switch (m_kind.form) {
        case RunnerForm::SideMounted:
            return drawBroken(Layer::HiddenRunner, low, high, "runner");
        case RunnerForm::UnderMounted:
        case RunnerForm::Centre:
            return drawUnderBottom(low, high);
        case RunnerForm::Wooden:
            drawBroken(Layer::Runner, low, high, "runner");
            drawKicker();
            return drawGuideBehindSide();
        case RunnerForm::ClearancesOnly:
            break;
        }
    }

    /// What lies higher than the box's lower edge begins behind the wall.
    void drawUnderBottom(double low, double high) const {
        if (m_front >= m_end)
            return;
        const double step = std::clamp(m_foot, low, high);
        const double behindWall = std::max(m_front, m_subject.wall());
        m_sketch.path(Layer::Runner,
                      {{m_end, low},
                       {m_front, low},
                       {m_front, step},
                       {behindWall, step},
                       {behindWall, high},
                       {m_end, high}},
                      PathMark::End::Open, {m_subject.front.opening, std::nullopt, "runner"});
    }

    void drawKicker() const {
        if (!m_kind.kicker)
            return;
        const double low = m_foot + m_subject.boxLength() + m_runner.kickerPlay->inMillimetres();
        drawBroken(Layer::Runner, low, low + m_kind.kicker->height.inMillimetres(), "kicker");
    }
    void drawGuideBehindSide() const {
        if (m_kind.guideHeight)
            drawBroken(Layer::HiddenRunner, m_foot, m_foot + m_kind.guideHeight->inMillimetres(),
                       "guide");
    }

    /// From the opening's edge (or beyond it) towards the middle, at both sides.
    void drawAtBothSides(Layer layer, double from, double to, const std::string& name) const {
        const FrontPlan& front = m_subject.front;
        const double left = front.overlay.left.inMillimetres();
        const double right = m_subject.height() - front.overlay.right.inMillimetres();
        drawBroken(layer, left + from, left + to, name);
        drawBroken(layer, right - to, right - from, name);
    }

    void drawLevel() const {
        const double width = m_kind.section.width.inMillimetres();
        const double middle = m_foot + m_subject.boxLength() / 2;
        switch (m_kind.form) {
        case RunnerForm::SideMounted:
            drawAtBothSides(isSeenFromAbove() ? Layer::Runner : Layer::HiddenRunner, 0, width,
                            "runner");
            break;
        case RunnerForm::UnderMounted:
            drawAtBothSides(Layer::HiddenRunner, 0, width, "runner");
            break;
        case RunnerForm::Centre:
            return drawBroken(Layer::HiddenRunner, middle - width / 2, middle + width / 2,
                              "runner");
        case RunnerForm::Wooden:
            drawAtBothSides(Layer::HiddenRunner, -furring(), width - furring(), "runner");
            break;
        case RunnerForm::ClearancesOnly:
            return;
        }
        if (furring() > 0)
            drawFurring();
    }
    /// What is cut, or lies below the cut.
    [[nodiscard]] bool isSeenFromAbove() const {
        return m_subject.cutAt() - m_subject.front.box.wallOnFront.y >= m_runner.foot;
    }
    [[nodiscard]] double furring() const {
        return m_runner.furring ? m_runner.furring->inMillimetres() : 0;
    }
    /// Beside wooden runners it is the guide; it begins behind the frame.
    void drawFurring() const {
        const FrontPlan& front = m_subject.front;
        const double left = front.overlay.left.inMillimetres();
        const double right = m_subject.height() - front.overlay.right.inMillimetres();
        const double back =
            (thicknessOfFrame(m_subject.project.casework) - front.box.setback).inMillimetres();
        const char* name = m_kind.form == RunnerForm::Wooden ? "guide" : "furring";
        if (back >= m_end)
            return;
        drawFrom(Layer::Runner, back, left - furring(), left, name);
        drawFrom(Layer::Runner, back, right, right + furring(), name);
    }

    Sketch& m_sketch;
    const SectionSubject& m_subject;
    const RunnerPlan& m_runner;
    const RunnerKind& m_kind;
    double m_front; ///< x of its front end
    double m_end;   ///< x of the break
    double m_foot;  ///< where the box begins along the front
};

} // namespace

void drawRunner(Sketch& sketch, const SectionSubject& subject) {
    if (subject.front.runner && !subject.front.box.wall.isEmpty())
        RunnerDraft(sketch, subject, *subject.front.runner).draw();
}

} // namespace frontwright
