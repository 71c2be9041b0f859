// Each main state of the window as a picture, to be looked at. Not a test: nothing fails here.
//
//   frontwright_gallery FOLDER      writes FOLDER/<state>-<theme>-<unit>-<scale>x.png

#include "tests/gallery/states.h"

#include "ui/files/built_in_catalogue.h"
#include "ui/language/language.h"
#include "ui/look/roomy_style.h"
#include "ui/look/theme.h"

#include <QApplication>
#include <QDir>
#include <QHashSeed>
#include <QTemporaryDir>

#include <cstdio>

using namespace frontwright;

namespace {

QString nameOf(const gallery::State& state, Theme theme, Unit unit, double ratio) {
    return QStringLiteral("%1-%2-%3-%4x.png")
        .arg(QString::fromLatin1(state.name),
             theme == Theme::Paper ? QStringLiteral("light") : QStringLiteral("dark"),
             unit == Unit::Inch ? QStringLiteral("inch") : QStringLiteral("mm"),
             QString::number(ratio));
}

void draw(const gallery::State& state, Theme theme, Unit unit, const QDir& folder) {
    QApplication::setPalette(windowPalette(theme));
    const QTemporaryDir home;
    QSettings settings(home.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    MainWindow window(builtInCatalogue(), settings);
    window.resize(1360, 900);
    window.show();
    QApplication::processEvents();
    const QPixmap picture = state.grab(window, unit);
    const QString name = nameOf(state, theme, unit, picture.devicePixelRatio());
    if (!picture.save(folder.filePath(name)))
        std::fprintf(stderr, "%s: can't be written\n", qPrintable(folder.filePath(name)));
}

} // namespace

int main(int argc, char** argv) {
    QHashSeed::setDeterministicGlobalSeed();
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    QApplication::setStyle(new frontwright::RoomyStyle);
    const SpokenLanguage language(languageOf(QLocale::system()));
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() < 2) {
        std::fputs("frontwright_gallery FOLDER [STATE...]\n", stderr);
        return 2;
    }
    const QDir folder(arguments[1]);
    folder.mkpath(QStringLiteral("."));
    for (const gallery::State& state : gallery::states()) {
        if (arguments.size() > 2 && !arguments.contains(QString::fromLatin1(state.name)))
            continue;
        for (const Theme theme : {Theme::Paper, Theme::Blueprint})
            for (const Unit unit : {Unit::Inch, Unit::Millimetre})
                draw(state, theme, unit, folder);
    }
    return 0;
}
