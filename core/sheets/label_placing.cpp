#include "core/sheets/label_placing.h"

#include "core/sheets/clipping.h"
#include "core/sheets/label_candidates.h"

#include <limits>
#include <string_view>

namespace frontwright {

namespace {

constexpr double clearance = 0.7; ///< mm of white round a text
// How much a label disturbs by lying on something.
constexpr int onText = 100;
constexpr int onCircle = 30;
constexpr int onHatch = 3;
constexpr int onLine = 2;

BoxMm grown(const BoxMm& box, double by) {
    return {box.min() - PointMm(by, by), box.max() + PointMm(by, by)};
}
bool overlap(const BoxMm& a, const BoxMm& b) {
    return a.min().x() < b.max().x() && b.min().x() < a.max().x() && a.min().y() < b.max().y() &&
           b.min().y() < a.max().y();
}
bool overlap(const BoxMm& box, const CircleMark& circle) {
    return box.exteriorDistance(circle.centre) < circle.radius;
}

std::optional<LineMark> visible(const TemplateLabel& label, const BoxMm& bounds) {
    const auto* line = std::get_if<LineMark>(&label.beside);
    return line != nullptr ? clipped(*line, bounds) : std::nullopt;
}

/// "overall check: 96 mm" over two lines, for a narrow place; nothing where it has none to break.
std::optional<TemplateLabel> brokenInTwo(const TemplateLabel& label) {
    constexpr std::string_view between = ": ";
    if (label.lines.size() != 1)
        return std::nullopt;
    const std::string& line = label.lines.front();
    const auto at = line.find(between);
    if (at == std::string::npos)
        return std::nullopt;
    TemplateLabel broken = label;
    broken.lines = {line.substr(0, at + 1), line.substr(at + between.size())};
    return broken;
}

} // namespace

void LabelPlacer::avoid(const Mark& mark) {
    if (const auto* line = std::get_if<LineMark>(&mark.shape)) {
        m_lines.push_back(*line);
    } else if (const auto* path = std::get_if<PathMark>(&mark.shape)) {
        for (std::size_t i = 0; i + 1 < path->points.size(); ++i)
            m_lines.push_back({path->points[i], path->points[i + 1]});
        if (path->end == PathMark::End::Closed)
            m_lines.push_back({path->points.back(), path->points.front()});
    } else if (const auto* circle = std::get_if<CircleMark>(&mark.shape)) {
        m_circles.push_back(*circle);
    } else if (const auto* hatch = std::get_if<HatchMark>(&mark.shape)) {
        BoxMm box;
        for (const PointMm& p : hatch->outline)
            box.extend(p);
        m_hatches.push_back(box);
    }
}

std::vector<LabelPlacer::Candidate> LabelPlacer::candidates(const TemplateLabel& label) const {
    std::vector<Candidate> result;
    const PointMm size = sizeOf(label);
    if (const auto* circle = std::get_if<CircleMark>(&label.beside)) {
        for (const BoxMm& box : placesBeside(*circle, size))
            result.push_back({box, leaderTo(box, *circle)});
    } else if (const auto line = visible(label, m_bounds)) {
        for (const BoxMm& box : placesBeside(*line, size, label.prefer))
            result.push_back({box, leaderTo(box, *line)});
    }
    return result;
}

std::vector<LabelPlacer::Candidate> LabelPlacer::farCandidates(const TemplateLabel& label) const {
    std::vector<Candidate> result;
    const PointMm size = sizeOf(label);
    if (const auto* circle = std::get_if<CircleMark>(&label.beside)) {
        for (const BoxMm& box : placesWithin(m_bounds, size, circle->centre))
            result.push_back({box, leaderTo(box, *circle)});
    } else if (const auto line = visible(label, m_bounds)) {
        for (const BoxMm& box : placesWithin(m_bounds, size, (line->from + line->to) / 2))
            result.push_back({box, leaderTo(box, *line)});
    }
    return result;
}

int LabelPlacer::textDisturbance(const Candidate& candidate) const {
    const BoxMm box = grown(candidate.box, clearance);
    int sum = 0;
    for (const BoxMm& other : m_boxes) {
        sum += overlap(box, other) ? onText : 0;
        sum += candidate.leader && clipped(*candidate.leader, other) ? onText : 0;
    }
    return sum;
}

int LabelPlacer::disturbance(const Candidate& candidate) const {
    if (!m_bounds.contains(candidate.box))
        return std::numeric_limits<int>::max();
    const BoxMm box = grown(candidate.box, clearance);
    int sum = textDisturbance(candidate);
    for (const LineMark& line : m_lines)
        sum += clipped(line, box) ? onLine : 0;
    for (const CircleMark& circle : m_circles)
        sum += overlap(box, circle) ? onCircle : 0;
    for (const BoxMm& hatch : m_hatches)
        sum += overlap(box, hatch) ? onHatch : 0;
    return sum;
}

std::optional<LabelPlacer::Placed> LabelPlacer::best(const TemplateLabel& label) const {
    std::optional<Placed> found;
    const auto lookAt = [&](const std::vector<Candidate>& places) {
        for (const Candidate& candidate : places) {
            if (found && found->disturbance == 0)
                return;
            const int sum = disturbance(candidate);
            if (sum < (found ? found->disturbance : std::numeric_limits<int>::max()))
                found = {candidate, sum};
        }
    };
    const std::vector<Candidate> near = candidates(label);
    if (near.empty())
        return std::nullopt;
    lookAt(near);
    if (!found || found->disturbance > 0)
        lookAt(farCandidates(label));
    return found;
}

std::vector<Mark> LabelPlacer::place(const TemplateLabel& label) {
    std::optional<Placed> placed = best(label);
    const TemplateLabel* used = &label;
    const std::optional<TemplateLabel> narrow = brokenInTwo(label);
    if (placed && placed->disturbance > 0 && narrow)
        if (auto other = best(*narrow); other && other->disturbance < placed->disturbance) {
            placed = other;
            used = &*narrow;
        }
    // A line goes on to other sheets, with its label; a hole is labelled come what may.
    const bool isLine = std::holds_alternative<LineMark>(label.beside);
    if (!placed || (isLine && placed->disturbance >= onText))
        return {};
    m_boxes.push_back(placed->at.box);
    std::vector<Mark> marks = textsOf(*used, placed->at.box.min());
    if (placed->at.leader) {
        marks.push_back({Layer::Note, *placed->at.leader, {}});
        m_lines.push_back(*placed->at.leader);
    }
    return marks;
}

} // namespace frontwright
