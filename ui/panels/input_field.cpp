#include "ui/panels/input_field.h"

#include "core/plan/member_words.h"
#include "ui/language/told.h"

#include <QCoreApplication>

namespace frontwright {

namespace {

/// Labels are the forms' own, and of their context.
QString tr(const char* label) {
    return QCoreApplication::translate("frontwright", label);
}

/// Where the kind has none: the side that moves when the size is typed.
Side sideToChange(QuantityKind kind) {
    using enum QuantityKind;
    if (const auto side = sideOf(kind))
        return *side;
    return kind == OpeningWidth || kind == FrontWidth || kind == SeasonWidth ? Side::Right
                                                                             : Side::Bottom;
}

Selection ofFront(std::optional<Quantity> about, const Plan& plan, const Selection& now) {
    const FrontPlan* front = about ? frontOf(plan, *about) : nullptr;
    if (front)
        return now.contains(front->opening) ? now : Selection::of(front->opening);
    // What holds for the case can be changed with nothing selected, but not at a member.
    return now.member ? Selection() : now;
}

Selection ofOpening(std::optional<Quantity> about, const Plan& plan, const Selection& now) {
    const bool isOfSpace = about && partOf(about->kind) == PlanPart::Space;
    if (isOfSpace && about->item < plan.spaces.size())
        return Selection::of(plan.spaces[about->item].opening);
    Selection selection = ofFront(about, plan, now);
    if (selection.openings.empty() && !plan.fronts.empty())
        selection = Selection::of(plan.fronts.front().opening);
    return selection;
}

/// The board that is selected, else the first.
Selection ofBoard(const Plan& plan, const Selection& now) {
    if (const auto id = now.lastOpening(); id && plan.boardOf(*id))
        return now;
    return plan.boards.empty() ? Selection() : Selection::of(plan.boards.front().opening);
}

Selection ofMember(std::optional<Quantity> about, const Plan& plan, const Selection& now) {
    if (about) {
        const bool isMembers = partOf(about->kind) == PlanPart::Member;
        std::uint32_t member = plan.members.empty() ? 0 : about->item;
        if (!isMembers) {
            if (partOf(about->kind) == PlanPart::Spacer && about->item < plan.spacers.size())
                member = plan.spacers[about->item].member;
            else if (const FrontPlan* front = frontOf(plan, *about))
                member = front->neighbours[sideToChange(about->kind)].member;
            else
                member = 0;
        }
        if (member < plan.members.size())
            return Selection::of(plan.members[member].id);
    }
    if (now.member || plan.members.empty())
        return now;
    return Selection::of(plan.members.front().id);
}

QString sideLabel(std::optional<Quantity> about) {
    switch (about ? sideToChange(about->kind) : Side::Left) {
    case Side::Left:
        return tr("Left");
    case Side::Right:
        return tr("Right");
    case Side::Bottom:
        return tr("Bottom");
    case Side::Top:
        break;
    }
    return tr("Top");
}

QString boxLabel(std::optional<Quantity> about) {
    using enum QuantityKind;
    if (!about)
        return {};
    if (about->kind == BoxDepth)
        return tr("Depth");
    if (about->kind == BoxWidth || about->kind == SideClearance)
        return tr("Clearance at each side");
    if (about->kind == RunnerLength)
        return tr("Runner length");
    if (about->kind == RunnerFurring)
        return tr("Opening's edge to the case's side");
    if (about->kind == BoxSwelling)
        return tr("Wood of the box");
    if (about->kind == BottomTop || about->kind == LeastHoleHeight)
        return tr("Groove above lower edge");
    return about->kind == BoxHeight ? tr("Height") : tr("Front wall");
}

QString mountingLabel(std::optional<Quantity> about) {
    using enum QuantityKind;
    if (!about)
        return {};
    if (about->kind == HoleX)
        return tr("From the box's sides");
    if (about->kind == HoleY)
        return tr("Lower row, from below");
    if (about->kind == LeastHoleHeight)
        return tr("Diameter of the recess tool");
    return tr("Length");
}

QString hardwareLabel(std::optional<Quantity> about) {
    using enum QuantityKind;
    if (about && (about->kind == HandleX || about->kind == HandleY))
        return tr("Placed");
    if (about && about->kind == BoltLength)
        return tr("Bolt in hand");
    if (about && (about->kind == Counterbore || about->kind == WoodUnderHead))
        return tr("Counterbore depth");
    return tr("Handle");
}

bool isAboutRunners(std::optional<Quantity> about) {
    return about && about->kind >= QuantityKind::SideClearance &&
           about->kind <= QuantityKind::BoxSwelling;
}

QString surroundLabel(std::optional<Quantity> about) {
    using enum QuantityKind;
    if (!about || about->kind < ToSurroundLeft || ToSurroundTop < about->kind)
        return about && about->kind == TotalWidth ? tr("Above") : tr("Below");
    switch (sideToChange(about->kind)) {
    case Side::Left:
        return tr("At the left");
    case Side::Right:
        return tr("At the right");
    case Side::Bottom:
        return tr("Below");
    case Side::Top:
        break;
    }
    return tr("Above");
}

bool isAboutScrews(std::optional<Quantity> about) {
    return about && about->kind >= QuantityKind::ScrewLength &&
           about->kind <= QuantityKind::LeastHoleHeight;
}

} // namespace

QString nameOf(InputPlace place) {
    switch (place) {
    case InputPlace::CaseSize:
        return tr("Size of the case");
    case InputPlace::Frame:
        return tr("Frame");
    case InputPlace::Divisions:
        return tr("Opening");
    case InputPlace::MemberWidth:
        return tr("Width of the member");
    case InputPlace::Fit:
        return tr("Fit of the front");
    case InputPlace::Thickness:
        return tr("Thickness and wood");
    case InputPlace::Profile:
        return tr("Edge profile");
    case InputPlace::Box:
        return tr("Drawer box");
    case InputPlace::Runner:
        return tr("Runners");
    case InputPlace::Mounting:
        return tr("Mounting screws");
    case InputPlace::Hardware:
        return tr("Handle");
    case InputPlace::Stock:
        return tr("Wood");
    case InputPlace::Air:
        return tr("Wood and air");
    case InputPlace::Surroundings:
        return tr("What stands round the case");
    case InputPlace::SystemHoles:
        return tr("System holes");
    case InputPlace::Board:
        return tr("Pull-out board");
    case InputPlace::Limits:
        return tr("Limits");
    case InputPlace::Catalogue:
        break;
    }
    return tr("Choice from the catalogue");
}

InputField inputField(InputPlace place, std::optional<Quantity> about, const Plan& plan,
                      const Selection& now) {
    const Selection front = ofFront(about, plan, now);
    const bool upright =
        about &&
        (about->kind == QuantityKind::CaseHeight || about->kind == QuantityKind::OpeningHeight ||
         about->kind == QuantityKind::SpaceHeight || about->kind == QuantityKind::FrontHeight);
    switch (place) {
    case InputPlace::CaseSize:
        return {{}, QStringLiteral("case"), upright ? tr("Height") : tr("Width")};
    case InputPlace::Frame:
        return {{},
                QStringLiteral("case"),
                told(nameOfOuter(plan.construction, upright ? Side::Bottom : Side::Left))};
    case InputPlace::Divisions:
        return {ofOpening(about, plan, now), QStringLiteral("opening"),
                upright ? tr("Height") : tr("Width")};
    case InputPlace::MemberWidth:
        return {ofMember(about, plan, now), QStringLiteral("member"),
                QCoreApplication::translate("frontwright::SelectionPanel", "Width")};
    case InputPlace::Fit:
        return {front, QStringLiteral("fit"), sideLabel(about)};
    case InputPlace::Thickness:
        return {front, QStringLiteral("stock"), tr("Thickness")};
    case InputPlace::Profile:
        return {front, QStringLiteral("profile"), tr("Family")};
    case InputPlace::Box:
        return {front, QStringLiteral("box"), boxLabel(about)};
    case InputPlace::Runner:
        return {front, QStringLiteral("box"), tr("Runners")};
    case InputPlace::Mounting:
        return {front, QStringLiteral("mounting"), mountingLabel(about)};
    case InputPlace::Hardware:
        return {front, QStringLiteral("hardware"), hardwareLabel(about)};
    case InputPlace::Stock:
        return {front, {}, QCoreApplication::translate("WoodForm", "Wood"), InputPanel::Wood};
    case InputPlace::Air:
        return {front, {}, {}, InputPanel::Wood};
    case InputPlace::Surroundings:
        return {{}, QStringLiteral("surroundings"), surroundLabel(about)};
    case InputPlace::SystemHoles:
        return {{}, QStringLiteral("system-holes"), {}};
    case InputPlace::Board:
        return {ofBoard(plan, now), QStringLiteral("board"), {}};
    case InputPlace::Limits:
        return {{}, QStringLiteral("limits"), {}};
    case InputPlace::Catalogue:
        break;
    }
    if (isAboutRunners(about))
        return {front, QStringLiteral("box"), tr("Runners")};
    return isAboutScrews(about) ? InputField{front, QStringLiteral("mounting"), tr("Screw")}
                                : InputField{front, QStringLiteral("hardware"), tr("Handle")};
}

} // namespace frontwright
