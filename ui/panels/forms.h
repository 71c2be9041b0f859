#pragma once

#include "core/edits/divisions.h"
#include "ui/panels/property_form.h"

namespace frontwright {

// One form for each kind of decision. For a front they show what holds for it, its own or the
// case's; for the case its defaults.
PropertyForm* caseForm(Session&);
PropertyForm* surroundingsForm(Session&); ///< what stands at the four sides of the case
PropertyForm* systemHolesForm(Session&);
PropertyForm* drawingForm(Session&); ///< title, note, unit and grid of the document
PropertyForm* openingForm(Session&);
PropertyForm* fitForm(Session&);
PropertyForm* stockForm(Session&); ///< thickness
PropertyForm* woodForm(Session&);  ///< species, cut, grain
PropertyForm* profileForm(Session&);
PropertyForm* boxForm(Session&);
PropertyForm* boardForm(Session&); ///< of an opening for a pull-out board
PropertyForm* mountingForm(Session&);
PropertyForm* hardwareForm(Session&);
PropertyForm* fittingForm(Session&); ///< held by screws, beside the handle
PropertyForm* limitsForm(Session&);

/// The front's own spec where it decides for itself, else the case's.
template<class Own, class Spec>
const Spec& specOf(const Project& project, EditTarget target, Own FrontChoices::*own,
                   Spec FrontDefaults::*common) {
    if (target.opening)
        if (const Opening* opening = findOpening(project, *target.opening))
            if (const auto& choice = opening->choices.*own)
                return *choice;
    return project.fronts.*common;
}

/// Marks a form whose whole spec a front can decide for itself, and lets it follow the case again.
template<class Own>
void followsCase(PropertyForm& form, Own FrontChoices::*own, Choice choice) {
    form.setOwn(
        [own](const Project& project, EditTarget target) {
            const Opening* opening = findOpening(project, *target.opening);
            return opening && (opening->choices.*own).has_value();
        },
        [choice](const Project& project, EditTarget target) {
            return clearChoice(project, *target.opening, choice);
        });
}

} // namespace frontwright
