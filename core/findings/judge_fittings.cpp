#include "core/findings/judging.h"
#include "core/findings/overshoot.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

FrontRect outlineOf(const FrontPlan& front) {
    return FrontRect::atOrigin(front.rect.width(), front.rect.height());
}

/// Everything of a fitting that lies on or in show face and back, seen from the front. A selvedge
/// may end at the top edge just so.
FrontRect reachOf(const FittingPlan& fitting) {
    FrontRect reach = fitting.footprint;
    const auto include = [&](const FrontRect& part) {
        reach = {least(reach.left, part.left), least(reach.bottom, part.bottom),
                 greatest(reach.right, part.right), greatest(reach.top, part.top)};
    };
    for (const FittingBore& bore : fitting.bores) {
        const Length radius = bore.diameter.half();
        include({bore.at.x - radius, bore.at.y - radius, bore.at.x + radius, bore.at.y + radius});
    }
    for (const MortisePlan& mortise : fitting.mortises)
        if (mortise.cut.from != FrontFace::TopEdge)
            include(mortise.cut.place);
    return reach;
}

class OneFitting {
public:
    OneFitting(const Judged& judged, std::uint32_t index)
        : m_judged(judged),
          m_index(index),
          m_fitting((*judged.front.fittings)[index]) {}

    void judge() const {
        judgePlace();
        judgeScrews();
        judgeMortises();
        judgeCollisions();
    }

private:
    Finding& tell(FindingCode code, Severity severity, const Figures4& figures) const {
        m_judged.tell(code, severity, figures);
        m_judged.found.back().where.fitting = m_index;
        return m_judged.found.back();
    }

    /// figures: how far past, fitting's size that way, front's or field's size that way
    void tellPlace(FindingCode code, Severity severity, const Overshoot& over,
                   const FrontRect& part, const FrontRect& within) const {
        const bool across = isLeftOrRight(over.side);
        tell(code, severity,
             {over.by, across ? part.width() : part.height(),
              across ? within.width() : within.height()})
            .where.side = over.side;
    }

    void judgePlace() const {
        const FrontRect outline = outlineOf(m_judged.front), reach = reachOf(m_fitting);
        if (const Overshoot over = overshoot(reach, outline); over.by > nothing)
            return tellPlace(FindingCode::FittingOffFront, Severity::WontWork, over, reach,
                             outline);
        const FrontRect& field = m_judged.front.field;
        if (m_fitting.form->bearsOn != FrontFace::Show || field.width() <= nothing ||
            field.height() <= nothing)
            return;
        if (const Overshoot over = overshoot(m_fitting.footprint, field); over.by > nothing)
            tellPlace(FindingCode::FittingOffField, Severity::WontWork, over, m_fitting.footprint,
                      field);
    }

    void judgeScrews() const {
        const FittingScrew* worst = m_fitting.worstScrew();
        if (worst == nullptr)
            return;
        const Limits& limits = m_judged.project.limits;
        if (!m_fitting.screwLength) {
            // figures: least length, greatest length, plate, wood before the worst screw
            tell(FindingCode::NoFittingScrewFits, Severity::WontWork,
                 {m_fitting.leastLength, m_fitting.greatestLength, m_fitting.form->plate,
                  worst->wood});
            return;
        }
        // figures: screw, plate, wood before it, least tip cover or penetration
        const bool spoilsFace = m_fitting.form->bearsOn == FrontFace::Back;
        const auto figures = [&](Length limit) {
            return Figures4{*m_fitting.screwLength, m_fitting.form->plate, worst->wood, limit};
        };
        if (worst->tipCover <= nothing)
            tell(FindingCode::FittingScrewThrough,
                 spoilsFace ? Severity::Ruins : Severity::WontWork, figures(nothing));
        else if (worst->tipCover < limits.leastTipCover)
            tell(FindingCode::FittingScrewThin, Severity::OutsidePractice,
                 figures(limits.leastTipCover));
        if (worst->penetration < limits.leastPenetration)
            tell(FindingCode::FittingScrewShort, Severity::OutsidePractice,
                 figures(limits.leastPenetration));
    }

    /// figures: depth (in the top edge: 0), wood before it was cut, wood left, least wood
    void judgeMortises() const {
        const Length needed = m_judged.project.limits.leastTipCover;
        const MortisePlan* worst = nullptr;
        for (const MortisePlan& mortise : m_fitting.mortises)
            if (mortise.woodLeft && (worst == nullptr || *mortise.woodLeft < *worst->woodLeft))
                worst = &mortise;
        if (worst == nullptr || *worst->woodLeft >= needed)
            return;
        const Length left = *worst->woodLeft;
        const Length depth = worst->cut.from == FrontFace::TopEdge ? nothing : worst->cut.depth;
        tell(FindingCode::MortiseTooDeep,
             left <= nothing ? Severity::Ruins : Severity::OutsidePractice,
             {depth, left + depth, left, needed});
    }

