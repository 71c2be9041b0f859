#include "core/drawings/line_style.h"

#include "core/plan/kind_table.h"

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

constexpr KindTable<Layer, std::string_view, 30> allKeys{{
    {Layer::Wash, Layer::Wash, "wash"},
    {Layer::CaseOutline, Layer::CaseOutline, "case-outline"},
    {Layer::Surrounding, Layer::Surrounding, "surrounding"},
    {Layer::MemberEdge, Layer::MemberEdge, "member-edge"},
    {Layer::SystemHole, Layer::SystemHole, "system-hole"},
    {Layer::OpeningEdge, Layer::OpeningEdge, "opening-edge"},
    {Layer::FrontEdge, Layer::FrontEdge, "front-edge"},
    {Layer::ProfileLine, Layer::ProfileLine, "profile-line"},
    {Layer::BoxEdge, Layer::BoxEdge, "box-edge"},
    {Layer::BottomPanel, Layer::BottomPanel, "bottom-panel"},
    {Layer::Runner, Layer::Runner, "runner"},
    {Layer::HiddenRunner, Layer::HiddenRunner, "hidden-runner"},
    {Layer::FieldEdge, Layer::FieldEdge, "field-edge"},
    {Layer::AllowedRegion, Layer::AllowedRegion, "allowed-region"},
    {Layer::CutEdge, Layer::CutEdge, "cut-edge"},
    {Layer::CutHatch, Layer::CutHatch, "cut-hatch"},
    {Layer::Waste, Layer::Waste, "waste"},
    {Layer::Hole, Layer::Hole, "hole"},
    {Layer::Counterbore, Layer::Counterbore, "counterbore"},
    {Layer::AccessHole, Layer::AccessHole, "access-hole"},
    {Layer::Fastener, Layer::Fastener, "fastener"},
    {Layer::Handle, Layer::Handle, "handle"},
    {Layer::Moved, Layer::Moved, "moved"},
    {Layer::Centre, Layer::Centre, "centre"},
    {Layer::Dimension, Layer::Dimension, "dimension"},
    {Layer::PartDimension, Layer::PartDimension, "part-dimension"},
    {Layer::Note, Layer::Note, "note"},
    {Layer::Trim, Layer::Trim, "trim"},
    {Layer::Register, Layer::Register, "register"},
    {Layer::CheckBar, Layer::CheckBar, "check-bar"},
}};
static_assert(holdsEachOnce(allKeys, Layer::CheckBar));

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
    return valueFor(allKeys, layer);
}

} // namespace frontwright
