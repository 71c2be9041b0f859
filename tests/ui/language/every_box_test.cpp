// Questions, errors and dialogs that open on something that happened: in a language of brackets, as
// in every_text_test.cpp.

#include "ui/rendering/card_dialog.h"
#include "ui/sheets/calibration_dialog.h"
#include "ui/window/file_questions.h"
#include "ui/window/start_notes.h"

#include "core/drawings/seen_size.h"
#include "core/edits/divisions.h"
#include "tests/ui/elevation/open_window.h"
#include "tests/ui/language/brackets.h"
#include "tests/ui/language/seen_texts.h"
#include "tests/ui/window/in_dialog.h"

#include <QTemporaryDir>

namespace frontwright::testing {
namespace {

class EveryBox : Bracketed, public OpenWindow {
protected:
    void expectBracketed(const QWidget& top, const QStringList& names) {
        for (const SeenText& seen : seenTexts(top)) {
            ++count;
            EXPECT_TRUE(isFigureOrName(withoutBrackets(seen.text), names))
                << seen.where.toStdString() << ": " << seen.text.toStdString();
        }
    }
    /// What `open` opens and waits for.
    void expectBox(const std::function<void()>& open, const QStringList& names = {}) {
        const int before = count;
        inDialog([&] {
            QWidget& box = *QApplication::activeModalWidget();
            expectBracketed(box, names);
            box.close();
        });
        open();
        EXPECT_GT(count, before + 2);
    }
    void expectError(const Error& error, const QStringList& names = {}) {
        expectBox([&] { reportError(QStringLiteral("[1]"), error, window); }, names);
    }

    int count = 0;
    QTemporaryDir folder;
};

TEST_F(EveryBox, OfFilesCanBeTranslated) {
    const QStringList names{QStringLiteral("7.frontwright"), QStringLiteral("Shop"),
                            window.file().name()};
    expectBox(
        [&] {
            askHeld(QStringLiteral("7.frontwright"), {QStringLiteral("Shop"), 7}, window);
        },
        names);
    expectBox([&] { askChangedOutside(window.file(), window); }, names);
    expectBox([&] { askUnsaved(window.file(), window); }, names);
    expectBox([&] { askToForget(QStringLiteral("7.frontwright"), window); }, names);
    expectBox([&] { tellOfBadSettings(QStringLiteral("7"), window); });
    expectBox([&] { tellOfCrashes({QStringLiteral("7")}, window); });
}

TEST_F(EveryBox, OfErrorsCanBeTranslated) {
    const QString path = folder.filePath(QStringLiteral("7"));
    const QStringList names{path, QFileInfo(path).fileName(), folder.path()};
    CaseFile& file = window.file();
    expectError(file.open(path, CaseFile::OpenAs::Own).value(), names);
    expectError(file.open(folder.path(), CaseFile::OpenAs::Own).value(), names);
    QFile other(path);
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("{ ");
    other.close();
    expectError(file.open(path, CaseFile::OpenAs::Own).value(), names);
    expectError(file.saveAs(path).value(), names);
    expectError(file.saveAs(folder.path()).value(), names);
    expectError(splitOpening(session().project(), plan().fronts[0].opening, Direction::Rows, 99,
                             Length::inches(1))
                    .error());
}

TEST_F(EveryBox, OfTheCardCanBeTranslated) {
    expectBracketed(CardDialog(4, usualEyeDistance, {}), {});
    EXPECT_GT(count, 5);
}

TEST_F(EveryBox, OfThePrintersMeasuringCanBeTranslated) {
    expectBracketed(CalibrationDialog(settings, QStringLiteral("Shop"), paperNamed("A4").value(),
                                      Length::millimetres(10), {}, Orientation::Portrait,
                                      [](const Page&) { return true; }),
                    {QStringLiteral("Shop"), QStringLiteral("A4")});
    EXPECT_GT(count, 10);
}

} // namespace
} // namespace frontwright::testing
