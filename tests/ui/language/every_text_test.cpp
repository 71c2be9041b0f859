// A language that puts brackets round every text that it is asked for, and knows only the texts
// that the translation files list: what is seen without brackets can't be translated.

#include "tests/ui/window/every_dialog.h"

#include "tests/ui/language/seen_texts.h"
#include "tests/ui/language/translation_file.h"

#include <QApplication>
#include <QDockWidget>
#include <QTranslator>

namespace frontwright::testing {
namespace {

class Brackets : public QTranslator {
public:
    Brackets() {
        for (const QString& file : translationFiles(QStringLiteral("de")))
            for (const TranslationEntry& entry : entriesOf(file))
                m_known.insert({entry.context, entry.source});
        QCoreApplication::installTranslator(this);
    }

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override {
        const QString text = QString::fromUtf8(source);
        // Qt's own contexts are its classes' names.
        const bool isKnown = context[0] == 'Q' || m_known.contains({QLatin1String(context), text});
        return isKnown ? u'[' + text + u']' : QString();
    }

private:
    QSet<std::pair<QString, QString>> m_known;
};

/// Before the window is made.
struct Bracketed {
    Brackets brackets;
};

class EveryText : Bracketed, public OpenWindow {
protected:
    void expectBracketed(const QWidget& top) {
        for (const SeenText& seen : seenTexts(top)) {
            if (isToldByCore(seen.where))
                continue;
            ++count;
            EXPECT_TRUE(isFigureOrName(withoutBrackets(seen.text), names()))
                << seen.where.toStdString() << ": " << seen.text.toStdString();
        }
    }
    /// Findings, names of numbers and of sheets are told by core.
    static bool isToldByCore(const QString& where) {
        static const QStringList places{
            QStringLiteral("QTreeWidget in QSplitter in frontwright::FindingsPanel"),
            QStringLiteral("QTreeWidget in QSplitter in frontwright::NumbersPanel"),
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

} // namespace
} // namespace frontwright::testing
