#include "core/plan/opening_words.h"

namespace frontwright {

Phrase nameOf(OpeningUse use, const std::string& label) {
    switch (use) {
    case OpeningUse::Drawer:
        return phrase("Front %1", label);
    case OpeningUse::FixedFront:
        return phrase("Fixed front %1", label);
    case OpeningUse::Door:
        return phrase("Door %1", label);
    case OpeningUse::OpenSpace:
        return phrase("Open space %1", label);
    case OpeningUse::Board:
        break;
    }
    return phrase("Pull-out board %1", label);
}

} // namespace frontwright
