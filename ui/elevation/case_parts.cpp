#include "ui/elevation/case_parts.h"

#include "core/lengths/format.h"
#include "core/plan/member_words.h"
#include "core/plan/opening_words.h"
#include "ui/language/told.h"

#include <QCoreApplication>

#include <algorithm>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

QString text(Length length, LengthStyle style) {
    return QString::fromStdString(shown(length, style));
}

const FrontPlan* frontOf(const Selection& selection, const Plan& plan) {
    const auto id = selection.lastOpening();
    return id ? plan.frontOf(*id) : nullptr;
}

const SpacePlan* spaceOf(const Selection& selection, const Plan& plan) {
    const auto id = selection.lastOpening();
    return id ? plan.spaceOf(*id) : nullptr;
}

std::uint32_t indexOf(const FrontPlan& front, const Plan& plan) {
    return static_cast<std::uint32_t>(&front - plan.fronts.data());
}

QString besideOpening(Construction construction, MemberKind kind, bool isFilled) {
    if (!isBuilt(kind) && isFilled)
        return isUpright(kind) ? tr("Filler strip right of %1") : tr("Filler strip above %1");
    if (!isBuilt(kind))
        return isUpright(kind) ? tr("Division right of %1") : tr("Division above %1");
    if (isUpright(kind))
        return tr("Divider right of %1");
    return construction == Construction::FaceFrame ? tr("Rail above %1") : tr("Shelf above %1");
}

QString memberName(const MemberPlan& member, const Project& project, const Plan& plan) {
    const Construction construction = plan.construction;
    if (const auto side = outerSide(member.id))
        return told(nameOfOuter(construction, *side));
    const Side facing = isUpright(member.kind) ? Side::Right : Side::Top;
    const auto index = static_cast<std::uint32_t>(&member - plan.members.data());
    const bool isFilled =
        std::ranges::any_of(plan.fillers, [&](const Filler& f) { return f.member == index; });
    const auto beside = [&](const std::string& opening) {
        return besideOpening(construction, member.kind, isFilled)
            .arg(QString::fromStdString(opening));
    };
    for (const FrontPlan& front : plan.fronts)
        if (front.neighbours[facing].member == index)
            return beside(label(project, front));
    for (const SpacePlan& space : plan.spaces)
        if (space.bounds[facing] == index)
            return beside(label(space));
    return told(nameOfKind(construction, member.kind));
}

bool isOf(const Finding& finding, const Selection& part) {
    if (part.member)
        return finding.where.member == part.member;
    if (finding.where.opening != part.lastOpening())
        return false;
    if (part.mountingHole)
        return finding.where.mountingHole == part.mountingHole;
    return !part.handleHole || finding.where.handleHole == part.handleHole;
}

CaseRect round(const FrontPlan& front, const Selection& hole) {
    const bool isScrew = hole.mountingHole.has_value();
    // Somewhat more than the hole, for the eye to be led there.
    const Length reach = isScrew ? front.mounting.clearanceHole : front.hardware->holeDiameter;
    const CasePoint at =
        isScrew ? CasePoint{front.box.origin.x + front.mounting.holes[*hole.mountingHole].at.x,
                            front.box.origin.y + front.mounting.holes[*hole.mountingHole].at.y}
                : CasePoint{front.rect.left + front.hardware->holes[*hole.handleHole].x,
                            front.rect.bottom + front.hardware->holes[*hole.handleHole].y};
    return {at.x - reach, at.y - reach, at.x + reach, at.y + reach};
}

} // namespace

std::vector<Selection> outerParts(const Plan& plan) {
    std::vector<Selection> parts;
    parts.reserve(plan.fronts.size() + plan.spaces.size() + plan.members.size());
    for (const FrontPlan& front : plan.fronts)
        parts.push_back(Selection::of(front.opening));
    for (const SpacePlan& space : plan.spaces)
        parts.push_back(Selection::of(space.opening));
    for (const MemberPlan& member : plan.members)
        parts.push_back(Selection::of(member.id));
    return parts;
}

