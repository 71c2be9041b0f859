// Where a form's values come from is said, chosen, and gone back to.

#include "ui/panels/preset_row.h"

#include "tests/ui/elevation/open_window.h"

#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>

namespace frontwright::testing {
namespace {

class FollowedPresets : public OpenWindow {
protected:
    FollowedPresets() : row(session(), PresetKind::Hardware) {
        QObject::connect(&session(), &Session::workChanged, &row, [this] { row.show(shown); });
    }
    void SetUp() override {
        OpenWindow::SetUp();
        ASSERT_TRUE(session().apply(
            QStringLiteral("Keep"),
            keepAsPreset(session().project(), front(0), PresetKind::Hardware, "Deep drawers")));
    }
    EditTarget front(std::size_t index) { return {plan().fronts.at(index).opening}; }
    void showFronts(std::vector<EditTarget> targets) {
        shown = std::move(targets);
        row.show(shown);
    }
    PresetOrigin originAt(std::size_t index) {
        return originOf(session().project(), front(index), PresetKind::Hardware);
    }
    void depart(std::size_t index) {
        HardwareSpec other = session().project().fronts.hardware;
        other.twoAtPercent = 30;
        session().apply(QStringLiteral("Depart"),
                        setHardware(session().project(), front(index), other));
    }
    void choose(const QString& text) {
        const int index = row.choice().findText(text);
        ASSERT_GE(index, 0) << text.toStdString();
        row.choice().setCurrentIndex(index);
        Q_EMIT row.choice().activated(index);
    }
    QString said() { return row.sign().text(); }
    bool isSignShown() { return !row.sign().parentWidget()->isHidden(); }

    std::vector<EditTarget> shown{EditTarget{}};
    PresetRow row;
};

TEST_F(FollowedPresets, AreOfferedByNameBesideTheCasesAndItsOwn) {
    showFronts({front(0)});
    QStringList offered;
    for (int i = 0; i < row.choice().count(); ++i)
        offered << row.choice().itemText(i);
    EXPECT_EQ(offered, (QStringList{"The case’s", "Deep drawers", "Its own"}));
    EXPECT_EQ(row.choice().currentText(), "Deep drawers");
    EXPECT_FALSE(isSignShown());
    showFronts({front(1)});
    EXPECT_EQ(row.choice().currentText(), "The case’s");
    showFronts({EditTarget{}});
    EXPECT_EQ(row.choice().count(), 2) << "the case cannot follow the case";
    EXPECT_EQ(row.choice().currentText(), "Its own");
    EXPECT_FALSE(isSignShown()) << "the case overrides nothing";
}

TEST_F(FollowedPresets, AreGivenToManyFrontsInOneStep) {
    showFronts({front(0), front(1), front(2)});
    EXPECT_EQ(row.choice().currentIndex(), -1);
    EXPECT_EQ(row.choice().placeholderText(), "mixed");
    const int before = steps();
    choose(QStringLiteral("Deep drawers"));
    EXPECT_EQ(steps(), before + 1);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_EQ(originAt(i).origin, Origin::Preset) << i;
    EXPECT_EQ(row.choice().currentText(), "Deep drawers");
    choose(QStringLiteral("The case’s"));
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_EQ(originAt(i).origin, Origin::TheCase) << i;
}

TEST_F(FollowedPresets, ThatAFrontDepartsFromAreOneClickAway) {
    showFronts({front(0)});
    depart(0);
    ASSERT_TRUE(isSignShown());
    EXPECT_EQ(said(), "≠ Departs from “Deep drawers”");
    EXPECT_EQ(row.back().text(), "Back to “Deep drawers”");
    EXPECT_EQ(row.choice().currentText(), "Its own");
    row.back().click();
    EXPECT_EQ(originAt(0).origin, Origin::Preset);
    EXPECT_FALSE(isSignShown());
}

TEST_F(FollowedPresets, SayHowManyOfTheFrontsDepart) {
    choose(QStringLiteral("Deep drawers"));
    showFronts({front(0), front(1), front(2)});
    choose(QStringLiteral("Deep drawers"));
    depart(1);
    EXPECT_EQ(said(), "≠ 1 of 3 fronts depart from “Deep drawers”");
    row.back().click();
    EXPECT_EQ(originAt(1).origin, Origin::Preset);
}

TEST_F(FollowedPresets, AFrontsOwnValueLeadsBackToTheCases) {
    showFronts({front(0), front(1), front(2)});
    depart(2);
    EXPECT_EQ(said(), "≠ 1 of 3 fronts have their own");
    EXPECT_EQ(row.back().text(), "Back to the case’s");
    row.back().click();
    EXPECT_EQ(originAt(2).origin, Origin::TheCase);
    EXPECT_EQ(originAt(0).origin, Origin::Preset) << "who follows a preset stays with it";
}

TEST_F(FollowedPresets, AreToldInAFewWords) {
    const auto summary = [&](const std::vector<EditTarget>& targets) {
        return presetSummary(session().project(), targets, PresetKind::Hardware);
    };
    EXPECT_EQ(summary({EditTarget{}}), "");
    EXPECT_EQ(summary({front(0)}), "Deep drawers");
    EXPECT_EQ(summary({front(1)}), "");
    EXPECT_EQ(summary({front(0), front(1)}), "mixed");
    depart(0);
    depart(1);
    EXPECT_EQ(summary({front(0)}), "≠ “Deep drawers”");
    EXPECT_EQ(summary({front(1)}), "≠ its own");
}

TEST_F(FollowedPresets, CanBeChangedToWhatAFrontHas) {
    showFronts({front(0)});
    depart(0);
    const auto actions = row.findChild<QToolButton*>()->menu()->actions();
    ASSERT_EQ(actions.size(), 4) << "keep, change, rename, remove";
    actions[1]->trigger();
    EXPECT_EQ(originAt(0).origin, Origin::Preset);
    EXPECT_EQ(session().project().presets.hardware.front().value.twoAtPercent, 30);
}

TEST_F(FollowedPresets, AreRemovedAndTheirUsersKeepTheirValues) {
    showFronts({front(0)});
    const auto actions = row.findChild<QToolButton*>()->menu()->actions();
    ASSERT_EQ(actions.size(), 3) << "keep, rename, remove";
    actions[2]->trigger();
    EXPECT_TRUE(session().project().presets.hardware.empty());
    EXPECT_EQ(originAt(0).origin, Origin::Own);
}

} // namespace
} // namespace frontwright::testing
