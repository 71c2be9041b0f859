#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

#include <algorithm>

namespace frontwright::deriving {

namespace {

std::vector<InputPlace> handleInputs() {
    return {InputPlace::Hardware, InputPlace::Fit, InputPlace::Profile};
}

/// The handle that the hole belongs to, and the hole's offset from its centre.
struct HoleOfHandle {
    FrontPoint centre;
    FrontPoint offset;
};
HoleOfHandle handleOf(const HardwarePlan& hardware, std::size_t hole) {
    const std::size_t perHandle = std::max<std::size_t>(1, hardware.form->holes.size());
    const std::size_t handle = std::min(hole / perHandle, hardware.handles.size() - 1);
    const FrontPoint centre = hardware.handles[handle].centre;
    return {centre, hardware.holes[hole] - centre};
}

struct Part {
    Length whole;
    std::int64_t numerator;
    std::int64_t denominator;
    [[nodiscard]] bool gives(Length value) const {
        const std::int64_t parts = whole.nanometres() * numerator;
        return isSame(Length::fromNanometres(parts / denominator), value);
    }
};

/// Words and figures of the centre, and then the hole's offset from it.
Rule withOffset(Phrase words, Figures figures, Length offset, Source source) {
    if (!offset.isZero()) {
        words = phrase("%1 + hole's offset from the handle's centre", std::move(words));
        figures.plus(offset);
    }
    return {std::move(words), figures.text(), std::move(source), handleInputs()};
}

Rule plainRule(const Asked& asked, Length centre, Length offset) {
    return withOffset(text("handle's centre"), asked.figures().plus(centre), offset,
                      makersDecision());
}

Rule acrossRule(const Asked& asked, const HoleOfHandle& hole) {
    const FrontPlan& front = asked.front();
    const HardwareSpec& spec = chosenHardware(asked.project, front);
    const Length centre = hole.centre.x, width = front.rect.width();
    if (spec.placedAt)
        return plainRule(asked, centre, hole.offset.x);
    const Part half{width, 1, 2}, share{width, spec.twoAtPercent, 100},
        rest{width, 100 - spec.twoAtPercent, 100};
    if (half.gives(centre))
        return withOffset(text("half the front's width"), asked.figures().plusPart(width, 1, 2),
                          hole.offset.x, commonPractice());
    for (const Part& part : {share, rest})
        if (front.hardware->handles.size() > 1 && part.gives(centre))
            return withOffset(phrase("front's width × %1 per cent", std::to_string(part.numerator)),
                              asked.figures().plusPart(width, part.numerator, part.denominator),
                              hole.offset.x, makersDecision());
    if (isSame(front.field.across().middle(), centre))
        return withOffset(
            text("field's left edge + half its width"),
            asked.figures().plus(front.field.left).plusPart(front.field.width(), 1, 2),
            hole.offset.x, commonPractice());
    return plainRule(asked, centre, hole.offset.x);
}

Rule fieldMiddleRule(const Asked& asked, const HoleOfHandle& hole) {
    const FrontRect& field = asked.front().field;
    if (!isSame(field.upright().middle(), hole.centre.y))
        return plainRule(asked, hole.centre.y, hole.offset.y);
    return withOffset(text("field's lower edge + half its height"),
                      asked.figures().plus(field.bottom).plusPart(field.height(), 1, 2),
                      hole.offset.y, commonPractice());
}

Rule opticalRule(const Asked& asked, const HoleOfHandle& hole, std::int64_t part) {
    const Length height = asked.front().rect.height();
    if (part <= 0)
        return plainRule(asked, hole.centre.y, hole.offset.y);
    return withOffset(phrase("half the front's height + 1/%1 of it", std::to_string(part)),
                      asked.figures().plusPart(height, 1, 2).plusPart(height, 1, part),
                      hole.offset.y, commonPractice());
}

Rule upRule(const Asked& asked, const HoleOfHandle& hole) {
    const HardwareSpec& spec = chosenHardware(asked.project, asked.front());
    const Length height = asked.front().rect.height();
    if (spec.placedAt)
        return plainRule(asked, hole.centre.y, hole.offset.y);
    switch (spec.placing) {
    case Placing::CentredOnFront:
        break;
    case Placing::CentredInField:
        return fieldMiddleRule(asked, hole);
    case Placing::FromTop:
        return withOffset(text("front's height − the given distance from its top"),
                          asked.figures().plus(height).minus(spec.distance), hole.offset.y,
                          makersDecision());
    case Placing::OpticalCentre:
        return opticalRule(asked, hole, spec.opticalPart);
    }
    return withOffset(text("half the front's height"), asked.figures().plusPart(height, 1, 2),
                      hole.offset.y, commonPractice());
}

} // namespace

Rule ruleOfHandle(const Asked& asked) {
    const HoleOfHandle hole = handleOf(*asked.front().hardware, asked.quantity.index);
    return asked.quantity.kind == QuantityKind::HandleX ? acrossRule(asked, hole)
                                                        : upRule(asked, hole);
}

} // namespace frontwright::deriving
