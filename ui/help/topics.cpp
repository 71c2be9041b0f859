#include "ui/help/topics.h"

#include "core/plan/kind_table.h"

#include <QVariant>
#include <QWidget>

namespace frontwright {

namespace {

constexpr const char* topicProperty = "helpTopic";

QString fromView(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

using Place = InputPlace;
constexpr auto decisions = std::to_array<ForKinds<InputPlace, const char*>>({
    {Place::CaseSize, Place::CaseSize, "case"},
    {Place::Frame, Place::Frame, "frame"},
    {Place::Divisions, Place::Divisions, "divisions"},
    {Place::MemberWidth, Place::MemberWidth, "member"},
    {Place::Fit, Place::Fit, "fit"},
    {Place::Thickness, Place::Thickness, "thickness"},
    {Place::Profile, Place::Profile, "profile"},
    {Place::Box, Place::Box, "box"},
    {Place::Runner, Place::Runner, "runner"},
    {Place::Mounting, Place::Mounting, "mounting"},
    {Place::Hardware, Place::Hardware, "hardware"},
    {Place::Limits, Place::Limits, "limits"},
    {Place::Catalogue, Place::Catalogue, "catalogue"},
    {Place::Stock, Place::Stock, "wood"},
    {Place::Air, Place::Air, "air"},
    {Place::Surroundings, Place::Surroundings, "surroundings"},
    {Place::SystemHoles, Place::SystemHoles, "system-holes"},
    {Place::Board, Place::Board, "board"},
});
static_assert(holdsEachOnce(decisions, Place::Board));

using enum QuantityKind;
constexpr auto numbers = std::to_array<ForKinds<QuantityKind, const char*>>({
    {CaseWidth, CaseHeight, "case-size"},
    {TotalWidth, TotalHeight, "total-size"},
    {MoistureWhenCut, MoistureWettest, "moisture"},
    {CaseWeight, CaseStorage, "weight"},
    {MemberWidth, MemberLength, "member"},
    {MemberReveal, MemberReveal, "reveal"},
    {SeasonReveal, SeasonReveal, "season"},
    {OpeningWidth, OpeningHeight, "opening"},
    {FrontWidth, FrontHeight, "front-size"},
    {FrontThickness, FrontThickness, "thickness"},
    {OverlayLeft, OverlayTop, "overlay"},
    {GapLeft, GapTop, "gap"},
    {ToSurroundLeft, ToSurroundTop, "to-surround"},
    {FrontStep, FrontStep, "front-step"},
    {SeasonWidth, SeasonGapTop, "season"},
    {EdgeThickness, EdgeThickness, "edge-thickness"},
    {FieldWidth, FieldHeight, "field"},
    {BoxWidth, BoxDepth, "box"},
    {BoxSetback, BoxSetback, "setback"},
    {BottomTop, BottomTop, "bottom-top"},
    {SideClearance, SideClearance, "side-clearance"},
    {RunnerLength, RunnerTop, "runner"},
    {BackNotchWidth, ClearZoneHeight, "notches"},
    {KickerHeight, KickerHeight, "kicker"},
    {RunnerFurring, RunnerFurring, "runner-furring"},
    {BoxSwelling, BoxSwelling, "box-swelling"},
    {ScrewLength, ScrewGreatestLength, "screw-length"},
    {ScrewPenetration, ScrewPenetration, "penetration"},
    {ScrewTipCover, ScrewTipCover, "tip-cover"},
    {HoleX, HoleY, "hole-place"},
    {LeastHoleHeight, LeastHoleHeight, "least-hole-height"},
    {FixedRow, RowDrill, "screw-rows"},
    {ClearanceHole, PilotHole, "drills"},
    {ScrewThread, PullDesignSafety, "holding"},
    {ScrewToEdge, ScrewToEnd, "screw-distances"},
    {ScrewUltimate, ScrewPull, "holding"},
    {HandleX, HandleY, "handle-place"},
    {BoltGrip, BoltGrip, "grip"},
    {BoltLeastLength, BoltLength, "bolt-length"},
    {Counterbore, Counterbore, "counterbore"},
    {WoodUnderHead, WoodUnderHead, "wood-under-head"},
    {BoltEngagement, BoltEngagement, "engagement"},
    {HandleCentres, HandleCentres, "handle-centres"},
    {FittingX, FittingY, "fitting-place"},
    {FittingScrewLength, FittingTipCover, "fitting-screws"},
    {MortiseWood, MortiseWood, "mortise"},
    {FrontWeight, ContentsWeight, "weight"},
    {RunnerLoad, RunnerSafety, "runner-load"},
    {StorageVolume, StorageVolume, "weight"},
    {SpacerWidth, SpacerWidth, "spacer"},
    {FillerWidth, FillerLeastThickness, "filler"},
    {StopFromFarEdge, StopFromOpening, "stop"},
    {SpaceWidth, SpaceHeight, "opening"},
});
static_assert(holdsEachOnce(numbers, lastQuantityKind));

} // namespace

HelpTopic topicOf(InputPlace place) {
    return QStringLiteral("decisions#") + QLatin1String(valueFor(decisions, place));
}

HelpTopic topicOf(FindingCode code) {
    return QStringLiteral("findings#") +
           fromView(key(code)).replace(QLatin1Char('_'), QLatin1Char('-'));
}

HelpTopic topicOf(QuantityKind kind) {
    return QStringLiteral("numbers#") + QLatin1String(valueFor(numbers, kind));
}

HelpTopic topicOf(Term term) {
    return QStringLiteral("glossary#") + fromView(key(term));
}

HelpTopic topicOf(const Selection& selection) {
    if (selection.mountingHole)
        return topicOf(QuantityKind::HoleX);
    if (selection.handleHole)
        return topicOf(QuantityKind::HandleX);
    if (selection.member)
        return topicOf(InputPlace::MemberWidth);
    if (!selection.openings.empty())
        return topicOf(Term::Front);
    return QStringLiteral("window#elevation");
}

HelpTopic firstTopic() {
    return QStringLiteral("start");
}

void setHelpTopic(QWidget& widget, const HelpTopic& topic) {
    widget.setProperty(topicProperty, topic);
}

HelpTopic helpTopicAt(const QWidget* widget) {
    for (const QWidget* at = widget; at; at = at->parentWidget()) {
        const QString topic = at->property(topicProperty).toString();
        if (!topic.isEmpty())
            return topic;
    }
    return firstTopic();
}

} // namespace frontwright
