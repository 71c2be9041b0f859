// A number on the drawing is clicked and typed anew.

#include "tests/ui/elevation/open_window.h"

#include "ui/elevation/value_entry.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>

namespace frontwright::testing {
namespace {

class TypedSize : public OpenWindow {
protected:
    /// Where the figures of a number of that kind stand in the viewport.
    std::optional<std::pair<QPoint, Quantity>> figures(QuantityKind kind) {
        const QSize size = view().viewport()->size();
        for (int y = 0; y < size.height(); y += 3)
            for (int x = 0; x < size.width(); x += 3) {
                const auto hit = view().elevation().dimensionAt(view().mapToScene(x, y), 0);
                if (hit && hit->quantity.kind == kind)
                    return std::pair(view().mapFromScene(hit->figures.center()), hit->quantity);
            }
        return std::nullopt;
    }
    ValueEntry& entry() { return *view().findChild<ValueEntry*>(); }
};

TEST_F(TypedSize, OfAnOpeningIsOneStep) {
    const auto found = figures(QuantityKind::OpeningHeight);
    ASSERT_TRUE(found);
    const std::string before = bytes();
    click(found->first);
    ASSERT_TRUE(entry().isVisible());
    type(QStringLiteral("6 3/4"));
    EXPECT_EQ(bytes(), before) << "not before Enter";
    key(Qt::Key_Return);
    EXPECT_FALSE(entry().isVisible());
    EXPECT_EQ(valueOf(plan(), found->second), Length::inches(6, 48));
    EXPECT_EQ(session().undoStack().count(), 1);
    session().undoStack().undo();
    EXPECT_EQ(bytes(), before);
}

TEST_F(TypedSize, LeftByEscapeChangesNothing) {
    const auto found = figures(QuantityKind::OpeningHeight);
    ASSERT_TRUE(found);
    const std::string before = bytes();
    click(found->first);
    type(QStringLiteral("5"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(entry().isVisible());
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session().undoStack().count(), 0);
}

TEST_F(TypedSize, ThatHasNoRoomStaysInTheFieldWithTheReason) {
    const auto found = figures(QuantityKind::OpeningHeight);
    ASSERT_TRUE(found);
    const std::string before = bytes();
    click(found->first);
    type(QStringLiteral("99"));
    key(Qt::Key_Return);
    EXPECT_TRUE(entry().isVisible());
    EXPECT_EQ(bytes(), before);
    EXPECT_FALSE(entry().findChild<LengthField*>()->isUnderstood());
    key(Qt::Key_Escape);
    EXPECT_FALSE(entry().isVisible());
}

TEST_F(TypedSize, OpensForTheSelectedRailByEnter) {
    const MemberPlan rail = member(MemberKind::Rail);
    click(middleOf(rail.rect));
    key(Qt::Key_Return);
    ASSERT_TRUE(entry().isVisible());
    type(QStringLiteral("2"));
    key(Qt::Key_Return);
    EXPECT_EQ(plan().memberOf(rail.id)->rect.height(), Length::inches(2));
    EXPECT_EQ(steps(), 1);
}

TEST_F(TypedSize, LettersAreNotTakenForCommands) {
    const auto found = figures(QuantityKind::OpeningHeight);
    ASSERT_TRUE(found);
    click(middleOf(plan().fronts[0].rect) + QPoint(40, 0));
    click(found->first);
    type(QStringLiteral("16 cm"));
    EXPECT_EQ(plan().fronts.size(), 3U) << "c would split into columns";
    key(Qt::Key_Return);
    EXPECT_EQ(valueOf(plan(), found->second), Length::millimetres(160));
}

} // namespace
} // namespace frontwright::testing
