#include "core/drawings/section_parts.h"
#include "core/plan/facing.h"

#include <algorithm>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

constexpr Hatching neighbourHatching{45, 2.2};
constexpr Hatching memberHatching{60, 2.8};

/// Places along a front at which its face is sampled: the ends, and the profiles' run at either
/// edge.
std::vector<Length> facePlaces(const FrontPlan& front, Length whole, Span part) {
    constexpr std::int64_t steps = 24;
    const Length width = front.profile->width.length;
    std::vector<Length> places{part.low, part.high};
    const auto add = [&](Length distance) {
        for (const Length y : {distance, whole - distance})
            if (part.low < y && y < part.high)
                places.push_back(y);
    };
    if (front.profile->family != ProfileFamily::Square) {
        for (std::int64_t i = 1; i <= steps; ++i)
            add(Length::fromNanometres(width.nanometres() / steps * i));
        add(width - Length::fromNanometres(1)); // the foot of a step at the field
        add(width);
    }
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
    return places;
}

/// "member above", "front left".
std::string partBeside(std::string_view part, Side side) {
    std::string name(part);
    switch (side) {
    case Side::Left:
        return name + " left";
    case Side::Right:
        return name + " right";
    case Side::Bottom:
        return name + " below";
    case Side::Top:
        break;
    }
    return name + " above";
}

/// The strip in the gap at that side, cut where the section meets it.
void drawFiller(Sketch& sketch, const SectionSubject& subject, Side side) {
    const bool isLow = side == subject.lowSide();
    for (const Filler& filler : subject.plan.fillers) {
        if ((isLow ? filler.upper : filler.lower) != subject.frontIndex ||
            filler.member != subject.front.neighbours[side].member || filler.thickness <= Length{})
            continue;
        const Length cut = subject.cutAt() + (subject.isLevel() ? subject.front.rect.bottom
                                                                : subject.front.rect.left);
        if (!filler.along.contains(cut))
            continue;
        const double edge = isLow ? 0 : subject.height();
        const double far =
            isLow ? -filler.width.inMillimetres() : subject.height() + filler.width.inMillimetres();
        const BoxMm strip = BoxMm(PointMm(-filler.thickness.inMillimetres(), std::min(edge, far)),
                                  PointMm(0, std::max(edge, far)));
        const Part part{std::nullopt, subject.plan.members[filler.member].id,
                        partBeside("filler strip", side)};
        drawHatch(sketch, cornersOf(strip), memberHatching, {}, part);
        sketch.path(Layer::CutEdge, cornersOf(strip), PathMark::End::Closed, part);
    }
}

/// A member; what fasteners fill of it stays free where the front is screwed to it. Its edge is
/// closed where it is not broken off: else what is seen of it, each from end to end.
void drawBored(Sketch& sketch, const SectionSubject& subject, const Points& outline,
               const std::vector<Points>& broken, const FastenerShapes& fasteners,
               const Part& part) {
    static const FastenerShapes none;
    const FastenerShapes& boring = subject.front.use == OpeningUse::FixedFront ? fasteners : none;
    drawHatch(sketch, outline, memberHatching, freeOf(boring), part);
    if (broken.empty())
        drawCutEdge(sketch, outline, boring.bodies, part);
    for (const Points& edge : broken)
        drawCutEdge(sketch, edge, boring.bodies, part, PathMark::End::Open);
}

} // namespace

void drawHatch(Sketch& sketch, Points outline, const Hatching& hatching,
               std::vector<Points> without, const Part& part) {
    sketch.add({Layer::CutHatch,
                HatchMark{std::move(outline), hatching.spacing, hatching.angle, std::move(without)},
                part});
}

std::vector<PointMm> frontOutline(const FrontPlan& front, SectionPlane plane, Length cut,
                                  Span part) {
    const FrontRect whole = FrontRect::atOrigin(front.rect.width(), front.rect.height());
    const bool isLevel = plane == SectionPlane::Level;
    const Length length = isLevel ? whole.width() : whole.height();
    Points outline{{0, part.high.inMillimetres()}, {0, part.low.inMillimetres()}};
    for (const Length at : facePlaces(front, length, part)) {
        const FrontPoint p = isLevel ? FrontPoint{at, cut} : FrontPoint{cut, at};
        const double t = localThickness(*front.profile, whole, front.thickness, p).inMillimetres();
        const std::size_t n = outline.size();
        if (n > 3 && outline[n - 1].x() == -t && outline[n - 2].x() == -t)
            outline.pop_back();
        outline.emplace_back(-t, at.inMillimetres());
    }
    return outline;
}

