#include "core/drawings/elevation_parts.h"

#include "core/drawings/lettering.h"
#include "core/lengths/format.h"
#include "core/words/language.h"

#include <array>

namespace frontwright {

namespace {

constexpr double nameHeight = 2.5, wordHeight = 1.8; // of capitals, on paper; after ISO 3098
constexpr double freeRound = 1.4;                    // of a text, on paper
constexpr double betweenLines = 1.3;

/// The name over what the opening is, where there is room for both; else the name alone.
void labelSpace(Sketch& sketch, const SpacePlan& space, const ElevationOptions& options) {
    const BoxMm room = toMm(space.rect);
    const std::string name = label(space), word = told(text("open"), options.language);
    const auto fits = [&](double width, double height) {
        return sketch.forPaper(width + freeRound) <= room.sizes().x() &&
               sketch.forPaper(height + freeRound) <= room.sizes().y();
    };
    const double nameWidth = textWidth(name, nameHeight);
    if (!fits(nameWidth, nameHeight))
        return;
    const Part part{space.opening, std::nullopt, "label"};
    const PointMm centre = room.center();
    const double both = nameHeight + betweenLines + wordHeight;
    if (!fits(std::max(nameWidth, textWidth(word, wordHeight)), both)) {
        const PointMm at(centre.x(), centre.y() - sketch.forPaper(nameHeight / 2));
        sketch.text(Layer::Note, {at, name, nameHeight, Anchor::Middle, 0}, part);
        return;
    }
    const PointMm low(centre.x(), centre.y() - sketch.forPaper(both / 2));
    const PointMm high = low + PointMm(0, sketch.forPaper(wordHeight + betweenLines));
    sketch.text(Layer::Note, {high, name, nameHeight, Anchor::Middle, 0}, part);
    sketch.text(Layer::Note, {low, word, wordHeight, Anchor::Middle, 0}, part);
}

/// From the free upper corner to the hinges' side and back to the lower one.
std::array<LineMark, 2> swingOf(const FrontPlan& door) {
    const BoxMm box = toMm(door.rect);
    const bool hangsLeft = door.hinge == HingeSide::Left;
    const PointMm hinges(hangsLeft ? box.min().x() : box.max().x(), box.center().y());
    const double free = hangsLeft ? box.max().x() : box.min().x();
    return {LineMark{{free, box.max().y()}, hinges}, LineMark{hinges, {free, box.min().y()}}};
}

} // namespace

void drawSpaces(Sketch& sketch, const Plan& plan, const ElevationOptions& options) {
    for (const SpacePlan& space : plan.spaces) {
        sketch.rectangle(Layer::MemberEdge, toMm(space.rect),
                         {space.opening, std::nullopt, "opening edge"});
        if (space.use == OpeningUse::OpenSpace)
            labelSpace(sketch, space, options);
    }
}

void nameBoard(Sketch& sketch, const SpacePlan& space, const BoxMm& edge) {
    const std::string name = label(space);
    if (sketch.forPaper(textWidth(name, wordHeight) + freeRound) > edge.sizes().x() ||
        sketch.forPaper(wordHeight + freeRound / 2) > edge.sizes().y())
        return;
    const PointMm at(edge.center().x(), edge.center().y() - sketch.forPaper(wordHeight / 2));
    sketch.text(Layer::Note, {at, name, wordHeight, Anchor::Middle, 0},
                {space.opening, std::nullopt, "label"});
}

void drawSwing(Sketch& sketch, const FrontPlan& door) {
    for (const LineMark& line : swingOf(door))
        sketch.line(Layer::OpeningEdge, line.from, line.to, {door.opening, std::nullopt, "swing"});
}

std::vector<BoxMm> swingBoxes(const FrontPlan& front) {
    constexpr int pieces = 32; // a slanting line as steps
    std::vector<BoxMm> boxes;
    if (front.use != OpeningUse::Door)
        return boxes;
    for (const LineMark& line : swingOf(front))
        for (int i = 0; i < pieces; ++i) {
            const PointMm step = (line.to - line.from) / pieces;
            const PointMm from = line.from + i * step;
            boxes.push_back(BoxMm(from).extend(PointMm(from + step)));
        }
    return boxes;
}

} // namespace frontwright
