#pragma once

#include "core/drawings/drawing.h"
#include "core/plan/exaggerated.h"
#include "core/words/language.h"

namespace frontwright {

/// What a rendering is drawn from. The plan was made from the project and that catalogue.
struct RenderingSubject {
    const Project& project;
    const Catalogue& catalogue;
    const Plan& plan;
    const FrontPlaces& places; ///< placesAsPlanned or placesExaggerated of that plan
    double paperScale = 0.1;   ///< detail that is too fine on paper is left out
    Language language = {};    ///< of its words
};

/// How much wider reveals are drawn where they are to be compared.
inline constexpr double exaggeratedReveals = 10;

/// The case as it will look: the wood's tone and figure, the profile's slopes in a light from the
/// upper left, reveals in the shadow of the fronts, handles. A shop drawing's wash, not a photo:
/// flat tones only. Frame: the case's, origin at its lower left corner. Exaggerated reveals are
/// labelled as such. The same subject draws the same marks; figure follows from the opening's id.
Drawing rendering(const RenderingSubject&);

/// Its parts, for a surface that draws only what is seen: the case without fronts, with the label.
Drawing caseRendering(const RenderingSubject&);
/// One front with its shadow and its handles.
Drawing frontRendering(const RenderingSubject&, std::uint32_t front);

} // namespace frontwright
