#include "core/drawings/line_style.h"

namespace frontwright {

namespace {

constexpr double wide = 0.35;
constexpr double narrow = 0.18;
constexpr double widestAtFullScale = 0.25;

std::vector<double> hidden() {
    return {12 * narrow, 3 * narrow};
}
std::vector<double> longDashDot() {
    return {24 * narrow, 3 * narrow, 0.5 * narrow, 3 * narrow};
}

std::vector<double> longDashTwoDots() {
    return {24 * narrow, 3 * narrow, 0.5 * narrow, 3 * narrow, 0.5 * narrow, 3 * narrow};
}

} // namespace

LineStyle lineStyle(Layer layer) {
    switch (layer) {
    case Layer::CaseOutline:
    case Layer::FrontEdge:
    case Layer::CutEdge:
    case Layer::CheckBar:
        return {wide, {}};
    case Layer::OpeningEdge:
    case Layer::BoxEdge:
    case Layer::BottomPanel:
    case Layer::HiddenRunner:
        return {narrow, hidden()};
    case Layer::Centre:
    case Layer::FieldEdge:
        return {narrow, longDashDot()};
    case Layer::Moved:
        return {narrow, longDashTwoDots()};
    case Layer::Wash:
    case Layer::Surrounding:
    case Layer::SystemHole:
    case Layer::MemberEdge:
    case Layer::Runner:
    case Layer::ProfileLine:
    case Layer::AllowedRegion:
    case Layer::CutHatch:
    case Layer::Waste:
    case Layer::Hole:
    case Layer::Counterbore:
    case Layer::AccessHole:
    case Layer::Fastener:
    case Layer::Handle:
    case Layer::Dimension:
    case Layer::PartDimension:
    case Layer::Note:
    case Layer::Trim:
    case Layer::Register:
        break;
    }
    return {narrow, {}};
}

LineStyle lineStyle(Layer layer, double paperScale) {
    LineStyle style = lineStyle(layer);
    if (paperScale >= 1 && style.width > widestAtFullScale)
        style.width = widestAtFullScale;
    return style;
}

std::string_view key(Layer layer) {
    switch (layer) {
    case Layer::Wash:
        return "wash";
    case Layer::CaseOutline:
        return "case-outline";
    case Layer::Surrounding:
        return "surrounding";
    case Layer::MemberEdge:
        return "member-edge";
    case Layer::SystemHole:
        return "system-hole";
    case Layer::OpeningEdge:
        return "opening-edge";
    case Layer::FrontEdge:
        return "front-edge";
    case Layer::ProfileLine:
        return "profile-line";
    case Layer::BoxEdge:
        return "box-edge";
    case Layer::BottomPanel:
        return "bottom-panel";
    case Layer::Runner:
        return "runner";
    case Layer::HiddenRunner:
        return "hidden-runner";
    case Layer::FieldEdge:
        return "field-edge";
    case Layer::AllowedRegion:
        return "allowed-region";
    case Layer::CutEdge:
        return "cut-edge";
    case Layer::CutHatch:
        return "cut-hatch";
    case Layer::Waste:
        return "waste";
    case Layer::Hole:
        return "hole";
    case Layer::Counterbore:
        return "counterbore";
    case Layer::AccessHole:
        return "access-hole";
    case Layer::Fastener:
        return "fastener";
    case Layer::Handle:
        return "handle";
    case Layer::Moved:
        return "moved";
    case Layer::Centre:
        return "centre";
    case Layer::Dimension:
        return "dimension";
    case Layer::PartDimension:
        return "part-dimension";
    case Layer::Note:
        return "note";
    case Layer::Trim:
        return "trim";
    case Layer::Register:
        return "register";
    case Layer::CheckBar:
        break;
    }
    return "check-bar";
}

} // namespace frontwright
