#pragma once

#include "core/boards/board_faults.h"
#include "core/boards/board_numbers.h"
#include "tests/core/boards/worked_board.h"

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

// A whole board of the worked sizes that nothing is to be said against, and what can be changed.
namespace frontwright::testing {

struct BoardCase {
    BoardSpec spec = workedSpec();
    BoardPlace place = workedPlace();
    Species wood = oak();
    Species runner = oak();
    WoodScrew screw = numberEight();
    Stock stock{"", Cut::FlatSawn, Grain::AlongLength, Build::Solid};
    std::optional<MoistureRise> moisture = MoistureRise{6, 10};

    BoardCase() {
        spec.depth = in(18);
        spec.bradLength = in(1, 16);
        spec.pullOut = in(6);
    }
    [[nodiscard]] FittedBoard fitted() const {
        return fitBoard(spec, place, {&wood, &runner, &wood, &screw, stock, moisture}, {},
                        in(0, 4));
    }
    [[nodiscard]] std::vector<BoardFinding> findings(LengthStyle style = {}) const {
        const FittedBoard board = fitted();
        std::vector<BoardFinding> all;
        for (const BoardFault fault : faultsOf(spec, board))
            all.push_back(*tell(fault, spec, board, {}, style));
        return all;
    }
    [[nodiscard]] std::optional<BoardFinding> finding(BoardFault fault) const {
        for (BoardFinding& found : findings())
            if (found.fault == fault)
                return std::move(found);
        return std::nullopt;
    }
    [[nodiscard]] std::vector<BoardNumber> numbers(LengthStyle style = {}) const {
        const FittedBoard board = fitted();
        std::vector<BoardNumber> all = sizesOf(spec, place, board, style);
        for (BoardNumber& row : runningOf(spec, board, style))
            all.push_back(std::move(row));
        return all;
    }
    [[nodiscard]] BoardNumber number(std::string_view name, LengthStyle style = {}) const {
        for (BoardNumber& row : numbers(style))
            if (row.name == name)
                return std::move(row);
        return {};
    }
};

/// One case for each way in which something can be said against a board.
inline std::vector<std::pair<BoardFault, BoardCase>> faultyBoards() {
    std::vector<std::pair<BoardFault, BoardCase>> all;
    const auto add = [&](BoardFault fault, auto change) {
        all.emplace_back(fault, BoardCase());
        change(all.back().second);
    };
    using F = BoardFault;
    add(F::BradBlowsOut, [](BoardCase& c) { c.spec.bradLength = in(1, 32); });
    add(F::KeeperScrewBlowsOut, [](BoardCase& c) { c.spec.keeper.screwLength = in(2, 16); });
    add(F::DoesNotPass, [](BoardCase& c) { c.spec.runnerRise = in(0, 17); });
    add(F::DoesNotGoIn, [](BoardCase& c) { c.place.caseDepth = in(17); });
    add(F::KeeperMisses, [](BoardCase& c) { c.spec.keeper.width = in(0, 6); });
    add(F::KeeperMisses, [](BoardCase& c) {
        c.place.leftPanel = c.place.opening.left;
        c.spec.keeper.fastening = KeeperFastening::Down;
    });
    add(F::Jams, [](BoardCase& c) { c.spec.pullOut = in(9, 4); });
    add(F::Jams, [](BoardCase& c) { c.spec.depth = in(8); });
    add(F::Jams, [](BoardCase& c) {
        c.spec.furred = Furred::No;
        c.spec.sidePlay = in(0, 1);
        c.spec.depth = in(12);
        c.place.opening.right = c.place.opening.left + in(6, 2);
        c.place.rightPanel = c.place.opening.right + in(0, 48);
    });
    add(F::TooFarOut, [](BoardCase& c) {
        c.spec.pullOffCentre = Length{};
        c.spec.pullOut = in(15);
    });
    add(F::TooFarOut, [](BoardCase& c) {
        c.spec.pullOffCentre = Length{};
        c.spec.pullOut = in(17, 32);
    });
    add(F::SticksAside, [](BoardCase& c) { c.stock.grain = Grain::AlongHeight; });
    add(F::SticksInHeight, [](BoardCase& c) { c.spec.playInHeight = Length{}; });
    add(F::BradTooShort, [](BoardCase& c) { c.spec.bradLength = in(1); });
    add(F::KeeperScrewTooShort, [](BoardCase& c) { c.spec.keeper.screwLength = in(1, 48); });
    add(F::BradTipNear, [](BoardCase& c) { c.spec.bradLength = in(1, 24); });
    add(F::KeeperScrewTipNear, [](BoardCase& c) { c.spec.keeper.screwLength = in(2, 10); });
    add(F::RunsHard, [](BoardCase& c) { c.spec.depth = in(16); });
    add(F::TooFarOut, [](BoardCase& c) {
        c.spec.pullOffCentre = Length{};
        c.spec.playInHeight = in(0, 8);
        c.spec.load = Force{};
        c.spec.pullOut = in(13);
    });
    // 18 − 8 = 10 in are guided, less than 11 11/64.
    add(F::NearJam, [](BoardCase& c) { c.spec.pullOut = in(8); });
    // 23/32 in of furring; No. 8 asks for 2 × 2.5 × 0.164 = 0.82 in.
    add(F::FurringThin, [](BoardCase& c) { c.spec.keeper.fastening = KeeperFastening::Down; });
    // Beside the panels themselves: 1 1/4 − 3/4 = 1/2 in, less than 4 × 0.164 = 0.656 in.
    add(F::BearsNothing, [](BoardCase& c) {
        c.place.leftPanel = c.place.opening.left;
        c.place.rightPanel = c.place.opening.right;
        c.spec.keeper.screwLength = in(1, 16);
    });
    add(F::NoFurring, [](BoardCase& c) {
        c.spec.furred = Furred::No;
        c.spec.keeper.width = in(2);
    });
    for (const Side side : {Side::Left, Side::Right})
        add(F::PieceLeftOut, [=](BoardCase& c) {
            c.spec.keeper.fasteners = {{side, in(13), in(1)}, {side, in(15), in(1)}};
        });
    add(F::SofterRunner, [](BoardCase& c) {
        c.runner.gravity = SpecificGravity{400, GravityBasis::At12Percent};
    });
    return all;
}

} // namespace frontwright::testing
