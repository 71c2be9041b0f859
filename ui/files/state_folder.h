#pragma once

#include <QString>

namespace frontwright {

/// Where the program keeps what must outlive it but is nobody's document: recovery copies, reports
/// of crashes. $XDG_STATE_HOME/frontwright, else ~/.local/state/frontwright (XDG Base Directory
/// Specification 0.8); a folder of its own in Qt's test mode. Not made here.
QString stateFolder();

} // namespace frontwright
