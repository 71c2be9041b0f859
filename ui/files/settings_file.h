#pragma once

#include <QSettings>
#include <QString>

#include <memory>

namespace frontwright {

struct OpenedSettings {
    std::unique_ptr<QSettings> settings;
    /// Where a file that could not be read was put; empty where all is well.
    QString keptAside;
};

/// Opens an INI file of settings. One that can't be read is moved to "name.bad" ("name.bad2", …)
/// and the settings begin with defaults.
OpenedSettings openSettings(const QString& path);

} // namespace frontwright
