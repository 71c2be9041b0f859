#include "core/rules/rule_parts.h"

namespace frontwright {

namespace {

struct Stated {
    const char* id;
    Text rule;
    Text value;
    Text where;
    SourceKind kind;
    Text source;
};

constexpr auto published = SourceKind::Published;
constexpr auto practice = SourceKind::CommonPractice;
constexpr auto memory = SourceKind::FromMemory;
constexpr Text noSource = text("common practice, no source");

constexpr Stated woodRules[]{
    {"equilibrium_moisture",
     text("Moisture content of wood in air of temperature T and humidity h"),
     text("M = (1800 / W) [K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² "
          "h²)]; W, "
          "K, K1, K2 by T, a set each for °C and °F; about 0.1 % at best, species differ"),
     text("moisture of the wood; all that changes over the season"), published,
     text("Forest Products Laboratory, Wood Handbook, equation 4-5")},
    {"movement_linear", text("Change of size across the grain"),
     text("ΔD = D C (M2 − M1), for moisture of 6 to 14 %; C tangential (flat-sawn) or radial "
          "(quarter-sawn)"),
     text("sizes, overlays and gaps over the season; movement at the screws"), published,
     text("Forest Products Laboratory, Wood Handbook, chapter 13")},
    {"movement_wide", text("Change of size beyond 6 to 14 % moisture"),
     text("ΔD = D (M2 − M1) / (100 FSP / S − FSP + M1), FSP 30 %, S total shrinkage in %"),
     text("moisture outside 6 to 14 %"), published,
     text("Forest Products Laboratory, Wood Handbook, chapter 13")},
    {"coefficient_of_shrinkage", text("Coefficient where only the total shrinkage is known"),
     text("C = 1 / (100 FSP / S − FSP + 10)"), text("species of the maker's own"), published,
     text("Forest Products Laboratory, Wood Handbook, table 13-5's own rule")},
    {"rift", text("Coefficient of a rift-sawn board"), text("the mean of tangential and radial"),
     text("sizes, overlays and gaps over the season"), practice, noSource},
    {"fixed_row", text("Which row of screws holds the front"),
     text("the lowest; of upright grain the column nearest the middle"),
     text("the row of screws that holds the front"), practice, noSource},
};

constexpr Stated holdingRules[]{
    {"screw_withdrawal_ultimate",
     text("Withdrawal of a wood screw from side grain, average ultimate"),
     text("15 700 G² D L (lb, in) = 108.25 G² D L (N, mm); G on volume at 12 % moisture"),
     text("what screws hold at most; whether they stand the pull test"), published,
     text("Forest Products Laboratory, Wood Handbook, chapter 8")},
    {"screw_withdrawal_design", text("Withdrawal of a wood screw from side grain, design value"),
     text("2850 G² D L (lb, in) = 19.65 G² D L (N, mm); G on ovendry volume; about 1/5 of the "
          "ultimate"),
     text("what screws hold by design values; whether they stand the pull test"), published,
     text("National Design Specification (NDS)")},
    {"filler_bend", text("Bend of a filler strip between two fronts on one box"),
     text("F l³ / (4 E w t³); F 10 lbf (44.5 N) in the middle of l between the outermost screws "
          "beside the gap, E 10 000 N/mm²; the wall behind it not counted"),
     text("bend and least thickness of a filler strip; whether it bends too much"), memory,
     text("beam on two supports with a load in its middle; stiffness of wood along the grain "
          "from the Wood Handbook, chapter 5, from memory; the hand's push is common practice")},
    {"screw_tested_range", text("Gauges and lengths for which the ultimate equation was tested"),
     text("1/2 in: 1–6; 3/4 in: 2–11; 1 in: 3–12; 1 1/2 in: 5–14; 2 in: 7–16; 2 1/2 in: 9–18; "
          "3 in: 12–20"),
     text("what screws hold at most"), memory, text("Wood Handbook, chapter 8, from memory")},
    {"screw_thread", text("Thread of a wood screw"),
     text("2/3 of its length (a British text: 0.6)"), text("thread in the front"), published,
     text("trade reference (encyclopaedic)")},
    {"screw_gauge", text("Diameter of an inch wood screw by its gauge n"),
     text("0.060 in + 0.013 in × n"), text("the catalogue; what screws hold at most"), published,
     text("ASME B18.6.1")},
    {"gravity_basis", text("Specific gravity from one volume to another"),
     text("G_M = G_b / (1 − 0.265 a G_b), a = (30 − M) / 30"),
     text("withdrawal, lead holes, weights"), memory,
     text("Wood Handbook, chapter 4, from memory")},
    {"pull_test", text("Pull on a drawer's handle"), text("50 lbf (222 N)"),
     text("each screw's share of the pull test; whether the screws stand it"), published,
     text("Architectural Woodwork Standards, 1st ed., 2009")},
    {"screw_rows_apart_tall",
     text("Least distance of the rows of screws that hold a tall solid front"),
     text("a quarter of its height, from 8 in (203 mm) high, grain from left to right"),
     text("rows of screws too near each other"), practice, noSource},
    {"pull_share", text("Share of a pull that falls to one screw"),
     text("1/n + turning about the screws' middle, as of a stiff front on equal screws"),
     text("each screw's share of the pull test"), practice, noSource},
    {"lead_hole_dense", text("Pilot hole, ovendry specific gravity above 0.60"),
     text("0.90 × root diameter"), text("pilot holes: whether one is needed, and of what size"),
     published, text("National Design Specification (NDS), lead holes for withdrawal")},
    {"lead_hole_medium", text("Pilot hole, ovendry specific gravity above 0.50 up to 0.60"),
     text("0.70 × root diameter"), text("pilot holes: whether one is needed, and of what size"),
     published, text("National Design Specification (NDS), lead holes for withdrawal")},
    {"lead_hole_light", text("Pilot hole, ovendry specific gravity 0.50 or less"),
     text("none required; 0.70 × root diameter is advised"), text("pilot holes"), published,
     text("National Design Specification (NDS); advised by the older rule for softwoods")},
    {"lead_hole_older", text("Pilot hole by the older rule"),
     text("hardwoods 0.90 × root diameter, softwoods 0.70 × root diameter"),
     text("pilot holes that are too large or too small"), published,
     text("NDS before 1962, Wood Handbook")},
    {"lead_hole_drill", text("How far a pilot drill may be off its rule"), text("half of 1/64 in"),
     text("pilot holes that are too large or too small"), practice, noSource},
    {"root_diameter", text("Root diameter where the catalogue gives none"),
     text("2/3 of the shank"), text("pilot holes"), published,
     text("Wood Handbook: about two thirds for most sizes")},
    {"clearance_at_least_shank", text("Clearance hole of a screw or bolt"),
     text("not less than its diameter"), text("holes that a screw or a bolt does not go through"),
     published, text("ISO 273 and ASME B18.2.8 give more in every class")},
    {"screw_edge", text("Least distance of a screw to the front's edge, across the grain"),
     text("2.5 D"), text("screws near the front's edges and ends"), memory,
     text("NDS commentary, from memory")},
    {"screw_end", text("Least distance of a screw to the front's end, along the grain"),
     text("5 D with a pilot hole, 10 D without"), text("screws near the front's edges and ends"),
     memory, text("NDS commentary, from memory")},
    {"screw_row", text("Least spacing of screws in a row along the grain"),
     text("10 D with a pilot hole, 15 D without"), text("screws near each other"), memory,
     text("NDS commentary, from memory")},
    {"screw_rows_apart",
     text("Screws count as in one row where they are nearer across the grain than"),
     text("3 D with a pilot hole, 5 D without"), text("screws near each other"), memory,
     text("NDS commentary, from memory")},
    {"bolt_engagement", text("Least thread of a bolt in the handle"),
     text("1 × the bolt's diameter"), text("thread in the handle"), memory,
     text("machine design practice, from memory")},
};

constexpr Stated weightRules[]{
    {"density", text("Weight of wood at 12 % moisture"), text("G × 1000 kg/m³ × 1.12"),
     text("weights of front, box and case"), memory, text("Wood Handbook, chapter 4, from memory")},
    {"load_household", text("Load of a drawer, household"),
     text("15 lb/ft² (718 Pa) of the bottom, inside"), text("weight of what a drawer holds"),
     published, text("ANSI/KCMA A161.1, drawer load")},
    {"load_clothing", text("Load of a drawer for clothing"), text("8.5 lb/ft³ of enclosed storage"),
     text("weight of what a drawer holds"), memory,
     text("87 FR 72598, superseded before it took effect; recalled for ASTM F2057-23")},
    {"load_school", text("Load of a drawer in school and laboratory"), text("100 lb"),
     text("weight of what a drawer holds"), practice,
     text("school and laboratory casework practice, drawer cycling load")},
    {"runner_rating", text("Load of the runners"),
     text("front + box + contents, at most the rating"),
     text("load on the runners, beside their rating"), practice,
     text("rating as in the catalogue; check the runner's own sheet")},
    {"storage_volume", text("Enclosed storage of a drawer"),
     text("(bottom to lowest obstruction − 1/8 in) × inside width × inside depth"),
     text("enclosed storage"), published, text("16 CFR part 1261 (ASTM F2057-23)")},
    {"anchor_scope", text("Clothing storage in the scope of the stability rule"),
     text("27 in (686 mm) tall, 30 lb (13.6 kg) and 3.2 ft³ (90.6 dm³) or more, all three"),
     text("the caution to anchor the case"), published,
     text("16 CFR part 1261 (ASTM F2057-23), for units made after 2023-09-01")},
    {"anchor_told", text("When the caution to anchor a case is told"),
     text("27 in tall or more; or 30 lb and 3.2 ft³ or more of what is known"),
     text("the caution to anchor the case"), practice,
     text("common practice, no source: more cautious than the rule's scope")},
};

constexpr Text sheetOfRunner = text("common practice, no source; check the runner's own sheet");

constexpr Stated runnerRules[]{
    {"runner_length", text("Length of a runner"),
     text("the longest stocked one up to frame + case inside − setback, and up to the box where "
          "its depth is given; wooden ones are cut to the case"),
     text("length of a runner; whether one fits the case and the box"), practice, sheetOfRunner},
    {"runner_depth", text("Depth of a box on under-mounted runners"),
     text("the runner's length: hooks hold the box's back"),
     text("whether the box's back is where the runner's hooks are"), practice, sheetOfRunner},
    {"runner_sides", text("Side clearance beside sides of another thickness"),
     text("the kind's side clearance + sides that it is for − sides"),
     text("whether the box leaves its runners their side clearance"), practice, sheetOfRunner},
    {"runner_clear_zone", text("Clear zone of a runner in the box wall"),
     text("no screw within the zone + the radius of the recess tool"),
     text("where screws are allowed; holes that meet a runner"), practice, sheetOfRunner},
    {"runner_bottom", text("Bottom over a runner"),
     text("its underside no lower than the runner's top and the notches"),
     text("whether the bottom lies in a runner's way"), practice, sheetOfRunner},
    {"kicker", text("Kicker over a wooden drawer"),
     text("underside = clearance below + box + play, above the opening's lower edge"),
     text("height of the kicker"), practice, noSource},
    {"box_swelling", text("A box that sticks in damp air"),
     text("box height × change of its sides up to the wettest air, flat-sawn, is less than the "
          "play above"),
     text("what a box gains in height; whether it sticks in damp air"), published,
     text("Forest Products Laboratory, Wood Handbook, chapter 13")},
};

constexpr Stated boardRules[]{
    {"board_jams", text("Length at which a pull-out board jams"),
     text("2 × friction × distance of the pull from its middle; friction 0.5"),
     text("whether a board jams; how far out it is safe"), memory,
     text("statics; friction of dry wood 0.5, the upper end of 0.3 to 0.5: Wood Handbook, 1999, "
          "chapter 4, from memory")},
    {"board_reserve", text("What a board is guided over at least when it is out"),
     text("5/4 × the length at which it jams"), text("how far out a board is safe"), practice,
     noSource},
    {"board_droop", text("How far a board's front edge may sink"),
     text("1/4 in (6.35 mm) by play in height × (pull-out + frame) / lever"),
     text("how far out a board is safe"), practice, noSource},
    {"board_furring", text("Furring that keeper strips are screwed down into"),
     text("at least 2 × 2.5 D thick"), text("whether the screws may split the furring"), memory,
     text("NDS commentary, from memory")},
};

constexpr Stated frontRules[]{
    {"overlay_front", text("Overlay front"), text("opening + overlay at each side"),
     text("width and height of a front"), practice, noSource},
    {"fits_mixed", text("A front with a flat back"),
     text("all sides in the opening or all on the frame, unless rabbeted"),
     text("fronts both in the opening and on the frame"), practice, noSource},
    {"profile_sections", text("Edge profiles"),
     text("square, straight, quarter ellipses: see core/fronts"),
     text("edge thickness, field, tip cover"), practice, text("plain geometry")},
    {"optical_centre", text("Optical centre of a handle"),
     text("1/20 of the height above the middle"), text("height of handles"), practice, noSource},
    {"two_handles", text("Two handles on a wide front"),
     text("each at 25 % of the width from its side"), text("place of handles across the front"),
     practice, noSource},
};

void add(std::vector<RuleRow>& rows, const Stated& rule) {
    rows.push_back({RuleKind::Equation,
                    "equation." + std::string(rule.id),
                    rule.rule,
                    rule.value,
                    rule.where,
                    {rule.kind, std::string(rule.source.english)}});
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
    for (const Stated& rule : runnerRules)
        add(rows, rule);
    for (const Stated& rule : boardRules)
        add(rows, rule);
}

} // namespace frontwright
