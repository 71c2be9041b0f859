#include "app/commands.h"
#include "app/windows.h"
#include "ui/files/crash_report.h"
#include "ui/files/state_folder.h"
#include "ui/language/language.h"
#include "ui/look/roomy_style.h"
#include "ui/look/theme.h"

#include <QApplication>
#include <QHashSeed>
#include <QPalette>

#include <cstdio>

using namespace frontwright;

namespace {

/// Drawing needs a platform, but no screen.
void drawWithoutDisplay() {
    if (!qEnvironmentVariableIsSet("DISPLAY") && !qEnvironmentVariableIsSet("WAYLAND_DISPLAY") &&
        !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    // Qt looks for a folder that only a desktop session has, and says so on stderr.
    if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR"))
        qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
            if (type >= QtCriticalMsg)
                std::fprintf(stderr, "%s\n", qPrintable(text));
        });
}

int runWindow(const WindowCommand& command, int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("DISPLAY") && !qEnvironmentVariableIsSet("WAYLAND_DISPLAY") &&
        !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        return failedWith(
            {text("window"), text("there is no display to open it on"),
             text("use check, plan, templates or picture, or start it on a desktop")});
    QApplication app(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("frontwright"));
    QApplication::setApplicationName(QStringLiteral("frontwright"));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.frontwright.frontwright"));
    writeCrashReportsTo(stateFolder(), QStringLiteral(FRONTWRIGHT_VERSION));
    QApplication::setStyle(new RoomyStyle);
    Windows windows;
    windows.start(command.files);
    return QApplication::exec();
}

template<class DrawingCommand>
int runDrawing(const DrawingCommand& command, int argc, char** argv) {
    drawWithoutDisplay();
    const QApplication app(argc, argv);
    const SpokenLanguage language(languageOf(QLocale::system()));
    QApplication::setStyle(new RoomyStyle);
    QApplication::setPalette(windowPalette(themeOf(QApplication::palette())));
    return run(command);
}

struct Runner {
    int argc;
    char** argv;

    int operator()(const WindowCommand& command) const { return runWindow(command, argc, argv); }
    int operator()(const CheckCommand& command) const { return run(command); }
    int operator()(const PlanCommand& command) const { return run(command); }
    int operator()(const TemplatesCommand& command) const {
        return runDrawing(command, argc, argv);
    }
    int operator()(const PictureCommand& command) const { return runDrawing(command, argc, argv); }
    int operator()(const RulesCommand& command) const { return run(command); }
    int operator()(const HelpCommand&) const {
        std::fputs(helpText().c_str(), stdout);
        return exitWell;
    }
    int operator()(const VersionCommand&) const {
        std::puts("frontwright " FRONTWRIGHT_VERSION);
        return exitWell;
    }
};

} // namespace

int main(int argc, char** argv) {
    // The order in which Qt writes fonts into a PDF follows its hashes.
    QHashSeed::setDeterministicGlobalSeed();
    const auto command = readCommandLine({argv + 1, argv + argc});
    if (!command.ok())
        return failedWith(command.error());
    return std::visit(Runner{argc, argv}, command.value());
}
