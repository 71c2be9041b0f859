#include "core/drawings/wood_figure.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

// All of these are our own choice, by eye. Millimetres of wood.
constexpr double flatPitch = 3.4;    // from ring to ring along the radius
constexpr double quarterPitch = 2.6; // the same, seen straight on
constexpr double riftPitch = 2.0;
constexpr double leastApartOnPaper = 0.62;
constexpr double widthOnPaper = 0.2; // a pencil line at every scale

/// A slow, irregular wave: three sines of different lengths.
class Wave {
public:
    Wave(Chance& chance, double height, double length) {
        double part = 0.55;
        for (Sine& sine : m_sines) {
            sine = {height * part, 2 * std::numbers::pi / (length * chance.between(0.8, 1.2)),
                    chance.between(0, 2 * std::numbers::pi)};
            part *= 0.55;
            length *= 0.43;
        }
    }
    [[nodiscard]] double at(double x) const {
        double sum = 0;
        for (const Sine& sine : m_sines)
            sum += sine.height * std::sin(sine.rate * x + sine.phase);
        return sum;
    }

private:
    struct Sine {
        double height, rate, phase;
    };
    std::array<Sine, 3> m_sines{};
};

/// Draws lines given along (u) and across (v) the grain, from the board's lower left corner.
class Board {
public:
    Board(Sketch& sketch, const BoxMm& box, const WoodPart& wood, const Part& part)
        : m_sketch(sketch),
          m_box(box),
          m_grain(wood.grain),
          m_part(part),
          m_ring(lit(toneOf(wood.tone), 0.55)),
          m_strength(wood.tone.figure / 100.0) {}

