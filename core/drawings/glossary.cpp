#include "core/drawings/glossary_parts.h"

#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

struct Word {
    Term term;
    std::string_view key;
    Text name;
    Drawing (*draw)(Term);
};

/// In the order of the enumerators.
constexpr auto allWords = std::to_array<Word>({
    {Term::Case, "case", text("case"), glossary::ofFrame},
    {Term::FaceFrame, "face-frame", text("face frame"), glossary::ofFrame},
    {Term::Stile, "stile", text("stile"), glossary::ofFrame},
    {Term::Rail, "rail", text("rail"), glossary::ofFrame},
    {Term::Divider, "divider", text("divider"), glossary::ofFrame},
    {Term::Opening, "opening", text("opening"), glossary::ofFrame},
    {Term::Plinth, "plinth", text("plinth"), glossary::ofFrame},
    {Term::Moulding, "moulding", text("moulding"), glossary::ofFrame},
    {Term::Leg, "leg", text("leg"), glossary::ofFrame},
    {Term::SystemHoles, "system-holes", text("system holes"), glossary::ofFrame},
    {Term::Front, "front", text("front"), glossary::ofFronts},
    {Term::Overlay, "overlay", text("overlay"), glossary::ofFronts},
    {Term::Inset, "inset", text("inset"), glossary::ofFronts},
    {Term::Reveal, "reveal", text("reveal"), glossary::ofFronts},
    {Term::Spacer, "spacer", text("spacer"), glossary::ofFronts},
    {Term::Stop, "stop", text("stop"), glossary::ofFronts},
    {Term::Bank, "bank", text("bank"), glossary::ofFronts},
    {Term::Field, "field", text("field"), glossary::ofFronts},
    {Term::EdgeProfile, "edge-profile", text("edge profile"), glossary::ofFronts},
    {Term::DrawerBox, "drawer-box", text("drawer box"), glossary::ofBox},
    {Term::BoxWall, "box-wall", text("box wall"), glossary::ofBox},
    {Term::Bottom, "bottom", text("bottom panel"), glossary::ofBox},
    {Term::Runner, "runner", text("runner"), glossary::ofBox},
    {Term::Kicker, "kicker", text("kicker"), glossary::ofBox},
    {Term::Guide, "guide", text("guide"), glossary::ofBox},
    {Term::Notch, "notch", text("notch"), glossary::ofBox},
    {Term::Pull, "pull", text("pull"), glossary::ofHandles},
    {Term::Knob, "knob", text("knob"), glossary::ofHandles},
    {Term::CentreToCentre, "centre-to-centre", text("centre-to-centre"), glossary::ofHandles},
    {Term::Backplate, "backplate", text("backplate"), glossary::ofHandles},
    {Term::Bolt, "bolt", text("bolt"), glossary::ofFasteners},
    {Term::MountingScrew, "mounting-screw", text("mounting screw"), glossary::ofFasteners},
    {Term::PilotHole, "pilot-hole", text("pilot hole"), glossary::ofFasteners},
    {Term::ClearanceHole, "clearance-hole", text("clearance hole"), glossary::ofFasteners},
    {Term::AccessHole, "access-hole", text("access hole"), glossary::ofFasteners},
    {Term::Counterbore, "counterbore", text("counterbore"), glossary::ofFasteners},
    {Term::Countersink, "countersink", text("countersink"), glossary::ofFasteners},
    {Term::Grip, "grip", text("grip"), glossary::ofFasteners},
    {Term::Engagement, "engagement", text("engagement"), glossary::ofFasteners},
    {Term::TipCover, "tip-cover", text("tip cover"), glossary::ofFasteners},
    {Term::StoryStick, "story-stick", text("story stick"), glossary::ofWork},
    {Term::SetupBlock, "setup-block", text("setup block"), glossary::ofWork},
    {Term::FillerStrip, "filler-strip", text("filler strip"), glossary::ofWork},
    {Term::PullOutBoard, "pull-out-board", text("pull-out board"), glossary::ofWork},
    {Term::Furring, "furring", text("furring"), glossary::ofWork},
    {Term::KeeperStrip, "keeper-strip", text("keeper strip"), glossary::ofWork},
    {Term::Kerf, "kerf", text("kerf"), glossary::ofWork},
    {Term::BoardFoot, "board-foot", text("board foot"), glossary::ofWood},
    {Term::FlatSawn, "flat-sawn", text("flat-sawn"), glossary::ofWood},
    {Term::QuarterSawn, "quarter-sawn", text("quarter-sawn"), glossary::ofWood},
    {Term::MoistureContent, "moisture-content", text("moisture content"), glossary::ofWood},
});

