#include "core/results/result.h"

namespace frontwright {

Phrase Error::sentence() const {
    if (place.empty())
        return remedy.empty() ? what : phrase("%1; %2", what, remedy);
    return remedy.empty() ? phrase("%1: %2", place, what)
                          : phrase("%1: %2; %3", place, what, remedy);
}

} // namespace frontwright
