#include "core/drawings/season_chart.h"

#include "core/amounts/amounts.h"
#include "core/drawings/lettering.h"
#include "core/drawings/sketch.h"
#include "core/lengths/format.h"
#include "core/plan/moving.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <vector>

namespace frontwright {

namespace {

constexpr double margin = 2, letters = 2.5, tick = 1.2, pointRadius = 1.3;
constexpr double besideLine = 0.8;               // from an upright line to its words
constexpr int stepOfCurve = 2, stepOfScale = 20; // per cent of humidity
const Part noPart;

Temperature temperatureOf(const AirState& state) {
    return state.by == MoistureBy::Air ? state.temperature : Temperature::celsius(20);
}

double humidityOf(const AirState& state, Temperature at) {
    return state.by == MoistureBy::Air && state.temperature == at
               ? state.humidity.value()
               : humidityFor(at, moistureOf(state));
}

struct Point {
    double humidity;
    double gap; ///< mm
};

/// From humidity and gap to the plot.
struct Scale {
    double width, height;
    double lowest, highest; ///< mm of gap
    [[nodiscard]] double x(double humidity) const { return width * humidity / 100; }
    [[nodiscard]] double y(double gap) const {
        return height * (gap - lowest) / (highest - lowest);
    }
    [[nodiscard]] PointMm at(const Point& p) const { return {x(p.humidity), y(p.gap)}; }
};

class Chart {
public:
    Chart(const Project& project, const Plan& plan, const SeasonChartOptions& options)
        : m_project(project),
          m_plan(plan),
          m_options(options),
          m_temperature(temperatureOf(options.today)) {}

    [[nodiscard]] bool hasCurve() {
        for (int humidity = 0; humidity <= 100; humidity += stepOfCurve) {
            const auto gap = gapAt(humidity);
            if (!gap)
                return false;
            m_curve.push_back({static_cast<double>(humidity), *gap});
        }
        return true;
    }

    Drawing drawn() {
        const double limit = m_project.limits.leastGap.length.inMillimetres();
        // Humidity rises, gaps fall: the ends of the curve are its highest and lowest.
        m_scale = {m_options.width, m_options.height, std::min(0.0, m_curve.back().gap),
                   std::max(limit, m_curve.front().gap)};
        m_scale.highest += (m_scale.highest - m_scale.lowest) / 10;
        drawFrame();
        drawLevel(0, m_options.style.unit == Unit::Inch ? "0 in" : "0 mm", Layer::CaseOutline);
        drawLevel(limit, shown(m_project.limits.leastGap, m_options.style), Layer::Centre);
        drawRoom();
        drawCurve();
        drawToday();
        return m_sketch.finished(margin);
    }

private:
    [[nodiscard]] std::optional<double> gapAt(double humidity) const {
        const auto gap =
            smallestGap(m_project, m_plan, equilibriumMoisture(m_temperature, humidity));
        return gap ? std::optional(gap->inMillimetres()) : std::nullopt;
    }

    void write(PointMm at, const Phrase& words, Anchor anchor) {
        m_sketch.text(Layer::Note, {at, told(words, m_options.language), letters, anchor, 0},
                      noPart);
    }

    void drawFrame() {
        const double w = m_options.width, h = m_options.height;
        m_sketch.line(Layer::OpeningEdge, {0, 0}, {w, 0}, noPart);
        m_sketch.line(Layer::OpeningEdge, {0, 0}, {0, h}, noPart);
        for (int humidity = 0; humidity <= 100; humidity += stepOfScale) {
            const double x = m_scale.x(humidity);
            m_sketch.line(Layer::Dimension, {x, 0}, {x, -tick}, noPart);
            write({x, -tick - 1.5 * letters},
                  std::to_string(humidity) + (humidity == 100 ? " %" : ""), Anchor::Middle);
        }
        write(
            {w / 2, -tick - 3.2 * letters},
            phrase("relative humidity at %1", withMark(shown(m_temperature), m_options.style.mark)),
            Anchor::Middle);
        write({0, h + letters}, text("smallest gap"), Anchor::Start);
    }

    void drawLevel(double gap, const std::string& label, Layer layer) {
        const double y = m_scale.y(gap);
        m_sketch.line(layer, {0, y}, {m_options.width, y}, noPart);
        // The least gap is often near nothing: its figure keeps clear of that one.
        const double base = m_scale.y(0) - letters / 2;
        const double at = gap > 0 ? std::max(y - letters / 2, base + 1.5 * letters) : base;
        write({-tick, at}, label, Anchor::End);
    }

