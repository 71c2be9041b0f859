#include "core/sheets/part_templates.h"

#include "core/lengths/format.h"
#include "core/sheets/template_draft.h"

namespace frontwright {

namespace {

Phrase faceWords(FrontFace face) {
    switch (face) {
    case FrontFace::Show:
        return text("from the show face");
    case FrontFace::Back:
        return text("from the back");
    case FrontFace::TopEdge:
        break;
    }
    return text("from the top edge");
}

/// One fitting's marks, numbered F1, F2, … so that they are not taken for handle holes.
class FittingMarks {
public:
    FittingMarks(TemplateDraft& draft, const TemplateSource& source, const FittingPlan& fitting,
                 std::size_t number)
        : m_draft(draft),
          m_source(source),
          m_fitting(fitting),
          m_name("F" + std::to_string(number)) {}

    void add() const {
        for (std::size_t i = 0; i < m_fitting.mortises.size(); ++i)
            addMortise(m_fitting.mortises[i].cut, i);
        for (std::size_t i = 0; i < m_fitting.bores.size(); ++i)
            addBore(m_fitting.bores[i], i);
        for (std::size_t i = 0; i < m_fitting.screws.size(); ++i)
            addScrew(m_fitting.screws[i], i);
        addParameter();
    }

private:
    [[nodiscard]] std::string say(Length length) const { return shown(length, m_source.style); }

    void addMortise(const FittingMortise& cut, std::size_t index) const {
        const std::string name = m_name + " mortise " + number(index);
        const std::string width = say(cut.place.width()), height = say(cut.place.height());
        if (cut.from == FrontFace::TopEdge)
            return addEdgeMortise(cut, name);
        const BoxMm box = toMm(cut.place);
        m_draft.rectangle(Layer::Counterbore, box, name);
        m_draft.label({phrase("%1: mortise %2 × %3", m_name, width, height),
                       phrase("%1 deep, %2", say(cut.depth), faceWords(cut.from))},
                      LineMark{{box.min().x(), box.max().y()}, box.max()}, name,
                      TemplateLabel::Prefer::Low);
    }

    /// Ticks at the top edge: the template lies on the face.
    void addEdgeMortise(const FittingMortise& cut, const std::string& name) const {
        constexpr double tick = 4;
        const double top = m_draft.partBox().max().y();
        const double left = cut.place.left.inMillimetres();
        const double right = cut.place.right.inMillimetres();
        for (const double x : {left, right})
            m_draft.line(Layer::Counterbore, {x, top - tick}, {x, top + tick},
                         name + (x == left ? " begins" : " ends"));
        m_draft.label({phrase("%1: mortise in the top edge, %2 long, %3 deep", m_name,
                              say(cut.place.width()), say(cut.depth)),
                       phrase("from %1 to %2 behind the show face", say(cut.place.bottom),
                              say(cut.place.top))},
                      LineMark{{left, top}, {right, top}}, name, TemplateLabel::Prefer::Low);
    }

    void addBore(const FittingBore& bore, std::size_t index) const {
        if (bore.from == FrontFace::TopEdge)
            return;
        m_draft.hole(Layer::Hole, {toMm(bore.at), bore.diameter.inMillimetres() / 2},
                     m_name + " bore " + number(index),
                     {phrase("%1: drill %2", m_name, drill(m_source, bore.diameter)),
                      bore.depth ? phrase("%1 deep, %2", say(*bore.depth), faceWords(bore.from))
                                 : phrase("through, %1", faceWords(bore.from))});
    }

    /// The first is told; the others are alike.
    void addScrew(const FittingScrew& screw, std::size_t index) const {
        const Length pilot = m_fitting.screw->pilotHole;
        if (m_fitting.form->bearsOn == FrontFace::TopEdge)
            return;
        const CircleMark circle{toMm(screw.at), pilot.inMillimetres() / 2};
        const std::string name = m_name + " screw hole " + number(index);
        if (index > 0)
            return m_draft.hole(Layer::Hole, circle, name, {phrase("%1: as before", m_name)});
        std::vector<Phrase> lines{phrase("%1: pilot %2", m_name, drill(m_source, pilot))};
        if (m_fitting.screwLength)
            lines.push_back(
                phrase("%1 deep, %2", say(screw.penetration), faceWords(m_fitting.form->bearsOn)));
        m_draft.hole(Layer::Hole, circle, name, lines);
    }

    void addParameter() const {
        const Phrase form = nameFromData(m_fitting.form->name);
        if (m_fitting.screw == nullptr || m_fitting.screws.empty())
            return m_draft.parameter(phrase("%1: %2.", m_name, form));
        const Phrase screw = nameFromData(m_fitting.screw->name);
        const std::string count = std::to_string(m_fitting.screws.size());
        if (m_fitting.screwLength)
            m_draft.parameter(phrase("%1: %2; %3 screws, %4, %5 long.", m_name, form, count, screw,
                                     say(*m_fitting.screwLength)));
        else
            m_draft.parameter(phrase("%1: %2; %3 screws, %4.", m_name, form, count, screw));
    }

    TemplateDraft& m_draft;
    const TemplateSource& m_source;
    const FittingPlan& m_fitting;
    std::string m_name;
};

} // namespace

void addFittings(TemplateDraft& draft, const TemplateSource& source,
                 const std::vector<FittingPlan>& fittings) {
    for (std::size_t i = 0; i < fittings.size(); ++i)
        FittingMarks(draft, source, fittings[i], i + 1).add();
}

} // namespace frontwright
