#include "core/edits/typed.h"

namespace frontwright {

std::string_view typedEditName(QuantityKind kind) {
    switch (kind) {
    case QuantityKind::CaseWidth:
        return "Set case width";
    case QuantityKind::CaseHeight:
        return "Set case height";
    case QuantityKind::MemberWidth:
        return "Set member width";
    case QuantityKind::OpeningWidth:
        return "Set opening width";
    case QuantityKind::OpeningHeight:
        return "Set opening height";
    case QuantityKind::FrontWidth:
        return "Set front width";
    case QuantityKind::FrontHeight:
        return "Set front height";
    case QuantityKind::FrontThickness:
        return "Set front thickness";
    case QuantityKind::OverlayLeft:
    case QuantityKind::OverlayRight:
    case QuantityKind::OverlayBottom:
    case QuantityKind::OverlayTop:
        return "Set overlay";
    case QuantityKind::GapLeft:
    case QuantityKind::GapRight:
    case QuantityKind::GapBottom:
    case QuantityKind::GapTop:
        return "Set gap";
    case QuantityKind::BoxHeight:
        return "Set box height";
    case QuantityKind::BoxDepth:
        return "Set box depth";
    case QuantityKind::ScrewLength:
        return "Set screw length";
    case QuantityKind::ClearanceHole:
        return "Set clearance hole";
    case QuantityKind::PilotHole:
        return "Set pilot hole";
    case QuantityKind::HoleX:
    case QuantityKind::HoleY:
        return "Move screw hole";
    case QuantityKind::HandleX:
    case QuantityKind::HandleY:
        return "Move handle";
    case QuantityKind::BoltLength:
        return "Set bolt length";
    case QuantityKind::Counterbore:
        return "Set counterbore depth";
    case QuantityKind::SpacerWidth:
        return "Set gap";
    case QuantityKind::StopFromFarEdge:
    case QuantityKind::StopFromOpening:
        return "Set overlay";
    case QuantityKind::MoistureWhenCut:
    case QuantityKind::MoistureDriest:
    case QuantityKind::MoistureWettest:
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
    case QuantityKind::FixedRow:
    case QuantityKind::RowMovement:
    case QuantityKind::RowHole:
    case QuantityKind::RowDrill:
    case QuantityKind::MemberLength:
    case QuantityKind::MemberReveal:
    case QuantityKind::EdgeThickness:
    case QuantityKind::FieldWidth:
    case QuantityKind::FieldHeight:
    case QuantityKind::BoxWidth:
    case QuantityKind::BoxSetback:
    case QuantityKind::BottomTop:
    case QuantityKind::ScrewLeastLength:
    case QuantityKind::ScrewGreatestLength:
    case QuantityKind::ScrewPenetration:
    case QuantityKind::ScrewTipCover:
    case QuantityKind::LeastHoleHeight:
    case QuantityKind::BoltGrip:
    case QuantityKind::BoltLeastLength:
    case QuantityKind::BoltGreatestLength:
    case QuantityKind::WoodUnderHead:
    case QuantityKind::CaseWeight:
    case QuantityKind::CaseContents:
    case QuantityKind::CaseStorage:
    case QuantityKind::ScrewThread:
    case QuantityKind::PullSafety:
    case QuantityKind::PullDesignSafety:
    case QuantityKind::ScrewToEdge:
    case QuantityKind::ScrewToEnd:
    case QuantityKind::ScrewUltimate:
    case QuantityKind::ScrewDesign:
    case QuantityKind::ScrewPull:
    case QuantityKind::BoltEngagement:
    case QuantityKind::FrontWeight:
    case QuantityKind::BoxWeight:
    case QuantityKind::ContentsWeight:
    case QuantityKind::RunnerLoad:
    case QuantityKind::RunnerSafety:
    case QuantityKind::StorageVolume:
        break;
    }
    return {};
}

} // namespace frontwright
