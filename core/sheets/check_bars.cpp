#include "core/sheets/check_bars.h"

#include "core/sheets/text_lines.h"

#include <cmath>

namespace frontwright {

namespace {

constexpr double between = 8;     ///< mm between bars on one line
constexpr double edge = 0.5;      ///< mm from the strip's end to the first tick
constexpr double longTick = 1.5;  ///< mm to each side of the bar
constexpr double shortTick = 0.8; ///< mm
constexpr double textGap = 2.0;   ///< mm from the bar to the base line
constexpr double linePitchOfBars = 7;
constexpr double barInLine = 5.2; ///< mm from the line's text side to its bar
constexpr double longestMetric = 250;
constexpr double longestInches = 10;

/// As long as the room allows; length 0 where it would prove no more than the shorter bars.
CheckBar longBar(double room, Unit unit) {
    if (unit == Unit::Inch) {
        const double inches = std::min(longestInches, std::floor(room / 25.4));
        if (inches <= 4)
            return {};
        return {inches * 25.4, 25.4, std::to_string(static_cast<int>(inches)) + " in"};
    }
    const double length = std::min(longestMetric, 10 * std::floor(room / 10));
    if (length <= metricBar)
        return {};
    return {length, 10, std::to_string(static_cast<int>(length)) + " mm"};
}

/// Draws one bar along its direction; `textSide` is the unit vector towards its text.
class BarPen {
public:
    BarPen(Page& page, const BarsLaid& laid)
        : m_page(page),
          m_laid(laid),
          m_turned(laid.direction == BarDirection::Level ? 0 : 90),
          m_along(laid.direction == BarDirection::Level ? PointMm(1, 0) : PointMm(0, 1)),
          m_textSide(-m_along.y(), m_along.x()) {}

    void draw(const CheckBar& bar, const PointMm& from) {
        const PointMm to = from + bar.length * m_along;
        line(from, to);
        for (double at = bar.tickEvery; at < bar.length - 1; at += bar.tickEvery)
            tick(from + at * m_along, shortTick);
        end(bar, from, " / from");
        end(bar, to, " / to");
        const Phrase words = phrase("%1: measure outer tick to outer tick", bar.text);
        m_page.drawing.marks.push_back(
            {Layer::CheckBar,
             TextMark{(from + to) / 2 + textGap * m_textSide, told(words, m_laid.language),
                      smallText, Anchor::Middle, m_turned},
             {}});
    }

private:
    void line(const PointMm& from, const PointMm& to) {
        m_page.drawing.marks.push_back({Layer::CheckBar, LineMark{from, to}, {}});
    }
    void tick(const PointMm& at, double reach) {
        line(at - reach * m_textSide, at + reach * m_textSide);
    }
    void end(const CheckBar& bar, const PointMm& at, const char* which) {
        tick(at, longTick);
        m_page.marks.push_back(
            {"check-bar", bar.text + " " + m_laid.where + which, at.x(), at.y()});
    }

    Page& m_page;
    const BarsLaid& m_laid;
    double m_turned;
    PointMm m_along;
    PointMm m_textSide;
};

} // namespace

std::vector<std::vector<CheckBar>> barLines(double room, Unit unit) {
    std::vector<CheckBar> bars{{metricBar, 10, "100 mm"}, {inchBar, 25.4, "4 in"}};
    const double free = room - 2 * edge;
    if (free < inchBar)
        return {};
    if (CheckBar bar = longBar(free, unit); bar.length > 0)
        bars.push_back(std::move(bar));
    std::vector<std::vector<CheckBar>> lines;
    double used = free;
    for (CheckBar& bar : bars) {
        if (lines.empty() || used + between + bar.length > free) {
            lines.emplace_back();
            used = -between;
        }
        used += between + bar.length;
        lines.back().push_back(std::move(bar));
    }
    return lines;
}

double barStripBreadth(std::size_t lines) {
    return linePitchOfBars * static_cast<double>(lines);
}

void drawBar(Page& page, const CheckBar& bar, const PointMm& from, const BarsLaid& laid) {
    BarPen(page, laid).draw(bar, from);
}

void drawBars(Page& page, const BoxMm& strip, const BarsLaid& laid, Unit unit) {
    const bool isLevel = laid.direction == BarDirection::Level;
    BarPen pen(page, laid);
    double across = barInLine;
    for (const auto& line : barLines(isLevel ? strip.sizes().x() : strip.sizes().y(), unit)) {
        double along = edge;
        for (const CheckBar& bar : line) {
            const PointMm from = isLevel
                                     ? PointMm(strip.min().x() + along, strip.max().y() - across)
                                     : PointMm(strip.min().x() + across, strip.min().y() + along);
            pen.draw(bar, from);
            along += bar.length + between;
        }
        across += linePitchOfBars;
    }
}

} // namespace frontwright
