#include "ui/panels/preset_name_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

std::optional<Error> onlyDeep(const std::string& name) {
    return name == "Deep" ? std::nullopt
                          : std::optional(Error{{}, text("not deep"), text("go deeper")});
}

TEST(ThePresetsName, IsTakenOnlyWhereItWillDo) {
    PresetNameDialog dialog(QStringLiteral("Keep"), {}, onlyDeep);
    auto* field = dialog.findChild<QLineEdit*>();
    auto* ok = dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
    const auto says = [&](const QString& text) {
        const auto labels = dialog.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [&](const QLabel* label) { return label->text() == text; });
    };
    EXPECT_FALSE(ok->isEnabled());
    EXPECT_FALSE(says(QStringLiteral("not deep; go deeper"))) << "nothing is wrong yet";
    field->setText(QStringLiteral("Shallow"));
    EXPECT_FALSE(ok->isEnabled());
    EXPECT_TRUE(says(QStringLiteral("not deep; go deeper")));
    field->setText(QStringLiteral("  Deep "));
    EXPECT_TRUE(ok->isEnabled());
    EXPECT_FALSE(says(QStringLiteral("not deep; go deeper")));
    EXPECT_EQ(dialog.name(), "Deep");
}

} // namespace
} // namespace frontwright::testing
