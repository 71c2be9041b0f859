#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

Source densitySource() {
    return sourceNamed(
        SourceKind::FromMemory,
        text("Forest Products Laboratory, Wood Handbook, chapter 4, from memory: density at 12 % "
             "moisture = specific gravity × 1000 kg/m³ × 1.12"));
}
Source storageSource() {
    return sourceNamed(
        SourceKind::Published,
        text("16 CFR part 1261 (ASTM F2057-23), volume of a drawer: height less 1/8 in × inside "
             "width × inside depth"));
}

std::string times(const Asked& asked, Length a, Length b, Length c) {
    const auto size = [&](Length length) { return asked.figures().plus(length).text(); };
    return size(a) + " × " + size(b) + " × " + size(c);
}

std::string perCubicMetre(const Asked& asked) {
    return decimal(densityAt12Percent(*asked.front().wood->gravity), 0) + " kg/m³";
}

Rule frontRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    return {text("width × height × thickness × density; the edge profile is left on"),
            times(asked, front.rect.width(), front.rect.height(), front.thickness) + " × " +
                perCubicMetre(asked),
            densitySource(),
            {InputPlace::Divisions, InputPlace::Thickness, InputPlace::Catalogue}};
}

Rule boxRule(const Asked& asked) {
    const BoxPlan& box = asked.front().box;
    return {
        text("two sides, two walls and the bottom × density, all as of the front's wood"),
        phrase("box %1, %2", times(asked, box.width, box.height, box.depth), perCubicMetre(asked)),
        densitySource(),
        {InputPlace::Box, InputPlace::Catalogue}};
}

Rule contentsRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const BoxSpec& spec = chosenBox(asked.project, front);
    const std::string result = shown(front.load.contents, asked.style);
    if (spec.load)
        return {text("as given"), result, makersDecision(), {InputPlace::Box}};
    switch (spec.purpose) {
    case DrawerPurpose::Household:
        return {text("15 lb for each square foot (718 Pa) of the bottom, inside"),
                result,
                sourceNamed(SourceKind::Published, text("ANSI/KCMA A161.1, drawer load")),
                {InputPlace::Box}};
    case DrawerPurpose::Clothing:
        return {text("8.5 lb for each cubic foot of enclosed storage"),
                result,
                sourceNamed(SourceKind::FromMemory,
                            text("87 FR 72598 (superseded); the same density recalled for "
                                 "ASTM F2057-23, from memory")),
                {InputPlace::Box}};
    case DrawerPurpose::School:
        return {text("100 lb"),
                result,
                sourceNamed(SourceKind::CommonPractice,
                            text("school and laboratory casework practice, drawer "
                                 "cycling load")),
                {InputPlace::Box}};
    case DrawerPurpose::Empty:
        break;
    }
    return {text("nothing is counted on"), result, makersDecision(), {InputPlace::Box}};
}

Rule runnerLoadRule(const Asked& asked) {
    const DrawerLoad& load = asked.front().load;
    if (load.otherFronts > Mass{})
        return {text("front + the other fronts on the box + box + contents"),
                shown(*load.front, asked.style) + " + " + shown(load.otherFronts, asked.style) +
                    " + " + shown(*load.box, asked.style) + " + " +
                    shown(load.contents, asked.style),
                commonPractice(),
                {InputPlace::Box, InputPlace::Runner, InputPlace::Divisions}};
    return {text("front + box + contents"),
            shown(*load.front, asked.style) + " + " + shown(*load.box, asked.style) + " + " +
                shown(load.contents, asked.style),
            commonPractice(),
            {InputPlace::Box, InputPlace::Runner}};
}

Source ratingSource() {
    return sourceNamed(SourceKind::CommonPractice,
                       text("rating as in the catalogue: check the runner's own sheet"));
}

Rule runnerRatingRule(const Asked& asked) {
    return {text("the catalogue's for the runner, a pair"),
            shown(*asked.front().load.rating, asked.style),
            ratingSource(),
            {InputPlace::Runner, InputPlace::Catalogue}};
}

