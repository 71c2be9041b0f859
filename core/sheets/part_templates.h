#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// What a template is made from.
struct TemplateSource {
    const Project& project;
    const Plan& plan;
    LengthStyle style;
    Language language = {};
    [[nodiscard]] std::string say(const Phrase& phrase) const { return told(phrase, language); }
};
/// Fronts that one template serves, by index into Plan::fronts; the first names it.
using Alike = std::vector<std::uint32_t>;

/// A part without a size has no template; that there is no room for it is a finding.
inline bool isCut(const FrontPlan& front) {
    return front.rect.width() > Length{} && front.rect.height() > Length{};
}

/// What a story stick passes: an opening with its front, or one over which none lies.
struct StickOpening {
    OpeningId id;
    std::string name;
    CaseRect rect;
    PerSide<std::uint32_t> bounds; ///< index into Plan::members of the member at each side
    std::uint32_t bank = 0;
    std::uint32_t place = 0;
    std::optional<std::uint32_t> front; ///< index into Plan::fronts; none of a space or a board
};
using StickOpenings = std::vector<StickOpening>;

/// Outline, profile line, centre lines, hardware holes and all that is cut for fittings, read from
/// the show face.
Template frontTemplate(const TemplateSource&, const Alike&);

/// Two fronts can share their template: size, thickness, profile, hardware and fittings are the
/// same.
bool haveSameFront(const FrontPlan&, const FrontPlan&);

/// Mounting, bolt and access holes, bottom panel and least height, read from inside the box: left
/// and right are exchanged.
Template wallTemplate(const TemplateSource&, const Alike&);

/// Two box walls can share their template.
bool haveSameWall(const FrontPlan&, const FrontPlan&);

/// Heights of a bank's openings, fronts, gaps and hole rows, upright, from the lower edge of the
/// member below the bank to the upper edge of the one above it. `bank`: top to bottom, not empty.
Template heightsStick(const TemplateSource&, const StickOpenings& bank);

/// The same for the widths of openings that stand side by side, level, from left to right.
Template widthsStick(const TemplateSource&, const StickOpenings& row);

/// One for the heights of each bank that has a front, then for the widths of its top fronts (of a
/// bank of spaces its top space) one for those that stand side by side.
std::vector<Template> storySticks(const TemplateSource&);

class TemplateDraft;
/// Screw holes, bores and mortises of a front's fittings, each with drill or size, depth and face.
void addFittings(TemplateDraft&, const TemplateSource&, const std::vector<FittingPlan>&);
/// Clear zones and notches of the front's runner on its wall, seen from inside the box.
/// Precondition: it has a runner.
void addRunner(TemplateDraft&, const TemplateSource&, const FrontPlan&);
/// Which runners, how long, how far back, and what is notched out of the box's back.
void addRunnerWords(TemplateDraft&, const TemplateSource&, const RunnerPlan&);
/// Of each pull-out board: one that serves both sides where they are alike. Beside the strip all
/// that is cut for the board is listed.
void addKeeperTemplates(const TemplateSource&, std::vector<Template>&);

/// The row of system holes as it is bored, one stick for all panel faces that have the same;
/// empty where the case has none.
std::vector<Template> rowSticks(const TemplateSource&);

// Words that several templates share.
/// Holes and parts are counted from 1 on paper.
inline std::string number(std::size_t index) {
    return std::to_string(index + 1);
}
std::vector<OpeningId> openingsOf(const Plan&, const Alike&);
/// "Serves 3 fronts: A2, B1 and B2"; "Serves one front: A2".
Phrase servesWhat(const TemplateSource&, const Alike&);
/// A drill's size, exact, so that nobody drills the next one: "Ø3/16 in", "Ø4.5 mm"; number
/// drills with their number: "Ø0.196 in (No. 9)".
std::string drill(const TemplateSource&, Length diameter);

} // namespace frontwright
