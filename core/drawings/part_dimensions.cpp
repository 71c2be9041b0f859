#include "core/drawings/dimension_rows.h"
#include "core/drawings/elevation.h"
#include "core/drawings/elevation_parts.h"
#include "core/drawings/sketch.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {

namespace {

/// Of the first row from the front's edge, mm on paper: nearer than round the case, since the part
/// is what is looked at.
constexpr double firstRow = 5;

/// What is measured to: its stable name, and the words with the distance.
struct Target {
    const char* name;
    Text pattern;
};
Target targetOf(PartDistance::To to) {
    switch (to) {
    case PartDistance::To::FrontEdge:
        return {"front", text("front %1")};
    case PartDistance::To::BoxWall:
        return {"wall", text("wall %1")};
    case PartDistance::To::Bottom:
        return {"bottom", text("bottom %1")};
    case PartDistance::To::Hole:
        break;
    }
    return {"hole", text("hole %1")};
}

/// What a distance to the wall's left or lower edge is called in the plan, so that it can be typed.
std::optional<Quantity> quantityOf(const Plan& plan, const PlacedPart& part,
                                   const PartDistance& distance) {
    const bool isHole = part.kind == PlacedPart::Kind::MountingHole;
    if (!isHole || distance.to != PartDistance::To::BoxWall)
        return std::nullopt;
    const auto front = static_cast<std::uint32_t>(plan.frontOf(part.opening) - plan.fronts.data());
    if (distance.side == Side::Left)
        return Quantity{QuantityKind::HoleX, front, part.index};
    if (distance.side == Side::Bottom)
        return Quantity{QuantityKind::HoleY, front, part.index};
    return std::nullopt;
}

/// The rows beside the front in which its part's distances stand: those across below or above it,
/// those upright at its left or right, whichever the part is nearer to.
class PartRows {
public:
    PartRows(const Plan& plan, const PlacedPart& part, const ElevationOptions& options)
        : m_plan(plan),
          m_part(part),
          m_options(options),
          m_front(toMm(plan.frontOf(part.opening)->rect)),
          m_centre(toMm(*centreOf(plan, part))) {}

    [[nodiscard]] std::vector<Mark> marks() const {
        const bool isLow = m_centre.y() <= m_front.center().y();
        const bool isLeft = m_centre.x() <= m_front.center().x();
        const PointMm corner(isLeft ? m_front.min().x() : m_front.max().x(),
                             isLow ? m_front.min().y() : m_front.max().y());
        const double scale = m_options.paperScale;
        DimensionRows across(isLow ? Side::Bottom : Side::Top, corner.y(), scale, firstRow);
        across.keepWithin(m_front.min().x(), m_front.max().x());
        lay(across, Side::Left, Side::Right);
        // Farther out where a text of the widths had to reach past the front.
        double beyond = 0;
        if (!across.isEmpty())
            beyond = isLeft ? corner.x() * scale - across.lowest()
                            : across.highest() - corner.x() * scale;
        DimensionRows upright(isLeft ? Side::Left : Side::Right, corner.x(), scale,
                              firstRow + std::max(0.0, beyond));
        upright.keepWithin(m_front.min().y(), m_front.max().y());
        lay(upright, Side::Bottom, Side::Top);
        return taken({&across, &upright}, corner);
    }

private:
    [[nodiscard]] Measured measured(const PartDistance& distance) const {
        const bool isAcross = isLeftOrRight(distance.side);
        const double end =
            isAcross ? distance.end.x.inMillimetres() : distance.end.y.inMillimetres();
        const double own = isAcross ? m_centre.x() : m_centre.y();
        const Target target = targetOf(distance.to);
        const Phrase words(target.pattern,
                           {shownBare(distance.length.magnitude(), m_options.style)});
        return {std::min(own, end), std::max(own, end), told(words, m_options.language),
                quantityOf(m_plan, m_part, distance),
                Part{m_part.opening, std::nullopt, std::string("distance to ") + target.name}};
    }
    void lay(DimensionRows& rows, Side low, Side high) const {
        const std::vector<PartDistance> distances = distancesOf(m_plan, m_part);
        for (const auto to : {PartDistance::To::Bottom, PartDistance::To::Hole,
                              PartDistance::To::BoxWall, PartDistance::To::FrontEdge}) {
            std::vector<Measured> chain;
            for (const PartDistance& distance : distances)
                if (distance.to == to && (distance.side == low || distance.side == high) &&
                    !distance.length.isZero())
                    chain.push_back(measured(distance));
            rows.addChain(std::move(chain));
        }
    }
    /// With the lines from the part to the rows.
    [[nodiscard]] std::vector<Mark> taken(std::initializer_list<const DimensionRows*> sides,
                                          const PointMm& corner) const {
        std::vector<Mark> marks;
        for (const DimensionRows* rows : sides)
            for (Mark& mark : rows->marks()) {
                mark.layer = Layer::PartDimension;
                marks.push_back(std::move(mark));
            }
        const Part part{m_part.opening, std::nullopt, "to the part"};
        marks.push_back(
            {Layer::PartDimension, LineMark{m_centre, {m_centre.x(), corner.y()}}, part});
        marks.push_back(
            {Layer::PartDimension, LineMark{m_centre, {corner.x(), m_centre.y()}}, part});
        return marks;
    }

    const Plan& m_plan;
    const PlacedPart& m_part;
    const ElevationOptions& m_options;
    BoxMm m_front;
    PointMm m_centre;
};

} // namespace

std::vector<Mark> partDimensions(const Plan& plan, const ElevationOptions& options) {
    if (!options.emphasisedPart || options.dimensions == Shown::No ||
        !centreOf(plan, *options.emphasisedPart))
        return {};
    return PartRows(plan, *options.emphasisedPart, options).marks();
}

std::optional<CaseRect> partReach(const Plan& plan, const ElevationOptions& options) {
    const BoxMm box = extentOf({partDimensions(plan, options), {}, options.paperScale});
    if (box.isEmpty())
        return std::nullopt;
    const auto at = [](double mm) { return Length::nearestToMillimetres(mm); };
    return CaseRect{at(box.min().x()), at(box.min().y()), at(box.max().x()), at(box.max().y())};
}

} // namespace frontwright
