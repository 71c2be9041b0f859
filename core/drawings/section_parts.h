#pragma once

#include "core/drawings/section.h"
#include "core/drawings/sketch.h"

namespace frontwright {

// The section's parts, in its own frame: x = 0 at the front's back and growing into the box,
// y = height above the front's lower edge. Each part is drawn by one file.

/// What the section's parts are drawn from, in mm.
struct SectionSubject {
    const Project& project;
    const Plan& plan;
    const FrontPlan& front;
    std::uint32_t frontIndex = 0;
    const SectionOptions& options;

    [[nodiscard]] double thickness() const { return front.thickness.inMillimetres(); }
    [[nodiscard]] double height() const { return front.rect.height().inMillimetres(); }
    [[nodiscard]] double wall() const { return front.box.wallThickness.inMillimetres(); }
    /// The box wall's lower edge above the front's.
    [[nodiscard]] double boxFoot() const { return front.box.wallOnFront.y.inMillimetres(); }
    /// Where the box is broken off, at its inside.
    [[nodiscard]] double boxEnd() const { return wall() + 30 / options.paperScale; }

    /// The selected screw's hole; nullptr where there is none of that number.
    [[nodiscard]] const MountingHole* hole() const;
    /// In the front's frame, from its left edge: where the section is laid.
    [[nodiscard]] Length cutAt() const;
    /// How far the handle stands out from the show face; 0 where there is none.
    [[nodiscard]] double handleProjection() const;
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

/// Screws, bolts, their holes and centre lines, and the handle.
void drawFasteners(Sketch&, const SectionSubject&);

/// Front, wall, bottom, members above and below, with hatches that leave the fasteners free.
void drawWood(Sketch&, const SectionSubject&, const FastenerShapes&);

/// Rows of dimensions round all that has been drawn.
void drawSectionDimensions(Sketch&, const SectionSubject&);

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
    double bored = 0; ///< the face that the counterbore starts from
};
BoltReach boltReach(const SectionSubject&, const HardwarePlan&);

} // namespace frontwright
