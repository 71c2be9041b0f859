// A case is saved, opened again, and known to be saved or not.

#include "ui/window/case_file.h"

#include "tests/ui/elevation/open_window.h"

#include "core/documents/document.h"
#include "core/edits/divisions.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/files/save_file.h"

#include <QFile>

namespace frontwright::testing {
namespace {

class SavedCase : public OpenWindow {
protected:
    QString path() { return folder.filePath(QStringLiteral("case.frontwright")); }
    void widen() {
        session().apply(QStringLiteral("Widen case"),
                        setCaseSize(session().project(), Length::inches(25), Length::inches(30)));
    }
    /// Only who has a file open may save it.
    void leaveToOthers() { ASSERT_FALSE(window.file().startNew(threeRows())); }
    std::string onDisk(const QString& name) { return readFile(name).value().toStdString(); }
};

TEST_F(SavedCase, OpenedAgainHasTheSameBytes) {
    for (const char* sample : {"glaze-chest", "plan-chest", "first-try", "linen-cupboard",
                               "tool-cabinet", "binding-bench"}) {
        openSample(QString::fromLatin1(sample));
        ASSERT_FALSE(window.file().saveAs(path()));
        const std::string saved = bytes();
        EXPECT_EQ(onDisk(path()), saved);
        leaveToOthers();
        Session other(builtInCatalogue());
        CaseFile file(other);
        ASSERT_FALSE(file.open(path()));
        EXPECT_EQ(writeDocument(other.project()), saved);
        ASSERT_FALSE(file.save());
        EXPECT_EQ(onDisk(path()), saved);
    }
}

TEST_F(SavedCase, SampleIsSavedAsItWasWritten) {
    for (const char* sample : {"glaze-chest", "plan-chest", "first-try", "linen-cupboard",
                               "tool-cabinet", "binding-bench"}) {
        openSample(QString::fromLatin1(sample));
        EXPECT_EQ(bytes(), onDisk(samplePath(QString::fromLatin1(sample)))) << sample;
    }
}

TEST_F(SavedCase, IsMarkedUnsavedUntilUndoLeadsBackToWhatWasSaved) {
    EXPECT_FALSE(window.isWindowModified());
    widen();
    EXPECT_TRUE(window.file().isUnsaved());
    EXPECT_TRUE(window.isWindowModified());
    session().undoStack().undo();
    EXPECT_FALSE(window.file().isUnsaved());
    EXPECT_FALSE(window.isWindowModified());
    session().undoStack().redo();
    ASSERT_FALSE(window.file().saveAs(path()));
    EXPECT_FALSE(window.isWindowModified());
    session().undoStack().undo();
    EXPECT_TRUE(window.isWindowModified());
    session().undoStack().redo();
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(SavedCase, KeepsTheVersionBeforeTheFirstSaveOfASession) {
    ASSERT_FALSE(window.file().saveAs(path()));
    const std::string first = bytes();
    leaveToOthers();
    Session other(builtInCatalogue());
    CaseFile file(other);
    ASSERT_FALSE(file.open(path()));
    for (const int width : {26, 27}) {
        other.apply(QStringLiteral("Widen case"),
                    setCaseSize(other.project(), Length::inches(width), Length::inches(30)));
        ASSERT_FALSE(file.save());
    }
    EXPECT_EQ(onDisk(path() + QLatin1Char('~')), first);
}

TEST_F(SavedCase, SaysThatTheFileChangedOutside) {
    ASSERT_FALSE(window.file().saveAs(path()));
    EXPECT_FALSE(window.file().changedOutside());
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::Append));
    file.write("\n");
    file.close();
    EXPECT_TRUE(window.file().changedOutside());
}

TEST_F(SavedCase, ThatCantBeReadLeavesTheOpenOneAsItIs) {
    widen();
    const std::string before = bytes();
    ASSERT_FALSE(writeFileWhole(path(), "{ \"format\": \"frontwright-case\", }"));
    const auto failed = window.file().open(path());
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->sentence().english().find("case.frontwright"), std::string::npos)
        << failed->sentence();
    EXPECT_EQ(bytes(), before);
    EXPECT_TRUE(window.file().isUnsaved());
    EXPECT_EQ(steps(), 1);
}

TEST_F(SavedCase, ThatIsNotWrittenStaysUnsaved) {
    widen();
    const auto failed = window.file().saveAs(folder.filePath(QStringLiteral("no/such/case")));
    ASSERT_TRUE(failed);
    EXPECT_TRUE(window.file().isUnsaved());
    EXPECT_FALSE(window.file().hasPath());
}

TEST_F(SavedCase, DuringADragIsTheOneFromBeforeTheDrag) {
    const std::string before = bytes();
    const QPoint at = middleOf(member(MemberKind::Rail).rect);
    press(at);
    moveTo(at + QPoint(0, 20));
    moveTo(at + QPoint(0, 40));
    ASSERT_NE(bytes(), before);
    ASSERT_FALSE(window.file().saveAs(path()));
    EXPECT_EQ(onDisk(path()), before);
    release(at + QPoint(0, 40));
    EXPECT_TRUE(window.file().isUnsaved());
}

} // namespace
} // namespace frontwright::testing
