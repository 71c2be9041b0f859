#pragma once

#include "core/drawings/long_break.h"
#include "core/drawings/section.h"
#include "core/drawings/sketch.h"

namespace frontwright {

// The sections' parts, in one frame for both: x = 0 at the front's back and growing into the box,
// y along the front: from its lower edge up, in the level section from its left edge to the right.
// The level one is turned at the end. Each part is drawn by one file.

enum class SectionPlane : std::uint8_t { Upright, Level };

/// What the section's parts are drawn from, in mm.
struct SectionSubject {
    const Project& project;
    const Plan& plan;
    const FrontPlan& front;
    std::uint32_t frontIndex = 0;
    const SectionOptions& options;
    SectionPlane plane = SectionPlane::Upright;

    [[nodiscard]] bool isLevel() const { return plane == SectionPlane::Level; }
    /// The coordinate along the front.
    [[nodiscard]] Length along(FrontPoint p) const { return isLevel() ? p.x : p.y; }
    [[nodiscard]] Side lowSide() const { return isLevel() ? Side::Left : Side::Bottom; }
    [[nodiscard]] Side highSide() const { return isLevel() ? Side::Right : Side::Top; }
    [[nodiscard]] Span alongCase(const CaseRect& rect) const {
        return isLevel() ? rect.across() : rect.upright();
    }
    [[nodiscard]] double thickness() const { return front.thickness.inMillimetres(); }
    /// Of the front, along it.
    [[nodiscard]] Length length() const { return alongCase(front.rect).size(); }
    [[nodiscard]] double height() const { return length().inMillimetres(); }
    [[nodiscard]] double wall() const { return front.box.wallThickness.inMillimetres(); }
    /// The frame's face, or frameless the members' front edges: behind the show face where the
    /// front lies in its opening, before its back.
    [[nodiscard]] double face() const { return -front.box.setback.inMillimetres(); }
    /// Where the box's wall begins along the front, and how far it reaches from there.
    [[nodiscard]] double boxFoot() const { return along(front.box.wallOnFront).inMillimetres(); }
    [[nodiscard]] double boxLength() const {
        return (isLevel() ? front.box.width : front.box.height).inMillimetres();
    }
    /// Where the box is broken off, at its inside.
    [[nodiscard]] double boxEnd() const { return wall() + 30 / options.paperScale; }

