#include "core/sheets/legend.h"

#include "core/drawings/lettering.h"
#include "core/drawings/sketch.h"
#include "core/sheets/text_lines.h"

#include <array>

namespace frontwright {

namespace {

constexpr double signWidth = 6;      ///< mm
constexpr double signReach = 1.9;    ///< mm above and below the line's middle
constexpr double beforeWords = 1.5;  ///< mm
constexpr double afterWords = 4;     ///< mm to the next sign
constexpr double pitch = 5;          ///< mm from line to line
constexpr double diamondPart = 0.65; ///< of a cross's reach

enum class Sign : std::uint8_t { Hole, Register, Cut, LaidEdge, Centre, Waste };

struct Entry {
    Sign sign;
    Text words;
};
constexpr std::array<Entry, 6> entries{{{Sign::Hole, text("hole, true size")},
                                        {Sign::Register, text("register mark")},
                                        {Sign::Cut, text("cut")},
                                        {Sign::LaidEdge, text("neighbour's edge")},
                                        {Sign::Centre, text("centre line")},
                                        {Sign::Waste, text("waste")}}};

double entryWidth(const std::string& words) {
    return signWidth + beforeWords + textWidth(words, smallText);
}

/// Signs and words with the left end (x) and the number of the line (y) they stand on.
template<class Place>
int eachEntry(double width, const Language& language, Place place) {
    double x = 0;
    int line = 0;
    for (const Entry& entry : entries) {
        const std::string words = told(entry.words, language);
        const double needed = entryWidth(words);
        if (x > 0 && x + needed > width) {
            x = 0;
            ++line;
        }
        place(entry.sign, words, PointMm(x, line));
        x += needed + afterWords;
    }
    return line + 1;
}

Mark line(Layer layer, const PointMm& from, const PointMm& to) {
    return {layer, LineMark{from, to}, {}};
}

/// Notes where a hole is drawn: nothing is drilled there.
std::vector<Mark> holeSign(const PointMm& at) {
    constexpr double radius = 1.1;
    return {{Layer::Note, CircleMark{at, radius}, {}},
            line(Layer::Note, at - PointMm(signReach, 0), at + PointMm(signReach, 0)),
            line(Layer::Note, at - PointMm(0, signReach), at + PointMm(0, signReach))};
}

std::vector<Mark> signMarks(Sign sign, const PointMm& middle) {
    const PointMm half(signWidth / 2, 0);
    switch (sign) {
    case Sign::Hole:
        return holeSign(middle);
    case Sign::Register:
        return registerMark(middle, signReach);
    case Sign::Cut:
        return {line(Layer::Trim, middle - half, middle + half)};
    case Sign::LaidEdge: {
        constexpr double dash = 1.2; // five of them, every second one drawn
        std::vector<Mark> dashes;
        for (double from : {0.0, 2.0, 4.0})
            dashes.push_back(line(Layer::Register, middle - half + PointMm(from * dash, 0),
                                  middle - half + PointMm((from + 1) * dash, 0)));
        return dashes;
    }
    case Sign::Centre:
        return {line(Layer::Centre, middle - half, middle + half)};
    case Sign::Waste:
        break;
    }
    const PointMm reach(signWidth / 2, signReach * 0.7);
    return {
        {Layer::Waste, HatchMark{cornersOf(BoxMm(middle - reach, middle + reach)), 2, 45, {}}, {}}};
}

} // namespace

std::vector<Mark> registerMark(const PointMm& centre, double reach) {
    const double r = diamondPart * reach;
    return {line(Layer::Register, centre - PointMm(reach, 0), centre + PointMm(reach, 0)),
            line(Layer::Register, centre - PointMm(0, reach), centre + PointMm(0, reach)),
            {Layer::Register,
             PathMark{{centre + PointMm(r, 0), centre + PointMm(0, r), centre - PointMm(r, 0),
                       centre - PointMm(0, r)},
                      PathMark::End::Closed},
             {}}};
}

double legendHeight(double width, const Language& language) {
    return pitch * eachEntry(width, language, [](Sign, const std::string&, const PointMm&) {});
}

void addLegend(Page& page, const BoxMm& area, const Language& language) {
    const auto draw = [&](Sign sign, const std::string& words, const PointMm& place) {
        const PointMm middle(area.min().x() + place.x() + signWidth / 2,
                             area.max().y() - pitch * (place.y() + 0.5));
        for (Mark& mark : signMarks(sign, middle))
            page.drawing.marks.push_back(std::move(mark));
        const PointMm from = middle + PointMm(signWidth / 2 + beforeWords, -ascent * smallText / 2);
        page.drawing.marks.push_back(
            {Layer::Note, TextMark{from, words, smallText, Anchor::Start, 0}, {}});
    };
    eachEntry(area.sizes().x(), language, draw);
}

} // namespace frontwright
