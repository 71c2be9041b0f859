#pragma once

#include "core/boxes/box.h"
#include "core/geometry/mm.h"

namespace frontwright {

/// Places on the wall as they are seen from inside the box.
class InsideView {
public:
    explicit InsideView(const BoxPlan& box) : m_box(box) {}
    [[nodiscard]] PointMm operator()(WallPoint p) const { return toMm(mirroredAcross(m_box, p)); }
    [[nodiscard]] BoxMm operator()(const WallRect& r) const {
        return {(*this)(WallPoint{r.right, r.bottom}), (*this)(WallPoint{r.left, r.top})};
    }
    [[nodiscard]] PointMm operator()(FrontPoint p) const { return (*this)(toWall(m_box, p)); }

private:
    const BoxPlan& m_box;
};

} // namespace frontwright
