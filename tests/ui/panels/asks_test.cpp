// Any number can be asked how it came about, and leads to the very field that causes it.

#include "core/findings/cause.h"
#include "ui/fields/length_field.h"
#include "ui/panels/findings_panel.h"
#include "ui/panels/input_field.h"
#include "ui/panels/number_answer.h"
#include "ui/panels/numbers_panel.h"
#include "ui/panels/selection_panel.h"
#include "ui/panels/wood_panel.h"

#include "tests/ui/elevation/open_window.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

namespace frontwright::testing {
namespace {

class Asks : public OpenWindow {
protected:
    NumbersPanel* numbers() { return window.findChild<NumbersPanel*>(); }
    SelectionPanel* properties() { return window.findChild<SelectionPanel*>(); }
    void ask(Quantity quantity) {
        Q_EMIT session().numberAsked(quantity);
        QApplication::processEvents();
    }
    /// Goes there, and tells in which fold the keyboard then is.
    QWidget* go(InputPlace place, std::optional<Quantity> about) {
        Q_EMIT session().inputAsked(place, about);
        QApplication::processEvents();
        return QApplication::focusWidget();
    }
    bool isInWood(const QWidget* field) {
        const auto* wood = window.findChild<WoodPanel*>();
        return wood && wood->isAncestorOf(field);
    }
    static QString foldOf(const QWidget* widget) {
        for (const QWidget* at = widget; at; at = at->parentWidget())
            if (const auto* fold = qobject_cast<const Fold*>(at))
                return fold->name();
        return {};
    }
    QString answer() {
        auto* shown = numbers()->findChild<NumberAnswer*>();
        QString words;
        for (const QLabel* label : shown->findChildren<QLabel*>())
            words += label->text() + QLatin1Char('\n');
        return words;
    }
};

TEST_F(Asks, AreAnsweredForEveryNumberOfTheCase) {
    openSample(QStringLiteral("first-try"));
    const auto all = allQuantities(plan());
    ASSERT_GT(all.size(), 100U);
    // Each kind once, at its first and its last part.
    std::map<QuantityKind, std::pair<Quantity, Quantity>> ends;
    for (const Quantity& quantity : all)
        ends.try_emplace(quantity.kind, quantity, quantity).first->second.second = quantity;
    for (const auto& [kind, pair] : ends)
        for (const Quantity& quantity : {pair.first, pair.second}) {
            ask(quantity);
            ASSERT_TRUE(numbers()->isVisible());
            EXPECT_EQ(numbers()->chosen(), quantity) << nameOf(kind);
            const auto derivation =
                derive(session().project(), plan(), quantity, session().style());
            EXPECT_TRUE(answer().contains(QString::fromStdString(derivation->figures.english())))
                << nameOf(kind);
        }
}

TEST_F(Asks, SelectThePartThatTheNumberIsOf) {
    ask({QuantityKind::FrontHeight, 2, 0});
    EXPECT_EQ(session().selection(), Selection::of(plan().fronts[2].opening));
    ask({QuantityKind::MemberWidth, 4, 0});
    EXPECT_EQ(session().selection(), Selection::of(plan().members[4].id));
    ask({QuantityKind::CaseWidth, 0, 0});
    EXPECT_TRUE(session().selection().isEmpty());
    ask({QuantityKind::StopFromOpening, 0, 0});
    EXPECT_EQ(session().selection(), Selection::of(plan().fronts[plan().stops[0].front].opening));
}

TEST_F(Asks, SelectNoFrontForWhatIsTheCases) {
    openSample(QStringLiteral("plan-chest"));
    for (const QuantityKind kind : {QuantityKind::CaseWeight, QuantityKind::MoistureDriest}) {
        session().select({});
        ask({kind, 0, 0});
        EXPECT_TRUE(session().selection().isEmpty()) << nameOf(kind);
    }
    go(InputPlace::Box, Quantity{QuantityKind::CaseWeight, 0, 0});
    EXPECT_TRUE(session().selection().isEmpty());
}

TEST_F(Asks, LeadFromAGapOverTheSeasonToItsOwnSide) {
    openSample(QStringLiteral("plan-chest"));
    using enum QuantityKind;
    const auto fieldOf = [&](QuantityKind kind) {
        return inputField(InputPlace::Fit, Quantity{kind, 2, 0}, plan(), {}).label;
    };
    EXPECT_EQ(fieldOf(SeasonGapLeft), QStringLiteral("Left"));
    EXPECT_EQ(fieldOf(SeasonGapTop), QStringLiteral("Top"));
    EXPECT_EQ(fieldOf(SeasonOverlayRight), QStringLiteral("Right"));
    EXPECT_EQ(fieldOf(GapBottom), QStringLiteral("Bottom"));
}

TEST_F(Asks, KeepSeveralSelectedWhereTheNumberIsOfTheLast) {
    Selection both = Selection::of(plan().fronts[0].opening);
    both.openings.push_back(plan().fronts[1].opening);
    session().select(both);
    ask({QuantityKind::FrontWidth, 1, 0});
    EXPECT_EQ(session().selection(), both);
}

TEST_F(Asks, AreNothingWhereThePlanHasNoSuchNumber) {
    const Selection before = session().selection();
    ask({QuantityKind::FrontWidth, 9999, 0});
    EXPECT_EQ(session().selection(), before);
}

TEST_F(Asks, LeadToTheFieldOfEveryKindOfDecision) {
    openSample(QStringLiteral("glaze-chest"));
    const std::map<InputPlace, QString> folds{
        {InputPlace::CaseSize, QStringLiteral("case")},
        {InputPlace::Frame, QStringLiteral("case")},
        {InputPlace::Divisions, QStringLiteral("opening")},
        {InputPlace::MemberWidth, QStringLiteral("member")},
        {InputPlace::Fit, QStringLiteral("fit")},
        {InputPlace::Thickness, QStringLiteral("stock")},
        {InputPlace::Profile, QStringLiteral("profile")},
        {InputPlace::Box, QStringLiteral("box")},
        {InputPlace::Runner, QStringLiteral("box")},
        {InputPlace::Mounting, QStringLiteral("mounting")},
        {InputPlace::Hardware, QStringLiteral("hardware")},
        {InputPlace::Limits, QStringLiteral("limits")},
        {InputPlace::Catalogue, QStringLiteral("hardware")},
        {InputPlace::Surroundings, QStringLiteral("surroundings")},
        {InputPlace::SystemHoles, QStringLiteral("system-holes")},
        // In a panel of their own.
        {InputPlace::Stock, QString()},
        {InputPlace::Air, QString()},
    };
    // All but the last: there is no board here.
    ASSERT_EQ(folds.size(), static_cast<std::size_t>(InputPlace::Board));
    // From nothing, a front and a member.
    for (const Selection& from : {Selection(), Selection::of(plan().fronts[1].opening),
                                  Selection::of(plan().members[4].id)})
        for (const auto& [place, fold] : folds) {
            session().select(from);
            view().setFocus();
            const QWidget* field = go(place, std::nullopt);
            ASSERT_NE(field, nullptr);
            EXPECT_EQ(foldOf(field), fold) << nameOf(place).toStdString();
            EXPECT_EQ(isInWood(field), fold.isEmpty()) << nameOf(place).toStdString();
        }
}

/// Every button under every answer leads to a field, and to the one that its label says.
TEST_F(Asks, LeadFromEveryNumberToAFieldForEachOfItsInputs) {
    openSample(QStringLiteral("glaze-chest"));
    std::set<QuantityKind> seen;
    for (const Quantity& quantity : allQuantities(plan())) {
        if (!seen.insert(quantity.kind).second)
            continue;
        const auto derivation = derive(session().project(), plan(), quantity, session().style());
        for (const InputPlace place : derivation->inputs) {
            view().setFocus();
            const InputField where = inputField(place, quantity, plan(), session().selection());
            const QWidget* focused = go(place, quantity);
            ASSERT_NE(focused, nullptr);
            EXPECT_EQ(isInWood(focused), where.panel == InputPanel::Wood);
            if (where.panel == InputPanel::Wood)
                continue;
            QWidget* field = properties()->goTo(where);
            ASSERT_NE(field, nullptr)
                << nameOf(quantity.kind) << " → " << where.label.toStdString();
            EXPECT_EQ(foldOf(QApplication::focusWidget()), where.fold);
            EXPECT_TRUE(QApplication::focusWidget() == field ||
                        field->focusProxy() == QApplication::focusWidget());
        }
    }
}

TEST_F(Asks, LeadFromALeftOverlayToTheLeftSide) {
    EXPECT_EQ(inputField(InputPlace::Fit, Quantity{QuantityKind::OverlayTop, 1, 0}, plan(), {}),
              (InputField{Selection::of(plan().fronts[1].opening), QStringLiteral("fit"),
                          QStringLiteral("Top")}));
    EXPECT_EQ(inputField(InputPlace::CaseSize, Quantity{QuantityKind::CaseHeight, 0, 0}, plan(), {})
                  .label,
              QStringLiteral("Height"));
    // Below the middle front lies a rail of the inside.
    const InputField rail = inputField(InputPlace::MemberWidth,
                                       Quantity{QuantityKind::OverlayBottom, 1, 0}, plan(), {});
    ASSERT_TRUE(rail.selection.member);
    EXPECT_EQ(plan().memberOf(*rail.selection.member)->kind, MemberKind::Rail);
}

TEST_F(Asks, AreReachedFromAFindingWithItsCause) {
    openSample(QStringLiteral("first-try"));
    QTreeWidget& list = window.findings().list();
    list.setCurrentItem(list.topLevelItem(0));
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QApplication::processEvents();
    const Finding finding = session().work().findings.front();
    QPushButton *why = nullptr, *go = nullptr;
    for (QPushButton* button : window.findings().findChildren<QPushButton*>()) {
        if (button->text().startsWith(QStringLiteral("Why this number")))
            why = button;
        if (button->text().startsWith(QStringLiteral("Go to")))
            go = button;
    }
    ASSERT_NE(why, nullptr);
    ASSERT_NE(go, nullptr);
    QTest::mouseClick(why, Qt::LeftButton);
    QApplication::processEvents();
    ASSERT_TRUE(numbers()->chosen());
    EXPECT_EQ(numbers()->chosen(), numberOf(finding, plan()));
    QTest::mouseClick(go, Qt::LeftButton);
    QApplication::processEvents();
    EXPECT_EQ(foldOf(QApplication::focusWidget()), QStringLiteral("mounting"));
}

/// Does that with the menu that opens next, and closes it.
template<class Use>
void whenMenuOpens(Use use) {
    QTimer::singleShot(0, qApp, [use] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        use(*menu);
        menu->close();
    });
}

TEST_F(Asks, AreReachedFromARowOfAForm) {
    QWidget* field = go(InputPlace::Box, Quantity{QuantityKind::BoxHeight, 1, 0});
    whenMenuOpens([](QMenu& menu) {
        ASSERT_TRUE(menu.actions().back()->text().contains(QStringLiteral("number")));
        EXPECT_TRUE(menu.actions().back()->isEnabled());
        menu.actions().back()->trigger();
    });
    Q_EMIT field->customContextMenuRequested({4, 4});
    QApplication::processEvents();
    EXPECT_EQ(numbers()->chosen(), (Quantity{QuantityKind::BoxHeight, 1, 0}));
}

TEST_F(Asks, AreReachedFromTheDrawingsMenu) {
    session().select(Selection::of(plan().fronts[2].opening));
    const auto offered = view().numbersAt(middleOf(member(MemberKind::Rail).rect));
    ASSERT_EQ(offered.size(), 3U);
    whenMenuOpens([](QMenu& menu) {
        QMenu* why = menu.actions().back()->menu();
        ASSERT_NE(why, nullptr);
        ASSERT_EQ(why->actions().size(), 3);
        why->actions()[1]->trigger();
    });
    Q_EMIT view().contextMenuWanted(view().mapToGlobal(QPoint(9, 9)), offered);
    QApplication::processEvents();
    EXPECT_EQ(numbers()->chosen(), offered[1]);
}

TEST_F(Asks, AreReachedFromTheMenuForWhatIsSelected) {
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->shortcut() != QKeySequence(Qt::SHIFT | Qt::Key_F1))
            continue;
        session().select(Selection::of(plan().fronts[1].opening));
        action->trigger();
        QApplication::processEvents();
        EXPECT_EQ(numbers()->chosen(), (Quantity{QuantityKind::FrontWidth, 1, 0}));
        return;
    }
    ADD_FAILURE() << "no such action";
}

TEST_F(Asks, AreMadeOfADimensionAHoleAFrontAndAMember) {
    const FrontPlan& front = plan().fronts[1];
    const auto kinds = [&](QPoint at) {
        std::vector<QuantityKind> found;
        for (const Quantity& quantity : view().numbersAt(at))
            found.push_back(quantity.kind);
        return found;
    };
    const PointMm hole = toMm(front.box.origin) + toMm(front.mounting.holes[0].at);
    const auto atHole = kinds(onScreen(hole));
    ASSERT_FALSE(atHole.empty());
    EXPECT_EQ(atHole.front(), QuantityKind::HoleX);
    EXPECT_EQ(kinds(middleOf(member(MemberKind::Rail).rect)).front(), QuantityKind::MemberWidth);
    const CaseRect& rect = front.rect;
    const PointMm clear = toMm(rect.lowerLeft()) + PointMm(60, 70);
    EXPECT_EQ(kinds(onScreen(clear)).front(), QuantityKind::FrontWidth);
    // Far beside the case: the case itself.
    EXPECT_EQ(kinds(QPoint(2, 2)).front(), QuantityKind::CaseWidth);
}

} // namespace
} // namespace frontwright::testing
