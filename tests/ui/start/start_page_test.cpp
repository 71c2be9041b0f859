// The start page: what to do while no case is open.

#include "ui/start/start_page.h"

#include "tests/ui/elevation/open_window.h"
#include "ui/window/central_area.h"
#include "ui/window/start_place.h"

#include <QAccessible>
#include <QApplication>
#include <QDockWidget>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>

#include <algorithm>

namespace frontwright::testing {
namespace {

class Start : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        window.showStart();
        QApplication::processEvents();
    }
    StartPage& page() { return *window.start().page(); }
    int shownPanels() {
        int count = 0;
        for (const QDockWidget* dock : window.findChildren<QDockWidget*>())
            count += !dock->isHidden();
        return count;
    }
    QPushButton* button(const QString& text) {
        for (QPushButton* each : page().findChildren<QPushButton*>())
            if (each->text() == text)
                return each;
        return nullptr;
    }
};

TEST_F(Start, ShowsThePageAloneAndAnOpenedCaseWithItsPanels) {
    EXPECT_TRUE(page().isVisible());
    EXPECT_FALSE(view().isVisible());
    EXPECT_EQ(shownPanels(), 0);
    EXPECT_FALSE(window.windowTitle().contains(QLatin1String("New case")));
    ASSERT_FALSE(window.file().startNew(threeRows()));
    EXPECT_FALSE(page().isVisible());
    EXPECT_TRUE(view().isVisible());
    EXPECT_GT(shownPanels(), 4);
}

TEST_F(Start, LetsNoActionTouchTheCaseThatIsNotSeen) {
    ASSERT_FALSE(window.file().startNew(threeRows()));
    session().select(Selection::of(plan().fronts[0].opening));
    window.showStart();
    QApplication::processEvents();
    const std::string before = bytes();
    const LengthStyle style = session().style();
    for (const QKeySequence& keys :
         {QKeySequence(Qt::Key_R), QKeySequence(Qt::Key_C), QKeySequence(Qt::Key_J),
          QKeySequence(Qt::Key_L), QKeySequence(Qt::ALT | Qt::Key_1),
          QKeySequence(Qt::CTRL | Qt::Key_2), QKeySequence(Qt::CTRL | Qt::Key_Z)})
        QTest::keyClick(&window, static_cast<Qt::Key>(keys[0].key()), keys[0].keyboardModifiers());
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session().style(), style);
    EXPECT_EQ(view().layers().dimensions, Shown::Yes);
    EXPECT_EQ(window.views().shows(), CentralArea::Shows::Drawing);
    EXPECT_TRUE(window.start().isShown());
    // Once it is seen again, they work.
    window.start().leave();
    QApplication::processEvents();
    QTest::keyClick(&window, Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(view().layers().dimensions, Shown::No);
}

TEST_F(Start, IsReachedFromAnOpenCaseAndLeadsBackToIt) {
    ASSERT_FALSE(window.file().startNamed(threeRows(), QStringLiteral("Tools & files"),
                                          CaseFile::Mark::Saved));
    for (QAction* action : window.findChildren<QAction*>())
        if (action->text() == QStringLiteral("Start pa&ge"))
            action->trigger();
    ASSERT_TRUE(window.start().isShown());
    QPushButton* back = button(QStringLiteral("&Back to Tools && files"));
    ASSERT_NE(back, nullptr);
    EXPECT_TRUE(back->isVisible());
    QTest::mouseClick(back, Qt::LeftButton);
    EXPECT_FALSE(window.start().isShown());
    EXPECT_EQ(session().project(), threeRows());
    // With no case there is nothing to lead back to.
    window.showStart();
    EXPECT_FALSE(back->isVisible());
}

