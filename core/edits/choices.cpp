#include "core/edits/choices.h"

#include "core/edits/choices_checks.h"
#include "core/edits/divisions.h"
#include "core/edits/faces.h"
#include "core/edits/presets.h"
#include "core/edits/tree_paths.h"

namespace frontwright {
namespace {

/// Sets `value` as the case's default, or as the opening's own decision.
template<class Value>
Result<Project> setFor(const Project& project, EditTarget target, const Value& value,
                       Value FrontDefaults::*ofCase, Rare<Value> FrontChoices::*ofOpening) {
    if (target.opening)
        return changeOpening(project, *target.opening, [&](Opening opening) {
            opening.choices.*ofOpening = value;
            return opening;
        });
    Project changed = project;
    changed.fronts.*ofCase = value;
    return changed;
}

template<class Value>
Result<Project> setChecked(const Project& project, EditTarget target, const Value& value,
                           Value FrontDefaults::*ofCase, Rare<Value> FrontChoices::*ofOpening) {
    if (std::optional<Error> error = impossible(value))
        return std::move(*error);
    return setFor(project, target, value, ofCase, ofOpening);
}

Result<Project> setText(const Project& project, Text what, std::string_view typed,
                        std::string Project::*where) {
    if (std::optional<Error> error = impossibleText(what, typed))
        return std::move(*error);
    Project changed = project;
    changed.*where = typed;
    return changed;
}

} // namespace

Result<Project> setFrontFit(const Project& project, EditTarget target, Side side, SideFit fit) {
    if (std::optional<Error> error = impossible(fit))
        return std::move(*error);
    if (target.opening)
        return changeOpening(project, *target.opening, [&](Opening opening) {
            opening.choices.fit[side] = fit;
            return opening;
        });
    Project changed = project;
    changed.fronts.fit[side] = fit;
    return changed;
}

Result<Project> setThickness(const Project& project, EditTarget target, WrittenLength thickness) {
    if (std::optional<Error> error = notPositive(text("the thickness of a front"), thickness))
        return std::move(*error);
    return setFor(project, target, thickness, &FrontDefaults::thickness, &FrontChoices::thickness);
}

Result<Project> setProfile(const Project& project, EditTarget target, const Profile& profile) {
    return setChecked(project, target, profile, &FrontDefaults::profile, &FrontChoices::profile);
}

Result<Project> setBox(const Project& project, EditTarget target, const BoxSpec& box) {
    if (target.opening)
        target.opening = decidesBox(project, *target.opening);
    return setChecked(project, target, box, &FrontDefaults::box, &FrontChoices::box);
}

Result<Project> setMounting(const Project& project, EditTarget target,
                            const MountingSpec& mounting) {
    return setChecked(project, target, mounting, &FrontDefaults::mounting, &FrontChoices::mounting);
}

Result<Project> setHardware(const Project& project, EditTarget target,
                            const HardwareSpec& hardware) {
    return setChecked(project, target, hardware, &FrontDefaults::hardware, &FrontChoices::hardware);
}

Result<Project> clearChoice(const Project& project, OpeningId id, Choice choice) {
    const std::span<const OpeningId> one(&id, 1);
    switch (choice) {
    case Choice::Thickness:
    case Choice::Stock:
        break;
    case Choice::Profile:
        return followCase(project, one, PresetKind::Profile);
    case Choice::Box:
        return followCase(project, one, PresetKind::Box);
    case Choice::Mounting:
        return followCase(project, one, PresetKind::Mounting);
    case Choice::Hardware:
        return followCase(project, one, PresetKind::Hardware);
    }
    return changeOpening(project, id, [choice](Opening opening) {
        if (choice == Choice::Stock)
            opening.choices.stock.reset();
        else
            opening.choices.thickness.reset();
        return opening;
    });
}

Result<Project> clearFrontFit(const Project& project, OpeningId id, Side side) {
    return changeOpening(project, id, [side](Opening opening) {
        opening.choices.fit[side].reset();
        return opening;
    });
}

Result<Project> setStock(const Project& project, EditTarget target, const Stock& stock) {
    if (std::optional<Error> error = impossibleText(text("the species"), stock.species))
        return std::move(*error);
    return setFor(project, target, stock, &FrontDefaults::stock, &FrontChoices::stock);
}

Result<Project> setSpecies(const Project& project, std::string_view species) {
    Stock stock = project.fronts.stock;
    stock.species = species;
    return setStock(project, {}, stock);
}

Result<Project> setAir(const Project& project, const std::optional<Air>& air) {
    if (air)
        if (std::optional<Error> error = impossible(*air))
            return std::move(*error);
    Project changed = project;
    changed.air = air;
    return changed;
}

Result<Project> setLimits(const Project& project, const Limits& limits) {
    if (std::optional<Error> error = impossible(limits))
        return std::move(*error);
    Project changed = project;
    changed.limits = limits;
    return changed;
}

Result<Project> setStyle(const Project& project, LengthStyle style) {
    const int n = style.denominator;
    if (n != 8 && n != 16 && n != 32 && n != 64)
        return Error{{}, text("inches are shown in 8ths, 16ths, 32nds or 64ths"), {}};
    Project changed = project;
    changed.style = style;
    return changed;
}

Result<Project> setTitle(const Project& project, std::string_view title) {
    return setText(project, text("the title"), title, &Project::title);
}

Result<Project> setNote(const Project& project, std::string_view note) {
    return setText(project, text("the note"), note, &Project::note);
}

Result<Project> renameOpening(const Project& project, OpeningId id, std::string_view name) {
    if (std::optional<Error> error = impossibleText(text("the name"), name))
        return std::move(*error);
    return changeOpening(project, id, [name](Opening opening) {
        opening.name = name;
        return opening;
    });
}

CaseMeasures measuresOf(const Case& casework) {
    return {casework.frame, casework.frameThickness, casework.depth, casework.grid};
}

Result<Project> setCase(const Project& project, const CaseMeasures& measures) {
    for (const Side side : allSides)
        if (auto error = negative(text("the width of a frame member"), measures.frame[side]))
            return std::move(*error);
    if (auto error = notPositive(text("the thickness of the frame"), measures.frameThickness))
        return std::move(*error);
    if (auto error = notPositive(text("the depth of the case"), measures.depth))
        return std::move(*error);
    if (auto error = notPositive(text("the grid"), measures.grid))
        return std::move(*error);
    Project changed = project;
    changed.casework.frame = measures.frame;
    changed.casework.frameThickness = measures.frameThickness;
    changed.casework.depth = measures.depth;
    changed.casework.grid = measures.grid;
    return laidOut(std::move(changed));
}

} // namespace frontwright
