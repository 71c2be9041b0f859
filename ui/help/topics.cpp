#include "ui/help/topics.h"

#include <QVariant>
#include <QWidget>

namespace frontwright {

namespace {

constexpr const char* topicProperty = "helpTopic";

QString fromView(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

const char* anchorOf(InputPlace place) {
    switch (place) {
    case InputPlace::CaseSize:
        return "case";
    case InputPlace::Frame:
        return "frame";
    case InputPlace::Divisions:
        return "divisions";
    case InputPlace::MemberWidth:
        return "member";
    case InputPlace::Fit:
        return "fit";
    case InputPlace::Thickness:
        return "thickness";
    case InputPlace::Profile:
        return "profile";
    case InputPlace::Box:
        return "box";
    case InputPlace::Runner:
        return "runner";
    case InputPlace::Mounting:
        return "mounting";
    case InputPlace::Hardware:
        return "hardware";
    case InputPlace::Stock:
        return "wood";
    case InputPlace::Air:
        return "air";
    case InputPlace::Limits:
        return "limits";
    case InputPlace::Catalogue:
        break;
    }
    return "catalogue";
}

const char* anchorOf(QuantityKind kind) {
    switch (kind) {
    case QuantityKind::CaseWidth:
    case QuantityKind::CaseHeight:
        return "case-size";
    case QuantityKind::MemberWidth:
    case QuantityKind::MemberLength:
        return "member";
    case QuantityKind::MemberReveal:
        return "reveal";
    case QuantityKind::OpeningWidth:
    case QuantityKind::OpeningHeight:
        return "opening";
    case QuantityKind::FrontWidth:
    case QuantityKind::FrontHeight:
        return "front-size";
    case QuantityKind::FrontThickness:
        return "thickness";
    case QuantityKind::OverlayLeft:
    case QuantityKind::OverlayRight:
    case QuantityKind::OverlayBottom:
    case QuantityKind::OverlayTop:
        return "overlay";
    case QuantityKind::GapLeft:
    case QuantityKind::GapRight:
    case QuantityKind::GapBottom:
    case QuantityKind::GapTop:
        return "gap";
    case QuantityKind::EdgeThickness:
        return "edge-thickness";
    case QuantityKind::FieldWidth:
    case QuantityKind::FieldHeight:
        return "field";
    case QuantityKind::BoxWidth:
    case QuantityKind::BoxHeight:
    case QuantityKind::BoxDepth:
        return "box";
    case QuantityKind::BoxSetback:
        return "setback";
    case QuantityKind::BottomTop:
        return "bottom-top";
    case QuantityKind::ScrewLength:
    case QuantityKind::ScrewLeastLength:
    case QuantityKind::ScrewGreatestLength:
        return "screw-length";
    case QuantityKind::ScrewPenetration:
        return "penetration";
    case QuantityKind::ScrewTipCover:
        return "tip-cover";
    case QuantityKind::HoleX:
    case QuantityKind::HoleY:
        return "hole-place";
    case QuantityKind::LeastHoleHeight:
        return "least-hole-height";
    case QuantityKind::HandleX:
    case QuantityKind::HandleY:
        return "handle-place";
    case QuantityKind::BoltGrip:
        return "grip";
    case QuantityKind::BoltLeastLength:
    case QuantityKind::BoltGreatestLength:
    case QuantityKind::BoltLength:
        return "bolt-length";
    case QuantityKind::Counterbore:
        return "counterbore";
    case QuantityKind::WoodUnderHead:
        return "wood-under-head";
    case QuantityKind::MoistureWhenCut:
    case QuantityKind::MoistureDriest:
    case QuantityKind::MoistureWettest:
        return "moisture";
    case QuantityKind::SeasonReveal:
    case QuantityKind::SeasonWidth:
    case QuantityKind::SeasonHeight:
    case QuantityKind::SeasonOverlayLeft:
    case QuantityKind::SeasonOverlayRight:
    case QuantityKind::SeasonOverlayBottom:
    case QuantityKind::SeasonOverlayTop:
    case QuantityKind::SeasonGapLeft:
    case QuantityKind::SeasonGapRight:
    case QuantityKind::SeasonGapBottom:
    case QuantityKind::SeasonGapTop:
        return "season";
    case QuantityKind::FixedRow:
    case QuantityKind::RowMovement:
    case QuantityKind::RowHole:
    case QuantityKind::RowDrill:
        return "screw-rows";
    case QuantityKind::ClearanceHole:
    case QuantityKind::PilotHole:
        return "drills";
    case QuantityKind::ScrewThread:
    case QuantityKind::ScrewUltimate:
    case QuantityKind::ScrewDesign:
    case QuantityKind::ScrewPull:
    case QuantityKind::PullSafety:
    case QuantityKind::PullDesignSafety:
        return "holding";
    case QuantityKind::ScrewToEdge:
    case QuantityKind::ScrewToEnd:
        return "screw-distances";
    case QuantityKind::BoltEngagement:
        return "engagement";
    case QuantityKind::CaseWeight:
    case QuantityKind::CaseContents:
    case QuantityKind::CaseStorage:
    case QuantityKind::FrontWeight:
    case QuantityKind::BoxWeight:
    case QuantityKind::ContentsWeight:
    case QuantityKind::StorageVolume:
        return "weight";
    case QuantityKind::RunnerLoad:
    case QuantityKind::RunnerSafety:
        return "runner-load";
    case QuantityKind::SpacerWidth:
        return "spacer";
    case QuantityKind::StopFromFarEdge:
    case QuantityKind::StopFromOpening:
        break;
    }
    return "stop";
}

} // namespace

HelpTopic topicOf(InputPlace place) {
    return QStringLiteral("decisions#") + QLatin1String(anchorOf(place));
}

HelpTopic topicOf(FindingCode code) {
    return QStringLiteral("findings#") +
           fromView(key(code)).replace(QLatin1Char('_'), QLatin1Char('-'));
}

HelpTopic topicOf(QuantityKind kind) {
    return QStringLiteral("numbers#") + QLatin1String(anchorOf(kind));
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
