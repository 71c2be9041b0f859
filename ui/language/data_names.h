#pragma once

#include <QString>

#include <string>

namespace frontwright {

/// A name of the program's own data (a catalogue entry, a sample) in the window's language; one
/// that the maker gave is told as it is.
QString toldName(const std::string& name);

} // namespace frontwright