Rule runnerSafetyRule(const Asked& asked) {
    const DrawerLoad& load = asked.front().load;
    return {text("the runners' rating / their load"),
            shown(*load.rating, asked.style) + " / " + shown(*load.onRunner(), asked.style),
            ratingSource(),
            {InputPlace::Runner, InputPlace::Box}};
}

Rule storageRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const BoxPlan& box = front.box;
    return {text("(opening's top − bottom's top − 1/8 in) × inside width × inside depth"),
            times(asked,
                  openingBehind(asked).top - box.origin.y - box.bottomTop - Length::inches(0, 8),
                  box.width - 2 * box.sideThickness, box.depth - 2 * box.wallThickness),
            storageSource(),
            {InputPlace::Box, InputPlace::Divisions}};
}

/// "3 × 17.2 lb + 24.1 lb", or where that becomes long how many there are. What is nothing is left
/// out.
template<class Amount>
Phrase sumOfDrawers(const Asked& asked, Amount DrawerLoad::*part) {
    std::vector<std::pair<std::string, int>> terms;
    int drawers = 0;
    for (const FrontPlan& front : asked.plan.fronts) {
        if (!(front.load.*part > Amount{}))
            continue;
        ++drawers;
        const std::string term = shown(front.load.*part, asked.style);
        const auto same = std::ranges::find(terms, term, &std::pair<std::string, int>::first);
        if (same != terms.end())
            ++same->second;
        else
            terms.emplace_back(term, 1);
    }
    constexpr std::size_t most = 6;
    if (terms.empty() || terms.size() > most)
        return phrase("drawers: %1", std::to_string(drawers));
    std::string sum;
    for (const auto& [term, times] : terms)
        sum +=
            (sum.empty() ? "" : " + ") + (times > 1 ? std::to_string(times) + " × " + term : term);
    return sum;
}

Phrase partsOfCase(const Asked& asked) {
    Mass fronts, boxes;
    for (const FrontPlan& front : asked.plan.fronts) {
        fronts += front.load.front.value_or(Mass{});
        boxes += front.load.box.value_or(Mass{});
    }
    const Mass frame = asked.plan.load.empty - fronts - boxes;
    return shown(fronts, asked.style) + " + " + shown(boxes, asked.style) + " + " +
           shown(frame, asked.style);
}

Rule caseRule(const Asked& asked) {
    const std::vector<InputPlace> inputs{InputPlace::Box, InputPlace::Frame};
    if (asked.quantity.kind == QuantityKind::CaseWeight)
        return {asked.project.casework.construction == Construction::FaceFrame
                    ? text("fronts + boxes + face frame; sides, back and top of the case are not "
                           "counted")
                    : text("fronts + boxes + panels, as of the fronts' wood; the back and a top "
                           "that lies on are not counted"),
                partsOfCase(asked), densitySource(), inputs};
    if (asked.quantity.kind == QuantityKind::CaseContents)
        return {text("sum of the contents"), sumOfDrawers(asked, &DrawerLoad::contents),
                commonPractice(), inputs};
    return {text("sum of the drawers' enclosed storage"), sumOfDrawers(asked, &DrawerLoad::storage),
            storageSource(), inputs};
}

} // namespace

Rule ruleOfWeight(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    if (kind == FrontWeight)
        return frontRule(asked);
    if (kind == BoxWeight)
        return boxRule(asked);
    if (kind == ContentsWeight)
        return contentsRule(asked);
    if (kind == RunnerLoad)
        return runnerLoadRule(asked);
    if (kind == RunnerRating)
        return runnerRatingRule(asked);
    if (kind == RunnerSafety)
        return runnerSafetyRule(asked);
    if (kind == StorageVolume)
        return storageRule(asked);
    return caseRule(asked);
}

} // namespace frontwright::deriving
