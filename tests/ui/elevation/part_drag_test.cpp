// Mounting holes and handles are dragged, nudged and typed, as a maker does it.

#include "tests/ui/elevation/open_window.h"

#include "ui/elevation/part_words.h"
#include "ui/elevation/value_entry.h"

#include "core/edits/choices.h"
#include "core/plan/chosen.h"

#include <QApplication>
#include <QLabel>
#include <QTest>

namespace frontwright::testing {
namespace {

class PlacingParts : public OpenWindow {
protected:
    PlacedPart hole(std::size_t front, std::uint32_t index) {
        return {PlacedPart::Kind::MountingHole, plan().fronts.at(front).opening, index};
    }
    PlacedPart handle(std::size_t front) {
        return {PlacedPart::Kind::Handle, plan().fronts.at(front).opening, 0};
    }
    CasePoint centre(const PlacedPart& part) { return centreOf(plan(), part).value(); }
    QPoint at(const PlacedPart& part) { return onScreen(toMm(centre(part))); }
    /// With the modifiers that are held, in steps, without letting go.
    void pull(const PlacedPart& part, QPoint by, Qt::KeyboardModifiers modifiers = {}) {
        m_at = at(part);
        press(m_at, modifiers);
        for (int i = 1; i <= 4; ++i)
            moveHeld(m_at + by * i / 4, modifiers);
        m_at += by;
    }
    void moveHeld(QPoint to, Qt::KeyboardModifiers modifiers = {}) {
        QMouseEvent move(QEvent::MouseMove, to, view().viewport()->mapToGlobal(to), Qt::NoButton,
                         Qt::LeftButton, modifiers);
        QApplication::sendEvent(view().viewport(), &move);
        QApplication::processEvents();
    }
    void letGo() { release(m_at); }
    ValueEntry* entry() { return view().findChild<ValueEntry*>(); }
    double dragMm(int pixels) { return pixels / view().scale(); }

    QPoint m_at;
};

TEST_F(PlacingParts, DraggingAHoleMovesItAndMakesGivenPlacesOfThePattern) {
    const PlacedPart part = hole(1, 0);
    const CasePoint before = centre(part);
    const auto others = plan().fronts[1].mounting.holes;
    pull(part, {60, -30});
    letGo();
    const CasePoint by = centre(part) - before;
    EXPECT_NEAR(by.x.inMillimetres(), dragMm(60), dragMm(12));
    EXPECT_NEAR(by.y.inMillimetres(), dragMm(30), dragMm(12));
    EXPECT_EQ(chosenMounting(session().project(), plan().fronts[1]).pattern, ScrewPattern::ByHand);
    EXPECT_EQ(chosenMounting(session().project(), plan().fronts[0]).pattern,
              ScrewPattern::FourCorners);
    for (std::size_t i = 1; i < others.size(); ++i)
        EXPECT_EQ(plan().fronts[1].mounting.holes.at(i).at, others[i].at);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(session().undoStack().undoText().toStdString(), "Move mounting hole");
}

TEST_F(PlacingParts, ADraggedHoleIsThePickedOne) {
    pull(hole(1, 2), {30, 30});
    EXPECT_EQ(selectedPart(session().selection(), plan()), hole(1, 2));
    letGo();
    EXPECT_EQ(selectedPart(session().selection(), plan()), hole(1, 2));
}

TEST_F(PlacingParts, EscapePutsItBackByteForByte) {
    const std::string before = bytes();
    for (const PlacedPart& part : {hole(0, 1), handle(2)}) {
        pull(part, {40, 25});
        EXPECT_NE(bytes(), before);
        key(Qt::Key_Escape);
        EXPECT_EQ(bytes(), before);
        letGo();
        EXPECT_EQ(bytes(), before);
        EXPECT_EQ(session().undoStack().count(), 0);
    }
    EXPECT_FALSE(window.file().isUnsaved());
}

TEST_F(PlacingParts, AHandleMovesAsAWholeAndAloneUnlessShiftIsHeld) {
    const CasePoint first = centre(handle(0)), second = centre(handle(1));
    pull(handle(0), {0, 24});
    letGo();
    EXPECT_LT(centre(handle(0)).y, first.y);
    EXPECT_EQ(centre(handle(1)), second);
    session().undoStack().undo();
    pull(handle(0), {0, 24}, Qt::ShiftModifier);
    letGo();
    EXPECT_LT(centre(handle(0)).y, first.y);
    EXPECT_EQ(centre(handle(1)) - second, centre(handle(0)) - first);
    EXPECT_EQ(session().undoStack().undoText().toStdString(), "Move handles down the bank");
    EXPECT_EQ(steps(), 1);
}

TEST_F(PlacingParts, SnapsToTheFrontsCentreLineExactly) {
    const PlacedPart part = hole(1, 0);
    const QPoint from = at(part);
    const int middle = onScreen(toMm(plan().fronts[1].rect.centre())).x();
    pull(part, {middle - from.x() + 4, -40});
    EXPECT_EQ(centre(part).x, plan().fronts[1].rect.across().middle());
    letGo();
}

TEST_F(PlacingParts, AltSuspendsSnappingAndTheStatusBarSaysSo) {
    const PlacedPart part = hole(1, 0);
    const QPoint from = at(part);
    const int middle = onScreen(toMm(plan().fronts[1].rect.centre())).x();
    QString said;
    QObject::connect(&view(), &ElevationView::hint, &view(), [&](const QString& t) { said = t; });
    pull(part, {middle - from.x() + 4, -40}, Qt::AltModifier);
    EXPECT_NE(centre(part).x, plan().fronts[1].rect.across().middle());
    EXPECT_TRUE(said.contains(QStringLiteral("suspended")));
    const Length fromCorner = centre(part).x - plan().fronts[1].box.origin.x;
    EXPECT_EQ(fromCorner.nanometres() % Length::fromSixtyFourths(4).nanometres(), 0);
    letGo();
}

TEST_F(PlacingParts, TypedDistanceGoesAlongTheDragAndBeatsTheMouse) {
    const PlacedPart part = hole(1, 0);
    const CasePoint before = centre(part);
    pull(part, {50, -12});
    type(QStringLiteral("1"));
    ASSERT_TRUE(entry()->isVisible());
    type(QStringLiteral(" 1/8"));
    letGo();
    EXPECT_EQ(centre(part) - before, (CasePoint{Length::inches(1, 8), {}}));
    key(Qt::Key_Return);
    EXPECT_FALSE(entry()->isVisible());
    EXPECT_EQ(centre(part) - before, (CasePoint{Length::inches(1, 8), {}}));
    EXPECT_EQ(session().undoStack().count(), 1);
}

TEST_F(PlacingParts, AFindingOfItsFrontIsThereWhileItIsDragged) {
    const PlacedPart part = hole(1, 0);
    // Down to where the bottom panel is, and a little further.
    const int foot = onScreen(toMm(plan().fronts[1].box.origin)).y();
    pull(part, {0, foot - at(part).y() + 4});
    const auto& findings = session().work().findings;
    EXPECT_TRUE(std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
        return finding.where.opening == part.opening && finding.code == FindingCode::HoleInBottom;
    }));
    EXPECT_TRUE(session().isPreviewing());
    key(Qt::Key_Escape);
    letGo();
}

