#include "core/results/result.h"

namespace frontwright {

std::string Error::sentence() const {
    std::string text = place.empty() ? what : place + ": " + what;
    if (!remedy.empty())
        text += "; " + remedy;
    return text;
}

} // namespace frontwright
