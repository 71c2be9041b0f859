#include "core/sheets/part_templates.h"

#include "core/drawings/lettering.h"
#include "core/lengths/format.h"
#include "core/plan/banks.h"
#include "core/sheets/template_draft.h"
#include "core/sheets/text_lines.h"

#include <algorithm>

namespace frontwright {

namespace {

enum class Lies : std::uint8_t { Upright, Level };

/// One of the strips that run along a stick, side by side.
struct Lane {
    double from; ///< mm across the stick
    double to;
    Text heading;
};
constexpr Lane openingsLane{0, 24, text("openings")};
constexpr Lane frontsLane{24, 48, text("fronts")};
constexpr Lane gapsLane{48, 69, text("gaps")};
constexpr Lane holesLane{69, 96, text("holes")};
constexpr double breadth = holesLane.to;
constexpr double headingFrom = 0.9; ///< mm from the lane's border
constexpr double besideHeading = 4; ///< mm of each lane that its heading takes

/// The stretch of the case, along one axis, that a stick shows.
struct Reach {
    Lies lies;
    Span along;
    [[nodiscard]] Span of(const CaseRect& rect) const {
        return lies == Lies::Upright ? rect.upright() : rect.across();
    }
    [[nodiscard]] Length of(CasePoint p) const { return lies == Lies::Upright ? p.y : p.x; }
};

BoxMm boxOf(const Reach& reach) {
    const double length = reach.along.size().inMillimetres();
    const PointMm size =
        reach.lies == Lies::Upright ? PointMm(breadth, length) : PointMm(length, breadth);
    return {PointMm(0, 0), size};
}

class Stick {
public:
    Stick(const TemplateSource& source, const Reach& reach, Phrase title, OpeningId opening)
        : m_source(source),
          m_reach(reach),
          m_draft(TemplateKind::StoryStick, std::move(title), boxOf(reach), opening,
                  source.language) {
        m_draft.rectangle(Layer::CutEdge, m_draft.partBox(), "outline");
        for (const Lane& lane : {openingsLane, frontsLane, gapsLane, holesLane})
            addHeading(lane);
    }

    /// A line across a lane at a place of the case, with its distance from the stick's low end.
    void mark(Layer layer, const Lane& lane, Length at, const std::string& name, const Phrase& what,
              TemplateLabel::Prefer prefer) {
        m_draft.namedLine(layer, across(lane, at), name, words(lane, what, at), prefer,
                          m_reach.lies == Lies::Upright ? 0 : 90);
    }
    void plain(Layer layer, const Lane& lane, Length at, const std::string& name) {
        m_draft.line(layer, across(lane, at).from, across(lane, at).to, name);
    }
    void note(const Lane& lane, Length at, const std::string& name, const Phrase& words) {
        m_draft.label({words}, across(lane, at), name, TemplateLabel::Prefer::High,
                      m_reach.lies == Lies::Upright ? 0 : 90);
    }

    [[nodiscard]] TemplateDraft& draft() { return m_draft; }
    [[nodiscard]] const Reach& reach() const { return m_reach; }
    [[nodiscard]] const TemplateSource& source() const { return m_source; }

private:
    /// On one line where the lane has room; a fraction is never torn from its whole inches.
    [[nodiscard]] std::vector<Phrase> words(const Lane& lane, const Phrase& what, Length at) const {
        const double room = lane.to - lane.from - besideHeading;
        const std::string value = shownBare(at - m_reach.along.low, m_source.style);
        const Phrase onOneLine = joined(what, value);
        if (textWidth(m_draft.say(onOneLine), smallText) <= room)
            return {onOneLine};
        const std::vector<std::string> name = wrapped(m_draft.say(what), smallText, room);
        std::vector<Phrase> lines(name.begin(), name.end());
        lines.emplace_back(value);
        return lines;
    }
    [[nodiscard]] PointMm point(double along, double across) const {
        return m_reach.lies == Lies::Upright ? PointMm(across, along) : PointMm(along, across);
    }
    [[nodiscard]] LineMark across(const Lane& lane, Length at) const {
        const double along = (at - m_reach.along.low).inMillimetres();
        return {point(along, lane.from), point(along, lane.to)};
    }
    void addHeading(const Lane& lane) {
        const double length = m_reach.along.size().inMillimetres();
        const LineMark border{point(0, lane.from), point(length, lane.from)};
        const std::string name = "lane of " + std::string(lane.heading.english);
        if (lane.from > 0)
            m_draft.line(Layer::Note, border.from, border.to, name);
        const LineMark beside{point(0, lane.from + headingFrom),
                              point(length, lane.from + headingFrom)};
        m_draft.label({lane.heading}, beside, name, TemplateLabel::Prefer::High,
                      m_reach.lies == Lies::Upright ? 90 : 0);
    }