    /// The room's driest and wettest, as what air at today's temperature would do the same.
    void drawRoom() {
        const auto& air = *m_project.air;
        struct Named {
            const AirState& state;
            Text name;
            Anchor anchor;
        };
        for (const Named& end : {Named{air.driest, text("driest"), Anchor::End},
                                 Named{air.wettest, text("wettest"), Anchor::Start}}) {
            const double x = m_scale.x(humidityOf(end.state, m_temperature));
            m_sketch.line(Layer::BoxEdge, {x, 0}, {x, m_options.height}, noPart);
            const double words =
                textWidth(told(end.name, m_options.language), letters) + besideLine;
            const Anchor anchor = x < words                     ? Anchor::Start
                                  : x > m_options.width - words ? Anchor::End
                                                                : end.anchor;
            write({x + (anchor == Anchor::Start ? besideLine : -besideLine),
                   m_options.height - letters},
                  end.name, anchor);
        }
    }

    void drawCurve() {
        std::vector<PointMm> points;
        for (const Point& point : m_curve)
            points.push_back(m_scale.at(point));
        m_sketch.path(Layer::FrontEdge, std::move(points), PathMark::End::Open, noPart);
    }

    void drawToday() {
        const double humidity = humidityOf(m_options.today, m_temperature);
        const double gap = gapAt(humidity).value_or(0);
        const PointMm at = m_scale.at({humidity, gap});
        m_sketch.circle(Layer::Hole, at, pointRadius, noPart);
        m_sketch.circle(Layer::Hole, at, pointRadius / 3, noPart);
        const Phrase words =
            phrase("today %1", shown(Length::nearestToMillimetres(gap), m_options.style));
        labelToday(at, told(words, m_options.language));
    }

    /// Below the point or above it, on the side where there is more room, where it meets the fewest
    /// lines.
    void labelToday(const PointMm& at, const std::string& words) {
        const bool hasRoomRight = at.x() < m_options.width * 0.6;
        TextMark best;
        int fewest = std::numeric_limits<int>::max();
        for (const double lines : {-4.0, -2.2, -6.0, -8.0, 1.2, 3.0})
            for (const bool isRight : {hasRoomRight, !hasRoomRight}) {
                const TextMark there{{at.x() + (isRight ? 2.2 : -2.2), at.y() + lines * letters},
                                     words,
                                     letters,
                                     isRight ? Anchor::Start : Anchor::End,
                                     0};
                if (const int met = linesMet(there); met < fewest) {
                    fewest = met;
                    best = there;
                }
            }
        m_sketch.text(Layer::Note, std::move(best), noPart);
    }
    /// A time of the year's line is the least in the way.
    [[nodiscard]] int linesMet(const TextMark& label) const {
        constexpr int inTheWay = 10;
        const BoxMm own = textBox(label, 1);
        const BoxMm room(PointMm(0, 0), PointMm(m_options.width, m_options.height));
        int met = room.contains(own) ? 0 : 2 * inTheWay;
        const auto meets = [&](const PointMm& a, const PointMm& b) {
            return BoxMm(a).extend(b).intersects(own);
        };
        for (const Mark& mark : m_sketch.marks()) {
            if (const auto* other = std::get_if<TextMark>(&mark.shape))
                met += textBox(*other, 1).intersects(own) ? inTheWay : 0;
            if (const auto* line = std::get_if<LineMark>(&mark.shape))
                if (meets(line->from, line->to))
                    met += mark.layer == Layer::BoxEdge ? 1 : inTheWay;
            if (const auto* path = std::get_if<PathMark>(&mark.shape))
                for (std::size_t i = 1; i < path->points.size(); ++i)
                    met += meets(path->points[i - 1], path->points[i]) ? inTheWay : 0;
        }
        return met;
    }

    const Project& m_project;
    const Plan& m_plan;
    const SeasonChartOptions& m_options;
    Temperature m_temperature;
    std::vector<Point> m_curve;
    Scale m_scale{};
    Sketch m_sketch{1};
};

} // namespace

std::optional<Drawing> seasonChart(const Project& project, const Plan& plan,
                                   const SeasonChartOptions& options) {
    if (!project.air || !plan.season || impossible(options.today))
        return std::nullopt;
    Chart chart(project, plan, options);
    if (!chart.hasCurve())
        return std::nullopt;
    return chart.drawn();
}

} // namespace frontwright
