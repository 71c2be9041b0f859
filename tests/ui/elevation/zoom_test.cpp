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
