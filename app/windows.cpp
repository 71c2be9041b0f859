#include "app/windows.h"

#include "ui/files/built_in_catalogue.h"
#include "ui/files/crash_report.h"
#include "ui/files/state_folder.h"
#include "ui/look/theme.h"
#include "ui/window/main_window.h"
#include "ui/window/start_notes.h"
#include "ui/window/view_settings.h"

#include <QApplication>
#include <QIcon>
#include <QTimer>

namespace frontwright {

Windows::Windows()
    : m_settings(openSettings(QSettings().fileName())),
      m_language(keptLanguage(*m_settings.settings).value_or(languageOf(QLocale::system()))) {
    // Wayland takes the icon from the desktop file, X11 from the window.
    QIcon icon;
    for (const char* file : {":/icons/frontwright-48.png", ":/icons/frontwright-128.png"})
        icon.addFile(QLatin1String(file));
    QApplication::setWindowIcon(icon);
    const Theme desktops = themeOf(QApplication::palette());
    QApplication::setPalette(windowPalette(keptTheme(*m_settings.settings).value_or(desktops)));
}

MainWindow* Windows::open(const QString& file) {
    auto* window = new MainWindow(builtInCatalogue(), *m_settings.settings);
    window->setAttribute(Qt::WA_DeleteOnClose);
    connect(window, &MainWindow::windowWanted, this, &Windows::open);
    if (file.isEmpty())
        window->showStart();
    window->show();
    if (!file.isEmpty() && !window->openPath(file))
        window->showStart();
    return window;
}

void Windows::start(const std::vector<std::string>& files) {
    MainWindow* first = nullptr;
    for (const std::string& file : files) {
        MainWindow* window = open(QString::fromStdString(file));
        first = first ? first : window;
    }
    const bool showsNoCase = files.empty();
    if (!first)
        first = open({});
    // Once the window is on the screen.
    QTimer::singleShot(0, first, [this, first, showsNoCase] { tell(*first, showsNoCase); });
}

void Windows::tell(MainWindow& window, bool showsNoCase) {
    if (!m_settings.keptAside.isEmpty())
        tellOfBadSettings(m_settings.keptAside, window);
    if (const QStringList reports = takeCrashReports(stateFolder()); !reports.isEmpty())
        tellOfCrashes(reports, window);
    if (showsNoCase) {
        offerRecovery(window.recovery(), window);
        return;
    }
    // Its own case stays where it is; what is recovered opens beside it.
    if (window.recovery().abandoned().isEmpty())
        return;
    MainWindow* beside = open({});
    if (!offerRecovery(beside->recovery(), *beside))
        beside->close();
}

} // namespace frontwright
