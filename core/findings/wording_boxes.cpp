#include "core/findings/judging.h"
#include "core/findings/wording.h"

namespace frontwright::wording {

// box's width, height, depth, side thickness
Words boxNoRoom(const Told& told) {
    return {phrase("There is no room for a drawer box: it would be %1 wide, %2 high and %3 deep, "
                   "with sides %4 thick.",
                   told.say(0), told.say(1), told.say(2), told.say(3)),
            phrase("width = opening − 2 × side clearance %1; between the sides %2 − 2 × %3 %4; "
                   "height = opening − clearances %5; each must be more than 0",
                   told.equals(0), told.say(0), told.say(3),
                   told.equals(told.figure(0) - 2 * told.figure(3)), told.equals(1)),
            commonPractice()};
}

// box's height, opening's height, clearance below, clearance asked for above
Words boxTooTall(const Told& told) {
    const Length room = told.figure(1) - told.figure(2) - told.figure(3);
    return {phrase("The drawer box is %1 too tall: %2, and the opening leaves %3.",
                   told.say(told.figure(0) - room), told.say(0), told.say(room)),
            phrase("room = opening − clearance below − clearance above %1 − %2 − %3 %4; the box "
                   "is %5",
                   told.equals(1), told.say(2), told.say(3), told.equals(room), told.say(0)),
            commonPractice()};
}

// box's depth, setback, frame's thickness, case's depth inside
Words boxTooDeep(const Told& told) {
    const Length room = told.figure(2) + told.figure(3) - told.figure(1);
    return {phrase("The drawer box is %1 too deep: %2, and the case leaves %3.",
                   told.say(told.figure(0) - room), told.say(0), told.say(room)),
            told.project.casework.construction == Construction::Frameless
                ? phrase("room = case inside − setback %1 − %2 %3; the box is %4", told.equals(3),
                         told.say(1), told.equals(room), told.say(0))
                : phrase("room = frame + case inside − setback %1 + %2 − %3 %4; the box is %5",
                         told.equals(2), told.say(3), told.say(1), told.equals(room), told.say(0)),
            commonPractice()};
}

// bottom's underside, bottom's top, box's height
Words bottomOutOfWall(const Told& told) {
    return {phrase("The bottom does not lie in the box wall: it reaches from %1 to %2 above the "
                   "box's lower edge, and the wall is %3 high.",
                   told.say(0), told.say(1), told.say(2)),
            phrase("top of the bottom = groove height + its thickness %1 + %2 %3; it must be 0 or "
                   "more, and less than %4",
                   told.equals(0), told.say(told.figure(1) - told.figure(0)), told.equals(1),
                   told.say(2)),
            commonPractice()};
}

namespace {

Phrase anchorSentence(const Told& told, const Phrase& weight, const std::string& storage) {
    const bool isTall = told.figure(0) >= told.figure(1);
    const bool isWeightKnown = told.plan.load.isWoodKnown;
    if (isTall)
        return isWeightKnown
                   ? phrase("The case is %1 tall (%2, %3 of storage): "
                            "anchor it to the wall, and follow the local codes.",
                            told.say(0), weight, storage)
                   : phrase("The case is %1 tall (weight not known, %2 of storage): anchor it to "
                            "the wall, and follow the local codes.",
                            told.say(0), storage);
    return isWeightKnown
               ? phrase("The case is heavy (%1, %2 of storage): anchor "
                        "it to the wall, and follow the local codes.",
                        weight, storage)
               : phrase("The case is heavy (weight not known, %1 of storage): anchor it to the "
                        "wall, and follow the local codes.",
                        storage);
}

Phrase anchorReason(const Told& told, const Phrase& weight, const std::string& storage) {
    const Volume scope = Volume::fromCubicMillimetres(
        static_cast<std::int64_t>(storageScopeCubicFeet * Volume::cubicMillimetresPerCubicFoot));
    const std::string mass = shown(storageScopeMass, told.style), room = shown(scope, told.style);
    return told.plan.load.isWoodKnown
               ? phrase("clothing storage is in the published scope from %1 tall, %2 and %3 on, "
                        "all three at once; here height %4, %5, "
                        "storage %6; nothing has been tested here, and local codes decide",
                        told.say(1), mass, room, told.say(0), weight, storage)
               : phrase("clothing storage is in the published scope from %1 tall, %2 and %3 on, "
                        "all three at once; here height %4, weight not known, storage %5; nothing "
                        "has been tested here, and local codes decide",
                        told.say(1), mass, room, told.say(0), storage);
}

} // namespace

// case's height, height of the scope
Words anchorCase(const Told& told) {
    const CaseLoad& load = told.plan.load;
    const std::string known = shown(load.empty, told.style);
    const Phrase weight = told.plan.construction == Construction::FaceFrame
                              ? phrase("%1 without sides, back and top", known)
                              : phrase("%1 without back and top", known);
    const std::string storage = shown(load.storage, told.style);
    return {anchorSentence(told, weight, storage), anchorReason(told, weight, storage),
            sourceNamed(SourceKind::Published, text("16 CFR part 1261 (ASTM F2057-23), scope"))};
}

} // namespace frontwright::wording
