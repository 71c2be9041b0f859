#include "core/findings/judging.h"
#include "core/findings/wording.h"

namespace frontwright::wording {

// box's width, height, depth, side thickness
Words boxNoRoom(const Told& told) {
    return {"There is no room for a drawer box: it would be " + told.say(0) + " wide, " +
                told.say(1) + " high and " + told.say(2) + " deep, with sides " + told.say(3) +
                " thick.",
            "width = opening − 2 × side clearance = " + told.say(0) + "; between the sides " +
                told.say(0) + " − 2 × " + told.say(3) + " = " +
                told.say(told.figure(0) - 2 * told.figure(3)) +
                "; height = opening − clearances = " + told.say(1) + "; each must be more than 0",
            commonPractice()};
}

// box's height, opening's height, clearance below, clearance asked for above
Words boxTooTall(const Told& told) {
    const Length room = told.figure(1) - told.figure(2) - told.figure(3);
    return {"The drawer box is " + told.say(told.figure(0) - room) + " too tall: " + told.say(0) +
                ", and the opening leaves " + told.say(room) + ".",
            "room = opening − clearance below − clearance above = " + told.say(1) + " − " +
                told.say(2) + " − " + told.say(3) + " = " + told.say(room) + "; the box is " +
                told.say(0),
            commonPractice()};
}

// box's depth, setback, frame's thickness, case's depth inside
Words boxTooDeep(const Told& told) {
    const Length room = told.figure(2) + told.figure(3) - told.figure(1);
    return {"The drawer box is " + told.say(told.figure(0) - room) + " too deep: " + told.say(0) +
                ", and the case leaves " + told.say(room) + ".",
            "room = frame + case inside − setback = " + told.say(2) + " + " + told.say(3) + " − " +
                told.say(1) + " = " + told.say(room) + "; the box is " + told.say(0),
            commonPractice()};
}

// bottom's underside, bottom's top, box's height
Words bottomOutOfWall(const Told& told) {
    return {"The bottom does not lie in the box wall: it reaches from " + told.say(0) + " to " +
                told.say(1) + " above the box's lower edge, and the wall is " + told.say(2) +
                " high.",
            "top of the bottom = groove height + its thickness = " + told.say(0) + " + " +
                told.say(told.figure(1) - told.figure(0)) + " = " + told.say(1) +
                "; it must be 0 or more, and less than " + told.say(2),
            commonPractice()};
}

// case's height, height of the scope
Words anchorCase(const Told& told) {
    const CaseLoad& load = told.plan.load;
    const bool isTall = told.figure(0) >= told.figure(1);
    const std::string weight = load.isWoodKnown
                                   ? shown(load.empty, told.style) + " without sides, back and top"
                                   : std::string("weight not known");
    const Volume scope = Volume::fromCubicMillimetres(
        static_cast<std::int64_t>(storageScopeCubicFeet * Volume::cubicMillimetresPerCubicFoot));
    return {(isTall ? "The case is " + told.say(0) + " tall" : std::string("The case is heavy")) +
                " (" + weight + ", " + shown(load.storage, told.style) +
                " of storage): anchor it to the wall, and follow the local codes.",
            "clothing storage is in the published scope from " + told.say(1) + " tall, " +
                shown(storageScopeMass, told.style) + " and " + shown(scope, told.style) +
                " on, all three at once; here height " + told.say(0) + ", " + weight +
                ", storage " + shown(load.storage, told.style) +
                "; nothing has been tested here, and local codes decide",
            {SourceKind::Published, "16 CFR part 1261 (ASTM F2057-23), scope"}};
}

} // namespace frontwright::wording
