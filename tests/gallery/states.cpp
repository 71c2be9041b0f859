#include "tests/gallery/states.h"

#include "tests/gallery/dialog_states.h"
#include "tests/gallery/window_states.h"

namespace frontwright::gallery {

namespace {

using Shows = CentralArea::Shows;

State ofOpening(const char* name, const char* sample, const char* opening) {
    return {name, [=](MainWindow& w, Unit u) { return selected(w, u, sample, opening); }};
}

State levelOf(const char* name, const char* sample, const char* opening) {
    return {name, [=](MainWindow& w, Unit u) { return selectedLevel(w, u, sample, opening); }};
}

std::vector<State> windows() {
    return {
        {"start",
         [](MainWindow& w, Unit) {
             w.showStart();
             return grabbed(w);
         }},
        {"case",
         [](MainWindow& w, Unit u) {
             open(w, "glaze-chest", u);
             return grabbed(w);
         }},
        {"front", [](MainWindow& w, Unit u) { return front(w, u, "selected"); }},
        {"front-numbers", [](MainWindow& w, Unit u) { return front(w, u, "numbers"); }},
        {"front-ways", [](MainWindow& w, Unit u) { return front(w, u, "ways"); }},
        {"steps", [](MainWindow& w, Unit u) { return front(w, u, "steps"); }},
        {"several-fronts", several},
        {"member-dragged", dragging},
        {"hole-dragged", holeDragged},
        {"size-typed", typing},
        {"finding", finding},
        {"layers", everyLayer},
        {"level-section", levelSection},
        {"wood", wood},
        {"look", [](MainWindow& w, Unit u) { return look(w, u, Shows::Look, false); }},
        {"look-beside", [](MainWindow& w, Unit u) { return look(w, u, Shows::Both, false); }},
        {"look-reveals", [](MainWindow& w, Unit u) { return look(w, u, Shows::Look, true); }},
        {"frameless", frameless},
        ofOpening("door", "linen-cupboard", "Sheets"),
        ofOpening("open-space", "linen-cupboard", "Baskets"),
        ofOpening("fixed-front", "sink-base", "Sink"),
        levelOf("fixed-front-level", "sink-base", "Sink"),
        ofOpening("fronts-on-one-box", "sink-base", "Bin"),
        ofOpening("board", "writing-chest", "Left board"),
        levelOf("board-level", "writing-chest", "Left board"),
        ofOpening("runner-under", "tool-cabinet", "Power tools"),
        ofOpening("runner-wooden", "tool-cabinet", "Chisels"),
        ofOpening("fittings", "shell-cabinet", "Registers"),
    };
}

std::vector<State> dialogs() {
    return {
        {"new-case", [](MainWindow& w, Unit) { return newCase(w); }},
        {"catalogue", [](MainWindow& w, Unit u) { return catalogue(w, u, 2); }},
        {"catalogue-runners", [](MainWindow& w, Unit u) { return catalogue(w, u, 3); }},
        {"catalogue-woods", [](MainWindow& w, Unit u) { return catalogue(w, u, 4); }},
        {"catalogue-fittings", [](MainWindow& w, Unit u) { return catalogue(w, u, 5); }},
        {"rules", [](MainWindow& w, Unit) { return rules(w); }},
        {"help", [](MainWindow& w, Unit) { return help(w, "start"); }},
        {"help-glossary", [](MainWindow& w, Unit) { return help(w, "glossary"); }},
        {"help-printing", [](MainWindow& w, Unit) { return help(w, "printing"); }},
        {"recovery", [](MainWindow&, Unit) { return recovery(); }},
        {"calibration", [](MainWindow&, Unit u) { return calibration(u); }},
        {"screen-size", [](MainWindow& w, Unit) { return screenSize(w); }},
        {"graduate", [](MainWindow& w, Unit u) { return graduate(w, u, 0); }},
        {"graduate-series", [](MainWindow& w, Unit u) { return graduate(w, u, 2); }},
        {"templates", [](MainWindow& w, Unit u) { return templates(w, u, "glaze-chest"); }},
        {"templates-boards",
         [](MainWindow& w, Unit u) { return templates(w, u, "writing-chest"); }},
    };
}

std::vector<State> allStates() {
    std::vector<State> all = windows();
    for (State& dialog : dialogs())
        all.push_back(std::move(dialog));
    return all;
}

} // namespace

const std::vector<State>& states() {
    static const std::vector<State> all = allStates();
    return all;
}

} // namespace frontwright::gallery
