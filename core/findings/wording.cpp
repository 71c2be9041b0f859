#include "core/findings/wording.h"

#include "core/amounts/amounts.h"
#include "core/geometry/side_names.h"
#include "core/lengths/format.h"
#include "core/plan/boards.h"
#include "core/plan/opening_words.h"

#include <array>

namespace frontwright {

using namespace wording;

namespace {

Text wordsFor(Severity severity) {
    switch (severity) {
    case Severity::Ruins:
        return text("Would ruin a part");
    case Severity::WontWork:
        return text("Will not work");
    case Severity::OutsidePractice:
        return text("Outside good practice");
    case Severity::ToKnow:
        break;
    }
    return text("To know");
}

bool isGone(const Told& told) {
    return told.finding.where.opening && told.front == nullptr && told.board == nullptr;
}

Phrase placeOf(const Told& told) {
    const Whereabouts& where = told.finding.where;
    if (told.board != nullptr)
        return titleOf(told.plan, *told.board);
    if (told.front == nullptr)
        return text("The case");
    const std::string front = label(told.project, *told.front);
    if (const FrontPlan* other = where.other ? told.plan.frontOf(*where.other) : nullptr)
        return phrase("Fronts %1 and %2", front, label(told.project, *other));
    if (where.mountingHole)
        return phrase("Front %1, screw hole %2", front, std::to_string(*where.mountingHole + 1));
    if (where.fitting)
        return phrase("Front %1, fitting %2", front, std::to_string(*where.fitting + 1));
    if (where.handleHole)
        return phrase("Front %1, handle hole %2", front, std::to_string(*where.handleHole + 1));
    return where.side ? phrase("Front %1, %2", front, nameOf(*where.side))
                      : nameOf(told.front->use, front);
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
    {FindingCode::FrontMissesWall, frontMissesWall},
    {FindingCode::FixedFrontNoRoom, fixedFrontNoRoom},
    {FindingCode::FixedFrontNoFrame, fixedFrontNoFrame},
    {FindingCode::HoleOffMember, holeOffMember},
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
    {FindingCode::FrontAtWall, frontAtWall},
    {FindingCode::FrontAtNeighbour, frontAtNeighbour},
    {FindingCode::FrontAtTrim, frontAtTrim},
    {FindingCode::StepOffPitch, stepOffPitch},
    {FindingCode::FillerNoThickness, fillerNoThickness},
    {FindingCode::FillerBends, fillerBends},
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
    {FindingCode::ScrewRowsNear, screwRowsNear},
    {FindingCode::PilotHoleMissing, pilotHoleMissing},
    {FindingCode::PilotHoleWrong, pilotHoleWrong},
    {FindingCode::ClearanceHoleTight, clearanceHoleTight},
    {FindingCode::HeadBearsLittle, headBearsLittle},
    {FindingCode::BoltHoleTight, boltHoleTight},
    {FindingCode::EngagementThin, engagementThin},
    {FindingCode::RunnerOverloaded, runnerOverloaded},
    {FindingCode::RunnerTooLong, runnerTooLong},
    {FindingCode::NoRunnerFits, noRunnerFits},
    {FindingCode::BoxOffRunner, boxOffRunner},
    {FindingCode::BoxLowForRunner, boxLowForRunner},
    {FindingCode::BoxNarrowForRunner, boxNarrowForRunner},
    {FindingCode::BottomOnRunner, bottomOnRunner},
    {FindingCode::RunnerOutOfOpening, runnerOutOfOpening},
    {FindingCode::SideClearanceOff, sideClearanceOff},
    {FindingCode::BoxSticks, boxSticks},
    {FindingCode::FitsMixed, fitsMixed},
    {FindingCode::FittingOffField, fittingOffField},
    {FindingCode::FittingOffFront, fittingOffFront},
    {FindingCode::FittingScrewThrough, fittingScrewThrough},
    {FindingCode::FittingScrewThin, fittingScrewThin},
    {FindingCode::FittingScrewShort, fittingScrewShort},
    {FindingCode::NoFittingScrewFits, noFittingScrewFits},
    {FindingCode::MortiseTooDeep, mortiseTooDeep},
    {FindingCode::FittingsCollide, fittingsCollide},
    {FindingCode::HoleAtFitting, holeAtFitting},
    {FindingCode::CentresMixed, centresMixed},
    {FindingCode::OfBoard, ofBoard},
});

constexpr bool isInOrder() {
    for (std::size_t i = 0; i < allWords.size(); ++i)
        if (static_cast<std::size_t>(allWords[i].code) != i)
            return false;
    return true;
}
static_assert(isInOrder());
static_assert(allWords.back().code == lastFindingCode);

} // namespace

namespace wording {

Words gone() {
    return {text("The front that this was about is no longer in the case."), {}, makersDecision()};
}

namespace {

const std::string mark = "≈ ";

/// Both figures of a negative result take the sign.
std::string resultOf(Length length, LengthStyle style) {
    std::string words = shownAsResult(length.magnitude(), style);
    if (length >= Length{})
        return words;
    if (const auto at = words.find(mark); at != std::string::npos)
        words.insert(at + mark.size(), "−");
    return "−" + words;
}

LengthStyle finest(LengthStyle style) {
    return {style.unit, 64, style.mark};
}

} // namespace

std::optional<std::string> Told::shownFinely(Length length, Rounding rounding) const {
    const LengthStyle fine = finest(style);
    const std::string figure = shown(length.magnitude(), fine, rounding);
    if (!length.isZero() && figure == mark + shown(Length{}, fine))
        return std::nullopt;
    return length < Length{} ? "−" + figure : figure;
}

Phrase Told::say(Length length, Rounding rounding) const {
    if (in == In::Formula) {
        const std::string figure = shownPrecisely(length.magnitude(), finest(style));
        return length < Length{} ? "−" + figure : figure;
    }
    if (auto figure = shownFinely(length, rounding))
        return *std::move(figure);
    return phrase("less than %1", style.unit == Unit::Inch ? "1/64 in" : number(0.1, 1) + " mm");
}

Phrase Told::sayAbout(std::size_t i) const {
    const auto figured = shownFinely(figure(i));
    return figured && figured->starts_with(mark) ? Phrase(figured->substr(mark.size())) : say(i);
}

Phrase Told::equals(Length length) const {
    if (in == In::Formula)
        return phrase("= %1", resultOf(length, finest(style)));
    const auto figured = shownFinely(length);
    return figured && figured->starts_with(mark) ? Phrase(*figured) : phrase("= %1", say(length));
}

Phrase Told::bySide(const PerSide<Text>& patterns, std::vector<Phrase> parts) const {
    return {patterns[side()], std::move(parts)};
}

std::string Told::number(double value, int decimals) const {
    return withMark(decimal(value, decimals), style.mark);
}

} // namespace wording

FindingText describe(const Finding& finding, const Project& project, const Plan& plan,
                     LengthStyle style) {
    const FrontPlan* front = finding.where.opening ? plan.frontOf(*finding.where.opening) : nullptr;
    const PlannedBoard* board =
        finding.where.opening && finding.fault ? plan.boardOf(*finding.where.opening) : nullptr;
    Told told{finding, project, plan, front, style, board};
    const auto put = [&] {
        return isGone(told) ? gone() : allWords[static_cast<std::size_t>(finding.code)].words(told);
    };
    Words words = put();
    told.in = Told::In::Formula;
    return {wordsFor(finding.severity), placeOf(told), std::move(words.sentence), put().reason,
            std::move(words.source)};
}

} // namespace frontwright
