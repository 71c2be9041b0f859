// The section follows what is selected and can be laid upright or level.

#include "tests/ui/elevation/open_window.h"

#include "ui/panels/section_panel.h"

#include <QRadioButton>
#include <QTest>

namespace frontwright::testing {
namespace {

class Sections : public OpenWindow {
protected:
    SectionPanel& panel() { return *window.findChild<SectionPanel*>(); }
    QRadioButton& choice(const QString& name) {
        for (QRadioButton* button : panel().findChildren<QRadioButton*>())
            if (button->accessibleName() == name)
                return *button;
        std::abort();
    }
    QImage seen() { return panel().view().grab().toImage(); }
    Selection holeOf(std::size_t front, std::uint32_t hole) {
        Selection selection = Selection::of(plan().fronts.at(front).opening);
        selection.mountingHole = hole;
        return selection;
    }
};

TEST_F(Sections, AreUprightUntilTheLevelOneIsAskedFor) {
    session().select(holeOf(0, 0));
    EXPECT_EQ(panel().view().plane(), SectionView::Plane::Upright);
    const QImage upright = seen();
    QTest::mouseClick(&choice(QStringLiteral("Level")), Qt::LeftButton);
    EXPECT_EQ(panel().view().plane(), SectionView::Plane::Level);
    EXPECT_NE(seen(), upright);
    QTest::mouseClick(&choice(QStringLiteral("Upright")), Qt::LeftButton);
    EXPECT_EQ(seen(), upright);
}

TEST_F(Sections, FollowTheSelectedHoleAndHandle) {
    choice(QStringLiteral("Level")).click();
    session().select(holeOf(0, 0));
    const QImage low = seen();
    session().select(holeOf(0, 1));
    EXPECT_NE(seen(), low);
    Selection handle = Selection::of(plan().fronts[0].opening);
    handle.handleHole = 0;
    session().select(handle);
    EXPECT_NE(seen(), low);
    session().select({});
    EXPECT_NE(seen(), low);
}

TEST_F(Sections, AreNeitherUndoStepsNorUnsavedChanges) {
    choice(QStringLiteral("Level")).click();
    EXPECT_EQ(session().undoStack().count(), 0);
    EXPECT_FALSE(window.file().isUnsaved());
}

} // namespace
} // namespace frontwright::testing
