// How the case lies in its view: whole, or as far away as it may be.

#include "tests/ui/elevation/open_window.h"
#include "ui/elevation/scene_rect.h"

#include <QApplication>

namespace frontwright::testing {
namespace {

class Zoom : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        openSample(QStringLiteral("glaze-chest"));
    }
    QSizeF caseOnScreen() {
        return view().mapFromScene(inScene(plan().outline)).boundingRect().size();
    }
    /// Everything that is drawn, figures too, in the viewport.
    QRect drawn() { return view().mapFromScene(view().elevation().extent()).boundingRect(); }
};

TEST_F(Zoom, OutEndsWhileTheCaseIsStillSeen) {
    for (int i = 0; i < 60; ++i)
        view().zoom(ElevationView::Zoom::Out);
    const QSizeF room = view().viewport()->size(), seen = caseOnScreen();
    const double share = std::max(seen.width() / room.width(), seen.height() / room.height());
    EXPECT_GT(share, 0.18);
    EXPECT_LT(share, 0.25);
    view().zoom(ElevationView::Zoom::In);
    EXPECT_GT(caseOnScreen().width(), seen.width());
}

TEST_F(Zoom, GivesTheCaseTheGreaterPartOfASmallView) {
    for (const char* sample : {"linen-cupboard", "binding-bench", "sink-base", "writing-chest"}) {
        openSample(QLatin1String(sample));
        for (const QSize size : {QSize(420, 300), QSize(300, 420), QSize(900, 700)}) {
            view().setFixedSize(size);
            QApplication::processEvents();
            view().fit();
            const QSizeF room = view().viewport()->size(), seen = caseOnScreen();
            EXPECT_GT(std::max(seen.width() / room.width(), seen.height() / room.height()), 0.4)
                << sample << " in " << size.width() << " × " << size.height();
            EXPECT_TRUE(view().viewport()->rect().contains(drawn())) << sample;
        }
    }
}

TEST_F(Zoom, InBringsTheFiguresThatASmallViewHasNoRoomFor) {
    openSample(QStringLiteral("linen-cupboard"));
    view().setFixedSize(420, 300);
    QApplication::processEvents();
    view().fit();
    const auto besideTheCase = [this] { return drawn().width() - caseOnScreen().width(); };
    const double fitted = besideTheCase();
    view().zoom(ElevationView::Zoom::In);
    EXPECT_GT(besideTheCase(), fitted);
    view().fit();
    EXPECT_EQ(besideTheCase(), fitted);
}

TEST_F(Zoom, FitsAgainWhenFiguresAreInAnotherUnit) {
    for (const Unit unit : {Unit::Millimetre, Unit::Inch}) {
        LengthStyle style = session().style();
        style.unit = unit;
        session().setStyle(style);
        QApplication::processEvents();
        EXPECT_TRUE(view().viewport()->rect().contains(drawn()))
            << drawn().width() << " × " << drawn().height();
    }
}

TEST_F(Zoom, StaysWhereTheMakerZoomedWhenTheUnitIsTurned) {
    view().zoom(ElevationView::Zoom::In);
    view().zoom(ElevationView::Zoom::In);
    const double scale = view().scale();
    LengthStyle style = session().style();
    style.unit = Unit::Millimetre;
    session().setStyle(style);
    EXPECT_DOUBLE_EQ(view().scale(), scale);
}

} // namespace
} // namespace frontwright::testing