    /// The selected screw's hole; nullptr where there is none of that number.
    [[nodiscard]] const MountingHole* hole() const;
    /// In the front's frame, from its left edge (level: above its lower one): where it is laid.
    [[nodiscard]] Length cutAt() const;
    /// How far the handle stands out from the show face; 0 where there is none.
    [[nodiscard]] double handleProjection() const;
    /// As the section's words are told.
    [[nodiscard]] std::string say(const Phrase& words) const {
        return told(words, options.language);
    }
};

/// A screw or a bolt seen from the side: not cut, so it hides what is behind it.
struct FastenerBody {
    std::vector<PointMm> outline; ///< closed
    /// Half its height where it meets an upright line at x; 0 where it does not.
    [[nodiscard]] double halfHeightAt(double x) const;
    double axis = 0; ///< height of its centre line
};

/// All that is screwed or bored through the wood at this section.
struct FastenerShapes {
    std::vector<FastenerBody> bodies;
    std::vector<std::vector<PointMm>> voids; ///< holes, counterbores, access holes: no wood there
};
FastenerShapes fastenerShapes(const SectionSubject&);

/// How a cut part is hatched; its own for each, so that neighbours are told apart.
struct Hatching {
    double angle = 45;
    double spacing = 2;
};
void drawHatch(Sketch&, std::vector<PointMm> outline, const Hatching&,
               std::vector<std::vector<PointMm>> without, const Part&);

/// The back from the high end down, then the face from the low end up, of that part of a front's
/// length, cut at `cut` in its own frame. Runs of equal thickness become one straight line.
std::vector<PointMm> frontOutline(const FrontPlan&, SectionPlane, Length cut, Span part);

/// The edge of the front beside this one, so that the gap is seen; broken off.
void drawNeighbour(Sketch&, const SectionSubject&, Side);
/// The member at that edge of the front, as far as a little of it is to be seen. Its face lies at
/// x = −setback. What of it fasteners fill stays free. Where none is built the filler strip.
void drawMember(Sketch&, const SectionSubject&, Side, const FastenerShapes&);
/// The member that the section runs along: the rail behind a fixed front at the height of its screw,
/// upright the stile.
void drawMembersAlong(Sketch&, const SectionSubject&, const FastenerShapes&);
/// What stands round the case at that side, where the front lies at the case's edge.
void drawSurround(Sketch&, const SectionSubject&, Side);
/// The front row of system holes in the panel behind the section, as far as it lies within what is
/// drawn; none in the level section.
void drawSystemRows(Sketch&, const SectionSubject&);
/// The outline, or as many open ones as fasteners cut it into. Open: broken off between its last
/// point and its first.
void drawCutEdge(Sketch&, const std::vector<PointMm>& outline,
                 const std::vector<FastenerBody>& bodies, const Part&,
                 PathMark::End = PathMark::End::Closed);
/// Holes and what is in them: no wood to hatch.
std::vector<std::vector<PointMm>> freeOf(const FastenerShapes&);
/// What is behind the wall, broken off: the bottom, in the level section the box's sides.
void drawBoxInside(Sketch&, const SectionSubject&, const std::vector<std::vector<PointMm>>& free);
/// What the box runs on, from its front end to the break: wooden runners with kicker and guide,
/// metal ones at the side or under the bottom, furring beside them where its thickness is told.
void drawRunner(Sketch&, const SectionSubject&);
/// The bottom panel in its groove; empty in the level section.
BoxMm bottomBox(const SectionSubject&);

/// Screws, bolts, their holes and centre lines, and the handle.
void drawFasteners(Sketch&, const SectionSubject&);

/// What is let in and bored for fittings, as it leaves hatches free.
std::vector<std::vector<PointMm>> fittingVoids(const SectionSubject&);
/// Fittings held by screws: their bodies, screws, holes and mortises.
void drawFittingsInSection(Sketch&, const SectionSubject&);

/// Front, wall, bottom, members above and below, with hatches that leave the fasteners free.
void drawWood(Sketch&, const SectionSubject&, const FastenerShapes&);

/// Rows of dimensions round all that has been drawn.
void drawSectionDimensions(Sketch&, const SectionSubject&);
/// The same for the level section, once it is turned: x along the front, y into the box.
void drawLevelDimensions(Sketch&, const SectionSubject&, const LongBreak&);

class DimensionRows;
/// Along x of the common frame: what a screw takes up of wall and front, what a bolt does.
void layScrew(DimensionRows&, const SectionSubject&);
void layBolt(DimensionRows&, const SectionSubject&, const HardwarePlan&);
/// The same axis: how far the runner stands back from the frame's face.
void layRunner(DimensionRows&, const SectionSubject&);

/// Places along the front of the handle's holes that are drawn, each once.
std::vector<double> boltAxes(const SectionSubject&, const HardwarePlan&);

/// The stable name of what that pattern tells: "overlay" for "overlay %1".
std::string partName(Text pattern);

// The fasteners' places along x, for what is drawn and what is dimensioned.

/// From head (w − recess) to tip (−penetration). nullopt where no length is given and none fits.
struct ScrewReach {
    double head = 0;
    double tip = 0;
};
std::optional<ScrewReach> screwReach(const SectionSubject&, const MountingHole&);

/// From under the bolt's head to its end. Where none fits, the least length that would do.
struct BoltReach {
    double underHead = 0;
    double end = 0;
    double bored = 0;   ///< the face that the counterbore starts from
    double headTop = 0; ///< where a driver meets the head
};
BoltReach boltReach(const SectionSubject&, const HardwarePlan&);

} // namespace frontwright
