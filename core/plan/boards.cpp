#include "core/plan/boards.h"

#include "core/boards/new_board.h"
#include "core/plan/opening_words.h"

#include <algorithm>

namespace frontwright {
namespace {

/// From the member's edge at that side of the opening to the panel's inner face.
struct PanelFace {
    Length leftOf;  ///< x of the face towards an opening on its right
    Length rightOf; ///< towards one on its left
    Length thickness;
};

PanelFace panelBehind(const Case& casework, const PlacedMember& member, Length sidePanel) {
    const CaseRect& rect = member.rect;
    if (casework.construction == Construction::Frameless)
        return {rect.right, rect.left, rect.width()};
    if (member.kind == MemberKind::OuterStile)
        return {rect.left + sidePanel, rect.right - sidePanel, sidePanel};
    const Length left = rect.left + (rect.width() - sidePanel).half();
    return {left + sidePanel, left, sidePanel};
}

Error notThere(Phrase what) {
    return {{}, std::move(what), text("choose one that is there")};
}

const Stock& stockOf(const Project& project, const Opening& opening) {
    return opening.choices.stock ? *opening.choices.stock : project.fronts.stock;
}

Result<BoardMaterials> materialsOf(const Plan& plan, const Project& project,
                                   const Catalogue& catalogue, const Opening& opening) {
    BoardMaterials materials;
    materials.stock = stockOf(project, opening);
    materials.board = catalogue.speciesOf(materials.stock.species);
    if (!materials.stock.species.empty() && !materials.board)
        return notThere(phrase("no species \"%1\" in the catalogue", materials.stock.species));
    materials.ground = catalogue.speciesOf(project.fronts.stock.species);
    const std::string& runner = opening.board->runnerWood;
    materials.runner = runner.empty() ? materials.ground : catalogue.speciesOf(runner);
    if (!runner.empty() && !materials.runner)
        return notThere(phrase("no species \"%1\" in the catalogue", runner));
    const std::string& screw = opening.board->keeper.screw;
    materials.screw = catalogue.woodScrew(screw);
    if (!screw.empty() && !materials.screw)
        return notThere(phrase("no wood screw \"%1\" in the catalogue", screw));
    if (plan.season)
        materials.moisture = MoistureRise{plan.season->whenCut, plan.season->wettest};
    return materials;
}

const PlacedOpening* placedOf(const Layout& layout, OpeningId id) {
    const auto found = std::ranges::find(layout.openings, id, &PlacedOpening::id);
    return found == layout.openings.end() ? nullptr : &*found;
}

} // namespace

BoardPlace boardPlace(const Case& casework, const Layout& layout, const PlacedOpening& opening,
                      Length sidePanel) {
    const PanelFace left = panelBehind(casework, layout.members[opening.bounds.left], sidePanel);
    const PanelFace right = panelBehind(casework, layout.members[opening.bounds.right], sidePanel);
    return {opening.rect,
            left.leftOf,
            right.rightOf,
            least(left.thickness, right.thickness),
            thicknessOfFrame(casework),
            casework.depth};
}

Result<BoardSpec> newBoardFor(const Project& project, OpeningId id) {
    const Result<Layout> layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    const PlacedOpening* opening = placedOf(layout.value(), id);
    if (!opening)
        return Error{{}, text("there is no such opening in the case"), {}};
    const Unit unit = project.style.unit;
    const BoardPlace place =
        boardPlace(project.casework, layout.value(), *opening, newBoard(unit).sidePanel);
    return newBoard(unit, place, project.limits);
}

Phrase titleOf(const Plan& plan, const PlannedBoard& board) {
    return nameOf(OpeningUse::Board, label(plan.spaces[board.space]));
}

std::vector<BoardNumber> numbersOf(const PlannedBoard& board, LengthStyle style) {
    auto numbers = sizesOf(*board.spec, board.place, board.fitted, style);
    const auto running = runningOf(*board.spec, board.fitted, style);
    numbers.insert(numbers.end(), running.begin(), running.end());
    return numbers;
}

std::optional<Error> addBoards(Plan& plan, const Project& project, const Catalogue& catalogue,
                               const Layout& layout) {
    const Length step =
        project.style.unit == Unit::Inch ? Length::inches(0, 4) : Length::millimetres(1);
    std::uint32_t next = 0;
    for (const PlacedOpening& placed : layout.openings) {
        if (hasFront(placed.opening->use))
            continue;
        const std::uint32_t i = next++;
        if (!placed.opening->board)
            continue;
        const BoardSpec& spec = *placed.opening->board;
        const auto materials = materialsOf(plan, project, catalogue, *placed.opening);
        if (!materials.ok()) {
            Error error = materials.error();
            error.place = phrase("board %1", label(plan.spaces[i]));
            return error;
        }
        const BoardPlace place = boardPlace(project.casework, layout, placed, spec.sidePanel);
        plan.boards.push_back({placed.id, i, &spec, place,
                               fitBoard(spec, place, materials.value(), project.limits, step),
                               materials.value().screw});
    }
    return std::nullopt;
}

} // namespace frontwright
