#include "core/drawings/drawing_note.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace frontwright {

namespace {

constexpr double fromDrawing = 8;   // on paper
constexpr double titleHeight = 3.5; // ISO 3098
constexpr double lineHeight = 2.5;
constexpr double linePitch = 4.5;

bool showsApproximate(const std::vector<Mark>& marks) {
    constexpr std::string_view sign = "≈";
    return std::any_of(marks.begin(), marks.end(), [&](const Mark& mark) {
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape))
            return dimension->text.find(sign) != std::string::npos;
        const auto* text = std::get_if<TextMark>(&mark.shape);
        return text != nullptr && text->text.find(sign) != std::string::npos;
    });
}

Phrase unitLine(LengthStyle style, double paperScale) {
    const bool isInches = style.unit == Unit::Inch;
    const std::string scale = scaleName(paperScale);
    if (scale.empty())
        return isInches ? text("Dimensions in inches") : text("Dimensions in millimetres");
    return isInches ? phrase("Dimensions in inches, scale %1", scale)
                    : phrase("Dimensions in millimetres, scale %1", scale);
}

Phrase withApproximate(Phrase line, LengthStyle style) {
    return phrase("%1; ≈ nearest %2", std::move(line),
                  style.unit == Unit::Inch ? "1/" + std::to_string(style.denominator)
                                           : withMark("0.1", style.mark));
}

} // namespace

std::string scaleName(double paperScale) {
    constexpr std::array steps{1, 2, 5, 10, 20, 50, 100};
    for (const int step : steps) {
        if (std::abs(paperScale * step - 1) < 1e-9)
            return "1:" + std::to_string(step);
        if (std::abs(paperScale - step) < 1e-9)
            return std::to_string(step) + ":1";
    }
    return {};
}

void drawNote(Sketch& sketch, const DrawingNote& note, LengthStyle style,
              const Language& language) {
    const BoxMm drawn = extentOf({sketch.marks(), {}, sketch.paperScale()});
    if (drawn.isEmpty())
        return;
    PointMm at = drawn.min() - PointMm(0, sketch.forPaper(fromDrawing));
    const auto write = [&](const Phrase& words, double height) {
        sketch.text(Layer::Note, {at, told(words, language), height, Anchor::Start, 0},
                    {{}, {}, "note"});
    };
    const bool isApproximate = showsApproximate(sketch.marks());
    if (!note.title.empty()) {
        write(note.title, titleHeight);
        at.y() -= sketch.forPaper(linePitch + 0.5);
    }
    for (const Phrase& line : note.lines) {
        write(line, lineHeight);
        at.y() -= sketch.forPaper(linePitch);
    }
    const Phrase last = unitLine(style, sketch.paperScale());
    write(isApproximate ? withApproximate(last, style) : last, lineHeight);
}

} // namespace frontwright
