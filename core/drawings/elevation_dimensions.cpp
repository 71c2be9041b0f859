#include "core/drawings/elevation_parts.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/dimension_rows.h"
#include "core/drawings/elevation_chains.h"
#include "core/drawings/lettering.h"
#include "core/lengths/format.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

/// What is dimensioned of the emphasised front.
enum class Extent : std::uint8_t { Width, Height };

std::uint32_t indexOf(const Plan& plan, const FrontPlan& front) {
    return static_cast<std::uint32_t>(&front - plan.fronts.data());
}

Measured measuredFront(const Plan& plan, const FrontPlan& front, Extent extent, LengthStyle style) {
    const bool isWidth = extent == Extent::Width;
    const Span span = isWidth ? front.rect.across() : front.rect.upright();
    return {span.low.inMillimetres(), span.high.inMillimetres(), shownBare(span.size(), style),
            Quantity{isWidth ? QuantityKind::FrontWidth : QuantityKind::FrontHeight,
                     indexOf(plan, front), 0},
            Part{front.opening, std::nullopt, isWidth ? "front width" : "front height"}};
}

/// A dimension of the front that lies inside it, `away` mm of paper from its lower or left edge.
Mark insideMark(const Plan& plan, const FrontPlan& front, Extent extent, double away,
                LengthStyle style) {
    Measured m = measuredFront(plan, front, extent, style);
    const BoxMm box = toMm(front.rect);
    DimensionMark mark;
    if (extent == Extent::Width) {
        mark.from = {m.low, box.min().y()};
        mark.to = {m.high, box.min().y()};
        mark.offset = away;
    } else {
        mark.from = {box.min().x(), m.low};
        mark.to = {box.min().x(), m.high};
        mark.offset = -away;
    }
    mark.text = std::move(m.text);
    mark.quantity = m.quantity;
    return {Layer::Dimension, std::move(mark), m.part};
}

bool meetsAny(const BoxMm& box, const std::vector<BoxMm>& others) {
    return std::any_of(others.begin(), others.end(),
                       [&](const BoxMm& other) { return box.intersects(other); });
}

/// Handles and holes on a front, as far as they are shown.
std::vector<BoxMm> boredOn(const FrontPlan& front, const ElevationOptions& options) {
    std::vector<BoxMm> boxes = handleBoxes(front, options);
    const std::vector<BoxMm> screws = screwBoxes(front, options);
    boxes.insert(boxes.end(), screws.begin(), screws.end());
    return boxes;
}

/// The nearest place inside a front where a dimension's text meets nothing.
std::optional<Mark> placedInside(const Plan& plan, const FrontPlan& front, Extent extent,
                                 const ElevationOptions& options,
                                 const std::vector<BoxMm>& obstacles) {
    constexpr double step = 1, spare = 0.6;
    const double scale = options.paperScale;
    const BoxMm box = toMm(front.rect);
    const bool isWidth = extent == Extent::Width;
    const double room = (isWidth ? box.sizes().y() : box.sizes().x()) * scale;
    const double first = isWidth ? 2.5 : 5.0;
    const std::vector<BoxMm> bored = boredOn(front, options);
    for (double away = first; away + 6 < room; away += step) {
        Mark mark = insideMark(plan, front, extent, away, options.style);
        const DimensionFigure figure = figureOf(std::get<DimensionMark>(mark.shape), scale);
        const PointMm free(spare / scale, spare / scale);
        const BoxMm text = textBox(figure.text, scale);
        const BoxMm around(text.min() - free, text.max() + free);
        const bool isClear = !meetsAny(around, obstacles);
        // No dimension line runs over a hole or a handle.
        const BoxMm line = BoxMm(figure.line.from).extend(figure.line.to);
        const bool isLineClear = !meetsAny(line, bored);
        if (box.contains(around) && isClear && isLineClear)
            return mark;
    }
    return std::nullopt;
}

