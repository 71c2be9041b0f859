#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// A template while it is drawn: every line gets a name that is unique within its part and stays
/// the same from run to run.
class TemplateDraft {
public:
    TemplateDraft(TemplateKind kind, Phrase title, const BoxMm& part, OpeningId opening,
                  Language language = {});

    /// The part's own outline, with hatched waste round it.
    void outline(Layer layer);
    void rectangle(Layer layer, const BoxMm& box, const std::string& name);
    void line(Layer layer, const PointMm& from, const PointMm& to, const std::string& name);
    /// A line that carries its own label.
    void namedLine(Layer layer, const LineMark& line, const std::string& name,
                   const std::vector<Phrase>& lines,
                   TemplateLabel::Prefer prefer = TemplateLabel::Prefer::High, double turned = 0);
    /// The lines of a label beside an upright line of that length in mm: short ones where the line
    /// is short, so that level lines can run past it.
    [[nodiscard]] std::vector<Phrase> besideUpright(const Phrase& words, double length) const;
    /// A circle of the true diameter with a thin cross through it.
    void hole(Layer layer, const CircleMark& circle, const std::string& name,
              const std::vector<Phrase>& lines);
    void circle(Layer layer, const CircleMark& circle, const std::string& name);
    void hatch(Layer layer, const BoxMm& box);
    /// Centre lines of the part, a little beyond its outline (ISO 128).
    void centreLines();
    void label(const std::vector<Phrase>& lines, std::variant<CircleMark, LineMark> beside,
               const std::string& name, TemplateLabel::Prefer prefer = TemplateLabel::Prefer::High,
               double turned = 0);
    /// A dimension to be measured on paper after taping: drawn through `from` and `to`, level or
    /// upright.
    void checkDimension(const PointMm& from, const PointMm& to, const std::string& value);
    void parameter(Phrase sentence) { m_template.parameters.push_back(std::move(sentence)); }
    /// As the draft's labels are told.
    [[nodiscard]] std::string say(const Phrase& words) const { return told(words, m_language); }

    [[nodiscard]] Part part(const std::string& name) const { return {m_opening, {}, name}; }
    [[nodiscard]] const BoxMm& partBox() const { return m_template.part; }

    [[nodiscard]] Template finished(Phrase face, Phrase up, std::vector<OpeningId> parts) const;

private:
    [[nodiscard]] bool isHole(const PointMm& at) const;
    void add(Layer layer, decltype(Mark::shape) shape, const std::string& name);

    Template m_template;
    OpeningId m_opening;
    Language m_language;
    int m_checks = 0;
};

} // namespace frontwright
