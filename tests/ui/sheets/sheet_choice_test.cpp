#include "ui/sheets/sheet_choice.h"

#include "core/sheets/sheets.h"
#include "tests/ui/elevation/open_window.h"
#include "ui/language/told.h"

#include <QDir>
#include <QTreeWidget>

namespace frontwright::testing {
namespace {

class SheetsOfASample : public OpenWindow {
protected:
    void choose(const QString& sample) {
        openSample(sample);
        made = templates(session().project(), plan(), session().style());
        choice = std::make_unique<SheetChoice>(made, std::vector<OpeningId>{});
        tree = choice->findChild<QTreeWidget*>();
    }
    QStringList groups() const {
        QStringList names;
        for (int i = 0; i < tree->topLevelItemCount(); ++i)
            names.push_back(tree->topLevelItem(i)->text(0));
        return names;
    }
    std::vector<Template> made;
    std::unique_ptr<SheetChoice> choice;
    QTreeWidget* tree = nullptr;
};

TEST_F(SheetsOfASample, StandTogetherByKind) {
    choose(QStringLiteral("glaze-chest"));
    EXPECT_EQ(groups(), QStringList({"Fronts", "Box walls", "Story sticks"}));
}

TEST_F(SheetsOfASample, HaveTheKeepersOfItsBoards) {
    choose(QStringLiteral("writing-chest"));
    EXPECT_TRUE(groups().contains("Keepers")) << groups().join(", ").toStdString();
}

TEST_F(SheetsOfASample, AreEachOfferedOnce) {
    const QDir samples(QStringLiteral(FRONTWRIGHT_SOURCE_DIR "/samples"));
    for (const QString& sample : samples.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        choose(sample);
        QStringList titles;
        for (int i = 0; i < tree->topLevelItemCount(); ++i)
            for (int j = 0; j < tree->topLevelItem(i)->childCount(); ++j)
                titles.push_back(tree->topLevelItem(i)->child(j)->text(0));
        QStringList wanted;
        for (const Template& each : made)
            wanted.push_back(told(each.title));
        titles.sort();
        wanted.sort();
        EXPECT_EQ(titles, wanted) << sample.toStdString();
    }
}

} // namespace
} // namespace frontwright::testing