    const TemplateSource& m_source;
    Reach m_reach;
    TemplateDraft m_draft;
};

using Prefer = TemplateLabel::Prefer;

void addOpening(Stick& stick, const StickOpening& opening) {
    const std::string& name = opening.name;
    const Span edges = stick.reach().of(opening.rect);
    stick.mark(Layer::OpeningEdge, openingsLane, edges.low, "opening " + name + ", low edge", name,
               Prefer::High);
    stick.mark(Layer::OpeningEdge, openingsLane, edges.high, "opening " + name + ", high edge",
               name, Prefer::Low);
}

void addFront(Stick& stick, const FrontPlan& front) {
    const std::string name = label(stick.source().project, front);
    const Span whole = stick.reach().of(front.rect);
    stick.mark(Layer::FrontEdge, frontsLane, whole.low, "front " + name + ", low edge", name,
               Prefer::High);
    stick.mark(Layer::FrontEdge, frontsLane, whole.high, "front " + name + ", high edge", name,
               Prefer::Low);
    stick.plain(Layer::FrontEdge, gapsLane, whole.low, "gap at " + name + ", low edge of front");
    stick.plain(Layer::FrontEdge, gapsLane, whole.high, "gap at " + name + ", high edge of front");
}

/// One line for all holes at the same place along the stick.
std::vector<Length> distinct(std::vector<Length> places) {
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
    return places;
}

void addHoles(Stick& stick, const FrontPlan& front) {
    const std::string name = label(stick.source().project, front);
    std::vector<Length> screws, bolts;
    for (const MountingHole& hole : front.mounting.holes)
        screws.push_back(stick.reach().of(front.box.origin + CasePoint{hole.at.x, hole.at.y}));
    if (front.hardware)
        for (const FrontPoint& hole : front.hardware->holes)
            bolts.push_back(stick.reach().of(front.rect.lowerLeft() + CasePoint{hole.x, hole.y}));
    int row = 0;
    for (Length at : distinct(screws))
        stick.mark(Layer::Centre, holesLane, at,
                   "screws " + name + ", row " + std::to_string(++row), text("screw"),
                   Prefer::High);
    row = 0;
    for (Length at : distinct(bolts))
        stick.mark(Layer::Centre, holesLane, at,
                   "handle " + name + ", row " + std::to_string(++row), text("handle"),
                   Prefer::High);
}

/// Between two that face each other, in the order in which they stand along the stick; where a
/// space or a board lies between two fronts there is no gap to be set.
void addGap(Stick& stick, std::uint32_t lower, std::uint32_t upper) {
    const TemplateSource& source = stick.source();
    const FrontPlan &before = source.plan.fronts[lower], &after = source.plan.fronts[upper];
    const bool isUpright = stick.reach().lies == Lies::Upright;
    const Side beyond = isUpright ? Side::Top : Side::Right;
    const Side back = isUpright ? Side::Bottom : Side::Left;
    if (before.neighbours[beyond].front != upper && after.neighbours[back].front != lower)
        return;
    const Length from = stick.reach().of(before.rect).high, to = stick.reach().of(after.rect).low;
    stick.note(gapsLane, greatest(from, to),
               "gap " + label(source.project, before) + " to " + label(source.project, after),
               phrase("gap %1", shownBare(to - from, source.style)));
}

Text unitNote(LengthStyle style) {
    return style.unit == Unit::Inch ? text("Figures in inches from the low end.")
                                    : text("Figures in mm from the low end.");
}

Template made(Stick& stick, const StickOpenings& lowToHigh, Phrase up) {
    const Plan& plan = stick.source().plan;
    Alike served;
    for (std::size_t i = 0; i < lowToHigh.size(); ++i) {
        const StickOpening& opening = lowToHigh[i];
        addOpening(stick, opening);
        if (!opening.front)
            continue;
        addFront(stick, plan.fronts[*opening.front]);
        addHoles(stick, plan.fronts[*opening.front]);
        if (i > 0 && lowToHigh[i - 1].front)
            addGap(stick, *lowToHigh[i - 1].front, *opening.front);
        served.push_back(*opening.front);
    }
    stick.draft().parameter(unitNote(stick.source().style));
    return stick.draft().finished(text("Read from the front"), std::move(up),
                                  openingsOf(plan, served));
}

} // namespace

Template heightsStick(const TemplateSource& source, const StickOpenings& bank) {
    const auto& members = source.plan.members;
    const StickOpening &highest = bank.front(), &lowest = bank.back();
    const Reach reach{
        Lies::Upright,
        {members[lowest.bounds.bottom].rect.bottom, members[highest.bounds.top].rect.top}};
    Stick stick(source, reach, phrase("Story stick, bank %1", bankLetters(highest.bank)),
                lowest.id);
    stick.draft().parameter(phrase("Hold the low end flush with the lower edge of the member below "
                                   "the bank, %1 above the case's lower edge.",
                                   shown(reach.along.low, source.style)));
    return made(stick, StickOpenings(bank.rbegin(), bank.rend()),
                text("the bank's upper end is up"));
}

Template widthsStick(const TemplateSource& source, const StickOpenings& row) {
    const auto& members = source.plan.members;
    const Reach reach{
        Lies::Level,
        {members[row.front().bounds.left].rect.left, members[row.back().bounds.right].rect.right}};
    std::vector<std::string> names;
    for (const StickOpening& opening : row)
        names.push_back(bankLetters(opening.bank));
    Stick stick(source, reach, phrase("Story stick, widths of %1", listed(names, 8)),
                row.front().id);
    stick.draft().parameter(phrase("Hold the low end, at the left, flush with the left edge of the "
                                   "member at the left, %1 from the case's left edge.",
                                   shown(reach.along.low, source.style)));
    return made(stick, row, text("the lane of holes is up"));
}

} // namespace frontwright
