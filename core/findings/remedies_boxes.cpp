#include "core/findings/remedying.h"

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposeSquare(const Search& search, Profile profile) {
    profile.family = ProfileFamily::Square;
    search.propose({phrase("Leave the edges of %1 square", search.name()),
                    text("Leave the edges of the whole case square")},
                   profile);
}

void proposeRunnerClearances(const Search& search, BoxSpec spec) {
    if (!spec.sideClearance && !spec.clearanceBelow && !spec.clearanceAbove)
        return;
    spec.sideClearance.reset();
    spec.clearanceBelow.reset();
    spec.clearanceAbove.reset();
    search.propose({phrase("Give the box of %1 the runner's own clearances", search.name()),
                    text("Give the box of the whole case the runner's own clearances")},
                   spec);
    if (spec.height) {
        spec.height.reset();
        search.propose({phrase("Give the box of %1 the runner's own clearances and the height they "
                               "leave",
                               search.name()),
                        text("Give the box of the whole case the runner's own clearances and the "
                             "height they leave")},
                       spec);
    }
}

void proposeDepth(const Search& search, BoxSpec spec) {
    const Case& casework = search.project.casework;
    const Length room =
        thicknessOfFrame(casework) + casework.depth.length - search.front.box.setback;
    spec.depth = search.down(room);
    if (spec.depth > nothing)
        search.propose({phrase("Make the box of %1 %2 deep", search.name(), search.say(spec.depth)),
                        phrase("Make the box of the whole case %1 deep", search.say(spec.depth))},
                       spec);
}

void proposeGroove(const Search& search, BoxSpec spec) {
    const bool inInches = search.style.unit == Unit::Inch;
    const Length usual = inInches ? Length::inches(0, 32) : Length::millimetres(12);
    for (const Length height : {usual, search.down(usual.half())}) {
        spec.grooveHeight = height;
        search.propose({phrase("Groove the box of %1 %2 up", search.name(), search.say(height)),
                        phrase("Groove the box of the whole case %1 up", search.say(height))},
                       spec);
    }
}

} // namespace

void proposeBoxHeight(const Search& search) {
    BoxSpec spec = chosenBox(search.project, search.front);
    if (!spec.height)
        return;
    spec.height.reset();
    search.propose({phrase("Make the box of %1 as tall as its opening allows", search.name()),
                    text("Make the box of the whole case as tall as its opening allows")},
                   spec);
}

Label widenProfile(const Search& search, Length width) {
    const std::string wide = search.say(width);
    return {phrase("Make the edge profile of %1 %2 wide", search.name(), wide),
            phrase("Make the edge profile of the whole case %1 wide", wide)};
}

void forProfile(const Search& search) {
    Profile profile = chosenProfile(search.project, search.front);
    if (search.finding.code == FindingCode::ProfileTooDeep) {
        profile.depth = search.down(search.front.thickness.half());
        profile.step = least(profile.step, profile.depth);
        search.propose(
            {phrase("Make the edge profile of %1 %2 deep", search.name(),
                    search.say(profile.depth)),
             phrase("Make the edge profile of the whole case %1 deep", search.say(profile.depth))},
            profile);
    } else {
        const Length size = least(search.front.rect.width(), search.front.rect.height());
        profile.width = search.down(size.half().half());
        search.propose(widenProfile(search, profile.width), profile);
    }
    proposeSquare(search, profile);
}

void forBox(const Search& search) {
    const BoxSpec spec = chosenBox(search.project, search.front);
    if (search.finding.code == FindingCode::BoxTooDeep)
        return proposeDepth(search, spec);
    if (search.finding.code == FindingCode::BottomOutOfWall)
        proposeGroove(search, spec);
    proposeBoxHeight(search);
    proposeRunnerClearances(search, spec);
}

} // namespace frontwright::remedying
