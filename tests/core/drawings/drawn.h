#pragma once

#include "core/drawings/dimension_marks.h"
#include "core/drawings/lettering.h"
#include "core/drawings/plain_marks.h"

#include <string>
#include <utility>
#include <vector>

// Readers of drawings for tests: what was drawn, by part and layer.
namespace frontwright::testing {

template<class Shape>
std::vector<std::pair<Mark, Shape>> shapesOn(const Drawing& drawing, Layer layer,
                                             const std::string& name = {}) {
    std::vector<std::pair<Mark, Shape>> found;
    for (const Mark& mark : drawing.marks)
        if (const auto* shape = std::get_if<Shape>(&mark.shape))
            if (mark.layer == layer && (name.empty() || mark.part.name == name))
                found.emplace_back(mark, *shape);
    return found;
}

inline std::vector<DimensionMark> dimensionsOf(const Drawing& drawing) {
    std::vector<DimensionMark> found;
    for (const Mark& mark : drawing.marks)
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape))
            found.push_back(*dimension);
    return found;
}

inline const DimensionMark* dimensionNamed(const Drawing& drawing, const std::string& name) {
    for (const Mark& mark : drawing.marks)
        if (mark.part.name == name)
            if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape))
                return dimension;
    return nullptr;
}

inline std::vector<std::string> textsOn(const Drawing& drawing, Layer layer) {
    std::vector<std::string> texts;
    for (const auto& [mark, text] : shapesOn<TextMark>(drawing, layer))
        texts.push_back(text.text);
    return texts;
}

/// Boxes of the dimensions' texts.
inline std::vector<BoxMm> textBoxes(const Drawing& drawing) {
    std::vector<BoxMm> boxes;
    for (const DimensionMark& dimension : dimensionsOf(drawing))
        boxes.push_back(textBox(figureOf(dimension, drawing.paperScale).text, drawing.paperScale));
    return boxes;
}

/// Boxes of all texts: labels and notes as well.
inline std::vector<BoxMm> allTextBoxes(const Drawing& drawing) {
    std::vector<BoxMm> boxes = textBoxes(drawing);
    for (const Mark& mark : drawing.marks)
        if (const auto* text = std::get_if<TextMark>(&mark.shape))
            boxes.push_back(textBox(*text, drawing.paperScale));
    return boxes;
}

inline bool haveCommonArea(const BoxMm& a, const BoxMm& b) {
    const BoxMm common = a.intersection(b);
    return !common.isEmpty() && common.sizes().minCoeff() > 1e-6;
}

/// Pairs of boxes that have an area in common.
inline std::vector<std::pair<std::size_t, std::size_t>>
overlapping(const std::vector<BoxMm>& boxes) {
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < boxes.size(); ++i)
        for (std::size_t j = i + 1; j < boxes.size(); ++j)
            if (haveCommonArea(boxes[i], boxes[j]))
                pairs.emplace_back(i, j);
    return pairs;
}

} // namespace frontwright::testing
