// A decision for many fronts is one step, planned once.

#include "ui/panels/property_form.h"

#include "tests/ui/elevation/open_window.h"
#include "ui/fields/length_field.h"
#include "ui/panels/forms.h"

#include <QComboBox>
#include <QTest>

#include <memory>

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

} // namespace
} // namespace frontwright::testing
