#include "core/words/figure.h"

namespace frontwright {
namespace {

bool isDigitAt(std::string_view figures, std::size_t at) {
    return at < figures.size() && figures[at] >= '0' && figures[at] <= '9';
}

} // namespace

Phrase figure(std::string_view withPoints) {
    for (std::size_t at = withPoints.find('.'); at != std::string_view::npos;
         at = withPoints.find('.', at + 1))
        if (at > 0 && isDigitAt(withPoints, at - 1) && isDigitAt(withPoints, at + 1))
            return phrase("%1.%2", std::string(withPoints.substr(0, at)),
                          figure(withPoints.substr(at + 1)));
    return std::string(withPoints);
}

} // namespace frontwright