    /// What it takes of the show face (or, where it bears on the back, of the back).
    [[nodiscard]] static std::vector<FrontRect> placesOf(const FittingPlan& fitting,
                                                         FrontFace face) {
        std::vector<FrontRect> places;
        const FittingForm& form = *fitting.form;
        if (form.bearsOn == face && !(form.footprint.width.isZero()))
            places.push_back(fitting.footprint);
        for (const FittingBore& bore : fitting.bores)
            if (bore.from == face || !bore.depth) {
                const Length radius = bore.diameter.half();
                places.push_back({bore.at.x - radius, bore.at.y - radius, bore.at.x + radius,
                                  bore.at.y + radius});
            }
        for (const MortisePlan& mortise : fitting.mortises)
            if (mortise.cut.from == face)
                places.push_back(mortise.cut.place);
        return places;
    }

    [[nodiscard]] static std::optional<FrontRect> commonPart(const std::vector<FrontRect>& some,
                                                             const std::vector<FrontRect>& others) {
        for (const FrontRect& a : some)
            for (const FrontRect& b : others)
                if (const FrontRect common = a.common(b);
                    common.width() > nothing && common.height() > nothing)
                    return common;
        return std::nullopt;
    }

    /// figures: common part's width and height
    void judgeCollisions() const {
        const std::vector<FittingPlan>& all = *m_judged.front.fittings;
        for (std::uint32_t other = m_index + 1; other < all.size(); ++other)
            for (const FrontFace face : {FrontFace::Show, FrontFace::Back})
                if (const auto common =
                        commonPart(placesOf(m_fitting, face), placesOf(all[other], face))) {
                    tell(FindingCode::FittingsCollide, Severity::WontWork,
                         {common->width(), common->height()})
                        .where.otherFitting = other;
                    return;
                }
        if (const auto common = commonWithHandle())
            tell(FindingCode::FittingsCollide, Severity::WontWork,
                 {common->width(), common->height()});
    }

    [[nodiscard]] std::optional<FrontRect> commonWithHandle() const {
        if (!m_judged.front.hardware)
            return std::nullopt;
        const HardwarePlan& hardware = *m_judged.front.hardware;
        std::vector<FrontRect> bases, bores;
        for (const HandlePlan& handle : hardware.handles)
            bases.push_back(handle.footprint);
        for (const FrontPoint& hole : hardware.holes) {
            const Length radius = hardware.holeDiameter.half();
            bores.push_back({hole.x - radius, hole.y - radius, hole.x + radius, hole.y + radius});
        }
        if (auto common = commonPart(placesOf(m_fitting, FrontFace::Show), bases))
            return common;
        return commonPart(placesOf(m_fitting, FrontFace::Back), bores);
    }

    const Judged& m_judged;
    std::uint32_t m_index;
    const FittingPlan& m_fitting;
};

} // namespace

void judgeFittings(const Judged& judged) {
    // Each code is told once for a front: where it is gravest, else at the first fitting.
    std::vector<Finding> found;
    const Judged each{judged.project, judged.outline, judged.front, found, judged.plan};
    for (std::uint32_t i = 0; i < judged.front.fittings->size(); ++i)
        OneFitting(each, i).judge();
    std::ranges::stable_sort(found, {}, [](const Finding& finding) {
        return std::pair(finding.code, finding.severity);
    });
    const auto repeated = std::ranges::unique(found, {}, &Finding::code);
    judged.found.insert(judged.found.end(), found.begin(), repeated.begin());
}

void judgeCentres(const Plan& plan, std::vector<BetweenFronts>& found) {
    struct Spaced {
        Length distance;
        std::uint32_t front;
    };
    std::vector<Spaced> spaced; // the first front of each
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i) {
        const auto& hardware = plan.fronts[i].hardware;
        const auto spacing = hardware ? holeSpacing(*hardware->form) : std::nullopt;
        if (!spacing ||
            std::ranges::find(spaced, spacing->distance, &Spaced::distance) != spaced.end())
            continue;
        for (const Spaced& other : spaced)
            if (isMistakable(spacing->distance, other.distance)) {
                // figures: here, there, how far apart they are
                Finding finding{FindingCode::CentresMixed,
                                Severity::OutsidePractice,
                                {},
                                {spacing->distance, other.distance,
                                 (spacing->distance - other.distance).magnitude()}};
                finding.where.opening = plan.fronts[i].opening;
                finding.where.other = plan.fronts[other.front].opening;
                found.push_back({i, finding});
            }
        spaced.push_back({spacing->distance, i});
    }
}

} // namespace frontwright::judging
