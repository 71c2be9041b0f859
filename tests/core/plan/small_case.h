#pragma once

#include "core/case/divisions.h"
#include "core/catalogue/catalogue.h"
#include "core/project/project.h"
#include "tests/core/plan/small_catalogue.h"

#include <cassert>
#include <cstdint>
#include <functional>
#include <random>
#include <utility>
#include <vector>

// Builders of Projects for tests and benchmarks. A case is written as it is seen:
//
//   projectWith(rows({fixed(inches(6), opening()),
//                     share(columns({share(opening()), share(opening())}, inches(0, 48)))},
//                    inches(1, 16)),
//               inches(36), inches(40))
//
// Ids are given when the Project is made: depth first, child, member, child …, from firstFreeId.
namespace frontwright::testing {

inline RegionPtr opening(FrontChoices choices = {}, std::string name = {}) {
    Opening made;
    made.name = std::move(name);
    made.choices = std::move(choices);
    return std::make_shared<const Region>(Region{std::move(made)});
}

inline Child fixed(WrittenLength size, RegionPtr region) {
    return {FixedSize{size}, std::move(region)};
}
inline Child share(RegionPtr region, std::int64_t weight = 1) {
    return {Share{weight}, std::move(region)};
}

/// A split whose members are all of one width. The last child takes the remainder.
inline RegionPtr split(Direction direction, std::vector<Child> children, WrittenLength member) {
    assert(children.size() >= 2);
    Split result;
    result.direction = direction;
    result.members.assign(children.size() - 1, Member{{}, member});
    result.remainderChild = children.size() - 1;
    result.children = std::move(children);
    return std::make_shared<const Region>(Region{std::move(result)});
}
/// Listed top to bottom.
inline RegionPtr rows(std::vector<Child> children, WrittenLength rail) {
    return split(Direction::Rows, std::move(children), rail);
}
/// Listed left to right.
inline RegionPtr columns(std::vector<Child> children, WrittenLength stile) {
    return split(Direction::Columns, std::move(children), stile);
}

/// Every opening of the tree is handed to `change`, in reading order, with its index.
using OpeningChange = std::function<void(Opening&, std::size_t index)>;

inline RegionPtr changed(const RegionPtr& region, const OpeningChange& change, std::size_t& index) {
    Region copy = *region;
    if (auto* leaf = std::get_if<Opening>(&copy.content))
        change(*leaf, index++);
    else
        for (Child& child : std::get<Split>(copy.content).children)
            child.region = changed(child.region, change, index);
    return std::make_shared<const Region>(std::move(copy));
}
inline Project withOpenings(Project project, const OpeningChange& change) {
    std::size_t index = 0;
    project.casework.divisions = changed(project.casework.divisions, change, index);
    return project;
}
/// The same Project, with the choices of one opening (by its place in reading order) changed.
inline Project withChoices(Project project, std::size_t which,
                           const std::function<void(FrontChoices&)>& change) {
    return withOpenings(std::move(project), [&](Opening& leaf, std::size_t index) {
        if (index == which)
            change(leaf.choices);
    });
}

inline RegionPtr numbered(const RegionPtr& region, std::int32_t& nextId) {
    Region copy = *region;
    if (auto* leaf = std::get_if<Opening>(&copy.content)) {
        leaf->id = {nextId++};
    } else {
        auto& tree = std::get<Split>(copy.content);
        for (std::size_t i = 0; i < tree.children.size(); ++i) {
            tree.children[i].region = numbered(tree.children[i].region, nextId);
            if (i < tree.members.size())
                tree.members[i].id = {nextId++};
        }
    }
    return std::make_shared<const Region>(std::move(copy));
}

/// 3/4 in fronts with 1/4 in overlays and square edges on 1/2 in boxes, No. 8 screws, a round knob.
inline FrontDefaults smallDefaults() {
    FrontDefaults defaults;
    defaults.fit = FrontFit::all({Fit::Overlay, Length::inches(0, 16)});
    defaults.thickness = Length::inches(0, 48);
    defaults.stock.species = "cherry";
    defaults.box.runner = "wooden";
    defaults.box.depth = Length::inches(16);
    defaults.box.wallThickness = Length::inches(0, 32);
    defaults.box.sideThickness = Length::inches(0, 32);
    defaults.box.grooveHeight = Length::inches(0, 16);
    defaults.box.bottomThickness = Length::inches(0, 16);
    defaults.mounting.screw = "wood-screw-8";
    defaults.mounting.recess = Length::inches(0, 8);
    defaults.mounting.toolDiameter = Length::inches(0, 40);
    defaults.hardware.form = "knob-32";
    return defaults;
}

/// Face frame: stiles 1 1/2 in, rails 1 1/2 in. Grid 1/16 in. Width and height are the case's.
inline Project projectWith(const RegionPtr& divisions, Length width, Length height) {
    Project project;
    project.title = "Small case";
    project.casework.width = width;
    project.casework.height = height;
    project.casework.depth = Length::inches(20);
    project.casework.frame = PerSide<WrittenLength>::all(Length::inches(1, 32));
    project.casework.frameThickness = Length::inches(0, 48);
    project.casework.grid = Length::fromSixtyFourths(4);
    project.casework.divisions = numbered(divisions, project.nextId);
    project.fronts = smallDefaults();
    return project;
}

/// A case of one opening of exactly that size.
inline Project oneOpening(Length width, Length height) {
    const Length frame = Length::inches(1, 32);
    return projectWith(opening(), width + 2 * frame, height + 2 * frame);
}

/// Columns of openings with equal rows: each 13 in × 6 in, rails 1 1/4 in, stiles 2 in.
inline Project banks(std::size_t columnCount, std::size_t rowCount) {
    assert(columnCount > 0 && rowCount > 0);
    const Length rail = Length::inches(1, 16), stile = Length::inches(2);
    const auto nColumns = static_cast<std::int64_t>(columnCount);
    const auto nRows = static_cast<std::int64_t>(rowCount);
    const auto column = [&] {
        return rowCount == 1 ? opening()
                             : rows(std::vector<Child>(rowCount, share(opening())), rail);
    };
    const RegionPtr tree = columnCount == 1
                               ? column()
                               : columns(std::vector<Child>(columnCount, share(column())), stile);
    return projectWith(tree,
                       Length::inches(3) + nColumns * Length::inches(13) + (nColumns - 1) * stile,
                       Length::inches(3) + nRows * Length::inches(6) + (nRows - 1) * rail);
}
/// One bank: the openings are 13 in × 6 in, the rails between them 1 1/4 in.
inline Project bank(std::size_t rowCount) {
    return banks(1, rowCount);
}

/// Whole numbers that are the same with every compiler.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    /// low … high, both included.
    std::int64_t between(std::int64_t low, std::int64_t high) {
        return low +
               static_cast<std::int64_t>(m_engine() % static_cast<std::uint64_t>(high - low + 1));
    }
    Length sixtyFourths(std::int64_t low, std::int64_t high) {
        return Length::fromSixtyFourths(between(low, high));
    }

private:
    std::mt19937_64 m_engine;
};

