#pragma once

#include "core/lengths/length.h"

namespace frontwright {

// How large a drawing has to be on a screen, so that it looks as the case itself does.

/// An identification card (ID-1): 85.60 mm × 53.98 mm, ISO/IEC 7810. Everybody has one at hand to
/// hold against the screen.
inline constexpr Length cardWidth = Length::fromMicrometres(85'600);
inline constexpr Length cardHeight = Length::fromMicrometres(53'980);

/// From the eye to the screen, where the maker gives nothing. Common practice, no source.
inline constexpr Length usualEyeDistance = Length::millimetres(600);

/// Pixels per millimetre of the screen on which a card is so many pixels wide.
double pixelsPerMillimetre(double cardWidthInPixels);
/// The same the other way round.
double cardWidthInPixels(double pixelsPerMillimetre);

/// How much smaller than itself a thing is drawn on a screen `eye` away, so that it looks as large
/// as from `from`: eye / from, since both then fill the same angle. 1 where a distance is not
/// greater than 0.
double shrinkSeenFrom(Length from, Length eye);

} // namespace frontwright