std::vector<Selection> holesOf(const Plan& plan, const Selection& part) {
    const FrontPlan* front = frontOf(part, plan);
    std::vector<Selection> holes;
    if (!front || part.mountingHole || part.handleHole)
        return holes;
    for (std::uint32_t i = 0; i < front->mounting.holes.size(); ++i) {
        holes.push_back(Selection::of(front->opening));
        holes.back().mountingHole = i;
    }
    const auto handles = front->hardware ? front->hardware->holes.size() : 0;
    for (std::uint32_t i = 0; i < handles; ++i) {
        holes.push_back(Selection::of(front->opening));
        holes.back().handleHole = i;
    }
    return holes;
}

std::vector<Selection> allParts(const Plan& plan) {
    std::vector<Selection> all;
    for (Selection& part : outerParts(plan)) {
        const auto holes = holesOf(plan, part);
        all.push_back(std::move(part));
        all.insert(all.end(), holes.begin(), holes.end());
    }
    return all;
}

bool isThere(const Plan& plan, const Selection& part) {
    if (part.member)
        return plan.memberOf(*part.member) != nullptr;
    const FrontPlan* front = frontOf(part, plan);
    if (!front)
        return spaceOf(part, plan) && !part.mountingHole && !part.handleHole;
    if (part.mountingHole)
        return *part.mountingHole < front->mounting.holes.size();
    return !part.handleHole ||
           (front->hardware && *part.handleHole < front->hardware->holes.size());
}

QString nameOf(const Selection& part, const Project& project, const Plan& plan) {
    if (!isThere(plan, part))
        return {};
    if (part.member)
        return memberName(*plan.memberOf(*part.member), project, plan);
    if (part.mountingHole)
        return tr("Screw hole %1").arg(*part.mountingHole + 1);
    if (part.handleHole)
        return tr("Handle hole %1").arg(*part.handleHole + 1);
    if (const SpacePlan* space = spaceOf(part, plan))
        return told(frontwright::nameOf(space->use, label(*space)));
    const FrontPlan& front = *frontOf(part, plan);
    return told(frontwright::nameOf(front.use, label(project, front)));
}

QString sizeOf(const Selection& part, const Plan& plan, LengthStyle style) {
    if (!isThere(plan, part))
        return {};
    if (part.member) {
        const MemberPlan& member = *plan.memberOf(*part.member);
        const bool upright = isUpright(member.kind);
        return tr("%1 wide, %2 long")
            .arg(text(upright ? member.rect.width() : member.rect.height(), style),
                 text(upright ? member.rect.height() : member.rect.width(), style));
    }
    if (const SpacePlan* space = spaceOf(part, plan))
        return tr("%1 × %2").arg(text(space->rect.width(), style),
                                 text(space->rect.height(), style));
    const FrontPlan& front = *frontOf(part, plan);
    const QString place = tr("%1 from the left, %2 from below");
    if (part.mountingHole) {
        const auto& at = front.mounting.holes[*part.mountingHole].at;
        return place.arg(text(at.x, style), text(at.y, style));
    }
    if (part.handleHole) {
        const auto& at = front.hardware->holes[*part.handleHole];
        return place.arg(text(at.x, style), text(at.y, style));
    }
    return tr("%1 × %2").arg(text(front.rect.width(), style), text(front.rect.height(), style));
}

QString heedOf(const Selection& part, const Work& work, LengthStyle style) {
    QStringList sentences;
    for (const Finding& finding : work.findings) {
        if (!isOf(finding, part))
            continue;
        const FindingText words = describe(finding, work.project, work.plan, style);
        sentences << tr("%1: %2").arg(told(words.severity), told(words.sentence));
    }
    return sentences.join(u' ');
}

