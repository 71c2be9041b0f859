#include "core/plan/panel_holes.h"

#include <algorithm>
#include <map>
#include <utility>

namespace frontwright {

namespace {

/// What stays free of holes at an opening's edge: half a hole where a panel lies there.
Length clearOf(const Layout& layout, std::uint32_t member, Length radius) {
    return layout.members[member].rect.height() > Length{} ? radius : Length{};
}

/// What lies between panels: an opening, or that behind a divided face.
struct Bay {
    CaseRect rect;
    PerSide<std::uint32_t> bounds; ///< index into Layout::members
};

std::vector<Bay> baysOf(const Layout& layout) {
    std::vector<Bay> bays;
    for (const PlacedOpening& opening : layout.openings)
        if (!opening.face)
            bays.push_back({opening.rect, opening.bounds});
    for (const DividedFace& face : layout.faces) {
        Bay bay{face.rect, layout.openings[face.first].bounds};
        for (std::uint32_t i = face.first; i < face.first + face.count; ++i)
            for (const Side side : allSides)
                if (const std::uint32_t member = layout.openings[i].bounds[side];
                    isBuilt(layout.members[member].kind))
                    bay.bounds[side] = member;
        bays.push_back(bay);
    }
    return bays;
}

/// The centres within an opening; its upper edge belongs to what lies above.
void addHeights(const Layout& layout, const Bay& opening, Length lowest, const SystemHoles& holes,
                std::vector<Length>& heights) {
    const Length radius = holes.diameter.length.half();
    const Length from = opening.rect.bottom + clearOf(layout, opening.bounds.bottom, radius);
    const Length to = opening.rect.top - clearOf(layout, opening.bounds.top, radius);
    const bool isOpenAbove = to == opening.rect.top;
    const std::int64_t pitch = holes.pitch.length.nanometres();
    const std::int64_t below = (from - lowest).nanometres();
    const std::int64_t first = below <= 0 ? 0 : (below + pitch - 1) / pitch;
    for (Length at = lowest + first * holes.pitch.length; isOpenAbove ? at < to : at <= to;
         at += holes.pitch.length)
        heights.push_back(at);
}

} // namespace

Length lowestHole(const Case& casework, const SystemHoles& holes) {
    switch (holes.datum) {
    case HoleDatum::CaseBottom:
        return holes.first;
    case HoleDatum::InsideBottom:
        break;
    }
    return casework.frame.bottom.length + holes.first.length;
}

std::vector<PanelHoles> panelHoles(const Case& casework, const Layout& layout) {
    if (!casework.systemHoles || casework.construction != Construction::Frameless)
        return {};
    const SystemHoles& holes = *casework.systemHoles;
    const Length lowest = lowestHole(casework, holes);
    std::map<std::pair<std::uint32_t, Side>, std::vector<Length>> byFace;
    for (const Bay& opening : baysOf(layout))
        for (const Side side : {Side::Left, Side::Right})
            addHeights(layout, opening, lowest, holes,
                       byFace[{opening.bounds[side], opposite(side)}]);
    std::vector<PanelHoles> panels;
    for (auto& [face, heights] : byFace) {
        std::ranges::sort(heights);
        panels.push_back({face.first, face.second, std::move(heights)});
    }
    return panels;
}

} // namespace frontwright
