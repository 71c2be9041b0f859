#include "core/sheets/calibration_sheet.h"

#include "core/sheets/check_bars.h"
#include "core/sheets/correction.h"
#include "core/sheets/page_layout.h"

#include <array>
#include <cmath>
#include <optional>

namespace frontwright {

namespace {

constexpr Length cutRoll = Length::millimetres(300);
// Both long bars run along the margins and leave their corner to each other.
constexpr double barFromEdge = 6; ///< mm
constexpr double barsCorner = 14; ///< mm
// What every page carries stands inside of them.
constexpr double inner = 20;    ///< mm from the margins
constexpr double barPitch = 7;  ///< mm
constexpr double firstBar = 5;  ///< mm
constexpr double leastTop = 10; ///< mm above the upright bars

Paper sheetFor(const CalibrationRequest& request) {
    Paper paper = request.paper;
    if (paper.isRoll())
        paper.height = greatest(cutRoll, paper.width);
    return paper;
}

constexpr Text title = text("Test page for measuring a printer");

/// What is measured.
Phrase setupWords(const CalibrationRequest& request) {
    const bool isUpright = request.orientation == Orientation::Portrait;
    const Phrase paper = nameOf(request.paper);
    if (request.printer.empty())
        return isUpright ? phrase("paper %1, upright.", paper)
                         : phrase("paper %1, landscape.", paper);
    return isUpright ? phrase("Printer %1, paper %2, upright.", request.printer, paper)
                     : phrase("Printer %1, paper %2, landscape.", request.printer, paper);
}

PageText wordsFor(const CalibrationRequest& request) {
    const DecimalMark mark = request.language.decimalMark();
    PageText words;
    words.title = told(title, request.language);
    for (const Phrase& paragraph :
         {setupWords(request),
          request.factors.areNone()
              ? text("Print at 100 % / Actual size, not Fit. Nothing on this page is corrected.")
              : phrase("Print at 100 % / Actual size, not Fit. Proof of the correction: × %1 "
                       "across, × %2 up.",
                       factorText(request.factors.across, mark),
                       factorText(request.factors.up, mark)),
          Phrase(text("Measure bar A and bar B with a steel rule, from outer tick to outer tick, "
                      "as finely as you can read, and type both lengths."))})
        words.paragraphs.push_back(told(paragraph, request.language));
    return words;
}

/// As long as `room` allows.
CheckBar longest(double room, Unit unit, const char* name) {
    const double step = unit == Unit::Inch ? 25.4 : 10;
    const double count = std::floor(room / step);
    CheckBar bar;
    bar.length = count * step;
    bar.tickEvery = step;
    const auto number = static_cast<std::int64_t>(unit == Unit::Inch ? count : count * step);
    bar.text =
        std::string(name) + ", " + std::to_string(number) + (unit == Unit::Inch ? " in" : " mm");
    return bar;
}

/// Level and upright bars do not cross: the level ones stand beside the upright ones, or below.
std::optional<PointMm> startOfBars(const BoxMm& room) {
    const PointMm size = room.sizes();
    constexpr double longest = inchBar + 1;
    if (size.x() >= inner + longest && size.y() >= longest)
        return PointMm(inner, 0);
    if (size.x() >= longest && size.y() >= inner + longest + leastTop)
        return PointMm(0, inner);
    return std::nullopt;
}

/// 100 mm and 4 in both ways, from the lower left corner of `room`.
void addUsualBars(Page& page, const BoxMm& room, const PointMm& start, const Language& language) {
    const BarsLaid across{BarDirection::Level, "across", language};
    const BarsLaid up{BarDirection::Upright, "up", language};
    const std::array bars{CheckBar{metricBar, 10, "100 mm"}, CheckBar{inchBar, 25.4, "4 in"}};
    double away = firstBar;
    for (const CheckBar& bar : bars) {
        drawBar(page, bar, room.min() + PointMm(start.x(), away), across);
        drawBar(page, bar, room.min() + PointMm(away, start.y()), up);
        away += barPitch;
    }
}

BoxMm insideOf(const CalibrationRequest& request) {
    const Paper paper = beforeCorrection(sheetFor(request), request.orientation, request.factors);
    const double width = paper.width.inMillimetres(), height = paper.height.inMillimetres();
    const PointMm size = request.orientation == Orientation::Portrait ? PointMm(width, height)
                                                                      : PointMm(height, width);
    const double margin = request.margin.inMillimetres();
    return {PointMm(margin, margin), size - PointMm(margin, margin)};
}

} // namespace

Result<CalibrationSheet> calibrationSheet(const CalibrationRequest& request) {
    const BoxMm inside = insideOf(request);
    const BoxMm room(inside.min() + PointMm(inner, inner), inside.max());
    const std::optional<PointMm> start = room.isEmpty() ? std::nullopt : startOfBars(room);
    if (!start)
        return Error{text("paper"),
                     phrase("%1 has no room for the bars to be measured", nameOf(request.paper)),
                     text("use a larger paper or a smaller margin")};
    const PointMm corner = inside.min() + PointMm(barsCorner, barsCorner);
    const CheckBar across = longest(inside.max().x() - corner.x(), request.unit, "A");
    const CheckBar up = longest(inside.max().y() - corner.y(), request.unit, "B");
    CalibrationSheet sheet;
    Page& page = sheet.page;
    page.width = inside.max().x() + inside.min().x();
    page.height = inside.max().y() + inside.min().y();
    page.label = title;
    page.drawing.extent = {PointMm(0, 0), PointMm(page.width, page.height)};
    drawBar(page, across, {corner.x(), inside.min().y() + barFromEdge},
            {BarDirection::Level, "across", request.language});
    drawBar(page, up, {inside.min().x() + barFromEdge, corner.y()},
            {BarDirection::Upright, "up", request.language});
    addUsualBars(page, room, *start, request.language);
    for (TextMark& line :
         textLines(wordsFor(request), {room.min() + PointMm(inner, 0), room.max()}))
        page.drawing.marks.push_back({Layer::Note, std::move(line), {}});
    correct(page, request.factors);
    sheet.nominal = {Length::nearestToMillimetres(across.length),
                     Length::nearestToMillimetres(up.length)};
    return sheet;
}

} // namespace frontwright
