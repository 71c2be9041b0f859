#include "ui/rendering/look_panel.h"

#include "core/drawings/seen_size.h"
#include "core/edits/choices.h"
#include "core/edits/uses.h"
#include "tests/ui/elevation/open_window.h"
#include "ui/rendering/card_dialog.h"
#include "ui/rendering/screen_size.h"
#include "ui/window/central_area.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QSlider>
#include <QTest>

#include <array>

namespace frontwright {
namespace {

using testing::OpenWindow;

class Look : public OpenWindow {
protected:
    CentralArea& middle() { return window.views(); }
    LookPanel& panel() { return middle().look(); }
    LookView& look() { return panel().view(); }

    void choose(CentralArea::Shows shows) {
        middle().choose(shows);
        QApplication::processEvents();
    }
    void chooseSize(int index) {
        panel().sizeBox().setCurrentIndex(index);
        Q_EMIT panel().sizeBox().activated(index);
        QApplication::processEvents();
    }
    QPoint onLook(std::size_t front) {
        const PointMm at = look().rendered()->places.fronts[front].center();
        return look().mapFromScene(QPointF(at.x(), at.y()));
    }
};

TEST_F(Look, IsMadeWhenItIsShownForTheFirstTime) {
    EXPECT_EQ(window.findChild<LookPanel*>(), nullptr);
    choose(CentralArea::Shows::Look);
    ASSERT_NE(window.findChild<LookPanel*>(), nullptr);
    EXPECT_TRUE(panel().isVisible());
    EXPECT_FALSE(view().isVisible());
    choose(CentralArea::Shows::Both);
    EXPECT_TRUE(panel().isVisible());
    EXPECT_TRUE(view().isVisible());
    choose(CentralArea::Shows::Drawing);
    EXPECT_FALSE(panel().isVisible());
    EXPECT_TRUE(view().isVisible());
}

TEST_F(Look, IsReachedByKeys) {
    view().setFocus();
    key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(middle().shows(), CentralArea::Shows::Look);
    EXPECT_TRUE(look().hasFocus());
    key(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(middle().shows(), CentralArea::Shows::Both);
    key(Qt::Key_4, Qt::ControlModifier);
    EXPECT_TRUE(panel().revealsBox().isChecked());
    key(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(middle().shows(), CentralArea::Shows::Drawing);
    EXPECT_TRUE(view().hasFocus());
}

TEST_F(Look, SelectsTheFrontThatIsClicked) {
    choose(CentralArea::Shows::Look);
    QTest::mouseClick(look().viewport(), Qt::LeftButton, {}, onLook(1));
    EXPECT_EQ(session().selection().lastOpening(), plan().fronts[1].opening);
    QTest::mouseClick(look().viewport(), Qt::LeftButton, Qt::ShiftModifier, onLook(2));
    EXPECT_EQ(session().selection().openings.size(), 2U);
    QTest::mouseClick(look().viewport(), Qt::LeftButton, {}, QPoint(3, 3));
    EXPECT_TRUE(session().selection().isEmpty());
}

TEST_F(Look, SelectsTheSpaceThatIsClicked) {
    const std::array middle{plan().fronts.at(1).opening};
    ASSERT_TRUE(session().apply(QStringLiteral("Use"),
                                setUse(session().project(), middle, OpeningUse::OpenSpace)));
    session().select({});
    choose(CentralArea::Shows::Look);
    const auto clickOnSpace = [this] {
        const PointMm at = look().rendered()->places.spaces.at(0).center();
        QTest::mouseClick(look().viewport(), Qt::LeftButton, {},
                          look().mapFromScene(QPointF(at.x(), at.y())));
    };
    const QImage before = look().grab().toImage();
    clickOnSpace();
    EXPECT_EQ(session().selection(), Selection::of(middle[0]));
    QApplication::processEvents();
    EXPECT_NE(look().grab().toImage(), before) << "a frame shows it";
    session().select({});
    panel().revealsBox().click();
    clickOnSpace();
    EXPECT_EQ(session().selection(), Selection::of(middle[0])) << "where it is shown then";
}

TEST_F(Look, IsWalkedByArrowKeys) {
    choose(CentralArea::Shows::Look);
    key(Qt::Key_Down);
    EXPECT_EQ(session().selection().lastOpening(), plan().fronts[0].opening);
    key(Qt::Key_Down);
    EXPECT_EQ(session().selection().lastOpening(), plan().fronts[1].opening);
    key(Qt::Key_Up);
    EXPECT_EQ(session().selection().lastOpening(), plan().fronts[0].opening);
}

TEST_F(Look, FollowsAnEditOnlyWhileItIsSeen) {
    choose(CentralArea::Shows::Both);
    const RenderedWork* first = look().rendered();
    ASSERT_NE(first, nullptr);
    session().apply(QStringLiteral("Choose walnut"), setSpecies(session().project(), "walnut"));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return look().rendered()->work->project.fronts.stock.species == "walnut"; }));
    choose(CentralArea::Shows::Drawing);
    session().apply(QStringLiteral("Choose teak"), setSpecies(session().project(), "teak"));
    QTest::qWait(120);
    EXPECT_EQ(look().rendered()->work->project.fronts.stock.species, "walnut");
    choose(CentralArea::Shows::Look);
    EXPECT_EQ(look().rendered()->work->project.fronts.stock.species, "teak");
}

TEST_F(Look, ShowsWhatIsDraggedOnceTheHandRests) {
    choose(CentralArea::Shows::Both);
    session().preview(setSpecies(session().project(), "walnut"));
    EXPECT_EQ(look().rendered()->work->project.fronts.stock.species, "cherry");
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return look().rendered()->work->project.fronts.stock.species == "walnut"; }));
    session().cancelPreview();
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return look().rendered()->work->project.fronts.stock.species == "cherry"; }));
}

