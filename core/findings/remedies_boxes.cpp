#include "core/findings/remedying.h"

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposeSquare(const Search& search, Profile profile) {
    profile.family = ProfileFamily::Square;
    search.propose("Leave the edges of % square", profile);
}

void proposeHeight(const Search& search, BoxSpec spec) {
    if (!spec.height)
        return;
    spec.height.reset();
    search.propose("Make the box of % as tall as its opening allows", spec);
}

void proposeRunnerClearances(const Search& search, BoxSpec spec) {
    if (!spec.sideClearance && !spec.clearanceBelow && !spec.clearanceAbove)
        return;
    spec.sideClearance.reset();
    spec.clearanceBelow.reset();
    spec.clearanceAbove.reset();
    search.propose("Give the box of % the runner's own clearances", spec);
    if (spec.height) {
        spec.height.reset();
        search.propose("Give the box of % the runner's own clearances and the height they leave",
                       spec);
    }
}

void proposeDepth(const Search& search, BoxSpec spec) {
    const Case& casework = search.project.casework;
    const Length room =
        casework.frameThickness.length + casework.depth.length - search.front.box.setback;
    spec.depth = search.down(room);
    if (spec.depth > nothing)
        search.propose("Make the box of % " + search.say(spec.depth) + " deep", spec);
}

void proposeGroove(const Search& search, BoxSpec spec) {
    const bool inInches = search.style.unit == Unit::Inch;
    const Length usual = inInches ? Length::inches(0, 32) : Length::millimetres(12);
    for (const Length height : {usual, search.down(usual.half())}) {
        spec.grooveHeight = height;
        search.propose("Groove the box of % " + search.say(height) + " up", spec);
    }
}

} // namespace

void forProfile(const Search& search) {
    Profile profile = chosenProfile(search.project, search.front);
    if (search.finding.code == FindingCode::ProfileTooDeep) {
        profile.depth = search.down(search.front.thickness.half());
        profile.step = least(profile.step, profile.depth);
        search.propose("Make the edge profile of % " + search.say(profile.depth) + " deep",
                       profile);
    } else {
        const Length size = least(search.front.rect.width(), search.front.rect.height());
        profile.width = search.down(size.half().half());
        search.propose("Make the edge profile of % " + search.say(profile.width) + " wide",
                       profile);
    }
    proposeSquare(search, profile);
}

void forBox(const Search& search) {
    const BoxSpec spec = chosenBox(search.project, search.front);
    if (search.finding.code == FindingCode::BoxTooDeep)
        return proposeDepth(search, spec);
    if (search.finding.code == FindingCode::BottomOutOfWall)
        proposeGroove(search, spec);
    proposeHeight(search, spec);
    proposeRunnerClearances(search, spec);
}

} // namespace frontwright::remedying
