#pragma once

#include "core/drawings/glossary.h"
#include "core/drawings/sketch.h"

namespace frontwright::glossary {

/// Whether a part is the one that the word means, or only surrounds it.
enum class Look : std::uint8_t { Around, Meant };
enum class Grain : std::uint8_t { Rising, Falling }; ///< which way a cut part is hatched

/// A drawing of one word while it is being made.
class Picture {
public:
    explicit Picture(double paperScale) : m_sketch(paperScale) {}

    Sketch& sketch() { return m_sketch; }
    /// Wide with a hatch where it is meant, else narrow.
    void part(const BoxMm& box, Look look = Look::Around);
    void part(std::vector<PointMm> outline, Look look = Look::Around);
    /// Cut wood: always hatched; its edge is wide where it is meant. `without` stays free.
    void cut(std::vector<PointMm> outline, Grain grain, Look look = Look::Around,
             std::vector<std::vector<PointMm>> without = {});
    void cut(const BoxMm& box, Grain grain, Look look = Look::Around,
             std::vector<std::vector<PointMm>> without = {});
    /// Steel: no hatch, wide where it is meant.
    void steel(std::vector<PointMm> outline, Look look);
    void hidden(const BoxMm& box);
    void edge(std::vector<PointMm> points); ///< wide, open
    void line(const PointMm& from, const PointMm& to);
    void axis(const PointMm& from, const PointMm& to);
    /// The length that is meant: a dimension without a figure, `offset` mm of paper away.
    void length(const PointMm& from, const PointMm& to, double offset);

    [[nodiscard]] Drawing finished() const { return m_sketch.finished(1); }

private:
    void hatch(std::vector<PointMm> outline, Grain grain,
               std::vector<std::vector<PointMm>> without);

    Sketch m_sketch;
};

BoxMm box(double left, double bottom, double right, double top);
/// Part of a circle, both ends included, degrees anticlockwise from x.
std::vector<PointMm> arc(const PointMm& centre, double radius, double from, double to);

// One function for each theme; each knows the words that its file names.
Drawing ofFrame(Term);
Drawing ofFronts(Term);
Drawing ofBox(Term);
Drawing ofHandles(Term);
Drawing ofFasteners(Term);
Drawing ofWork(Term);
Drawing ofWood(Term);

} // namespace frontwright::glossary
