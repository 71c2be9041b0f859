#pragma once

#include "core/case/surroundings.h"
#include "core/project/project.h"

#include <functional>
#include <vector>

// What stands round the small case: its fronts lie 1 1/4 in inside its outer edges, for they cover
// 1/4 in of stiles and rails of 1 1/2 in. Lengths are given in 64ths of an inch.
namespace frontwright::testing {

inline void standAtLeft(Project& p, Length gap) {
    p.casework.surroundings.left = Wall{Length{}, gap};
}
inline void standAtRight(Project& p, Length gap) {
    p.casework.surroundings.right = NeighbouringCase{Length{}, Length::inches(0, 4), gap};
}
inline void standAtTop(Project& p, Length height) {
    p.casework.surroundings.top = Moulding{height, Length::inches(0, 32), Length::inches(0, 8)};
}
/// The fronts are 6 1/2 in high and 3/4 in apart: they step by 7 1/4 in.
inline void boreEvery(Project& p, Length pitch) {
    p.casework.construction = Construction::Frameless;
    p.casework.systemHoles = usualSystemHoles(p.casework.frame.bottom);
    p.casework.systemHoles->pitch = pitch;
}

} // namespace frontwright::testing