TEST_F(Start, DrawsEverySampleFromItsOwnDocument) {
    ASSERT_GE(page().samples().size(), 3U);
    for (const SampleCard* card : page().samples()) {
        EXPECT_TRUE(QTest::qWaitFor([&] { return card->isDrawn(); }, 60'000));
        EXPECT_FALSE(card->text().isEmpty());
    }
    // The drawing is there: more than sheet and frame.
    SampleCard& card = *page().samples().front();
    const QImage picture = card.grab().toImage();
    SampleCard empty(card.sample().fileName);
    empty.resize(card.size());
    EXPECT_NE(empty.grab().toImage(), picture);
}

TEST_F(Start, StandsSamplesBesideEachOtherAsFarAsThereIsRoom) {
    const auto inFirstRow = [this](int width) {
        window.resize(width, 800);
        QApplication::processEvents();
        const auto& cards = page().samples();
        return std::ranges::count_if(
            cards, [&](const SampleCard* card) { return card->y() == cards.front()->y(); });
    };
    const auto few = inFirstRow(700), more = inFirstRow(1900);
    EXPECT_GE(few, 1);
    EXPECT_GT(more, few);
    EXPECT_EQ(inFirstRow(700), few);
    EXPECT_FALSE(page().horizontalScrollBar()->isVisible());
}

TEST_F(Start, ReadsNoSampleBeforeThePageIsThere) {
    StartPage unseen(session().programsCatalogue());
    ASSERT_FALSE(unseen.samples().empty());
    for (const SampleCard* card : unseen.samples())
        EXPECT_FALSE(card->isRead());
    SampleCard& wanted = *unseen.samples().back();
    QString opened;
    QObject::connect(&unseen, &StartPage::sampleWanted,
                     [&](const SampleCase& sample) { opened = sample.fileName; });
    QTest::keyClick(&wanted, Qt::Key_Space);
    EXPECT_EQ(opened, QStringLiteral("writing-chest.frontwright")) << "wanted sooner";
    EXPECT_FALSE(unseen.samples().front()->isRead());
}

TEST_F(Start, OpensASampleAsACaseOfItsOwn) {
    SampleCard& card = *page().samples().front();
    QTest::mouseClick(&card, Qt::LeftButton);
    EXPECT_FALSE(window.start().isShown());
    EXPECT_EQ(session().project(), card.sample().project);
    EXPECT_FALSE(window.file().hasPath()) << "the sample itself is never saved over";
    EXPECT_FALSE(window.file().isUnsaved());
    EXPECT_TRUE(window.file().name().contains(card.sample().fileName));
}

TEST_F(Start, IsUsedByTheKeyboardAlone) {
    SampleCard& card = *page().samples().back();
    card.setFocus();
    QTest::keyClick(&card, Qt::Key_Space);
    EXPECT_EQ(session().project(), card.sample().project);
}

TEST_F(Start, NamesAllThatTakesTheKeyboard) {
    page().showRecent({QStringLiteral("/no/such/a.frontwright")});
    int count = 0;
    for (QWidget* widget : page().findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus ||
            widget->objectName().startsWith(QLatin1String("qt_")))
            continue;
        ++count;
        QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(accessible, nullptr);
        EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className();
    }
    const auto samples = static_cast<int>(page().samples().size());
    EXPECT_EQ(count, 4 + samples) << "new, open, the way back, one recent case, the samples";
}

TEST_F(Start, ListsRecentCasesByNameThoughTheyAreGone) {
    page().showRecent({});
    EXPECT_FALSE(page().findChildren<QLabel*>().isEmpty());
    page().showRecent({QStringLiteral("/no/such/a & b.frontwright")});
    QPushButton* recent = button(QStringLiteral("a && b.frontwright"));
    ASSERT_NE(recent, nullptr);
    QString wanted;
    QObject::disconnect(&page(), &StartPage::recentWanted, nullptr, nullptr);
    QObject::connect(&page(), &StartPage::recentWanted, &page(),
                     [&](const QString& path) { wanted = path; });
    recent->click();
    EXPECT_EQ(wanted, QStringLiteral("/no/such/a & b.frontwright"));
}

TEST_F(Start, ComesBackWhenTheCaseIsClosed) {
    ASSERT_FALSE(window.file().startNew(threeRows()));
    ASSERT_FALSE(window.start().isShown());
    for (QAction* action : window.findChildren<QAction*>())
        if (action->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_W))
            action->trigger();
    EXPECT_TRUE(window.start().isShown());
    EXPECT_EQ(shownPanels(), 0);
}

} // namespace
} // namespace frontwright::testing
