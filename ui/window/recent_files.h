#pragma once

#include <QSettings>
#include <QStringList>

namespace frontwright {

/// The ten files that were open last, newest first. Never looks at the disk: a dead network path
/// must not hold up a menu.
class RecentFiles {
public:
    explicit RecentFiles(QSettings& settings) : m_settings(settings) {}

    [[nodiscard]] QStringList paths() const;
    void add(const QString& path);
    void remove(const QString& path);

private:
    QSettings& m_settings;
};

} // namespace frontwright
