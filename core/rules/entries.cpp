#include "core/lengths/format.h"
#include "core/rules/rule_parts.h"

namespace frontwright {

namespace {

/// Tells what entries say, with figures as their tables have them.
class EntryWords {
public:
    explicit EntryWords(DecimalMark mark) : m_mark(mark) {}

    [[nodiscard]] Phrase operator()(const WoodScrew& screw) const {
        const std::string shank = say(screw.shankDiameter), head = say(screw.headDiameter);
        const std::string height = say(screw.headHeight), clearance = say(screw.clearanceHole);
        const std::string pilot = say(screw.pilotHole);
        if (!screw.rootDiameter)
            return phrase("shank %1, head %2 × %3, clearance %4, pilot %5", shank, head, height,
                          clearance, pilot);
        return phrase("shank %1, head %2 × %3, clearance %4, pilot %5, root %6", shank, head,
                      height, clearance, pilot, say(*screw.rootDiameter));
    }
    [[nodiscard]] Phrase operator()(const Bolt& bolt) const {
        return phrase("%1, head %2 × %3, clearance %4", bolt.thread, say(bolt.headDiameter),
                      say(bolt.headHeight), say(bolt.clearanceHole));
    }
    [[nodiscard]] Phrase operator()(const HardwareForm& form) const {
        return phrase("base %1 × %2, bolt %3, thread %4, at least %5", say(form.footprint.width),
                      say(form.footprint.height), form.bolt, say(form.threadDepth),
                      say(form.leastEngagement));
    }
    [[nodiscard]] Phrase operator()(const FittingForm& form) const {
        return phrase("plate %1 × %2, %3 screws, %4 bores, %5 mortises", say(form.footprint.width),
                      say(form.footprint.height), std::to_string(form.screws.size()),
                      std::to_string(form.bores.size()), std::to_string(form.mortises.size()));
    }
    [[nodiscard]] Phrase operator()(const RunnerKind& runner) const {
        const std::string side = say(runner.sideClearance), below = say(runner.clearanceBelow);
        const std::string above = say(runner.clearanceAbove);
        if (!runner.rating)
            return phrase("side %1, below %2, above %3, rating none", side, below, above);
        return phrase("side %1, below %2, above %3, rating %4", side, below, above,
                      withMark(exact(*runner.rating), m_mark));
    }
    [[nodiscard]] Phrase operator()(const Species& wood) const {
        if (!wood.gravity)
            return text("specific gravity not known");
        const std::string gravity =
            withMark(decimal(static_cast<double>(wood.gravity->thousandths) / 1000, 2), m_mark);
        switch (wood.gravity->basis) {
        case GravityBasis::Green:
            return phrase("specific gravity %1, green volume", gravity);
        case GravityBasis::Ovendry:
            return phrase("specific gravity %1, ovendry volume", gravity);
        case GravityBasis::At12Percent:
            break;
        }
        return phrase("specific gravity %1, volume at 12 % moisture", gravity);
    }

private:
    /// In thousandths of an inch where it is no fraction and no tenth of a millimetre.
    [[nodiscard]] std::string say(Length length) const {
        constexpr std::int64_t tenthOfMillimetre = 100'000, thousandthOfInch = 25'400;
        const std::int64_t nm = length.nanometres();
        const bool isPlain = nm % Length::nanometresPer64th == 0 || nm % tenthOfMillimetre == 0 ||
                             nm % thousandthOfInch;
        return withMark(isPlain ? exact(length, Unit::Inch) : decimal(length.inInches(), 3) + " in",
                        m_mark);
    }

    DecimalMark m_mark;
};

/// Woods whose specific gravity was recalled; the others' was read in the handbook's table.
constexpr std::string_view recalled[]{
    "silver-maple",       "red-oak",          "white-oak", "walnut",   "yellow-poplar", "sweetgum",
    "eastern-white-pine", "western-redcedar", "white-fir", "mahogany", "teak"};

bool isRecalled(std::string_view id) {
    for (const std::string_view other : recalled)
        if (id == other)
            return true;
    return false;
}

template<class Entry>
void add(std::vector<RuleRow>& rows, std::string_view kind, Text where,
         const std::vector<Entry>& entries, const EntryWords& words) {
    for (const Entry& entry : entries)
        rows.push_back({RuleKind::Entry, std::string(kind) + "." + entry.id,
                        nameFromData(entry.name), words(entry), where, entry.source});
}

} // namespace

void addEntries(std::vector<RuleRow>& rows, const Catalogue& program, DecimalMark mark) {
    const EntryWords words(mark);
    add(rows, "woodScrews", text("mounting screws"), program.woodScrews, words);
    add(rows, "bolts", text("bolts of handles"), program.bolts, words);
    add(rows, "hardware", text("handles"), program.hardware, words);
    add(rows, "fittings", text("fittings"), program.fittings, words);
    add(rows, "runners", text("boxes, weights"), program.runners, words);
    constexpr Text read = text("Wood Handbook, table 5-3");
    constexpr Text fromMemory = text("Wood Handbook, table 5-3, from memory");
    for (const Species& wood : program.species) {
        const bool isFromMemory = isRecalled(wood.id);
        rows.push_back({RuleKind::Entry,
                        "species." + wood.id,
                        nameFromData(wood.name),
                        words(wood),
                        text("withdrawal, pilot holes, weights"),
                        {isFromMemory ? SourceKind::FromMemory : SourceKind::Published,
                         std::string((isFromMemory ? fromMemory : read).english)}});
    }
}

} // namespace frontwright
