#include "core/edits/choices_checks.h"

#include <array>
#include <initializer_list>
#include <string>
#include <utility>

namespace frontwright {
namespace {

constexpr std::size_t longestText = 10'000;

struct Named {
    std::string_view what;
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

std::optional<Error> notPositive(std::string_view what, Length length) {
    if (length > Length())
        return std::nullopt;
    return Error{"", std::string(what) + " must be more than 0", ""};
}

std::optional<Error> negative(std::string_view what, Length length) {
    if (length >= Length())
        return std::nullopt;
    return Error{"", std::string(what) + " cannot be negative", ""};
}

std::optional<Error> impossible(const SideFit& fit) {
    switch (fit.fit) {
    case Fit::Overlay:
        return negative("an overlay", fit.amount);
    case Fit::Gap:
        return negative("a gap", fit.amount);
    case Fit::Inset:
        break;
    }
    return negative("the gap of an inset front", fit.amount);
}

std::optional<Error> impossible(const Profile& profile) {
    if (auto error = firstNegative({{"the width of the profile", profile.width},
                                    {"the depth of the profile", profile.depth},
                                    {"the step of the profile", profile.step}}))
        return error;
    if (profile.family == ProfileFamily::Raised && profile.step.length > profile.depth.length)
        return Error{"", "the step of a raised profile cannot be higher than the profile is deep",
                     "make the step smaller or the profile deeper"};
    return std::nullopt;
}

std::optional<Error> impossible(const BoxSpec& box) {
    if (auto error = firstNotPositive({{"the height of the box", box.height},
                                       {"the depth of the box", box.depth},
                                       {"the box wall's thickness", box.wallThickness},
                                       {"the box sides' thickness", box.sideThickness},
                                       {"the bottom's thickness", box.bottomThickness}}))
        return error;
    return firstNegative({{"the clearance at the sides", box.sideClearance},
                          {"the clearance below the box", box.clearanceBelow},
                          {"the clearance above the box", box.clearanceAbove},
                          {"the height of the bottom's groove", box.grooveHeight}});
}

std::optional<Error> impossible(const MountingSpec& mounting) {
    if (auto error = firstNotPositive({{"the length of the screw", mounting.length},
                                       {"the recess tool's diameter", mounting.toolDiameter},
                                       {"the clearance hole", mounting.clearanceHole}}))
        return error;
    if (auto error =
            firstNegative({{"the recess", mounting.recess},
                           {"the distance from the sides", mounting.fromSides},
                           {"the height of the lower row of screws", mounting.fromBottom},
                           {"the distance of the upper row from the top", mounting.fromTop},
                           {"the pilot hole", mounting.pilotHole}}))
        return error;
    if (mounting.pattern == ScrewPattern::ByHand && mounting.placed.empty())
        return Error{"", "no screw is placed", "place at least one, or choose a pattern"};
    return std::nullopt;
}

std::optional<Error> impossible(const HardwareSpec& hardware) {
    if (auto error = firstNotPositive(
            {{"the length of the bolt", hardware.boltLength},
             {"the counterbore's diameter", hardware.counterboreDiameter},
             {"the access hole's diameter", hardware.accessDiameter},
             {"the width past which a front carries two handles", hardware.twoPast}}))
        return error;
    if (auto error = firstNegative({{"the distance from the top", hardware.distance},
                                    {"the depth of the counterbore", hardware.counterbore}}))
        return error;
    if (hardware.opticalPart <= 0)
        return Error{"", "the optical centre is raised by a part of the height, 1 in 1 or less",
                     "write 20 for a twentieth"};
    if (hardware.twoAtPercent <= 0 || hardware.twoAtPercent >= 50)
        return Error{"", "two handles stand at more than 0 and less than 50 per cent of the width",
                     ""};
    return std::nullopt;
}

std::optional<Error> impossible(const Limits& limits) {
    if (auto error = firstNotPositive({{"the least opening", limits.leastOpening}}))
        return error;
    return firstNegative({{"the least penetration", limits.leastPenetration},
                          {"the least tip cover", limits.leastTipCover},
                          {"the margin round a screw", limits.screwMargin},
                          {"the least wall under a head", limits.leastWallUnderHead},
                          {"the least wood under a bolt's head", limits.leastWoodUnderHead},
                          {"the allowance round a head", limits.headAllowance},
                          {"the least gap", limits.leastGap},
                          {"the wood between holes", limits.holeToHole},
                          {"the difference at which gaps look uneven", limits.unevenGaps}});
}

std::optional<Error> impossibleText(std::string_view what, std::string_view text) {
    if (text.size() > longestText)
        return Error{"", std::string(what) + " is longer than 10 000 bytes", "shorten it"};
    for (const char c : text)
        if (static_cast<unsigned char>(c) < 0x20)
            return Error{"", std::string(what) + " must be one line without control characters",
                         ""};
    return std::nullopt;
}

} // namespace frontwright
