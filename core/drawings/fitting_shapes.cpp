#include "core/drawings/fitting_shapes.h"

#include "core/drawings/handle_shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

constexpr auto layer = Layer::Handle;
constexpr double lipOfEdgePull = 2; ///< mm that are seen of it below the front's top edge

bool isSeen(const Sketch& sketch, double apart) {
    constexpr double leastOnPaper = 0.35;
    return apart * sketch.paperScale() >= leastOnPaper;
}

BoxMm moved(const FrontRect& rect, const PointMm& origin) {
    const BoxMm box = toMm(rect);
    return {box.min() + origin, box.max() + origin};
}

void drawScrewHeads(Sketch& sketch, const FittingPlan& fitting, const PointMm& origin,
                    const Part& part) {
    if (fitting.screw == nullptr || fitting.form->bearsOn != FrontFace::Show)
        return;
    const double radius = fitting.screw->headDiameter.inMillimetres() / 2;
    if (isSeen(sketch, radius))
        for (const FittingScrew& screw : fitting.screws)
            sketch.circle(layer, origin + toMm(screw.at), radius, part);
}

/// The frame and, in it, the card.
void drawLabelHolder(Sketch& sketch, const FittingPlan& fitting, const PointMm& origin,
                     const Part& part) {
    const BoxMm frame = moved(fitting.footprint, origin);
    const double rim = frame.sizes().minCoeff() * 0.14;
    const double ears = std::min(frame.sizes().x() * 0.12, frame.sizes().y() * 0.5);
    sketch.rectangle(layer, frame, part);
    if (isSeen(sketch, rim))
        sketch.rectangle(
            layer, {frame.min() + PointMm(ears, rim), frame.max() - PointMm(ears, rim)}, part);
}

void drawEdgePull(Sketch& sketch, const FittingPlan& fitting, const PointMm& origin,
                  const Part& part) {
    BoxMm box = moved(fitting.footprint, origin);
    if (fitting.form->bearsOn == FrontFace::TopEdge) {
        box = {box.min() - PointMm(0, lipOfEdgePull),
               box.max() + PointMm(0, fitting.form->projection.inMillimetres())};
        return sketch.rectangle(layer, box, part);
    }
    sketch.rectangle(layer, box, part);
    for (const MortisePlan& mortise : fitting.mortises) {
        const BoxMm pan = moved(mortise.cut.place, origin);
        if (pan.sizes().x() < box.sizes().x() && isSeen(sketch, 2))
            sketch.rectangle(layer, pan, part);
    }
}

void drawKeyHole(Sketch& sketch, const FittingPlan& fitting, const PointMm& origin,
                 const Part& part) {
    if (auto outline = keyHoleOf(fitting, origin); !outline.empty())
        sketch.path(layer, std::move(outline), PathMark::End::Closed, part);
}

} // namespace

std::optional<HardwareForm> likeHandle(const FittingForm& form) {
    HardwareForm handle;
    handle.footprint = form.footprint;
    handle.projection = form.projection;
    handle.holes = {{}};
    switch (form.kind) {
    case FittingKind::CupPull:
        handle.kind = HardwareKind::CupPull;
        return handle;
    case FittingKind::RingPull:
        handle.kind = HardwareKind::RingPull;
        return handle;
    case FittingKind::EdgePull:
    case FittingKind::LabelHolder:
    case FittingKind::Lock:
        break;
    }
    return std::nullopt;
}

std::vector<PointMm> keyHoleOf(const FittingPlan& fitting, const PointMm& origin) {
    if (fitting.bores.empty())
        return {};
    const auto byHeight = [](const FittingBore& bore) { return bore.at.y; };
    const FittingBore& eye = *std::ranges::max_element(fitting.bores, {}, byHeight);
    const FittingBore& foot = *std::ranges::min_element(fitting.bores, {}, byHeight);
    const double radius = eye.diameter.inMillimetres() / 2;
    const double slot = std::min(foot.diameter.inMillimetres() / 2, radius * 0.9);
    const PointMm centre = origin + toMm(eye.at), low = origin + toMm(foot.at);
    const double open = &eye == &foot ? 0 : std::asin(slot / radius) * 180 / std::numbers::pi;
    constexpr int steps = 24;
    std::vector<PointMm> points;
    for (int i = 0; i <= steps; ++i) {
        const double angle = (-90 + open + (360 - 2 * open) * i / steps) * std::numbers::pi / 180;
        points.push_back(centre + radius * PointMm(std::cos(angle), std::sin(angle)));
    }
    if (&eye != &foot)
        for (int i = 0; i <= steps / 2; ++i) {
            const double angle = (180 + 180.0 * i / (steps / 2)) * std::numbers::pi / 180;
            points.push_back(low + slot * PointMm(std::cos(angle), std::sin(angle)));
        }
    return points;
}

BoxMm boxOf(const FittingPlan& fitting, const PointMm& origin) {
    BoxMm box = moved(fitting.footprint, origin);
    if (fitting.form->bearsOn == FrontFace::TopEdge)
        return {box.min() - PointMm(0, lipOfEdgePull), box.max()};
    if (fitting.form->bearsOn == FrontFace::Show)
        return box;
    box.setEmpty();
    for (const PointMm& p : keyHoleOf(fitting, origin))
        box.extend(p);
    return box;
}

void drawFitting(Sketch& sketch, const FittingPlan& fitting, const PointMm& origin,
                 const Part& part) {
    switch (fitting.form->kind) {
    case FittingKind::CupPull:
    case FittingKind::RingPull:
        drawHandle(sketch, *likeHandle(*fitting.form), origin + toMm(fitting.centre), part);
        break;
    case FittingKind::LabelHolder:
        drawLabelHolder(sketch, fitting, origin, part);
        break;
    case FittingKind::EdgePull:
        drawEdgePull(sketch, fitting, origin, part);
        break;
    case FittingKind::Lock:
        drawKeyHole(sketch, fitting, origin, part);
        break;
    }
    drawScrewHeads(sketch, fitting, origin, part);
}

void drawFittingCuts(Sketch& sketch, const FittingPlan& fitting, const PointMm& origin,
                     const Part& part) {
    for (const MortisePlan& mortise : fitting.mortises)
        if (mortise.cut.from != FrontFace::TopEdge)
            sketch.rectangle(Layer::Counterbore, moved(mortise.cut.place, origin), part);
    for (const FittingBore& bore : fitting.bores)
        if (bore.from != FrontFace::TopEdge)
            sketch.circle(Layer::Hole, origin + toMm(bore.at), bore.diameter.inMillimetres() / 2,
                          part);
    if (fitting.screw != nullptr && fitting.form->bearsOn != FrontFace::TopEdge)
        for (const FittingScrew& screw : fitting.screws)
            sketch.circle(Layer::Hole, origin + toMm(screw.at),
                          fitting.screw->pilotHole.inMillimetres() / 2, part);
}

} // namespace frontwright
