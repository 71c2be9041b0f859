#include "core/lengths/format.h"
#include "core/rules/rule_parts.h"

namespace frontwright {

namespace {

/// As its table has it: in thousandths of an inch where it is no fraction and no tenth of a
/// millimetre.
std::string say(Length length) {
    constexpr std::int64_t tenthOfMillimetre = 100'000, thousandthOfInch = 25'400;
    const std::int64_t nm = length.nanometres();
    const bool isPlain =
        nm % Length::nanometresPer64th == 0 || nm % tenthOfMillimetre == 0 || nm % thousandthOfInch;
    return isPlain ? exact(length, Unit::Inch) : decimal(length.inInches(), 3) + " in";
}

std::string valueOf(const WoodScrew& screw) {
    return "shank " + say(screw.shankDiameter) + ", head " + say(screw.headDiameter) + " × " +
           say(screw.headHeight) + ", clearance " + say(screw.clearanceHole) + ", pilot " +
           say(screw.pilotHole) +
           (screw.rootDiameter ? ", root " + say(*screw.rootDiameter) : std::string());
}

std::string valueOf(const Bolt& bolt) {
    return bolt.thread + ", head " + say(bolt.headDiameter) + " × " + say(bolt.headHeight) +
           ", clearance " + say(bolt.clearanceHole);
}

std::string valueOf(const HardwareForm& form) {
    return "base " + say(form.footprint.width) + " × " + say(form.footprint.height) + ", bolt " +
           form.bolt + ", thread " + say(form.threadDepth) + ", at least " +
           say(form.leastEngagement);
}

std::string valueOf(const RunnerKind& runner) {
    return "side " + say(runner.sideClearance) + ", below " + say(runner.clearanceBelow) +
           ", above " + say(runner.clearanceAbove) + ", rating " +
           (runner.rating ? exact(*runner.rating) : std::string("none"));
}

template<class Entry>
void add(std::vector<RuleRow>& rows, std::string_view kind, std::string_view where,
         const std::vector<Entry>& entries) {
    for (const Entry& entry : entries)
        rows.push_back({RuleKind::Entry, std::string(kind) + "." + entry.id, entry.name,
                        valueOf(entry), std::string(where), entry.source});
}

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

std::string gravityOf(const Species& wood) {
    if (!wood.gravity)
        return "specific gravity not known";
    const char* basis = wood.gravity->basis == GravityBasis::Green     ? "green volume"
                        : wood.gravity->basis == GravityBasis::Ovendry ? "ovendry volume"
                                                                       : "volume at 12 % moisture";
    return "specific gravity " + decimal(static_cast<double>(wood.gravity->thousandths) / 1000, 2) +
           ", " + basis;
}

} // namespace

void addEntries(std::vector<RuleRow>& rows, const Catalogue& program) {
    add(rows, "woodScrews", "mounting screws", program.woodScrews);
    add(rows, "bolts", "bolts of handles", program.bolts);
    add(rows, "hardware", "handles", program.hardware);
    add(rows, "runners", "boxes, weights", program.runners);
    for (const Species& wood : program.species)
        rows.push_back(
            {RuleKind::Entry, "species." + wood.id, wood.name, gravityOf(wood),
             "withdrawal, pilot holes, weights",
             isRecalled(wood.id)
                 ? Source{SourceKind::FromMemory, "Wood Handbook, table 5-3, from memory"}
                 : Source{SourceKind::Published, "Wood Handbook, table 5-3"}});
}

} // namespace frontwright
