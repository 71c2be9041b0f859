#include "core/findings/remedying_fits.h"

namespace frontwright::remedying {

namespace {

constexpr PerSide<Text> overlayOfFront{
    text("Make the left overlay of %1 %2"), text("Make the right overlay of %1 %2"),
    text("Make the bottom overlay of %1 %2"), text("Make the top overlay of %1 %2")};
constexpr PerSide<Text> overlayOfAll{text("Make the left overlay of all fronts %1"),
                                     text("Make the right overlay of all fronts %1"),
                                     text("Make the bottom overlay of all fronts %1"),
                                     text("Make the top overlay of all fronts %1")};

constexpr PerSide<Text> overlayWhenCutOfFront{text("Make the left overlay of %1 %2 when cut"),
                                              text("Make the right overlay of %1 %2 when cut"),
                                              text("Make the bottom overlay of %1 %2 when cut"),
                                              text("Make the top overlay of %1 %2 when cut")};
constexpr PerSide<Text> overlayWhenCutOfAll{
    text("Make the left overlay of all fronts %1 when cut"),
    text("Make the right overlay of all fronts %1 when cut"),
    text("Make the bottom overlay of all fronts %1 when cut"),
    text("Make the top overlay of all fronts %1 when cut")};

constexpr PerSide<Text> gapOfFront{
    text("Make the gap at the left of %1 %2"), text("Make the gap at the right of %1 %2"),
    text("Make the gap at the bottom of %1 %2"), text("Make the gap at the top of %1 %2")};
constexpr PerSide<Text> gapOfAll{text("Make the gap at the left of all fronts %1"),
                                 text("Make the gap at the right of all fronts %1"),
                                 text("Make the gap at the bottom of all fronts %1"),
                                 text("Make the gap at the top of all fronts %1")};

constexpr PerSide<Text> gapWhenCutOfFront{text("Make the gap at the left of %1 %2 when cut"),
                                          text("Make the gap at the right of %1 %2 when cut"),
                                          text("Make the gap at the bottom of %1 %2 when cut"),
                                          text("Make the gap at the top of %1 %2 when cut")};
constexpr PerSide<Text> gapWhenCutOfAll{
    text("Make the gap at the left of all fronts %1 when cut"),
    text("Make the gap at the right of all fronts %1 when cut"),
    text("Make the gap at the bottom of all fronts %1 when cut"),
    text("Make the gap at the top of all fronts %1 when cut")};

SideLabel labelOf(const PerSide<Text>& ofFront, const PerSide<Text>& ofAll, Side side,
                  const std::string& front, const std::string& amount) {
    return {Phrase(ofFront[side], {front, amount}), Phrase(ofAll[side], {amount})};
}

} // namespace

SideLabel makeOverlay(Side side, const std::string& front, const std::string& amount) {
    return labelOf(overlayOfFront, overlayOfAll, side, front, amount);
}

SideLabel makeOverlayWhenCut(Side side, const std::string& front, const std::string& amount) {
    return labelOf(overlayWhenCutOfFront, overlayWhenCutOfAll, side, front, amount);
}

SideLabel makeGap(Side side, const std::string& front, const std::string& amount) {
    return labelOf(gapOfFront, gapOfAll, side, front, amount);
}

SideLabel makeGapWhenCut(Side side, const std::string& front, const std::string& amount) {
    return labelOf(gapWhenCutOfFront, gapWhenCutOfAll, side, front, amount);
}

void proposeForSide(const Search& search, SideLabel label, Side side, SideFit fit) {
    search.propose(std::move(label.ofFront), setFits({{{search.front.opening}, side, fit}}));
    search.forCase.push_back({std::move(label.ofAll), setFits({{{}, side, fit}})});
}

} // namespace frontwright::remedying
