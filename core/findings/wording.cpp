#include "core/findings/wording.h"

#include "core/geometry/side_names.h"
#include "core/lengths/format.h"

#include <array>

namespace frontwright {

using namespace wording;

namespace {

std::string_view wordsFor(Severity severity) {
    switch (severity) {
    case Severity::Ruins:
        return "Would ruin a part";
    case Severity::WontWork:
        return "Will not work";
    case Severity::OutsidePractice:
        return "Outside good practice";
    case Severity::ToKnow:
        break;
    }
    return "To know";
}

/// "Front B3, screw hole 2", "Fronts B2 and B3", "The case"
std::string placeOf(const Told& told) {
    const Whereabouts& where = told.finding.where;
    if (told.front == nullptr)
        return "The case";
    const std::string front = label(told.project, *told.front);
    if (const FrontPlan* other = where.other ? told.plan.frontOf(*where.other) : nullptr)
        return "Fronts " + front + " and " + label(told.project, *other);
    std::string place = "Front " + front;
    if (where.mountingHole)
        return place + ", screw hole " + std::to_string(*where.mountingHole + 1);
    if (where.handleHole)
        return place + ", handle hole " + std::to_string(*where.handleHole + 1);
    return where.side ? place + ", " + std::string(nameOf(*where.side)) : place;
}

/// Of a finding about an earlier state of the case.
Words gone() {
    return {"The front that this was about is no longer in the case.", {}, makersDecision()};
}

struct Worded {
    FindingCode code;
    Words (*words)(const Told&);
};

/// In the order of the enumerators.
constexpr auto allWords = std::to_array<Worded>({
    {FindingCode::ScrewThroughShowFace, screwThroughShowFace},
    {FindingCode::TipCoverThin, tipCoverThin},
    {FindingCode::PenetrationShort, penetrationShort},
    {FindingCode::NoScrewFits, noScrewFits},
    {FindingCode::HoleInBottom, holeInBottom},
    {FindingCode::RecessToolBlocked, recessToolBlocked},
    {FindingCode::HoleAtBoxSide, holeAtBoxSide},
    {FindingCode::HoleAtTopEdge, holeAtTopEdge},
    {FindingCode::HoleAtHardware, holeAtHardware},
    {FindingCode::HoleOffFront, holeOffFront},
    {FindingCode::HoleAtRunner, holeAtRunner},
    {FindingCode::WallThinUnderHead, wallThinUnderHead},
    {FindingCode::SlotForMovement, slotForMovement},
    {FindingCode::BoltTooShort, boltTooShort},
    {FindingCode::BoltBottomsOut, boltBottomsOut},
    {FindingCode::NoBoltFits, noBoltFits},
    {FindingCode::CounterboreTooDeep, counterboreTooDeep},
    {FindingCode::BackplateOffField, backplateOffField},
    {FindingCode::HandleOffFront, handleOffFront},
    {FindingCode::AccessHoleOffWall, accessHoleOffWall},
    {FindingCode::HandlesCollide, handlesCollide},
    {FindingCode::FrontsCollide, frontsCollide},
    {FindingCode::GapTight, gapTight},
    {FindingCode::GapsUneven, gapsUneven},
    {FindingCode::FrontOffCase, frontOffCase},
    {FindingCode::OverlayMissing, overlayMissing},
    {FindingCode::GapCloses, gapCloses},
    {FindingCode::GapTightens, gapTightens},
    {FindingCode::InsetBinds, insetBinds},
    {FindingCode::OverlayLost, overlayLost},
    {FindingCode::GapsGoUneven, gapsGoUneven},
    {FindingCode::ClearanceSmall, clearanceSmall},
    {FindingCode::MoistureBeyondRange, moistureBeyondRange},
    {FindingCode::WoodUnknown, woodUnknown},
    {FindingCode::FieldEmpty, fieldEmpty},
    {FindingCode::ProfileTooDeep, profileTooDeep},
    {FindingCode::BoxNoRoom, boxNoRoom},
    {FindingCode::BoxTooTall, boxTooTall},
    {FindingCode::BoxTooDeep, boxTooDeep},
    {FindingCode::BottomOutOfWall, bottomOutOfWall},
    {FindingCode::AnchorCase, anchorCase},
    {FindingCode::HoldingWeak, holdingWeak},
    {FindingCode::ScrewNearEdge, screwNearEdge},
    {FindingCode::ScrewsCrowded, screwsCrowded},
    {FindingCode::PilotHoleMissing, pilotHoleMissing},
    {FindingCode::PilotHoleWrong, pilotHoleWrong},
    {FindingCode::ClearanceHoleTight, clearanceHoleTight},
    {FindingCode::BoltHoleTight, boltHoleTight},
    {FindingCode::EngagementThin, engagementThin},
    {FindingCode::RunnerOverloaded, runnerOverloaded},
    {FindingCode::FitsMixed, fitsMixed},
});

constexpr bool isInOrder() {
    for (std::size_t i = 0; i < allWords.size(); ++i)
        if (static_cast<std::size_t>(allWords[i].code) != i)
            return false;
    return true;
}
static_assert(isInOrder());
static_assert(allWords.back().code == FindingCode::FitsMixed);

} // namespace

namespace wording {

namespace {

const std::string mark = "≈ ";

} // namespace

std::string Told::say(Length length) const {
    const LengthStyle fine{style.unit, 64, style.mark};
    const std::string text = shown(length.magnitude(), fine);
    if (!length.isZero() && text == mark + shown(Length{}, fine))
        return style.unit == Unit::Inch ? "less than 1/64 in" : "less than 0.1 mm";
    return length < Length{} ? "−" + text : text;
}

std::string Told::sayAbout(std::size_t i) const {
    const std::string text = say(i);
    return text.starts_with(mark) ? text.substr(mark.size()) : text;
}

std::string Told::side() const {
    return finding.where.side ? std::string(nameOf(*finding.where.side)) : std::string();
}

} // namespace wording

FindingText describe(const Finding& finding, const Project& project, const Plan& plan,
                     LengthStyle style) {
    const FrontPlan* front = finding.where.opening ? plan.frontOf(*finding.where.opening) : nullptr;
    const Told told{finding, project, plan, front, style};
    const bool isGone = finding.where.opening && front == nullptr;
    Words words = isGone ? gone() : allWords[static_cast<std::size_t>(finding.code)].words(told);
    return {std::string(wordsFor(finding.severity)), placeOf(told), std::move(words.sentence),
            withApproximateResults(std::move(words.reason)), std::move(words.source)};
}

} // namespace frontwright
