#pragma once

#include "core/catalogue/catalogue.h"

namespace frontwright {

/// The program's own catalogue, from the files it carries. They are part of the program: a file
/// that can't be read is a defect of it and stops it.
Catalogue builtInCatalogue();

} // namespace frontwright
