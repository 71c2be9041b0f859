// How the maker looks at cases is kept from one start to the next.

#include "ui/window/central_area.h"
#include "ui/window/view_settings.h"

#include "tests/ui/elevation/open_window.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/look/theme.h"

#include <QApplication>
#include <QDockWidget>

namespace frontwright::testing {
namespace {

class Kept : public OpenWindow {
protected:
    ~Kept() override { QApplication::setPalette(windowPalette(Theme::Paper)); }
    static QAction* action(MainWindow& of, const QString& name) {
        return of.findChild<QAction*>(name);
    }
    static void chooseUnit(MainWindow& of, const QString& text) {
        for (QAction* each : of.findChildren<QAction*>())
            if (each->text() == text) {
                each->trigger();
                return;
            }
        ADD_FAILURE() << text.toStdString();
    }
};

TEST_F(Kept, AreTheLayers) {
    const ShownLayers before = view().layers();
    action(window, QStringLiteral("boxes"))->trigger();
    action(window, QStringLiteral("dimensions"))->trigger();
    const ShownLayers chosen = view().layers();
    EXPECT_NE(chosen, before);
    MainWindow next(builtInCatalogue(), settings);
    EXPECT_EQ(next.elevation().layers(), chosen);
}

TEST_F(Kept, IsTheTheme) {
    EXPECT_EQ(keptTheme(settings), std::nullopt) << "the desktop's, until one is chosen";
    action(window, QStringLiteral("dark"))->trigger();
    const Theme chosen = themeOf(QApplication::palette());
    EXPECT_EQ(keptTheme(settings), chosen);
    QApplication::setPalette(
        windowPalette(chosen == Theme::Paper ? Theme::Blueprint : Theme::Paper));
    const MainWindow next(builtInCatalogue(), settings);
    EXPECT_EQ(themeOf(QApplication::palette()), chosen);
}

TEST_F(Kept, AreUnitAndDenominatorOnceChosen) {
    openSample(QStringLiteral("glaze-chest"));
    EXPECT_EQ(session().style(), session().project().style)
        << "the document's, until one is chosen";
    chooseUnit(window, QStringLiteral("Nearest 1/&64 in"));
    chooseUnit(window, QStringLiteral("&Millimetres"));
    EXPECT_FALSE(window.file().isUnsaved());
    MainWindow next(builtInCatalogue(), settings);
    ASSERT_FALSE(
        next.file().open(samplePath(QStringLiteral("glaze-chest")), CaseFile::OpenAs::ReadOnly));
    EXPECT_EQ(next.session().style().unit, Unit::Millimetre);
    EXPECT_EQ(next.session().style().denominator, 64);
    EXPECT_FALSE(next.file().isUnsaved());
    // A new case is shown in the unit that it was made in.
    ASSERT_FALSE(next.file().startNew(newProject(Unit::Inch)));
    EXPECT_EQ(next.session().style().unit, Unit::Inch);
    ASSERT_FALSE(next.file().saveAs(folder.filePath(QStringLiteral("new.frontwright"))));
    EXPECT_EQ(next.session().style().unit, Unit::Inch);
}

TEST_F(Kept, IsWhetherDrawingOrLookIsShown) {
    using Shows = CentralArea::Shows;
    EXPECT_EQ(window.views().shows(), Shows::Drawing) << "until one is chosen";
    for (const Shows shows : {Shows::Look, Shows::Both, Shows::Drawing}) {
        window.views().choose(shows);
        MainWindow next(builtInCatalogue(), settings);
        EXPECT_EQ(next.views().shows(), shows);
    }
    settings.setValue(QStringLiteral("view/shows"), QStringLiteral("dream"));
    EXPECT_EQ(MainWindow(builtInCatalogue(), settings).views().shows(), Shows::Drawing);
}

TEST_F(Kept, AreWhichPanelsAreShown) {
    const auto section = [](MainWindow& of) {
        return of.findChild<QDockWidget*>(QStringLiteral("section"));
    };
    ASSERT_FALSE(section(window)->isHidden());
    section(window)->hide();
    window.resize(1000, 700);
    window.close();
    MainWindow next(builtInCatalogue(), settings);
    EXPECT_TRUE(section(next)->isHidden());
    EXPECT_FALSE(next.findChild<QDockWidget*>(QStringLiteral("findings"))->isHidden());
}

TEST_F(Kept, AreThePanelsThoughTheStartPageHidesThem) {
    window.showStart();
    window.close();
    MainWindow next(builtInCatalogue(), settings);
    EXPECT_FALSE(next.findChild<QDockWidget*>(QStringLiteral("section"))->isHidden());
}

TEST_F(Kept, AndBrokenValuesAreAsIfNoneWere) {
    settings.setValue(QStringLiteral("view/unit"), QStringLiteral("cubit"));
    settings.setValue(QStringLiteral("view/denominator"), 7);
    settings.setValue(QStringLiteral("window/panels"), QStringLiteral("nonsense"));
    settings.setValue(QStringLiteral("window/geometry"), QByteArray("\1\2\3"));
    MainWindow next(builtInCatalogue(), settings);
    ASSERT_FALSE(
        next.file().open(samplePath(QStringLiteral("plan-chest")), CaseFile::OpenAs::ReadOnly));
    EXPECT_EQ(next.session().style(), next.session().project().style);
    EXPECT_FALSE(next.findChild<QDockWidget*>(QStringLiteral("section"))->isHidden());
}

} // namespace
} // namespace frontwright::testing
