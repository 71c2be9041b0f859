#include "core/findings/remedying.h"

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposeOwnLength(const Search& search, BoxSpec spec) {
    if (!spec.runnerLength)
        return;
    spec.runnerLength.reset();
    search.propose({phrase("Run %1 on the longest stocked runners that fit", search.name()),
                    text("Run the whole case on the longest stocked runners that fit")},
                   spec);
}

void proposeDepthOfRunner(const Search& search, BoxSpec spec) {
    spec.depthRule = BoxDepthRule::AsRunner;
    search.propose({phrase("Make the box of %1 as deep as its runners are long", search.name()),
                    text("Make the box of the whole case as deep as its runners are long")},
                   spec);
    if (!spec.runnerLength)
        return;
    spec.runnerLength.reset();
    search.propose({phrase("Give %1 the longest stocked runners that the case takes, and a box as "
                           "deep",
                           search.name()),
                    text("Give the whole case the longest stocked runners that it takes, and boxes "
                         "as deep")},
                   spec);
}

void proposeSides(const Search& search, BoxSpec spec) {
    const RunnerPlan& runner = *search.front.runner;
    if (runner.sideNeeded <= nothing)
        return;
    spec.sideClearance = runner.sideNeeded;
    search.propose({phrase("Leave %1 at each side of the box of %2", search.say(runner.sideNeeded),
                           search.name()),
                    phrase("Leave %1 at each side of the box of the whole case",
                           search.say(runner.sideNeeded))},
                   spec);
    if (!runner.kind->forSides)
        return;
    spec.sideClearance.reset();
    spec.sideThickness = *runner.kind->forSides;
    search.propose({phrase("Make the box's sides of %1 %2 thick", search.name(),
                           search.say(*runner.kind->forSides)),
                    phrase("Make the box's sides of the whole case %1 thick",
                           search.say(*runner.kind->forSides))},
                   spec);
}

void proposeGrooveOver(const Search& search, BoxSpec spec) {
    const Length height = search.up(leastGrooveHeight(*search.front.runner));
    spec.grooveHeight = height;
    search.propose({phrase("Groove the box of %1 %2 up", search.name(), search.say(height)),
                    phrase("Groove the box of the whole case %1 up", search.say(height))},
                   spec);
}

void proposeRoomBelow(const Search& search, BoxSpec spec) {
    if (!spec.clearanceBelow)
        return;
    spec.clearanceBelow.reset();
    search.propose({phrase("Leave below the box of %1 what the runner asks for", search.name()),
                    text("Leave below the box of the whole case what the runner asks for")},
                   spec);
}

void proposeTallest(const Search& search, BoxSpec spec) {
    if (!spec.height)
        return;
    spec.height.reset();
    search.propose({phrase("Make the box of %1 as tall as its opening allows", search.name()),
                    text("Make the box of the whole case as tall as its opening allows")},
                   spec);
}

/// Lower by what it gains, rounded up.
void proposeLower(const Search& search, BoxSpec spec) {
    const Length height = search.down(search.front.box.height -
                                      (search.finding.figures[0] - search.finding.figures[1]));
    if (height <= nothing)
        return;
    for (const Length lower : {height, height - search.grid()}) {
        spec.height = lower;
        spec.clearanceAbove.reset();
        search.propose({phrase("Make the box of %1 %2 high", search.name(), search.say(lower)),
                        phrase("Make the box of the whole case %1 high", search.say(lower))},
                       spec);
    }
}

/// Of which more is known than clearances: no more than leave room for what else cures.
void proposeOtherRunners(const Search& search) {
    constexpr int most = 2;
    int proposed = 0;
    for (const RunnerKind& runner : search.catalogue.runners) {
        BoxSpec spec = chosenBox(search.project, search.front);
        if (runner.id == spec.runner || runner.form == RunnerForm::ClearancesOnly ||
            proposed == most)
            continue;
        ++proposed;
        spec.runner = runner.id;
        spec.runnerLength.reset();
        search.propose({phrase("Run %1 on: %2", search.name(), nameFromData(runner.name)),
                        phrase("Run the whole case on: %1", nameFromData(runner.name))},
                       spec);
    }
}

} // namespace

void forRunner(const Search& search) {
    const BoxSpec spec = chosenBox(search.project, search.front);
    const FindingCode code = search.finding.code;
    if (code == FindingCode::BoxSticks)
        return proposeLower(search, spec);
    if (code == FindingCode::RunnerTooLong)
        proposeOwnLength(search, spec);
    if (code == FindingCode::NoRunnerFits || code == FindingCode::BoxOffRunner)
        proposeDepthOfRunner(search, spec);
    if (code == FindingCode::BottomOnRunner)
        proposeGrooveOver(search, spec);
    if (code == FindingCode::RunnerOutOfOpening)
        proposeRoomBelow(search, spec);
    if (code == FindingCode::SideClearanceOff)
        proposeSides(search, spec);
    if (code == FindingCode::BoxLowForRunner)
        proposeTallest(search, spec);
    proposeOtherRunners(search);
}

} // namespace frontwright::remedying
