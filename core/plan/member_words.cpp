#include "core/plan/member_words.h"

namespace frontwright {

namespace {

constexpr PerSide<Text> ofFrame{text("Left stile"), text("Right stile"), text("Bottom rail"),
                                text("Top rail")};
constexpr PerSide<Text> ofPanels{text("Left side panel"), text("Right side panel"),
                                 text("Bottom panel"), text("Top panel")};

} // namespace

Text nameOfOuter(Construction construction, Side side) {
    switch (construction) {
    case Construction::FaceFrame:
        return ofFrame[side];
    case Construction::Frameless:
        break;
    }
    return ofPanels[side];
}

Text nameOfKind(Construction construction, MemberKind kind) {
    if (!isBuilt(kind))
        return text("Division of the face");
    switch (construction) {
    case Construction::FaceFrame:
        return isUpright(kind) ? text("Stile") : text("Rail");
    case Construction::Frameless:
        break;
    }
    return isUpright(kind) ? text("Divider") : text("Shelf");
}

Phrase nameOfMember(const Plan& plan, std::uint32_t index) {
    const MemberPlan& member = plan.members[index];
    if (const auto side = outerSide(member.id))
        return nameOfOuter(plan.construction, *side);
    const std::string number = std::to_string(index - 3); // the four outer ones come first
    if (!isBuilt(member.kind))
        return phrase("Division of the face %1", number);
    switch (plan.construction) {
    case Construction::FaceFrame:
        return isUpright(member.kind) ? phrase("Stile %1", number) : phrase("Rail %1", number);
    case Construction::Frameless:
        break;
    }
    return isUpright(member.kind) ? phrase("Divider %1", number) : phrase("Shelf %1", number);
}

Text behindFace(Construction construction) {
    switch (construction) {
    case Construction::FaceFrame:
        return text("behind the frame's face");
    case Construction::Frameless:
        break;
    }
    return text("behind the case's front edge");
}

std::optional<Side> outerSide(MemberId id) {
    if (id == leftStile)
        return Side::Left;
    if (id == rightStile)
        return Side::Right;
    if (id == bottomRail)
        return Side::Bottom;
    if (id == topRail)
        return Side::Top;
    return std::nullopt;
}

} // namespace frontwright