/// Any fit, amounts up to 1 in; `greatest` in 64ths of an inch.
inline SideFit randomSide(Dice& dice, std::int64_t greatest = 64) {
    const auto fit = static_cast<Fit>(dice.between(0, 2));
    return {fit, dice.sixtyFourths(0, greatest)};
}

inline RegionPtr randomRegion(Dice& dice, Length width, Length height, int depth) {
    const Length leastSize = Length::inches(4);
    const Direction direction = dice.between(0, 1) == 0 ? Direction::Columns : Direction::Rows;
    const Length room = direction == Direction::Columns ? width : height;
    const std::int64_t count = dice.between(2, 4);
    const Length member = dice.sixtyFourths(24, 128);
    // Weights are 1 to 3: the smallest share is at least 1 / (1 + 3 × (count − 1)).
    const std::int64_t parts = 1 + 3 * (count - 1);
    const Length left = room - (count - 1) * member;
    if (depth == 0 || left < parts * leastSize)
        return opening();
    std::vector<Child> children;
    const Length smallest = Length::fromNanometres(left.nanometres() / parts);
    const Length inWidth = direction == Direction::Columns ? smallest : width;
    const Length inHeight = direction == Direction::Columns ? height : smallest;
    for (std::int64_t i = 0; i < count; ++i)
        children.push_back(
            share(randomRegion(dice, inWidth, inHeight, depth - 1), dice.between(1, 3)));
    return split(direction, std::move(children), member);
}

/// A case with divisions, member widths and fits by chance; always has room.
inline Project randomProject(std::uint64_t seed) {
    Dice dice(seed);
    const Length width = Length::inches(dice.between(20, 400));
    const Length height = Length::inches(dice.between(20, 400));
    Project project = projectWith(randomRegion(dice, width, height, 4), width + Length::inches(3),
                                  height + Length::inches(3));
    for (Side side : allSides)
        project.fronts.fit[side] = randomSide(dice, 48);
    return withOpenings(std::move(project), [&](Opening& leaf, std::size_t) {
        for (Side side : allSides)
            if (dice.between(0, 3) == 0)
                leaf.choices.fit[side] = randomSide(dice);
    });
}

} // namespace frontwright::testing
