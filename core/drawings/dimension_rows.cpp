#include "core/drawings/dimension_rows.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/lettering.h"

#include <algorithm>
#include <map>

namespace frontwright {

namespace {

constexpr double tolerance = 1e-6; // of paper mm: neighbours in a chain touch
constexpr double besideText = 1.0; // kept free beside a text

/// What is dimensioned once: one stretch, or any of several equal ones.
using Alike = std::vector<Measured>;

/// Three and more of one name and text become one, counted behind its figure, "1 3/4 (4×)", lest
/// it read as a product; those that stand alone come first.
std::vector<Alike> groupsOf(const std::vector<Measured>& misfits) {
    std::map<std::pair<std::string, std::string>, Alike> byText;
    for (const Measured& m : misfits)
        byText[{m.part.name, m.text}].push_back(m);
    std::vector<Alike> alone, counted;
    for (const Measured& m : misfits) {
        Alike& alike = byText[{m.part.name, m.text}];
        if (alike.size() < 3) {
            alone.push_back({m});
        } else if (alike.front().low == m.low) {
            for (Measured& one : alike)
                one.text += " (" + std::to_string(alike.size()) + "×)";
            counted.push_back(alike);
        }
    }
    alone.insert(alone.end(), counted.begin(), counted.end());
    return alone;
}

} // namespace

DimensionRows::DimensionRows(Side side, double edge, double paperScale, double firstRow,
                             std::size_t mostRows)
    : m_side(side),
      m_edge(edge),
      m_paperScale(paperScale),
      m_firstRow(firstRow),
      m_mostRows(mostRows) {}

void DimensionRows::keepWithin(double low, double high) {
    m_within = Stretch{low * m_paperScale, high * m_paperScale};
}

void DimensionRows::keepClear(double at) {
    m_clear.push_back(at * m_paperScale);
}

DimensionRows::Placed DimensionRows::placed(const Measured& measured, std::size_t row,
                                            TextPlace place) const {
    Placed p{measured, row, place, {}, {}};
    p.line = {measured.low * m_paperScale, measured.high * m_paperScale};
    const double width = textWidth(measured.text, dimension::lettering);
    const double reach = reachBeyondTick(measured.text);
    switch (place) {
    case TextPlace::Between: {
        const double middle = (p.line.low + p.line.high) / 2;
        p.text = {middle - width / 2, middle + width / 2};
        break;
    }
    case TextPlace::BeyondLow:
        p.text = {p.line.low - reach, p.line.low - reach + width};
        p.line.low -= reach;
        break;
    case TextPlace::BeyondHigh:
        p.text = {p.line.high + reach - width, p.line.high + reach};
        p.line.high += reach;
        break;
    }
    return p;
}

bool DimensionRows::fits(const Measured& m) const {
    return fitsBetweenTicks(m.text, (m.high - m.low) * m_paperScale);
}

/// Another dimension in the same row is met, or is nearer to the text than it should be.
bool DimensionRows::collides(const Placed& p) const {
    const auto meet = [](const Stretch& a, const Stretch& b, double apart) {
        return a.low < b.high + apart - tolerance && b.low < a.high + apart - tolerance;
    };
    return std::any_of(m_placed.begin(), m_placed.end(), [&](const Placed& other) {
        if (other.row != p.row)
            return false;
        if (meet(p.line, other.line, 0))
            return true;
        const bool beyond = p.place != TextPlace::Between || other.place != TextPlace::Between;
        return beyond &&
               (meet(p.text, other.line, besideText) || meet(p.line, other.text, besideText));
    });
}

/// Extension lines run from the edge to their row: through the texts of the rows before it.
bool DimensionRows::crossesExtension(const Placed& p) const {
    const auto isOn = [](double at, const Stretch& text) {
        return text.low - besideText / 2 < at && at < text.high + besideText / 2;
    };
    const auto anyEndOn = [&](const Placed& of, const Stretch& text) {
        return isOn(of.measured.low * m_paperScale, text) ||
               isOn(of.measured.high * m_paperScale, text);
    };
    if (std::any_of(m_clear.begin(), m_clear.end(), [&](double at) { return isOn(at, p.text); }))
        return true;
    return std::any_of(m_placed.begin(), m_placed.end(), [&](const Placed& other) {
        return other.row > p.row ? anyEndOn(other, p.text)
                                 : other.row < p.row && anyEndOn(p, other.text);
    });
}

bool DimensionRows::isWithin(const Placed& p) const {
    return !m_within || (m_within->low <= p.text.low && p.text.high <= m_within->high);
}

void DimensionRows::place(Placed p) {
    m_rows = std::max(m_rows, p.row + 1);
    m_placed.push_back(std::move(p));
}

std::size_t DimensionRows::rowFor(const std::vector<Measured>& fitting) const {
    for (std::size_t row = 0; row < m_rows; ++row) {
        const bool isFree = std::none_of(fitting.begin(), fitting.end(), [&](const Measured& m) {
            const Placed p = placed(m, row, TextPlace::Between);
            return collides(p) || crossesExtension(p);
        });
        if (isFree)
            return row;
    }
    return m_rows;
}

/// The nearest row where a text beyond a tick of any of these meets nothing. Where every row has
/// something in the way of the extension lines, a new row is taken and they cross.
void DimensionRows::placeBeyond(const std::vector<Measured>& anyOf, std::size_t firstRow) {
    const auto tried = [&](std::size_t row, auto&& isGood) {
        for (const Measured& m : anyOf)
            for (const TextPlace side : {TextPlace::BeyondHigh, TextPlace::BeyondLow}) {
                Placed p = placed(m, row, side);
                if (!isGood(p))
                    continue;
                place(std::move(p));
                return true;
            }
        return false;
    };
    const auto isClear = [&](const Placed& p) { return !collides(p) && !crossesExtension(p); };
    const std::size_t end = std::min(m_rows + 1, m_mostRows);
    for (std::size_t row = firstRow; row < end; ++row)
        if (tried(row, [&](const Placed& p) { return isWithin(p) && isClear(p); }))
            return;
    for (std::size_t row = firstRow; row < end; ++row)
        if (tried(row, isClear))
            return;
    if (m_rows >= m_mostRows)
        ++m_leftOut;
    else if (!tried(m_rows, [&](const Placed& p) { return isWithin(p); }))
        tried(m_rows, [](const Placed&) { return true; });
}

void DimensionRows::addChain(std::vector<Measured> chain) {
    const auto misfitsBegin = std::stable_partition(chain.begin(), chain.end(),
                                                    [&](const Measured& m) { return fits(m); });
    const std::vector<Measured> fitting(chain.begin(), misfitsBegin);
    std::size_t row = fitting.empty() ? 0 : rowFor(fitting);
    if (row < m_mostRows) {
        for (const Measured& m : fitting)
            place(placed(m, row, TextPlace::Between));
    } else {
        m_leftOut += fitting.size();
        row = 0;
    }
    for (const Alike& alike : groupsOf(std::vector<Measured>(misfitsBegin, chain.end())))
        placeBeyond(alike, row);
}

void DimensionRows::addOverall(Measured overall) {
    const TextPlace side = fits(overall) ? TextPlace::Between : TextPlace::BeyondHigh;
    place(placed(overall, m_rows, side));
}

double DimensionRows::lowest() const {
    const auto nearer = [](const Placed& a, const Placed& b) { return a.line.low < b.line.low; };
    return std::min_element(m_placed.begin(), m_placed.end(), nearer)->line.low;
}

double DimensionRows::highest() const {
    const auto nearer = [](const Placed& a, const Placed& b) { return a.line.high < b.line.high; };
    return std::max_element(m_placed.begin(), m_placed.end(), nearer)->line.high;
}

std::vector<Mark> DimensionRows::marks() const {
    const bool alongX = !isLeftOrRight(m_side);
    // Left of low → high is up along x and to the left along y.
    const double outward = m_side == Side::Top || m_side == Side::Left ? 1 : -1;
    const auto point = [&](double along) {
        return alongX ? PointMm(along, m_edge) : PointMm(m_edge, along);
    };
    std::vector<Mark> marks;
    for (const Placed& p : m_placed) {
        const double away = m_firstRow + rowPitch * static_cast<double>(p.row);
        DimensionMark mark;
        mark.from = point(p.measured.low);
        mark.to = point(p.measured.high);
        mark.offset = outward * away;
        if (p.place == TextPlace::BeyondLow) {
            std::swap(mark.from, mark.to);
            mark.offset = -mark.offset;
        }
        mark.text = p.measured.text;
        mark.quantity = p.measured.quantity;
        marks.push_back({Layer::Dimension, std::move(mark), p.measured.part});
    }
    return marks;
}

} // namespace frontwright
