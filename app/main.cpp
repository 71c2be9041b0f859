#include "ui/files/built_in_catalogue.h"
#include "ui/look/theme.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QHashSeed>
#include <QSettings>

int main(int argc, char** argv) {
    // The order in which Qt writes fonts into a PDF follows its hashes.
    QHashSeed::setDeterministicGlobalSeed();
    QApplication app(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("frontwright"));
    QApplication::setApplicationName(QStringLiteral("frontwright"));
    QApplication::setPalette(
        frontwright::windowPalette(frontwright::themeOf(QApplication::palette())));
    QSettings settings;
    frontwright::MainWindow window(frontwright::builtInCatalogue(), settings);
    window.show();
    if (app.arguments().size() > 1)
        window.openPath(app.arguments().at(1));
    return QApplication::exec();
}
