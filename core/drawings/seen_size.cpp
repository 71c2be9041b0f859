#include "core/drawings/seen_size.h"

namespace frontwright {

double pixelsPerMillimetre(double cardWidthInPixels) {
    return cardWidthInPixels / cardWidth.inMillimetres();
}

double cardWidthInPixels(double pixelsPerMillimetre) {
    return pixelsPerMillimetre * cardWidth.inMillimetres();
}

double shrinkSeenFrom(Length from, Length eye) {
    if (from <= Length() || eye <= Length())
        return 1;
    return eye.inMillimetres() / from.inMillimetres();
}

} // namespace frontwright
