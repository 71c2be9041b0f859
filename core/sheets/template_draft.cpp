#include "core/sheets/template_draft.h"

#include "core/drawings/sketch.h"
#include "core/sheets/text_lines.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double wasteBand = 4;     ///< mm of hatching round the outline
constexpr double overrun = 3;       ///< mm of centre lines past the outline: 2 to 5 mm (ISO 128)
constexpr double crossReach = 2;    ///< mm of a hole's cross past its circle
constexpr double tickReach = 1.5;   ///< mm of a dimension's tick to each side of its line
constexpr double partOfLine = 0.4;  ///< of an upright line that a text beside it may take …
constexpr double shortestLine = 24; ///< … but never less than this many mm
constexpr double samePlace = 1e-6;  ///< mm

} // namespace

TemplateDraft::TemplateDraft(TemplateKind kind, Phrase title, const BoxMm& part, OpeningId opening,
                             Language language)
    : m_opening(opening),
      m_language(std::move(language)) {
    m_template.kind = kind;
    m_template.title = std::move(title);
    m_template.part = part;
    m_template.drawing.extent = part;
}

void TemplateDraft::add(Layer layer, decltype(Mark::shape) shape, const std::string& name) {
    m_template.drawing.marks.push_back({layer, std::move(shape), part(name)});
}

void TemplateDraft::outline(Layer layer) {
    const BoxMm inner = partBox();
    const PointMm band(wasteBand, wasteBand);
    const BoxMm outer(inner.min() - band, inner.max() + band);
    hatch(Layer::Waste, {outer.min(), PointMm(inner.min().x(), outer.max().y())});
    hatch(Layer::Waste, {PointMm(inner.max().x(), outer.min().y()), outer.max()});
    hatch(Layer::Waste,
          {PointMm(inner.min().x(), outer.min().y()), PointMm(inner.max().x(), inner.min().y())});
    hatch(Layer::Waste,
          {PointMm(inner.min().x(), inner.max().y()), PointMm(inner.max().x(), outer.max().y())});
    rectangle(layer, inner, "outline");
    m_template.drawing.extent.extend(outer);
}

void TemplateDraft::rectangle(Layer layer, const BoxMm& box, const std::string& name) {
    add(layer, PathMark{cornersOf(box), PathMark::End::Closed}, name);
}

void TemplateDraft::line(Layer layer, const PointMm& from, const PointMm& to,
                         const std::string& name) {
    add(layer, LineMark{from, to}, name);
}

void TemplateDraft::namedLine(Layer layer, const LineMark& line, const std::string& name,
                              const std::vector<Phrase>& lines, TemplateLabel::Prefer prefer,
                              double turned) {
    add(layer, line, name);
    label(lines, line, name, prefer, turned);
}

void TemplateDraft::hole(Layer layer, const CircleMark& mark, const std::string& name,
                         const std::vector<Phrase>& lines) {
    circle(layer, mark, name);
    const PointMm across(mark.radius + crossReach, 0), upright(0, mark.radius + crossReach);
    // Unnamed: the circle's mark already says where the centre is.
    line(Layer::Hole, mark.centre - across, mark.centre + across, "");
    line(Layer::Hole, mark.centre - upright, mark.centre + upright, "");
    label(lines, mark, name);
}

void TemplateDraft::circle(Layer layer, const CircleMark& mark, const std::string& name) {
    add(layer, mark, name);
}

void TemplateDraft::hatch(Layer layer, const BoxMm& box) {
    add(layer, HatchMark{cornersOf(box), 3, 45, {}}, "");
}

void TemplateDraft::centreLines() {
    const PointMm centre = partBox().center();
    const PointMm low = partBox().min(), high = partBox().max();
    line(Layer::Centre, {centre.x(), low.y() - overrun}, {centre.x(), high.y() + overrun},
         "upright centre line");
    line(Layer::Centre, {low.x() - overrun, centre.y()}, {high.x() + overrun, centre.y()},
         "level centre line");
}

std::vector<Phrase> TemplateDraft::besideUpright(const Phrase& words, double length) const {
    const std::vector<std::string> lines =
        wrapped(say(words), smallText, std::max(shortestLine, partOfLine * length));
    return {lines.begin(), lines.end()};
}

void TemplateDraft::label(const std::vector<Phrase>& lines,
                          std::variant<CircleMark, LineMark> beside, const std::string& name,
                          TemplateLabel::Prefer prefer, double turned) {
    TemplateLabel label{{}, beside, prefer, turned, part(name)};
    for (const Phrase& line : lines)
        label.lines.push_back(say(line));
    m_template.labels.push_back(std::move(label));
}

bool TemplateDraft::isHole(const PointMm& at) const {
    const auto& marks = m_template.drawing.marks;
    return std::any_of(marks.begin(), marks.end(), [&](const Mark& mark) {
        const auto* circle = std::get_if<CircleMark>(&mark.shape);
        return circle != nullptr && (circle->centre - at).norm() < samePlace;
    });
}

void TemplateDraft::checkDimension(const PointMm& from, const PointMm& to,
                                   const std::string& value) {
    const std::string name = "overall check " + std::to_string(++m_checks);
    const PointMm tick(tickReach, tickReach);
    for (const PointMm& end : {from, to})
        if (!isHole(end)) // a hole's own cross is its end
            line(Layer::Dimension, end - tick, end + tick, "");
    const bool isUpright = from.x() == to.x();
    const Phrase words = phrase("overall check: %1", value);
    if (isUpright)
        namedLine(Layer::Dimension, {from, to}, name, besideUpright(words, (to - from).norm()),
                  TemplateLabel::Prefer::High, 90);
    else
        namedLine(Layer::Dimension, {from, to}, name, {words});
}

Template TemplateDraft::finished(Phrase face, Phrase up, std::vector<OpeningId> parts) const {
    Template result = m_template;
    result.face = std::move(face);
    result.up = std::move(up);
    result.parts = std::move(parts);
    return result;
}

} // namespace frontwright
