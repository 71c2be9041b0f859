#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// Finds room for labels on one page: inside `bounds`, clear of lines, holes and one another. Far
/// from what it names, a label gets a leader; one with a colon may be broken there. Where there is
/// no free room at all, a hole's label takes the place that disturbs least; a line's is left out
/// rather than laid on another text.
class LabelPlacer {
public:
    explicit LabelPlacer(const BoxMm& bounds) : m_bounds(bounds) {}

    /// Lines, circles and hatches that labels keep clear of.
    void avoid(const Mark& mark);
    void avoid(const BoxMm& box) { m_boxes.push_back(box); }

    /// Texts and leader; nothing where what the label names is not within the bounds.
    std::vector<Mark> place(const TemplateLabel& label);

private:
    struct Candidate {
        BoxMm box;
        std::optional<LineMark> leader;
    };
    struct Placed {
        Candidate at;
        int disturbance = 0;
    };
    /// The place that disturbs least, near what is named or else anywhere within the bounds.
    [[nodiscard]] std::optional<Placed> best(const TemplateLabel& label) const;
    [[nodiscard]] std::vector<Candidate> candidates(const TemplateLabel& label) const;
    [[nodiscard]] std::vector<Candidate> farCandidates(const TemplateLabel& label) const;
    [[nodiscard]] int disturbance(const Candidate& candidate) const;
    [[nodiscard]] int textDisturbance(const Candidate& candidate) const;

    BoxMm m_bounds;
    std::vector<LineMark> m_lines;
    std::vector<CircleMark> m_circles;
    std::vector<BoxMm> m_hatches;
    std::vector<BoxMm> m_boxes;
};

} // namespace frontwright