TEST_F(Look, ShowsRevealsTenTimesAsWideOnRequest) {
    choose(CentralArea::Shows::Look);
    EXPECT_EQ(look().rendered()->places.reveals, 1);
    panel().revealsBox().click();
    EXPECT_EQ(look().rendered()->places.reveals, 10);
    // What is seen is what is clicked.
    QTest::mouseClick(look().viewport(), Qt::LeftButton, {}, onLook(2));
    EXPECT_EQ(session().selection().lastOpening(), plan().fronts[2].opening);
    panel().revealsBox().click();
    EXPECT_EQ(look().rendered()->places.reveals, 1);
}

TEST_F(Look, SaysWhetherRevealsAreEven) {
    choose(CentralArea::Shows::Look);
    EXPECT_TRUE(panel().said().contains(QStringLiteral("Between fronts: every reveal is")))
        << qPrintable(panel().said());
    openSample(QStringLiteral("glaze-chest"));
    EXPECT_FALSE(panel().said().isEmpty());
}

TEST_F(Look, AtRealSizeIsAsManyPixelsAsTheScreenHasOnAMillimetre) {
    ScreenSize(settings, *window.screen()).setMeasured(4);
    choose(CentralArea::Shows::Look);
    chooseSize(1);
    EXPECT_DOUBLE_EQ(look().scale(), 4);
    chooseSize(3); // 2 m, the eye 0.6 m away
    EXPECT_NEAR(look().scale(), 4 * 0.3, 1e-9);
    chooseSize(0);
    EXPECT_TRUE(look().isFitted());
}

TEST_F(Look, ZoomedByHandIsNoLongerAtRealSize) {
    choose(CentralArea::Shows::Look);
    EXPECT_EQ(panel().sizeBox().currentIndex(), 0);
    chooseSize(1);
    const double before = look().scale();
    key(Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_GT(look().scale(), before);
    EXPECT_EQ(panel().sizeBox().currentIndex(), -1);
    key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_TRUE(look().isFitted());
    EXPECT_EQ(panel().sizeBox().currentIndex(), 0);
}

TEST(CardDialog, TellsPixelsFromTheWidthOfTheCard) {
    CardDialog dialog(4, usualEyeDistance, {});
    auto* slider = dialog.findChild<QSlider*>();
    ASSERT_NE(slider, nullptr);
    EXPECT_EQ(slider->value(), 342); // 85.6 × 4 = 342.4
    slider->setValue(428);
    EXPECT_DOUBLE_EQ(dialog.pixelsPerMm(), 5);
    QTest::keyClick(slider, Qt::Key_Right);
    EXPECT_EQ(slider->value(), 429);
    EXPECT_EQ(dialog.eyeDistance(), usualEyeDistance);
}

} // namespace
} // namespace frontwright
