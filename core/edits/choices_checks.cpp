#include "core/edits/choices_checks.h"

#include <array>
#include <initializer_list>
#include <string>
#include <utility>

namespace frontwright {
namespace {

constexpr std::size_t longestText = 10'000;

struct Named {
    Text what;
    std::optional<WrittenLength> length;
};
using NamedLengths = std::initializer_list<Named>;

std::optional<Error> firstNotPositive(NamedLengths lengths) {
    for (const Named& named : lengths)
        if (named.length)
            if (auto error = notPositive(named.what, *named.length))
                return error;
    return std::nullopt;
}
std::optional<Error> firstNegative(NamedLengths lengths) {
    for (const Named& named : lengths)
        if (named.length)
            if (auto error = negative(named.what, *named.length))
                return error;
    return std::nullopt;
}

} // namespace

std::optional<Error> impossibleMember(Construction construction, Length width) {
    switch (construction) {
    case Construction::FaceFrame:
        return notPositive(text("the width of a member"), width);
    case Construction::Frameless:
        break;
    }
    return negative(text("the width of a member"), width);
}

std::optional<Error> notPositive(Text what, Length length) {
    if (length > Length())
        return std::nullopt;
    return Error{{}, phrase("%1 must be more than 0", what), {}};
}

std::optional<Error> negative(Text what, Length length) {
    if (length >= Length())
        return std::nullopt;
    return Error{{}, phrase("%1 cannot be negative", what), {}};
}

std::optional<Error> impossible(const SideFit& fit) {
    switch (fit.fit) {
    case Fit::Overlay:
        return negative(text("an overlay"), fit.amount);
    case Fit::Gap:
        return negative(text("a gap"), fit.amount);
    case Fit::Inset:
        break;
    }
    return negative(text("the gap of an inset front"), fit.amount);
}

std::optional<Error> impossible(const Profile& profile) {
    if (auto error = firstNegative({{text("the width of the profile"), profile.width},
                                    {text("the depth of the profile"), profile.depth},
                                    {text("the step of the profile"), profile.step}}))
        return error;
    if (profile.family == ProfileFamily::Raised && profile.step.length > profile.depth.length)
        return Error{{},
                     text("the step of a raised profile cannot be higher than the profile is deep"),
                     text("make the step smaller or the profile deeper")};
    return std::nullopt;
}

std::optional<Error> impossible(const BoxSpec& box) {
    if (auto error = firstNotPositive({{text("the height of the box"), box.height},
                                       {text("the depth of the box"), box.depth},
                                       {text("the length of the runner"), box.runnerLength},
                                       {text("the box wall's thickness"), box.wallThickness},
                                       {text("the box sides' thickness"), box.sideThickness},
                                       {text("the bottom's thickness"), box.bottomThickness}}))
        return error;
    return firstNegative({{text("the clearance at the sides"), box.sideClearance},
                          {text("the clearance below the box"), box.clearanceBelow},
                          {text("the clearance above the box"), box.clearanceAbove},
                          {text("the height of the bottom's groove"), box.grooveHeight},
                          {text("the distance to the case's side"), box.toCaseSide}});
}

std::optional<Error> impossible(const MountingSpec& mounting) {
    if (auto error = firstNotPositive({{text("the length of the screw"), mounting.length},
                                       {text("the recess tool's diameter"), mounting.toolDiameter},
                                       {text("the clearance hole"), mounting.clearanceHole}}))
        return error;
    if (auto error =
            firstNegative({{text("the recess"), mounting.recess},
                           {text("the distance from the sides"), mounting.fromSides},
                           {text("the height of the lower row of screws"), mounting.fromBottom},
                           {text("the distance of the upper row from the top"), mounting.fromTop},
                           {text("the pilot hole"), mounting.pilotHole}}))
        return error;
    if (mounting.pattern == ScrewPattern::ByHand && mounting.placed.empty())
        return Error{
            {}, text("no screw is placed"), text("place at least one, or choose a pattern")};
    return std::nullopt;
}

std::optional<Error> impossible(const HardwareSpec& hardware) {
    if (auto error = firstNotPositive(
            {{text("the length of the bolt"), hardware.boltLength},
             {text("the counterbore's diameter"), hardware.counterboreDiameter},
             {text("the access hole's diameter"), hardware.accessDiameter},
             {text("the width past which a front carries two handles"), hardware.twoPast},
             {text("the width past which a front carries three handles"), hardware.threePast}}))
        return error;
    for (const FittingSpec& fitting : hardware.fittings) {
        if (auto error =
                firstNegative({{text("a fitting's distance from the side"), fitting.fromSide},
                               {text("a fitting's distance from the edge"), fitting.fromEdge}}))
            return error;
        if (auto error =
                firstNotPositive({{text("the length of a fitting's screws"), fitting.screwLength}}))
            return error;
    }
    if (auto error = firstNegative({{text("the distance from the top"), hardware.distance},
                                    {text("the depth of the counterbore"), hardware.counterbore}}))
        return error;
    if (hardware.opticalPart <= 0)
        return Error{{},
                     text("the optical centre is raised by a part of the height, 1 in 1 or less"),
                     text("write 20 for a twentieth")};
    if (hardware.twoAtPercent <= 0 || hardware.twoAtPercent >= 50)
        return Error{
            {},
            text("two handles stand at more than 0 and less than 50 per cent of the width"),
            {}};
    return std::nullopt;
}

std::optional<Error> impossible(const Limits& limits) {
    if (auto error = firstNotPositive({{text("the least opening"), limits.leastOpening}}))
        return error;
    return firstNegative({{text("the least penetration"), limits.leastPenetration},
                          {text("the least tip cover"), limits.leastTipCover},
                          {text("the margin round a screw"), limits.screwMargin},
                          {text("the least wall under a head"), limits.leastWallUnderHead},
                          {text("the least wood under a bolt's head"), limits.leastWoodUnderHead},
                          {text("the allowance round a head"), limits.headAllowance},
                          {text("the least gap"), limits.leastGap},
                          {text("the wood between holes"), limits.holeToHole},
                          {text("the difference at which gaps look uneven"), limits.unevenGaps},
                          {text("the least wood round a screw's hole"), limits.leastHeadBearing},
                          {text("the shadow of a filler strip"), limits.fillerShadow},
                          {text("the greatest bend of a filler strip"), limits.fillerBend}});
}

std::optional<Error> impossibleText(Text what, std::string_view typed) {
    if (typed.size() > longestText)
        return Error{{}, phrase("%1 is longer than 10 000 bytes", what), text("shorten it")};
    for (const char c : typed)
        if (static_cast<unsigned char>(c) < 0x20)
            return Error{{}, phrase("%1 must be one line without control characters", what), {}};
    return std::nullopt;
}

} // namespace frontwright