CaseRect placeOf(const Selection& part, const Plan& plan) {
    if (!isThere(plan, part))
        return {};
    if (part.member)
        return plan.memberOf(*part.member)->rect;
    if (const SpacePlan* space = spaceOf(part, plan))
        return space->rect;
    const FrontPlan& front = *frontOf(part, plan);
    return part.mountingHole || part.handleHole ? round(front, part) : front.rect;
}

PointMm directionOf(int key) {
    switch (key) {
    case Qt::Key_Left:
        return {-1, 0};
    case Qt::Key_Right:
        return {1, 0};
    case Qt::Key_Up:
        return {0, 1};
    default:
        return {0, -1};
    }
}

std::optional<Selection> openingTowards(const Plan& plan, const Selection& from, int key) {
    std::vector<std::pair<OpeningId, CaseRect>> all;
    for (const FrontPlan& front : plan.fronts)
        all.emplace_back(front.opening, front.rect);
    for (const SpacePlan& space : plan.spaces)
        all.emplace_back(space.opening, space.rect);
    if (all.empty())
        return std::nullopt;
    const auto current = from.lastOpening();
    if (!current || !isThere(plan, Selection::of(*current)))
        return Selection::of(all.front().first);
    const PointMm direction = directionOf(key),
                  start = toMm(placeOf(Selection::of(*current), plan).centre());
    std::optional<OpeningId> best;
    double bestCost = 0;
    for (const auto& [opening, rect] : all) {
        const PointMm step = toMm(rect.centre()) - start;
        const double ahead = step.dot(direction);
        const double cost =
            ahead + 2 * std::abs(step.x() * direction.y() - step.y() * direction.x());
        if (ahead > 1e-6 && (!best || cost < bestCost)) {
            best = opening;
            bestCost = cost;
        }
    }
    return best ? std::optional(Selection::of(*best)) : std::nullopt;
}

std::vector<Quantity> numbersOf(const Selection& part, const Plan& plan) {
    using enum QuantityKind;
    std::vector<Quantity> numbers;
    const auto add = [&](QuantityKind kind, std::uint32_t item, std::uint32_t index = 0) {
        const Quantity quantity{kind, item, index};
        if (measureOf(plan, quantity))
            numbers.push_back(quantity);
    };
    if (part.isEmpty()) {
        add(CaseWidth, 0);
        add(CaseHeight, 0);
        add(TotalWidth, 0);
        add(TotalHeight, 0);
    } else if (!isThere(plan, part)) {
        return {};
    } else if (part.member) {
        const auto index =
            static_cast<std::uint32_t>(plan.memberOf(*part.member) - plan.members.data());
        for (const QuantityKind kind : {MemberWidth, MemberLength, MemberReveal})
            add(kind, index);
    } else if (const SpacePlan* space = spaceOf(part, plan)) {
        for (const QuantityKind kind : {SpaceWidth, SpaceHeight})
            add(kind, static_cast<std::uint32_t>(space - plan.spaces.data()));
    } else {
        const std::uint32_t front = indexOf(*frontOf(part, plan), plan);
        if (part.mountingHole)
            for (const QuantityKind kind : {HoleX, HoleY, ScrewTipCover, ScrewPenetration})
                add(kind, front, *part.mountingHole);
        if (part.handleHole)
            for (const QuantityKind kind : {HandleX, HandleY})
                add(kind, front, *part.handleHole);
        for (const QuantityKind kind : {FrontWidth, FrontHeight, OpeningWidth, OpeningHeight})
            add(kind, front);
    }
    return numbers;
}

Selection selectionAt(const Hit& hit) {
    if (hit.member)
        return Selection::of(*hit.member);
    if (!hit.opening)
        return {};
    Selection selection = Selection::of(*hit.opening);
    selection.mountingHole = hit.mountingHole;
    selection.handleHole = hit.handleHole;
    return selection;
}

} // namespace frontwright
