#pragma once

#include "core/geometry/frames.h"

#include <Eigen/Geometry>

namespace frontwright {

// Geometry that is not on a grid (drawings, pages, fits) is in double millimetres. These are the
// only names by which the rest of the code says Eigen.
using PointMm = Eigen::Vector2d;
using BoxMm = Eigen::AlignedBox2d;
using TransformMm = Eigen::Affine2d;

template<class Frame>
PointMm toMm(PointIn<Frame> p) {
    return {p.x.inMillimetres(), p.y.inMillimetres()};
}
template<class Frame>
BoxMm toMm(const RectIn<Frame>& r) {
    return {PointMm(r.left.inMillimetres(), r.bottom.inMillimetres()),
            PointMm(r.right.inMillimetres(), r.top.inMillimetres())};
}

} // namespace frontwright
