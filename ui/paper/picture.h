#pragma once

#include "core/drawings/drawing.h"
#include "core/results/result.h"

#include <QByteArray>

namespace frontwright {

/// A drawing as a PNG of 150 dots per paper inch, black on white. Error: too large a picture.
Result<QByteArray> pngOf(const Drawing&);

} // namespace frontwright