/// The text and, where it must stay clear, the whole dimension line.
BoxMm coveredBy(const Mark& mark, double paperScale) {
    const DimensionFigure figure = figureOf(std::get<DimensionMark>(mark.shape), paperScale);
    BoxMm box = textBox(figure.text, paperScale);
    return box.extend(figure.line.from).extend(figure.line.to);
}

/// Adds `others`; what is already there and would meet them is left out.
void giveWay(std::vector<Mark>& marks, std::vector<Mark> others, double paperScale) {
    if (others.empty())
        return;
    std::vector<BoxMm> taken;
    for (const Mark& mark : others)
        if (std::holds_alternative<DimensionMark>(mark.shape))
            taken.push_back(coveredBy(mark, paperScale));
    std::erase_if(marks,
                  [&](const Mark& mark) { return meetsAny(coveredBy(mark, paperScale), taken); });
    marks.insert(marks.end(), others.begin(), others.end());
}

bool isEmphasised(const FrontPlan& front, const ElevationOptions& options) {
    return options.dimensions == Shown::Yes && options.emphasised == front.opening &&
           !options.emphasisedPart;
}

Measured overall(Span span, QuantityKind kind, std::string name, LengthStyle style) {
    return {span.low.inMillimetres(), span.high.inMillimetres(), shownBare(span.size(), style),
            Quantity{kind, 0, 0}, Part{std::nullopt, std::nullopt, std::move(name)}};
}

/// The rows at the four sides of the case.
class CaseRows {
public:
    CaseRows(const Plan& plan, const ElevationOptions& options)
        : m_plan(plan),
          m_options(options),
          m_case(toMm(plan.outline)),
          m_reach(reachOfSurroundings(plan, options.paperScale)) {}

    CaseDimensions laid(const FrontPlan* emphasised) {
        layHeights(emphasised);
        layWidths(emphasised);
        return std::move(m_laid);
    }

private:
    /// Extension lines begin at the case, rows beyond what stands round it.
    DimensionRows rows(Side side, double beyond = 0) const {
        const double scale = m_options.paperScale;
        const auto from = [&](double edge, double reach) {
            const double first = DimensionRows::defaultFirstRow + beyond + reach * scale;
            return DimensionRows(side, edge, scale, first, m_options.dimensionRows);
        };
        switch (side) {
        case Side::Left:
            return from(m_case.min().x(), m_case.min().x() - m_reach.min().x());
        case Side::Right:
            return from(m_case.max().x(), m_reach.max().x() - m_case.max().x());
        case Side::Bottom:
            return from(m_case.min().y(), m_case.min().y() - m_reach.min().y());
        case Side::Top:
            break;
        }
        return from(m_case.max().y(), m_reach.max().y() - m_case.max().y());
    }
    /// The whole with what stands out, and before it, in one row, what adds to the case.
    void addOverall(DimensionRows& row, Axis axis) const {
        const bool isWidth = axis == Axis::Widths;
        const auto along = [&](const CaseRect& r) { return isWidth ? r.across() : r.upright(); };
        const Span inner = along(m_plan.outline), whole = along(m_plan.whole);
        const Measured ofCase =
            overall(inner, isWidth ? QuantityKind::CaseWidth : QuantityKind::CaseHeight,
                    isWidth ? "case width" : "case height", m_options.style);
        if (inner == whole)
            return row.addOverall(ofCase);
        std::vector<Measured> chain;
        if (whole.low < inner.low)
            chain.push_back(added({whole.low, inner.low}));
        chain.push_back(ofCase);
        if (inner.high < whole.high)
            chain.push_back(added({inner.high, whole.high}));
        row.addChain(std::move(chain));
        row.addOverall(overall(whole,
                               isWidth ? QuantityKind::TotalWidth : QuantityKind::TotalHeight,
                               isWidth ? "total width" : "total height", m_options.style));
    }
    [[nodiscard]] Measured added(Span span) const {
        return {span.low.inMillimetres(), span.high.inMillimetres(),
                shownBare(span.size(), m_options.style), std::nullopt,
                Part{std::nullopt, std::nullopt, "round the case"}};
    }
    void take(const DimensionRows& rows) {
        for (Mark& mark : rows.marks())
            m_laid.marks.push_back(std::move(mark));
        m_laid.leftOut += rows.leftOut();
    }