constexpr bool isInOrder() {
    for (std::size_t i = 0; i < allWords.size(); ++i)
        if (static_cast<std::size_t>(allWords[i].term) != i)
            return false;
    return true;
}
static_assert(isInOrder());
static_assert(allWords.size() == static_cast<std::size_t>(termCount));

const Word& wordOf(Term term) {
    assert(static_cast<std::size_t>(term) < allWords.size());
    return allWords[static_cast<std::size_t>(term)];
}

} // namespace

std::string_view key(Term term) {
    return wordOf(term).key;
}

Text nameOf(Term term) {
    return wordOf(term).name;
}

Drawing drawingOf(Term term) {
    return wordOf(term).draw(term);
}

namespace glossary {

void Picture::hatch(std::vector<PointMm> outline, Grain grain,
                    std::vector<std::vector<PointMm>> without) {
    HatchMark hatch;
    hatch.outline = std::move(outline);
    hatch.spacing = 1.4;
    hatch.angle = grain == Grain::Rising ? 45 : -45;
    hatch.without = std::move(without);
    m_sketch.add({Layer::CutHatch, std::move(hatch), {}});
}

void Picture::part(const BoxMm& box, Look look) {
    part(cornersOf(box), look);
}

void Picture::part(std::vector<PointMm> outline, Look look) {
    if (look == Look::Meant)
        hatch(outline, Grain::Rising, {});
    m_sketch.path(look == Look::Meant ? Layer::FrontEdge : Layer::MemberEdge, std::move(outline),
                  PathMark::End::Closed, {});
}

void Picture::cut(std::vector<PointMm> outline, Grain grain, Look look,
                  std::vector<std::vector<PointMm>> without) {
    hatch(outline, grain, std::move(without));
    m_sketch.path(look == Look::Meant ? Layer::CutEdge : Layer::MemberEdge, std::move(outline),
                  PathMark::End::Closed, {});
}

void Picture::cut(const BoxMm& box, Grain grain, Look look,
                  std::vector<std::vector<PointMm>> without) {
    cut(cornersOf(box), grain, look, std::move(without));
}

void Picture::steel(std::vector<PointMm> outline, Look look) {
    m_sketch.path(look == Look::Meant ? Layer::FrontEdge : Layer::Fastener, std::move(outline),
                  PathMark::End::Closed, {});
}

void Picture::hidden(const BoxMm& box) {
    m_sketch.rectangle(Layer::BoxEdge, box, {});
}

void Picture::edge(std::vector<PointMm> points) {
    m_sketch.path(Layer::FrontEdge, std::move(points), PathMark::End::Open, {});
}

void Picture::line(const PointMm& from, const PointMm& to) {
    m_sketch.line(Layer::MemberEdge, from, to, {});
}

void Picture::axis(const PointMm& from, const PointMm& to) {
    m_sketch.line(Layer::Centre, from, to, {});
}

void Picture::length(const PointMm& from, const PointMm& to, double offset) {
    m_sketch.add({Layer::Dimension, DimensionMark{from, to, offset, {}, {}}, {}});
}

BoxMm box(double left, double bottom, double right, double top) {
    return {PointMm(left, bottom), PointMm(right, top)};
}

std::vector<PointMm> arc(const PointMm& centre, double radius, double from, double to) {
    constexpr int steps = 60;
    std::vector<PointMm> points;
    for (int i = 0; i <= steps; ++i) {
        const double angle = (from + (to - from) * i / steps) * std::numbers::pi / 180;
        points.push_back(centre + radius * PointMm(std::cos(angle), std::sin(angle)));
    }
    return points;
}

} // namespace glossary

} // namespace frontwright
