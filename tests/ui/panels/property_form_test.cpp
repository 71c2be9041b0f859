// A decision for many fronts is one step, planned once.

#include "ui/panels/property_form.h"

#include "tests/ui/elevation/open_window.h"
#include "ui/fields/length_field.h"
#include "ui/panels/forms.h"

#include <QComboBox>
#include <QTest>

#include <memory>
#include <stdexcept>

namespace frontwright::testing {
namespace {

class Form : public OpenWindow {
protected:
    std::vector<EditTarget> allFronts() {
        std::vector<EditTarget> targets;
        for (const FrontPlan& front : plan().fronts)
            targets.push_back({front.opening});
        return targets;
    }
    int worksShown = 0;
    void countWorks() {
        QObject::connect(&session(), &Session::workChanged, [this] { ++worksShown; });
    }
};

TEST_F(Form, MakesAChoiceForManyFrontsInOneStep) {
    const std::unique_ptr<PropertyForm> form(profileForm(session()));
    form->setTargets(allFronts());
    countWorks();
    QComboBox* family = nullptr;
    for (QComboBox* box : form->findChildren<QComboBox*>())
        if (box->accessibleName() == "Family")
            family = box;
    ASSERT_NE(family, nullptr);
    family->setCurrentIndex(2);
    Q_EMIT family->activated(2);
    EXPECT_EQ(worksShown, 1);
    EXPECT_EQ(steps(), 1);
    for (const FrontPlan& front : plan().fronts)
        EXPECT_EQ(front.profile->family, ProfileFamily::Chamfer);
}

TEST_F(Form, ChoosesFromTheCatalogueForManyFronts) {
    const std::unique_ptr<PropertyForm> form(hardwareForm(session()));
    form->setTargets(allFronts());
    QComboBox* handle = nullptr;
    for (QComboBox* box : form->findChildren<QComboBox*>())
        if (box->accessibleName() == "Handle")
            handle = box;
    ASSERT_NE(handle, nullptr);
    Q_EMIT handle->activated(0);
    EXPECT_EQ(steps(), 1);
    for (const FrontPlan& front : plan().fronts)
        EXPECT_FALSE(front.hardware.has_value());
}

/// The rows of the fittings' form by their names.
struct FittingRows {
    std::unique_ptr<PropertyForm> form;
    [[nodiscard]] QComboBox& box(const char* name) const {
        for (QComboBox* box : form->findChildren<QComboBox*>())
            if (box->accessibleName() == QLatin1String(name))
                return *box;
        throw std::runtime_error(name);
    }
    void choose(const char* name, const QString& what) const {
        const int index = box(name).findText(what);
        ASSERT_GE(index, 0) << what.toStdString();
        box(name).setCurrentIndex(index);
        Q_EMIT box(name).activated(index);
        form->refresh();
    }
    void type(const char* name, WrittenLength length) const {
        auto* field = qobject_cast<LengthField*>(form->field(QLatin1String(name)));
        ASSERT_NE(field, nullptr);
        Q_EMIT field->decided(length);
        form->refresh();
    }
};

TEST_F(Form, AddsPlacesAndTakesAwayFittings) {
    const FittingRows rows{std::unique_ptr<PropertyForm>(fittingForm(session()))};
    rows.form->setTargets({{plan().fronts.front().opening}});
    const auto fittings = [&] {
        const auto& placed = plan().fronts.front().fittings;
        return placed ? *placed : std::vector<FittingPlan>();
    };
    rows.choose("Kind", "Label holder, 3 × 1 1/4 in");
    ASSERT_EQ(fittings().size(), 1U);
    rows.choose("Up", "from the top edge");
    rows.type("From the edge", Length::inches(2));
    EXPECT_EQ(fittings()[0].centre.y, plan().fronts.front().rect.height() - Length::inches(2));
    rows.choose("Fitting", "another one");
    rows.choose("Kind", "Half-mortise lock, 2 in, key 3/4 in below its selvedge");
    ASSERT_EQ(fittings().size(), 2U);
    EXPECT_EQ(fittings()[1].form->kind, FittingKind::Lock);
    rows.choose("Across", "two, from both sides");
    EXPECT_EQ(fittings().size(), 3U);
    rows.choose("Kind", "none");
    EXPECT_EQ(fittings().size(), 1U);
    EXPECT_FALSE(plan().fronts.back().fittings.has_value()) << "the others follow the case";
}

TEST_F(Form, ListsTheFittingsOfTheFrontThatIsSelectedNow) {
    const FittingRows rows{std::unique_ptr<PropertyForm>(fittingForm(session()))};
    rows.form->setTargets({{plan().fronts.front().opening}});
    rows.choose("Kind", "Label holder, 3 × 1 1/4 in");
    const int before = steps();
    rows.choose("Fitting", "another one");
    EXPECT_EQ(steps(), before) << "to look at another one changes nothing";
    EXPECT_EQ(rows.box("Fitting").count(), 2);
    rows.form->setTargets({{plan().fronts.back().opening}});
    EXPECT_EQ(rows.box("Fitting").count(), 1);
    EXPECT_EQ(rows.box("Kind").currentText(), QStringLiteral("none"));
}

TEST_F(Form, ShowsAnImpossibleValueInItsFieldAndNowhereElse) {
    const std::unique_ptr<PropertyForm> form(caseForm(session()));
    form->refresh();
    int refusals = 0;
    QObject::connect(&session(), &Session::refused, [&] { ++refusals; });
    const std::string before = bytes();
    auto* width = form->findChild<LengthField*>();
    Q_EMIT width->decided(WrittenLength(Length::inches(1)));
    EXPECT_FALSE(width->isUnderstood());
    EXPECT_EQ(refusals, 0);
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(steps(), 0);
}

/// The box's form, and a choice in it by its name.
class BoxForm : public Form {
protected:
    QComboBox* choice(const char* name) {
        for (QComboBox* box : form->findChildren<QComboBox*>())
            if (box->accessibleName() == QLatin1String(name))
                return box;
        return nullptr;
    }
    void choose(const char* name, const QString& what) {
        QComboBox* box = choice(name);
        ASSERT_NE(box, nullptr) << name;
        const int index = box->findText(what);
        ASSERT_GE(index, 0) << what.toStdString();
        Q_EMIT box->activated(index);
    }
    const std::unique_ptr<PropertyForm> form{boxForm(session())};
};

TEST_F(BoxForm, LetsTheDepthFollowTheRunners) {
    form->setTargets(allFronts());
    choose("Runners", QStringLiteral("Side-mounted metal runners"));
    choose("Depth is", QStringLiteral("the runner's length"));
    EXPECT_EQ(steps(), 2);
    for (const FrontPlan& front : plan().fronts) {
        ASSERT_TRUE(front.runner);
        EXPECT_EQ(front.box.depth, front.runner->reach.length);
        EXPECT_LE(*front.runner->reach.length, front.runner->reach.room);
    }
    choose("Depth is", QStringLiteral("as given"));
    for (const FrontPlan& front : plan().fronts)
        EXPECT_EQ(front.box.depth, session().project().fronts.box.depth.length);
}

TEST_F(BoxForm, ShowsWhatAnotherKindOfRunnersAsksFor) {
    form->setTargets(allFronts());
    choose("Runners", QStringLiteral("Under-mounted runners"));
    for (const FrontPlan& front : plan().fronts) {
        EXPECT_EQ(front.runner->clearZones.size(), 2U);
        EXPECT_EQ(front.mounting.allowed.withoutRects.size(), 2U);
    }
    choose("Runners", QStringLiteral("Wooden runners"));
    for (const FrontPlan& front : plan().fronts)
        EXPECT_TRUE(front.runner->kickerHeight);
}

TEST_F(BoxForm, TellsTheBoxsWoodAndForgetsIt) {
    form->setTargets(allFronts());
    choose("Wood of the box", QStringLiteral("Yellow-poplar"));
    const auto woodOf = [&](const FrontPlan& front) {
        return front.choices->box ? front.choices->box->wood : session().project().fronts.box.wood;
    };
    for (const FrontPlan& front : plan().fronts)
        EXPECT_EQ(woodOf(front), "yellow-poplar");
    choose("Wood of the box", QStringLiteral("not told"));
    for (const FrontPlan& front : plan().fronts)
        EXPECT_EQ(woodOf(front), "");
}

} // namespace
} // namespace frontwright::testing
