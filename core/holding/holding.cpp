#include "core/holding/holding.h"

#include "core/holding/withdrawal.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr Length nothing{};

FrontPoint onFront(const HoldingPlace& place, WallPoint at) {
    return {place.wallOnFront.x + at.x, place.wallOnFront.y + at.y};
}

Length halves(Length shank, std::int64_t n) {
    return (shank * n).half();
}

/// The share of one screw in a unit pull at `pulled`: 1/n, and the turning that the pull's distance
/// from the screws' middle makes, taken up by each in proportion to its own distance.
class ScrewGroup {
public:
    ScrewGroup(const HoldingPlace& place) {
        for (const MountingHole& hole : place.mounting.holes)
            m_at.push_back(onFront(place, hole.at));
        for (const FrontPoint& p : m_at) {
            m_x += p.x.inMillimetres() / count();
            m_y += p.y.inMillimetres() / count();
        }
        for (const FrontPoint& p : m_at) {
            m_xx += square(p.x.inMillimetres() - m_x);
            m_yy += square(p.y.inMillimetres() - m_y);
        }
    }
    [[nodiscard]] double shareOf(std::size_t screw, FrontPoint pulled) const {
        const auto turning = [](double pull, double own, double middle, double sum) {
            constexpr double oneLine = 1e-9; // all screws in one row: nothing resists the turning
            return sum < oneLine ? 0.0 : (pull - middle) * (own - middle) / sum;
        };
        const FrontPoint& at = m_at[screw];
        return 1 / count() + turning(pulled.x.inMillimetres(), at.x.inMillimetres(), m_x, m_xx) +
               turning(pulled.y.inMillimetres(), at.y.inMillimetres(), m_y, m_yy);
    }

private:
    [[nodiscard]] double count() const { return static_cast<double>(m_at.size()); }
    static double square(double v) { return v * v; }

    std::vector<FrontPoint> m_at;
    double m_x = 0, m_y = 0, m_xx = 0, m_yy = 0;
};

void addDistances(HoldingPlan& plan, const HoldingPlace& place) {
    for (std::size_t i = 0; i < plan.holes.size(); ++i) {
        const FrontPoint at = onFront(place, place.mounting.holes[i].at);
        HoleHolding& hole = plan.holes[i];
        const Length toSide = least(at.x - place.front.left, place.front.right - at.x);
        const Length toLevel = least(at.y - place.front.bottom, place.front.top - at.y);
        const bool isUpright = place.grain == Grain::AlongHeight;
        hole.toEdge = isUpright ? toSide : toLevel;
        hole.toEnd = isUpright ? toLevel : toSide;
        for (std::size_t j = 0; j < plan.holes.size(); ++j) {
            const WallPoint other = place.mounting.holes[j].at, own = place.mounting.holes[i].at;
            const Length aside = (other.x - own.x).magnitude();
            const Length above = (other.y - own.y).magnitude();
            if (j == i || (isUpright ? aside : above) >= plan.least.betweenRows)
                continue;
            const Length apart = isUpright ? above : aside;
            hole.toNext = hole.toNext ? frontwright::least(*hole.toNext, apart) : apart;
        }
    }
}

void addWithdrawal(HoldingPlan& plan, const HoldingPlace& place) {
    if (!place.mounting.length || place.wood == nullptr || !place.wood->gravity)
        return;
    const SpecificGravity gravity = *place.wood->gravity;
    const Length shank = place.mounting.screw->shankDiameter;
    for (std::size_t i = 0; i < plan.holes.size(); ++i) {
        const MountingHole& hole = place.mounting.holes[i];
        const Length penetration = hole.thickness > nothing ? hole.penetration : nothing;
        const Length thread = threadInWood(penetration, *place.mounting.length);
        plan.holes[i].ultimate = ultimateWithdrawal(gravityAt12Percent(gravity), shank, thread);
        plan.holes[i].design = designWithdrawal(gravityOvendry(gravity), shank, thread);
    }
}

void addPull(HoldingPlan& plan, const HoldingPlace& place) {
    if (place.hardware == nullptr ||
        (place.bolts == BoltsHold::Wall && place.hardware->chosen == MountingWay::ThroughWall))
        return;
    const ScrewGroup group(place);
    for (std::size_t i = 0; i < plan.holes.size(); ++i) {
        double share = 0;
        for (const HandlePlan& handle : place.hardware->handles)
            share = std::max(share, group.shareOf(i, handle.centre));
        plan.holes[i].pull = Force::nearestToPoundsForce(pullTestPoundsForce * share);
    }
}

std::optional<Ratio> leastRatio(const HoldingPlan& plan,
                                std::optional<Force> HoleHolding::*holding) {
    std::optional<Ratio> worst;
    for (const HoleHolding& hole : plan.holes)
        if (const auto& force = hole.*holding; force && hole.pull) {
            const Ratio ratio = Ratio::of(force->inNewtons(), hole.pull->inNewtons());
            worst = worst ? std::min(*worst, ratio) : ratio;
        }
    return worst;
}

} // namespace

bool isEnd(Side side, Grain grain) {
    switch (grain) {
    case Grain::AlongLength:
        return isLeftOrRight(side);
    case Grain::AlongHeight:
        break;
    }
    return !isLeftOrRight(side);
}

ScrewDistances screwDistances(Length shank, Prebored prebored) {
    const bool has = prebored == Prebored::Yes;
    return {halves(shank, 5), shank * (has ? 5 : 10), shank * (has ? 10 : 15),
            shank * (has ? 3 : 5)};
}

HoldingPlan planHolding(const HoldingPlace& place) {
    const MountingPlan& mounting = place.mounting;
    HoldingPlan plan;
    plan.grain = place.grain;
    plan.least = screwDistances(mounting.screw->shankDiameter,
                                mounting.pilotHole > nothing ? Prebored::Yes : Prebored::No);
    plan.holes.resize(mounting.holes.size());
    if (mounting.length)
        plan.thread =
            threadInWood(*mounting.length + mounting.recess - mounting.wall, *mounting.length);
    if (place.wood != nullptr && place.wood->gravity)
        plan.pilot =
            pilotRule(*mounting.screw, *place.wood->gravity, place.wood->kind, place.steps);
    addDistances(plan, place);
    addWithdrawal(plan, place);
    addPull(plan, place);
    plan.safety = leastRatio(plan, &HoleHolding::ultimate);
    plan.designSafety = leastRatio(plan, &HoleHolding::design);
    return plan;
}

std::optional<Length> engagementOf(const WayPlan& way, const HardwareForm& form) {
    if (!way.length)
        return std::nullopt;
    return greatest(Length{}, least(*way.length - way.grip, form.threadDepth));
}

} // namespace frontwright