TEST_F(PlacingParts, AHoleThatIsNotShownIsNotGrabbed) {
    ShownLayers layers = view().layers();
    layers.holes = Shown::No;
    view().setLayers(layers);
    const std::string before = bytes();
    pull(hole(1, 0), {50, -20});
    letGo();
    EXPECT_EQ(bytes(), before);
}

TEST_F(PlacingParts, EightPixelsBesideAHoleStillGrabIt) {
    const PlacedPart part = hole(1, 0);
    for (const QPoint beside : {QPoint(7, 0), QPoint(-7, 0), QPoint(0, 7), QPoint(0, -7)}) {
        click(at(part) + beside);
        EXPECT_EQ(selectedPart(session().selection(), plan()), part);
        key(Qt::Key_Escape);
    }
}

TEST_F(PlacingParts, ArrowKeysNudgeTheSelectedHoleByTheGrid) {
    const PlacedPart part = hole(1, 0);
    click(at(part));
    const CasePoint before = centre(part);
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    EXPECT_EQ(centre(part) - before, (CasePoint{Length::fromSixtyFourths(8), {}}));
    EXPECT_EQ(session().undoStack().count(), 1) << "quick ones are one step";
    key(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(centre(part).y - before.y, Length::fromSixtyFourths(40));
    key(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(centre(part).y - before.y, Length::fromSixtyFourths(39));
}

TEST_F(PlacingParts, TabWalksTheHolesThenTheHandleThenLeaves) {
    session().select(Selection::of(plan().fronts[1].opening));
    view().setFocus();
    for (std::uint32_t i = 0; i < plan().fronts[1].mounting.holes.size(); ++i) {
        key(Qt::Key_Tab);
        EXPECT_EQ(selectedPart(session().selection(), plan()), hole(1, i));
    }
    key(Qt::Key_Tab);
    EXPECT_EQ(selectedPart(session().selection(), plan()), handle(1));
    EXPECT_TRUE(view().hasFocus());
    key(Qt::Key_Tab);
    EXPECT_EQ(selectedPart(session().selection(), plan()), std::nullopt);
    EXPECT_FALSE(view().hasFocus());
}

TEST_F(PlacingParts, EnterTypesTheHeightOfTheSelectedHoleAndShiftEnterItsPlaceAcross) {
    click(at(hole(1, 0)));
    key(Qt::Key_Return);
    ASSERT_TRUE(entry()->isVisible());
    type(QStringLiteral("2 1/2"));
    key(Qt::Key_Return);
    EXPECT_EQ(plan().fronts[1].mounting.holes[0].at.y, Length::inches(2, 32));
    key(Qt::Key_Return, Qt::ShiftModifier);
    ASSERT_TRUE(entry()->isVisible());
    type(QStringLiteral("3"));
    key(Qt::Key_Return);
    EXPECT_EQ(plan().fronts[1].mounting.holes[0].at.x, Length::inches(3));
}

TEST_F(PlacingParts, DeleteTakesTheSelectedHoleAway) {
    const std::size_t before = plan().fronts[1].mounting.holes.size();
    click(at(hole(1, 1)));
    key(Qt::Key_Delete);
    EXPECT_EQ(plan().fronts[1].mounting.holes.size(), before - 1);
    EXPECT_EQ(steps(), 1);
}

TEST_F(PlacingParts, EscapeLetsGoOfTheHoleThenOfTheFront) {
    click(at(hole(1, 1)));
    key(Qt::Key_Escape);
    EXPECT_EQ(session().selection(), Selection::of(plan().fronts[1].opening));
    key(Qt::Key_Escape);
    EXPECT_TRUE(session().selection().isEmpty());
}

TEST_F(PlacingParts, DistancesOfTheSelectedHoleAreTypedWhereTheyStand) {
    const PlacedPart part = hole(1, 0);
    click(at(part));
    const QSize size = view().viewport()->size();
    std::optional<ElevationScene::DimensionHit> found;
    for (int y = 0; y < size.height() && !found; y += 3)
        for (int x = 0; x < size.width() && !found; x += 3) {
            const auto hit = view().elevation().dimensionAt(view().mapToScene(x, y), 0);
            if (hit && hit->quantity.kind == QuantityKind::HoleY)
                found = hit;
        }
    ASSERT_TRUE(found);
    click(view().mapFromScene(found->figures.center()));
    ASSERT_TRUE(entry()->isVisible());
    type(QStringLiteral("2"));
    key(Qt::Key_Return);
    EXPECT_EQ(plan().fronts[1].mounting.holes[0].at.y, Length::inches(2));
}

class EndedDrags : public PlacingParts {};

TEST_F(EndedDrags, ATypedDistanceThatIsHeldSaysWhyAndStaysUntilEnterAgain) {
    const MemberPlan rail = member(MemberKind::Rail);
    const QPoint from = middleOf(rail.rect);
    press(from);
    moveTo(from + QPoint(0, 10));
    moveTo(from + QPoint(0, 20));
    type(QStringLiteral("4"));
    type(QStringLiteral("0"));
    key(Qt::Key_Return);
    ASSERT_TRUE(entry()->isVisible());
    EXPECT_EQ(session().undoStack().count(), 0);
    bool isSaid = false;
    for (const QLabel* label : entry()->findChildren<QLabel*>())
        isSaid = isSaid || label->text().contains(QStringLiteral("does not go that far"));
    EXPECT_TRUE(isSaid);
    key(Qt::Key_Return);
    EXPECT_FALSE(entry()->isVisible());
    EXPECT_EQ(session().undoStack().count(), 1);
    release(from);
}

TEST_F(EndedDrags, DeleteFirstPutsTheDraggedRailBack) {
    const MemberPlan rail = member(MemberKind::Rail);
    const MemberPlan other = member(MemberKind::Rail, 1);
    const QPoint from = middleOf(rail.rect);
    press(from);
    moveTo(from + QPoint(0, 10));
    moveTo(from + QPoint(0, 20));
    ASSERT_TRUE(session().isPreviewing());
    key(Qt::Key_Delete);
    EXPECT_FALSE(session().isPreviewing());
    ASSERT_EQ(plan().fronts.size(), 2U);
    EXPECT_EQ(plan().memberOf(other.id)->rect, other.rect);
    moveTo(from + QPoint(0, 40));
    release(from + QPoint(0, 40));
    EXPECT_EQ(session().undoStack().count(), 1);
    session().undoStack().undo();
    EXPECT_EQ(plan().memberOf(rail.id)->rect, rail.rect);
}

} // namespace
} // namespace frontwright::testing