    [[nodiscard]] double length() const { return m_box.sizes()[isAcross() ? 0 : 1]; }
    [[nodiscard]] double width() const { return m_box.sizes()[isAcross() ? 1 : 0]; }
    [[nodiscard]] double step() const {
        return std::max({2.0, length() / 90, m_sketch.forPaper(0.7)});
    }
    /// Every how manieth ring can be told apart on paper.
    [[nodiscard]] int stride(double pitch) const {
        int every = 1;
        while (pitch * every < m_sketch.forPaper(leastApartOnPaper) && every < 1'024)
            every *= 2;
        return every;
    }
    /// A line through `points` (u, v), without what lies beside the board. `weight` 0 … 1.
    void line(const std::vector<PointMm>& points, double weight) {
        std::vector<PointMm> run;
        for (const PointMm& p : points) {
            if (p.y() > 0 && p.y() < width()) {
                run.push_back(placed(p));
                continue;
            }
            stroke(run, weight);
        }
        stroke(run, weight);
    }

private:
    [[nodiscard]] bool isAcross() const { return m_grain == Grain::AlongLength; }
    [[nodiscard]] PointMm placed(const PointMm& p) const {
        return m_box.min() + (isAcross() ? p : PointMm(p.y(), p.x()));
    }
    void stroke(std::vector<PointMm>& run, double weight) {
        if (run.size() >= 2)
            m_sketch.stroke(run, thin(m_ring, weight * (0.1 + 0.55 * m_strength)),
                            m_sketch.forPaper(widthOnPaper), m_part);
        run.clear();
    }

    Sketch& m_sketch;
    BoxMm m_box;
    Grain m_grain;
    const Part& m_part;
    Tone m_ring;
    double m_strength;
};

/// Where the face lies to the pith, at each step along the grain.
struct Pith {
    std::vector<double> along;
    std::vector<double> depth;  ///< h(x)
    std::vector<double> across; ///< y0(x)
};
Pith pithBehind(const Board& board, Chance& chance) {
    const double taper = chance.between(0.02, 0.05) * (chance.between(0, 1) < 0.5 ? -1 : 1);
    const double depth = chance.between(22, 55);
    const double middle = board.width() * chance.between(0.3, 0.7);
    const double lean = chance.between(-0.02, 0.02);
    const Wave bulge(chance, 1.7, 520), sway(chance, 4, 700);
    Pith pith;
    for (double u = 0; u < board.length() + board.step(); u += board.step()) {
        const double x = std::min(u, board.length());
        pith.along.push_back(x);
        pith.depth.push_back(depth + taper * (x - board.length() / 2) + bulge.at(x));
        pith.across.push_back(middle + lean * (x - board.length() / 2) + sway.at(x));
    }
    return pith;
}

/// Where a ring shows at one place along the grain: `half` to both sides of `middle`.
struct Station {
    double along = 0;
    double middle = 0;
    double half = 0;
};

/// A ring where it shows without a break.
struct Stretch {
    std::vector<Station> stations;
    bool startsInTip = false;
    bool endsInTip = false;
};

/// Near a tip a ring widens as a parabola does: by the root of the distance.
std::vector<Station> stationsFrom(double tip, const Station& first) {
    std::vector<Station> result;
    for (const double part : {0.0, 0.04, 0.16, 0.36, 0.64})
        result.push_back(
            {tip + (first.along - tip) * part, first.middle, first.half * std::sqrt(part)});
    return result;
}

std::vector<Stretch> stretchesOf(const Pith& pith, double radius) {
    std::vector<Stretch> result;
    bool isOpen = false;
    double before = 0; // half² at the place before: below 0 the ring lies behind the face
    for (std::size_t i = 0; i < pith.along.size(); ++i) {
        const double square = radius * radius - pith.depth[i] * pith.depth[i];
        const auto tip = [&] {
            return pith.along[i] - (pith.along[i] - pith.along[i - 1]) * square / (square - before);
        };
        if (square > 0) {
            const Station here{pith.along[i], pith.across[i], std::sqrt(square)};
            if (!isOpen) {
                result.emplace_back();
                if (i > 0) {
                    result.back().startsInTip = true;
                    result.back().stations = stationsFrom(tip(), here);
                }
            }
            result.back().stations.push_back(here);
        } else if (isOpen) {
            auto ending = stationsFrom(tip(), result.back().stations.back());
            result.back().endsInTip = true;
            result.back().stations.insert(result.back().stations.end(), ending.rbegin(),
                                          ending.rend());
        }
        isOpen = square > 0;
        before = square;
    }
    return result;
}

void drawRing(Board& board, const Pith& pith, double radius, double weight) {
    for (const Stretch& stretch : stretchesOf(pith, radius)) {
        std::vector<PointMm> upper, lower;
        for (const Station& s : stretch.stations) {
            upper.emplace_back(s.along, s.middle + s.half);
            lower.emplace_back(s.along, s.middle - s.half);
        }
        if (stretch.startsInTip) {
            // One line, round the tip.
            std::reverse(lower.begin(), lower.end());
            lower.insert(lower.end(), upper.begin(), upper.end());
            upper.clear();
        } else if (stretch.endsInTip) {
            upper.insert(upper.end(), lower.rbegin(), lower.rend());
            lower.clear();
        }
        board.line(upper, weight);
        board.line(lower, weight);
    }
}

void drawFlat(Board& board, Chance& chance) {
    const Pith pith = pithBehind(board, chance);
    const double least = *std::min_element(pith.depth.begin(), pith.depth.end());
    const double reach = *std::max_element(pith.depth.begin(), pith.depth.end());
    const double farthest = std::hypot(reach, board.width());
    const int every = board.stride(flatPitch);
    int ring = 0;
    for (double radius = least; radius < farthest; radius += flatPitch * chance.between(0.75, 1.25))
        if (const double weight = chance.between(0.4, 1); ring++ % every == 0)
            drawRing(board, pith, radius, weight);
}

void drawStraight(Board& board, Chance& chance, double pitch) {
    const Wave sway(chance, 2.2, 600);
    const double lean = chance.between(-0.006, 0.006);
    const int every = board.stride(pitch);
    std::vector<PointMm> swaying; // along the board; all its rings have it in common
    for (double u = 0; u < board.length() + board.step(); u += board.step()) {
        const double x = std::min(u, board.length());
        swaying.emplace_back(x, sway.at(x));
    }
    int ring = 0;
    const double beyond = 8;
    for (double v = -beyond; v < board.width() + beyond; v += pitch * chance.between(0.6, 1.4)) {
        const double weight = chance.between(0.3, 0.9);
        const Wave own(chance, 0.35, 160);
        if (ring++ % every != 0)
            continue;
        std::vector<PointMm> points;
        points.reserve(swaying.size());
        for (const PointMm& p : swaying)
            points.emplace_back(p.x(), v + p.y() + own.at(p.x()) + lean * p.x());
        board.line(points, weight);
    }
}

} // namespace

Tone boardTone(const WoodPart& wood) {
    Chance chance(wood.seed ^ 0x5eedU);
    return lit(toneOf(wood.tone), chance.between(0.965, 1.03));
}

void drawFigure(Sketch& sketch, const BoxMm& box, const WoodPart& wood, const Part& part) {
    Board board(sketch, box, wood, part);
    if (!(board.length() > 0) || !(board.width() > 0))
        return;
    Chance chance(wood.seed);
    switch (wood.cut) {
    case Cut::FlatSawn:
        return drawFlat(board, chance);
    case Cut::QuarterSawn:
        return drawStraight(board, chance, quarterPitch);
    case Cut::Rift:
        return drawStraight(board, chance, riftPitch);
    }
}

} // namespace frontwright