void drawNeighbour(Sketch& sketch, const SectionSubject& subject, Side side) {
    constexpr double mostOnPaper = 9;
    const auto index = subject.front.neighbours[side].front;
    if (!index)
        return;
    const FrontPlan& other = subject.plan.fronts[*index];
    const Span along = subject.alongCase(other.rect), own = subject.alongCase(subject.front.rect);
    const Length height = along.size();
    const bool isLevel = subject.isLevel();
    const Length cut = subject.cutAt() + (isLevel ? subject.front.rect.bottom - other.rect.bottom
                                                  : subject.front.rect.left - other.rect.left);
    const Length across = isLevel ? other.rect.height() : other.rect.width();
    const bool isOnSameBox = subject.front.face && other.face == subject.front.face;
    const Length most =
        isOnSameBox ? height
                    : least(height, Length::nearestToMillimetres(sketch.forPaper(mostOnPaper)));
    if (cut <= Length{} || across <= cut || height <= Length{})
        return;
    const bool isAbove = side == subject.highSide();
    const Span part = isAbove ? Span{{}, most} : Span{height - most, height};
    // Frames lie flush: what differs is how far each front stands back from the frame's face.
    const PointMm shift((other.box.setback - subject.front.box.setback).inMillimetres(),
                        (along.low - own.low).inMillimetres());
    Points outline = frontOutline(other, subject.plane, cut, part);
    for (PointMm& p : outline)
        p += shift;
    const Part named{other.opening, std::nullopt, partBeside("front", side)};
    drawHatch(sketch, outline, neighbourHatching, {}, named);
    // Open at the break: the outline runs from its upper end down the back, along the lower edge
    // and up the face.
    Points edge = outline;
    if (!isAbove) {
        edge.assign(outline.begin() + 2, outline.end());
        edge.push_back(outline[0]);
        edge.push_back(outline[1]);
    }
    sketch.path(Layer::CutEdge, std::move(edge),
                most < height ? PathMark::End::Open : PathMark::End::Closed, named);
}

void drawMember(Sketch& sketch, const SectionSubject& subject, Side side,
                const FastenerShapes& fasteners) {
    constexpr double mostOnPaper = 22;
    const MemberPlan& member = subject.plan.members[subject.front.neighbours[side].member];
    if (!isBuilt(member.kind)) {
        drawFiller(sketch, subject, side);
        return;
    }
    const double deep = depthOfMembers(subject.project.casework).inMillimetres();
    if (!(deep > 0) || widthOf(member) <= Length{})
        return;
    const bool isBelow = side == subject.lowSide();
    const Length origin = subject.alongCase(subject.front.rect).low;
    const double low = (subject.alongCase(member.rect).low - origin).inMillimetres();
    const double high = (subject.alongCase(member.rect).high - origin).inMillimetres();
    const double near = isBelow ? high : low;
    const double most = sketch.forPaper(mostOnPaper);
    const bool isBroken = high - low > most;
    const double far = isBelow ? std::max(low, high - most) : std::min(high, low + most);
    const double face = subject.face();
    // A panel runs back as far as the box is drawn.
    const double depth = std::min(deep, subject.boxEnd() - face);
    const Points outline{{face, far}, {face, near}, {face + depth, near}, {face + depth, far}};
    const Part part{std::nullopt, member.id, partBeside("member", side)};
    drawBored(sketch, subject, outline,
              isBroken ? std::vector<Points>{outline} : std::vector<Points>{}, fasteners, part);
}

void drawMembersAlong(Sketch& sketch, const SectionSubject& subject,
                      const FastenerShapes& fasteners) {
    constexpr double mostOnPaper = 12; // beyond the front's ends
    const bool isLevel = subject.isLevel();
    const CaseRect& front = subject.front.rect;
    const Length cut = subject.cutAt() + (isLevel ? front.bottom : front.left);
    const double deep = depthOfMembers(subject.project.casework).inMillimetres();
    const double face = subject.face();
    const double back = face + std::min(deep, subject.boxEnd() - face);
    for (const Side side :
         {isLevel ? Side::Bottom : Side::Left, isLevel ? Side::Top : Side::Right}) {
        const MemberPlan& member = subject.plan.members[subject.front.neighbours[side].member];
        const Span across = isLevel ? member.rect.upright() : member.rect.across();
        if (!isBuilt(member.kind) || !(deep > 0) || cut <= across.low || across.high <= cut)
            continue;
        const Length origin = subject.alongCase(front).low;
        const Span whole = subject.alongCase(member.rect);
        const double beyond = sketch.forPaper(mostOnPaper);
        const double first = (whole.low - origin).inMillimetres();
        const double last = (whole.high - origin).inMillimetres();
        const double low = std::max(first, -beyond);
        const double high = std::min(last, subject.height() + beyond);
        const Points inFront{{face, low}, {face, high}}, behind{{back, high}, {back, low}};
        Points fromLow = inFront, fromHigh = behind;
        fromLow.insert(fromLow.end(), behind.begin(), behind.end());
        fromHigh.insert(fromHigh.end(), inFront.begin(), inFront.end());
        std::vector<Points> broken;
        if (first < low && high < last)
            broken = {inFront, behind};
        else if (first < low)
            broken = {fromLow};
        else if (high < last)
            broken = {fromHigh};
        drawBored(sketch, subject, fromLow, broken, fasteners,
                  Part{std::nullopt, member.id, "member along"});
    }
}

} // namespace frontwright
