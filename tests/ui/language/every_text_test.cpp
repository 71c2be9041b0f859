#include "ui/help/help_window.h"
#include "ui/window/own_entries_dialog.h"

#include "tests/ui/language/brackets.h"
#include "tests/ui/language/seen_texts.h"
#include "tests/ui/window/every_dialog.h"

#include <QApplication>
#include <QDockWidget>
#include <QMenu>
#include <QUndoStack>

#include <set>

namespace frontwright::testing {
namespace {

class EveryText : Bracketed, public OpenWindow {
protected:
    void expectBracketed(const QWidget& top) {
        for (const SeenText& seen : seenTexts(top)) {
            const bool isFile = seen.text.endsWith(QStringLiteral(".frontwright"));
            if (isFile || isToldByCore(seen.where))
                continue;
            ++count;
            EXPECT_TRUE(isFigureOrName(withoutBrackets(seen.text), names()))
                << seen.where.toStdString() << ": " << seen.text.toStdString();
        }
    }
    /// Names of numbers and of sheets are told by core.
    static bool isToldByCore(const QString& where) {
        static const QStringList places{
            QStringLiteral("frontwright::NumbersTree in QSplitter in frontwright::NumbersPanel"),
            QStringLiteral("QHeaderView in QTableWidget in frontwright::WaysPanel"),
            QStringLiteral("QLabel in QWidget in QSplitter in frontwright::TemplateDialog"),
            QStringLiteral("QTreeWidget in frontwright::SheetChoice")};
        return std::any_of(places.begin(), places.end(),
                           [&](const QString& place) { return where.startsWith(place); });
    }
    /// What the maker named, papers, and what the test itself calls a dialog.
    QStringList names() {
        QStringList all{QString::fromStdString(session().project().title),
                        window.file().name(),
                        QStringLiteral("Frontwright"),
                        QStringLiteral("Letter"),
                        QStringLiteral("Legal"),
                        QStringLiteral("Tabloid"),
                        QStringLiteral("English"),
                        QStringLiteral("Deutsch"),
                        QStringLiteral("ANSI"),
                        QStringLiteral("ARCH"),
                        QStringLiteral("Keep as preset"),
                        QStringLiteral("Deep drawers")};
        for (const FrontPlan& front : plan().fronts)
            all << QString::fromStdString(label(session().project(), front));
        for (const SpacePlan& space : plan().spaces)
            all << QString::fromStdString(label(space));
        return all;
    }

    int count = 0;
};

TEST_F(EveryText, OfTheWindowCanBeTranslated) {
    for (const Selection& selection : {Selection(), Selection::of(plan().fronts[0].opening),
                                       Selection::of(member(MemberKind::Rail).id)})
        for (QDockWidget* dock : window.findChildren<QDockWidget*>()) {
            dock->raise();
            session().select(selection);
            QApplication::processEvents();
            expectBracketed(window);
        }
    EXPECT_GT(count, 1000);
}

TEST_F(EveryText, OfEveryUseOfAnOpeningCanBeTranslated) {
    for (const char* sample : {"linen-cupboard", "sink-base", "writing-chest", "tool-cabinet",
                               "shell-cabinet", "binding-bench"}) {
        openSample(QLatin1String(sample));
        std::set<OpeningUse> seen;
        std::vector<OpeningId> openings;
        for (const FrontPlan& front : plan().fronts)
            if (seen.insert(front.use).second || front.face)
                openings.push_back(front.opening);
        for (const SpacePlan& space : plan().spaces)
            if (seen.insert(space.use).second)
                openings.push_back(space.opening);
        for (const OpeningId opening : openings) {
            session().select(Selection::of(opening));
            QApplication::processEvents();
            expectBracketed(window);
        }
    }
    EXPECT_GT(count, 1000);
}

TEST_F(EveryText, OfTheStartPageCanBeTranslated) {
    window.showStart();
    QApplication::processEvents();
    expectBracketed(window);
    EXPECT_GT(count, 100);
}

TEST_F(EveryText, OfTheDialogsCanBeTranslated) {
    for (const auto& dialog : everyDialog(session(), settings)) {
        dialog->show();
        QApplication::processEvents();
        expectBracketed(*dialog);
    }
    EXPECT_GT(count, 50);
}

TEST_F(EveryText, OfTheHelpsWindowCanBeTranslated) {
    HelpWindow help([] { return QString(); }, nullptr);
    for (const SeenText& seen : seenTexts(help))
        // Titles are the pages' own.
        if (!seen.where.startsWith(QLatin1String("QTreeWidget")))
            EXPECT_TRUE(isFigureOrName(withoutBrackets(seen.text), names()))
                << seen.where.toStdString() << ": " << seen.text.toStdString();
}

TEST_F(EveryText, OfTheCataloguesDialogCanBeTranslated) {
    OwnEntriesDialog dialog(session(), nullptr);
    dialog.show();
    QApplication::processEvents();
    for (const SeenText& seen : seenTexts(dialog)) {
        // What is typed: botanical names, threads.
        if (seen.where.startsWith(QLatin1String("QTableWidget")))
            continue;
        ++count;
        EXPECT_TRUE(isFigureOrName(withoutBrackets(seen.text), names()))
            << seen.where.toStdString() << ": " << seen.text.toStdString();
    }
    EXPECT_GT(count, 40);
}

TEST_F(EveryText, OfTheStepsCanBeTranslated) {
    for (const QMenu* menu : window.findChildren<QMenu*>()) {
        if (!menu->title().contains(QLatin1String("Edit")))
            continue;
        // Those that do something at once.
        for (QAction* action : menu->actions()) {
            session().select(Selection::of(plan().fronts[0].opening));
            if (action->isEnabled() && !action->menu() && !action->text().contains(u'…') &&
                !action->text().contains(QLatin1String("Undo")))
                action->trigger();
        }
    }
    const QUndoStack& stack = session().undoStack();
    EXPECT_GT(stack.count(), 3);
    for (int step = 0; step < stack.count(); ++step)
        EXPECT_EQ(withoutBrackets(stack.text(step)), QString()) << stack.text(step).toStdString();
}

} // namespace
} // namespace frontwright::testing
