#include "ui/window/recent_files.h"

namespace frontwright {

namespace {
const QString settingsKey = QStringLiteral("recentFiles");
constexpr qsizetype greatestCount = 10;
} // namespace

QStringList RecentFiles::paths() const {
    return m_settings.value(settingsKey).toStringList();
}

void RecentFiles::add(const QString& path) {
    QStringList list = paths();
    list.removeAll(path);
    list.prepend(path);
    m_settings.setValue(settingsKey, QStringList(list.mid(0, greatestCount)));
}

void RecentFiles::remove(const QString& path) {
    QStringList list = paths();
    list.removeAll(path);
    m_settings.setValue(settingsKey, list);
}

} // namespace frontwright
