#include "ui/window/rules_dialog.h"

#include "ui/files/built_in_catalogue.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QTableWidget>

namespace frontwright::testing {
namespace {

int visibleRows(const QTableWidget& table) {
    int count = 0;
    for (int row = 0; row < table.rowCount(); ++row)
        count += table.isRowHidden(row) ? 0 : 1;
    return count;
}

TEST(RulesDialog, ShowsEveryRuleAndFindsThoseThatAreSearched) {
    RulesDialog dialog(builtInCatalogue());
    auto& table = *dialog.findChild<QTableWidget*>();
    auto& search = *dialog.findChild<QLineEdit*>();
    const int all = static_cast<int>(allRules(builtInCatalogue()).size());
    EXPECT_EQ(visibleRows(table), all);
    search.setText(QStringLiteral("architectural WOODWORK"));
    EXPECT_GT(visibleRows(table), 0);
    EXPECT_LT(visibleRows(table), 10);
    search.setText(QStringLiteral("no such rule anywhere"));
    EXPECT_EQ(visibleRows(table), 0);
    search.clear();
    EXPECT_EQ(visibleRows(table), all);
}

} // namespace
} // namespace frontwright::testing
