#pragma once

#include "tests/ui/elevation/open_window.h"

#include <QDialog>

#include <memory>
#include <vector>

namespace frontwright::testing {

/// Every dialog of ours, not shown yet. A new dialog is to be added here: names, room for large
/// letters, sizes of targets and help are looked at for all of them.
std::vector<std::unique_ptr<QDialog>> everyDialog(Session&, QSettings&);

} // namespace frontwright::testing
