// Unsaved work is copied beside the maker's file, offered after a crash, and goes when it is saved.

#include "ui/window/recovery.h"

#include "core/documents/document.h"
#include "core/edits/divisions.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/files/save_file.h"

#include <QDir>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

constexpr std::chrono::milliseconds never{1'000'000};
constexpr std::chrono::milliseconds soon{1};

class Recovering : public ::testing::Test {
protected:
    Recovering() : session(builtInCatalogue()), file(session) {}
    QString state() { return folder.filePath(QStringLiteral("recovery")); }
    QString path() { return folder.filePath(QStringLiteral("chest.frontwright")); }
    std::string widened(int inches) {
        session.apply(QStringLiteral("Widen case"),
                      setCaseSize(session.project(), Length::inches(inches), Length::inches(30)));
        return writeDocument(session.project());
    }
    /// The one copy in the folder; empty where there is none.
    std::string copy() {
        const auto found =
            QDir(state()).entryInfoList({QStringLiteral("*.frontwright")}, QDir::Files);
        EXPECT_LE(found.size(), 1);
        return found.isEmpty() ? std::string()
                               : readFile(found[0].filePath()).value().toStdString();
    }
    bool comesToHold(const std::string& document) {
        return QTest::qWaitFor([&] { return copy() == document; }, 60'000);
    }
    /// A program that widened the case and was torn away: its objects end without finish().
    std::string tornAway(const QString& opened, int inches) {
        Session other(builtInCatalogue());
        CaseFile otherFile(other);
        Recovery recovery(other, otherFile, state(), {soon, never});
        if (!opened.isEmpty())
            EXPECT_FALSE(otherFile.open(opened));
        other.apply(QStringLiteral("Widen case"),
                    setCaseSize(other.project(), Length::inches(inches), Length::inches(30)));
        const std::string document = writeDocument(other.project());
        EXPECT_TRUE(comesToHold(document));
        return document;
    }

    QTemporaryDir folder;
    Session session;
    CaseFile file;
};

TEST_F(Recovering, PacesAsPromised) {
    const RecoveryPace pace;
    EXPECT_EQ(pace.idle, std::chrono::seconds(10));
    EXPECT_LT(pace.most, std::chrono::seconds(60));
}

TEST_F(Recovering, CopiesAnUntitledCaseWhenTheHandRests) {
    const Recovery recovery(session, file, state(), {soon, never});
    QTest::qWait(20);
    EXPECT_EQ(copy(), "") << "nothing is unsaved";
    EXPECT_TRUE(comesToHold(widened(31)));
}

TEST_F(Recovering, CopiesAtTheLatestAfterTheGreatestTimeThoughTheHandNeverRests) {
    const Recovery recovery(session, file, state(), {never, soon});
    EXPECT_TRUE(comesToHold(widened(31)));
    EXPECT_TRUE(comesToHold(widened(32)));
}

TEST_F(Recovering, NeverTouchesTheMakersFile) {
    ASSERT_FALSE(file.saveAs(path()));
    const QByteArray before = readFile(path()).value();
    const Recovery recovery(session, file, state(), {soon, never});
    ASSERT_TRUE(comesToHold(widened(31)));
    EXPECT_EQ(readFile(path()).value(), before);
}

TEST_F(Recovering, DropsTheCopyOfWhatIsSavedTakenBackOrLeft) {
    Recovery recovery(session, file, state(), {soon, never});
    ASSERT_TRUE(comesToHold(widened(31)));
    ASSERT_FALSE(file.saveAs(path()));
    EXPECT_EQ(copy(), "");
    ASSERT_TRUE(comesToHold(widened(32)));
    session.undoStack().undo();
    EXPECT_EQ(copy(), "") << "that is what the file holds";
    ASSERT_TRUE(comesToHold(widened(33)));
    recovery.finish();
    EXPECT_EQ(copy(), "");
    ASSERT_TRUE(comesToHold(widened(34)));
    ASSERT_FALSE(file.startNew(newProject(Unit::Inch)));
    EXPECT_EQ(copy(), "");
}

TEST_F(Recovering, DuringAGestureKeepsWhatWasBeforeIt) {
    const Recovery recovery(session, file, state(), {soon, never});
    const std::string settled = widened(31);
    session.preview(setCaseSize(session.project(), Length::inches(40), Length::inches(30)));
    EXPECT_TRUE(comesToHold(settled));
}

TEST_F(Recovering, OpensACopyUnsavedBesideWhatWasSaved) {
    ASSERT_FALSE(file.saveAs(path()));
    const QByteArray saved = readFile(path()).value();
    ASSERT_FALSE(file.startNew(newProject(Unit::Inch)));
    const std::string lost = tornAway(path(), 37);

    Recovery recovery(session, file, state(), {never, never});
    const auto offered = recovery.abandoned();
    ASSERT_EQ(offered.size(), 1);
    EXPECT_EQ(offered[0].origin, path());
    EXPECT_EQ(offered[0].name, QStringLiteral("chest.frontwright"));
    ASSERT_FALSE(recovery.openCopy(offered[0]));
    EXPECT_EQ(writeDocument(session.project()), lost);
    EXPECT_TRUE(file.isUnsaved());
    EXPECT_FALSE(file.hasPath()) << "it is saved under a name of its own";
    EXPECT_NE(file.name(), QStringLiteral("chest.frontwright"));
    EXPECT_EQ(readFile(path()).value(), saved) << "both versions are kept";
    EXPECT_TRUE(recovery.abandoned().isEmpty());
    EXPECT_EQ(copy(), lost) << "and torn away again it is still there";
}

TEST_F(Recovering, KeepsACopyThatCantBeOpened) {
    tornAway({}, 37);
    Recovery recovery(session, file, state(), {never, never});
    const auto offered = recovery.abandoned();
    ASSERT_EQ(offered.size(), 1);
    ASSERT_FALSE(writeFileWhole(offered[0].document, "{ damaged"));
    const std::string before = writeDocument(session.project());
    EXPECT_TRUE(recovery.openCopy(offered[0]));
    EXPECT_EQ(writeDocument(session.project()), before);
    EXPECT_EQ(recovery.abandoned().size(), 1);
}

TEST_F(Recovering, SaysOnceThatNoCopyCanBeWritten) {
    ASSERT_FALSE(writeFileWhole(state(), "a file in the way"));
    const Recovery recovery(session, file, state(), {soon, soon});
    QSignalSpy told(&recovery, &Recovery::failed);
    widened(31);
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.count() == 1; }, 60'000));
    widened(32);
    QTest::qWait(50);
    EXPECT_EQ(told.count(), 1);
}

} // namespace
} // namespace frontwright::testing
