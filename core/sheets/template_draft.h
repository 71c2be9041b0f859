#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// A template while it is drawn: every line gets a name that is unique within its part and stays
/// the same from run to run.
class TemplateDraft {
public:
    TemplateDraft(TemplateKind kind, std::string title, const BoxMm& part, OpeningId opening);

    /// The part's own outline, with hatched waste round it.
    void outline(Layer layer);
    void rectangle(Layer layer, const BoxMm& box, const std::string& name);
    void line(Layer layer, const PointMm& from, const PointMm& to, const std::string& name);
    /// A line that carries its own label.
    void namedLine(Layer layer, const LineMark& line, const std::string& name,
                   std::vector<std::string> label,
                   TemplateLabel::Prefer prefer = TemplateLabel::Prefer::High, double turned = 0);
    /// Text for a label beside an upright line of that length in mm: in short lines where the line
    /// is short, so that level lines can run past it.
    static std::vector<std::string> besideUpright(const std::string& text, double length);
    /// A circle of the true diameter with a thin cross through it.
    void hole(Layer layer, const CircleMark& circle, const std::string& name,
              std::vector<std::string> label);
    void circle(Layer layer, const CircleMark& circle, const std::string& name);
    void hatch(Layer layer, const BoxMm& box);
    /// Centre lines of the part, a little beyond its outline (ISO 128).
    void centreLines();
    void label(TemplateLabel label);
    /// A dimension to be measured on paper after taping: drawn through `from` and `to`, level or
    /// upright.
    void checkDimension(const PointMm& from, const PointMm& to, const std::string& value);
    void parameter(std::string line) { m_template.parameters.push_back(std::move(line)); }

    [[nodiscard]] Part part(const std::string& name) const { return {m_opening, {}, name}; }
    [[nodiscard]] const BoxMm& partBox() const { return m_template.part; }

    [[nodiscard]] Template finished(std::string face, std::string up,
                                    std::vector<OpeningId> parts) const;

private:
    [[nodiscard]] bool isHole(const PointMm& at) const;
    void add(Layer layer, decltype(Mark::shape) shape, const std::string& name);

    Template m_template;
    OpeningId m_opening;
    int m_checks = 0;
};

} // namespace frontwright
