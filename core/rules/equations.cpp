#include "core/rules/rule_parts.h"

namespace frontwright {

namespace {

struct Stated {
    const char* id;
    const char* rule;
    const char* value;
    const char* where;
    SourceKind kind;
    const char* source;
};

constexpr auto published = SourceKind::Published;
constexpr auto practice = SourceKind::CommonPractice;
constexpr auto memory = SourceKind::FromMemory;
constexpr const char* noSource = "common practice, no source";

constexpr Stated woodRules[]{
    {"equilibrium_moisture", "Moisture content of wood in air of temperature T and humidity h",
     "M = (1800 / W) [K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)]; W, "
     "K, K1, K2 by T, a set each for °C and °F; about 0.1 % at best, species differ",
     "numbers moisture_*; findings over the season", published,
     "Forest Products Laboratory, Wood Handbook, equation 4-5"},
    {"movement_linear", "Change of size across the grain",
     "ΔD = D C (M2 − M1), for moisture of 6 to 14 %; C tangential (flat-sawn) or radial "
     "(quarter-sawn)",
     "numbers season_*, row_movement", published,
     "Forest Products Laboratory, Wood Handbook, chapter 13"},
    {"movement_wide", "Change of size beyond 6 to 14 % moisture",
     "ΔD = D (M2 − M1) / (100 FSP / S − FSP + M1), FSP 30 %, S total shrinkage in %",
     "finding moisture_beyond_range", published,
     "Forest Products Laboratory, Wood Handbook, chapter 13"},
    {"coefficient_of_shrinkage", "Coefficient where only the total shrinkage is known",
     "C = 1 / (100 FSP / S − FSP + 10)", "species of the maker's own", published,
     "Forest Products Laboratory, Wood Handbook, table 13-5's own rule"},
    {"rift", "Coefficient of a rift-sawn board", "the mean of tangential and radial",
     "numbers season_*", practice, noSource},
    {"fixed_row", "Which row of screws holds the front",
     "the lowest; of upright grain the column nearest the middle", "number fixed_row", practice,
     noSource},
};

constexpr Stated holdingRules[]{
    {"screw_withdrawal_ultimate", "Withdrawal of a wood screw from side grain, average ultimate",
     "15 700 G² D L (lb, in) = 108.25 G² D L (N, mm); G on volume at 12 % moisture",
     "numbers screw_ultimate, pull_safety; finding holding_weak", published,
     "Forest Products Laboratory, Wood Handbook, chapter 8"},
    {"screw_withdrawal_design", "Withdrawal of a wood screw from side grain, design value",
     "2850 G² D L (lb, in) = 19.65 G² D L (N, mm); G on ovendry volume; about 1/5 of the ultimate",
     "numbers screw_design, pull_design_safety; finding holding_weak", published,
     "National Design Specification (NDS)"},
    {"screw_tested_range", "Gauges and lengths for which the ultimate equation was tested",
     "1/2 in: 1–6; 3/4 in: 2–11; 1 in: 3–12; 1 1/2 in: 5–14; 2 in: 7–16; 2 1/2 in: 9–18; "
     "3 in: 12–20",
     "number screw_ultimate", memory, "Wood Handbook, chapter 8, from memory"},
    {"screw_thread", "Thread of a wood screw", "2/3 of its length (a British text: 0.6)",
     "number screw_thread", published, "trade reference (encyclopaedic)"},
    {"screw_gauge", "Diameter of an inch wood screw by its gauge n", "0.060 in + 0.013 in × n",
     "catalogue, number screw_ultimate", published, "ASME B18.6.1"},
    {"gravity_basis", "Specific gravity from one volume to another",
     "G_M = G_b / (1 − 0.265 a G_b), a = (30 − M) / 30", "withdrawal, lead holes, weights", memory,
     "Wood Handbook, chapter 4, from memory"},
    {"pull_test", "Pull on a drawer's handle", "50 lbf (222 N)",
     "number screw_pull; finding holding_weak", published,
     "Architectural Woodwork Standards, 1st ed., 2009"},
    {"pull_share", "Share of a pull that falls to one screw",
     "1/n + turning about the screws' middle, as of a stiff front on equal screws",
     "number screw_pull", practice, noSource},
    {"lead_hole_dense", "Pilot hole, ovendry specific gravity above 0.60", "0.90 × root diameter",
     "number pilot_hole; findings pilot_hole_missing, pilot_hole_wrong", published,
     "National Design Specification (NDS), lead holes for withdrawal"},
    {"lead_hole_medium", "Pilot hole, ovendry specific gravity above 0.50 up to 0.60",
     "0.70 × root diameter", "number pilot_hole; findings pilot_hole_missing, pilot_hole_wrong",
     published, "National Design Specification (NDS), lead holes for withdrawal"},
    {"lead_hole_light", "Pilot hole, ovendry specific gravity 0.50 or less",
     "none required; 0.70 × root diameter is advised", "number pilot_hole", published,
     "National Design Specification (NDS); advised by the older rule for softwoods"},
    {"lead_hole_older", "Pilot hole by the older rule",
     "hardwoods 0.90 × root diameter, softwoods 0.70 × root diameter", "finding pilot_hole_wrong",
     published, "NDS before 1962, Wood Handbook"},
    {"lead_hole_drill", "How far a pilot drill may be off its rule", "half of 1/64 in",
     "finding pilot_hole_wrong", practice, noSource},
    {"root_diameter", "Root diameter where the catalogue gives none", "2/3 of the shank",
     "number pilot_hole", published, "Wood Handbook: about two thirds for most sizes"},
    {"clearance_at_least_shank", "Clearance hole of a screw or bolt", "not less than its diameter",
     "findings clearance_hole_tight, bolt_hole_tight", published,
     "ISO 273 and ASME B18.2.8 give more in every class"},
    {"screw_edge", "Least distance of a screw to the front's edge, across the grain", "2.5 D",
     "finding screw_near_edge", memory, "NDS commentary, from memory"},
    {"screw_end", "Least distance of a screw to the front's end, along the grain",
     "5 D with a pilot hole, 10 D without", "finding screw_near_edge", memory,
     "NDS commentary, from memory"},
    {"screw_row", "Least spacing of screws in a row along the grain",
     "10 D with a pilot hole, 15 D without", "finding screws_crowded", memory,
     "NDS commentary, from memory"},
    {"screw_rows_apart", "Screws count as in one row where they are nearer across the grain than",
     "3 D with a pilot hole, 5 D without", "finding screws_crowded", memory,
     "NDS commentary, from memory"},
    {"bolt_engagement", "Least thread of a bolt in the handle", "1 × the bolt's diameter",
     "number bolt_engagement; finding engagement_thin", memory,
     "machine design practice, from memory"},
};

constexpr Stated weightRules[]{
    {"density", "Weight of wood at 12 % moisture", "G × 1000 kg/m³ × 1.12",
     "numbers front_weight, box_weight, case_weight", memory,
     "Wood Handbook, chapter 4, from memory"},
    {"load_household", "Load of a drawer, household", "15 lb/ft² (718 Pa) of the bottom, inside",
     "number contents_weight", published, "ANSI/KCMA A161.1, drawer load"},
    {"load_clothing", "Load of a drawer for clothing", "8.5 lb/ft³ of enclosed storage",
     "number contents_weight", memory,
     "87 FR 72598, superseded before it took effect; recalled for ASTM F2057-23"},
    {"load_school", "Load of a drawer in school and laboratory", "100 lb", "number contents_weight",
     practice, "school and laboratory casework practice, drawer cycling load"},
    {"runner_rating", "Load of the runners", "front + box + contents, at most the rating",
     "number runner_load; finding runner_overloaded", practice,
     "rating as in the catalogue; check the runner's own sheet"},
    {"storage_volume", "Enclosed storage of a drawer",
     "(bottom to lowest obstruction − 1/8 in) × inside width × inside depth",
     "number storage_volume", published, "16 CFR part 1261 (ASTM F2057-23)"},
    {"anchor_scope", "Clothing storage in the scope of the stability rule",
     "27 in (686 mm) tall, 30 lb (13.6 kg) and 3.2 ft³ (90.6 dm³) or more, all three",
     "finding anchor_case", published,
     "16 CFR part 1261 (ASTM F2057-23), for units made after 2023-09-01"},
    {"anchor_told", "When the caution to anchor a case is told",
     "27 in tall or more; or 30 lb and 3.2 ft³ or more of what is known", "finding anchor_case",
     practice, "common practice, no source: more cautious than the rule's scope"},
};

constexpr Stated frontRules[]{
    {"overlay_front", "Overlay front", "opening + overlay at each side",
     "numbers front_width, front_height", practice, noSource},
    {"fits_mixed", "A front with a flat back",
     "all sides in the opening or all on the frame, unless rabbeted", "finding fits_mixed",
     practice, noSource},
    {"profile_sections", "Edge profiles", "square, straight, quarter ellipses: see core/fronts",
     "edge thickness, field, tip cover", practice, "plain geometry"},
    {"optical_centre", "Optical centre of a handle", "1/20 of the height above the middle",
     "numbers handle_y", practice, noSource},
    {"two_handles", "Two handles on a wide front", "each at 25 % of the width from its side",
     "number handle_x", practice, noSource},
};

void add(std::vector<RuleRow>& rows, const Stated& rule) {
    rows.push_back({RuleKind::Equation,
                    "equation." + std::string(rule.id),
                    rule.rule,
                    rule.value,
                    rule.where,
                    {rule.kind, rule.source}});
}

} // namespace

void addEquations(std::vector<RuleRow>& rows) {
    for (const Stated& rule : frontRules)
        add(rows, rule);
    for (const Stated& rule : woodRules)
        add(rows, rule);
    for (const Stated& rule : holdingRules)
        add(rows, rule);
    for (const Stated& rule : weightRules)
        add(rows, rule);
}

} // namespace frontwright
