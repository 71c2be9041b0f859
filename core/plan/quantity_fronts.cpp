#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

struct SideWords {
    Text overlay;
    Text gap;
};
SideWords wordsOf(Side side) {
    switch (side) {
    case Side::Left:
        return {text("left overlay"), text("left gap")};
    case Side::Right:
        return {text("right overlay"), text("right gap")};
    case Side::Bottom:
        return {text("bottom overlay"), text("bottom gap")};
    case Side::Top:
        break;
    }
    return {text("top overlay"), text("top gap")};
}

/// opening + overlay + overlay; an inset side takes its gap away.
Rule ruleOfSize(const Asked& asked, Length opening, std::array<Side, 2> sides) {
    const FrontPlan& front = asked.front();
    Figures figures = asked.figures().plus(opening);
    Phrase formula = text("opening");
    for (const Side side : sides) {
        const bool isInset = front.fit[side] == Fit::Inset;
        formula = isInset ? phrase("%1 − %2", formula, wordsOf(side).gap)
                          : phrase("%1 + %2", formula, wordsOf(side).overlay);
        figures = isInset ? figures.minus(-front.overlay[side]) : figures.plus(front.overlay[side]);
    }
    return {formula, figures.text(), commonPractice(), {InputPlace::Divisions, InputPlace::Fit}};
}

Rule ruleOfOpening(const Asked& asked, const CaseRect& opening, Direction along) {
    const bool isWidth = along == Direction::Columns;
    const Span span = isWidth ? opening.across() : opening.upright();
    return {
        isWidth ? text("opening's right edge − its left edge, from the case's left side")
                : text("opening's top − its bottom, from the case's lower edge"),
        asked.figures().plus(span.high).minus(span.low).text(),
        commonPractice(),
        {InputPlace::CaseSize, InputPlace::Frame, InputPlace::Divisions, InputPlace::MemberWidth}};
}

Rule ruleOfEdge(const Asked& asked) {
    const FrontPlan& front = asked.front();
    if (asked.value == front.thickness)
        return {text("thickness, as no profile takes from the edge"),
                asked.figures().plus(front.thickness).text(),
                commonPractice(),
                {InputPlace::Thickness, InputPlace::Profile}};
    return {text("thickness − profile's depth"),
            asked.figures().plus(front.thickness).minus(front.thickness - asked.value).text(),
            commonPractice(),
            {InputPlace::Thickness, InputPlace::Profile}};
}

Rule ruleOfField(const Asked& asked, Length size, Span field, Text formula) {
    return {formula,
            asked.figures().plus(size).minus(field.low).minus(size - field.high).text(),
            commonPractice(),
            {InputPlace::Fit, InputPlace::Profile}};
}

} // namespace

Rule ruleOfFrontSize(const Asked& asked) {
    using enum QuantityKind;
    const FrontPlan& front = asked.front();
    const QuantityKind kind = asked.quantity.kind;
    if (kind == OpeningWidth)
        return ruleOfOpening(asked, front.openingRect, Direction::Columns);
    if (kind == OpeningHeight)
        return ruleOfOpening(asked, front.openingRect, Direction::Rows);
    if (kind == FrontWidth)
        return ruleOfSize(asked, front.openingRect.width(), {Side::Left, Side::Right});
    if (kind == FrontHeight)
        return ruleOfSize(asked, front.openingRect.height(), {Side::Bottom, Side::Top});
    if (kind == FieldWidth)
        return ruleOfField(asked, front.rect.width(), front.field.across(),
                           text("front's width − profile at the left − profile at the right"));
    if (kind == FieldHeight)
        return ruleOfField(asked, front.rect.height(), front.field.upright(),
                           text("front's height − profile at the bottom − profile at the top"));
    if (kind == EdgeThickness)
        return ruleOfEdge(asked);
    return asGiven(asked, InputPlace::Thickness);
}

Rule ruleOfSpace(const Asked& asked) {
    return ruleOfOpening(asked, asked.plan.spaces[asked.quantity.item].rect,
                         asked.quantity.kind == QuantityKind::SpaceWidth ? Direction::Columns
                                                                         : Direction::Rows);
}

} // namespace frontwright::deriving
