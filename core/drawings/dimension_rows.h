#pragma once

#include "core/drawings/drawing.h"

namespace frontwright {

/// One stretch to be dimensioned along a side of a drawing; drawn mm along that side.
struct Measured {
    double low = 0;
    double high = 0;
    std::string text;
    std::optional<Quantity> quantity;
    Part part;
};

/// Lays dimensions in rows along one side of what is drawn, outside it, so that no text meets
/// another text, a dimension line or, where it can be helped, an extension line.
///
///     edge  ────────────────────────────────
///     row 0   |<-  13  ->|      |<-  13  ->|     chain: what fits between its ticks
///     row 1              |2|2                    what does not: text beyond a tick
///     row 2   |<-          28            ->|     overall
///
/// The first row lies `firstRow`, each further one `rowPitch` mm of paper farther out.
class DimensionRows {
public:
    static constexpr double defaultFirstRow = 10; ///< ISO 129-1 practice, from memory
    static constexpr double rowPitch = 7;
    /// Before the overall one. What finds no place in these is left out: a drawing whose rows are
    /// wider than the case wants a larger scale, not more rows.
    static constexpr std::size_t defaultMostRows = 8;

    DimensionRows(Side side, double edge, double paperScale, double firstRow = defaultFirstRow,
                  std::size_t mostRows = defaultMostRows);

    /// Texts beyond a tick stay between these where there is a way; drawn mm along the side.
    void keepWithin(double low, double high);
    /// Keeps texts off the extension lines of a dimension that will be added last.
    void keepClear(double at);

    /// In one row what fits between its ticks, in the rows after it what does not. Three or more
    /// that do not fit and have the same text are dimensioned once, as "3 × 1 1/4".
    void addChain(std::vector<Measured> chain);
    /// In a row of its own, farther out than all the others.
    void addOverall(Measured overall);

    /// How many stretches found no place.
    [[nodiscard]] std::size_t leftOut() const { return m_leftOut; }
    [[nodiscard]] bool isEmpty() const { return m_placed.empty(); }
    /// How far lines and texts reach along the side, mm on paper. Precondition: not empty.
    [[nodiscard]] double lowest() const;
    [[nodiscard]] double highest() const;
    [[nodiscard]] std::vector<Mark> marks() const;

private:
    enum class TextPlace : std::uint8_t { Between, BeyondLow, BeyondHigh };
    struct Stretch {
        double low = 0;
        double high = 0;
    };
    struct Placed {
        Measured measured;
        std::size_t row = 0;
        TextPlace place = TextPlace::Between;
        Stretch line; ///< on paper, as prolonged under the text
        Stretch text; ///< on paper
    };

    [[nodiscard]] Placed placed(const Measured&, std::size_t row, TextPlace) const;
    [[nodiscard]] bool collides(const Placed&) const;
    [[nodiscard]] bool crossesExtension(const Placed&) const;
    [[nodiscard]] bool isWithin(const Placed&) const;
    [[nodiscard]] bool fits(const Measured&) const;
    [[nodiscard]] std::size_t rowFor(const std::vector<Measured>& fitting) const;
    void placeBeyond(const std::vector<Measured>& anyOf, std::size_t firstRow);
    void place(Placed);

    Side m_side;
    double m_edge;
    double m_paperScale;
    double m_firstRow;
    std::size_t m_mostRows;
    std::optional<Stretch> m_within; ///< on paper
    std::vector<double> m_clear;     ///< on paper
    std::vector<Placed> m_placed;
    std::size_t m_rows = 0;
    std::size_t m_leftOut = 0;
};

} // namespace frontwright
