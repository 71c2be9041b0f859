#pragma once

#include <QString>

namespace frontwright {

class Session;

/// What is selected, for the status bar: "Front B2: 18 × 6 1/2 in"; empty where nothing is.
QString selectionWords(const Session&);

} // namespace frontwright