    void layHeights(const FrontPlan* emphasised) {
        const double low = m_case.min().y(), high = m_case.max().y();
        DimensionRows left = rows(Side::Left);
        DimensionRows right = rows(Side::Right);
        for (const double end : {low, high})
            left.keepClear(end);
        const BoxMm whole = toMm(m_plan.whole);
        left.keepWithin(whole.min().y(), whole.max().y());
        right.keepWithin(low, high);
        if (emphasised != nullptr)
            left.addChain({measuredFront(m_plan, *emphasised, Extent::Height, m_options.style)});
        addChains(m_plan, Axis::Heights, m_options.style, left, right);
        addOverall(left, Axis::Heights);
        for (const DimensionRows* side : {&left, &right})
            if (!side->isEmpty()) {
                const double scale = m_options.paperScale;
                m_beyondLow = std::max(m_beyondLow, m_reach.min().y() * scale - side->lowest());
                m_beyondHigh = std::max(m_beyondHigh, side->highest() - m_reach.max().y() * scale);
                take(*side);
            }
    }

    /// Farther out where a text of the heights had to reach beyond the case.
    void layWidths(const FrontPlan* emphasised) {
        DimensionRows below = rows(Side::Bottom, m_beyondLow);
        DimensionRows above = rows(Side::Top, m_beyondHigh);
        below.keepClear(m_case.min().x());
        below.keepClear(m_case.max().x());
        if (emphasised != nullptr)
            below.addChain({measuredFront(m_plan, *emphasised, Extent::Width, m_options.style)});
        addChains(m_plan, Axis::Widths, m_options.style, below, above);
        addOverall(below, Axis::Widths);
        take(below);
        take(above);
    }

    const Plan& m_plan;
    const ElevationOptions& m_options;
    BoxMm m_case;
    BoxMm m_reach;           ///< with what stands round the case
    double m_beyondLow = 0;  // on paper
    double m_beyondHigh = 0; // on paper
    CaseDimensions m_laid;
};

} // namespace

std::vector<Mark> dimensionsInside(const Plan& plan, const FrontPlan& front,
                                   const ElevationOptions& options) {
    if (!isEmphasised(front, options))
        return {};
    std::vector<BoxMm> obstacles = obstaclesOn(front, options);
    const auto width = placedInside(plan, front, Extent::Width, options, obstacles);
    if (!width)
        return {};
    const BoxMm text =
        textBox(figureOf(std::get<DimensionMark>(width->shape), options.paperScale).text,
                options.paperScale);
    obstacles.push_back(text);
    const auto height = placedInside(plan, front, Extent::Height, options, obstacles);
    if (!height)
        return {};
    // Neither line may run through the other's text.
    if (coveredBy(*height, options.paperScale).intersects(text))
        return {};
    return {*width, *height};
}

CaseDimensions caseDimensions(const Plan& plan, const ElevationOptions& options) {
    const bool isOfFront = options.emphasised && !options.emphasisedPart;
    const FrontPlan* emphasised = isOfFront ? plan.frontOf(*options.emphasised) : nullptr;
    std::vector<Mark> inside;
    if (emphasised != nullptr)
        inside = dimensionsInside(plan, *emphasised, options);
    CaseDimensions laid = CaseRows(plan, options).laid(inside.empty() ? emphasised : nullptr);
    laid.marks.insert(laid.marks.end(), inside.begin(), inside.end());
    giveWay(laid.marks, partDimensions(plan, options), options.paperScale);
    return laid;
}

Drawing elevationDimensions(const Project&, const Plan& plan, const ElevationOptions& options) {
    Sketch sketch(options.paperScale);
    for (Mark& mark : caseDimensions(plan, options).marks)
        sketch.add(std::move(mark));
    return std::move(sketch).finished(0);
}

} // namespace frontwright
