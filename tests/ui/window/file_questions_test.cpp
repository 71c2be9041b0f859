// Two windows, one file; changes from outside; files that are gone or damaged: the maker is asked,
// and nothing is overwritten unasked.

#include "tests/ui/window/answer_dialog.h"

#include "core/documents/document.h"
#include "core/edits/divisions.h"
#include "tests/ui/elevation/open_window.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/files/save_file.h"
#include "ui/window/file_actions.h"
#include "ui/window/start_notes.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>
#include <QUrl>

namespace frontwright::testing {
namespace {

class Asked : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        ASSERT_FALSE(window.file().saveAs(path()));
        saved = readFile(path()).value();
    }
    QString path() { return folder.filePath(QStringLiteral("case.frontwright")); }
    FileActions& actions() { return *window.findChild<FileActions*>(); }
    void widen(int inches = 27) {
        session().apply(
            QStringLiteral("Widen case"),
            setCaseSize(session().project(), Length::inches(inches), Length::inches(30)));
    }
    void changeOutside() {
        Project other = session().project();
        other.title = "Somebody else's";
        outside = QByteArray::fromStdString(writeDocument(other));
        ASSERT_FALSE(writeFileWhole(path(), outside));
    }
    QByteArray onDisk() { return readFile(path()).value(); }

    QByteArray saved;
    QByteArray outside;
};

TEST_F(Asked, ASecondOpenerGetsACopy) {
    MainWindow second(builtInCatalogue(), settings);
    {
        const Answers answers({QStringLiteral("Open a copy")});
        EXPECT_TRUE(second.openPath(path()));
        EXPECT_TRUE(answers.said().contains(QString::number(QCoreApplication::applicationPid())));
    }
    EXPECT_EQ(writeDocument(second.session().project()), bytes());
    EXPECT_FALSE(second.file().hasPath());
    EXPECT_TRUE(second.file().name().contains(QLatin1String("case.frontwright")));
}

TEST_F(Asked, ASecondOpenerMayLookButNotSave) {
    MainWindow second(builtInCatalogue(), settings);
    {
        const Answers answers({QStringLiteral("Read only")});
        EXPECT_TRUE(second.openPath(path()));
    }
    EXPECT_TRUE(second.file().isReadOnly());
    EXPECT_TRUE(second.windowTitle().contains(QLatin1String("read only")));
    EXPECT_TRUE(second.file().save());
    EXPECT_TRUE(second.file().saveAs(path())) << "not by name either while it is open elsewhere";
    EXPECT_EQ(onDisk(), saved);
    ASSERT_FALSE(second.file().saveAs(folder.filePath(QStringLiteral("other.frontwright"))));
    EXPECT_FALSE(second.file().isReadOnly());
}

TEST_F(Asked, ASecondOpenerMayLeaveIt) {
    MainWindow second(builtInCatalogue(), settings);
    const std::string before = writeDocument(second.session().project());
    const Answers answers({QStringLiteral("Cancel")});
    EXPECT_FALSE(second.openPath(path()));
    EXPECT_EQ(writeDocument(second.session().project()), before);
}

TEST_F(Asked, NobodyWhereTheCaseIsOpenedAgainOrWasClosedElsewhere) {
    EXPECT_TRUE(window.openPath(path()));
    EXPECT_FALSE(window.file().isReadOnly());
    ASSERT_FALSE(window.file().startNew(threeRows()));
    MainWindow second(builtInCatalogue(), settings);
    EXPECT_TRUE(second.openPath(path()));
    EXPECT_FALSE(second.file().isReadOnly());
}

TEST_F(Asked, NobodyWhereASaveWentToAnotherNameAndLeftTheFirst) {
    ASSERT_FALSE(window.file().saveAs(folder.filePath(QStringLiteral("other.frontwright"))));
    MainWindow second(builtInCatalogue(), settings);
    EXPECT_TRUE(second.openPath(path()));
    EXPECT_FALSE(second.file().isReadOnly());
}

TEST_F(Asked, BeforeAChangeFromOutsideIsReplaced) {
    widen();
    changeOutside();
    {
        const Answers answers({QStringLiteral("Cancel")});
        EXPECT_FALSE(actions().save());
    }
    EXPECT_EQ(onDisk(), outside);
    EXPECT_TRUE(window.file().isUnsaved());
    {
        const Answers answers({QStringLiteral("Replace it")});
        EXPECT_TRUE(actions().save());
    }
    EXPECT_EQ(onDisk().toStdString(), bytes());
}

TEST_F(Asked, AboutAChangeThatKeptSizeAndTimeButNotAboutATouch) {
    const QFileInfo info(path());
    const QDateTime time = info.lastModified();
    QByteArray other = saved;
    const auto at = other.indexOf("\"denominator\": 16");
    ASSERT_GE(at, 0);
    other.replace(at, 17, "\"denominator\": 32");
    ASSERT_FALSE(writeFileWhole(path(), other));
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.setFileTime(time, QFileDevice::FileModificationTime));
    file.close();
    EXPECT_TRUE(window.file().changedOutside());

    ASSERT_FALSE(writeFileWhole(path(), saved));
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.setFileTime(time.addSecs(99), QFileDevice::FileModificationTime));
    file.close();
    EXPECT_FALSE(window.file().changedOutside()) << "nothing would be lost";
}

TEST_F(Asked, NeverReplacesWhatCantBeReadAsACase) {
    const QByteArray damaged = saved.chopped(20);
    ASSERT_FALSE(writeFileWhole(path(), damaged));
    widen();
    {
        const Answers answers({QStringLiteral("Replace it"), QStringLiteral("OK")});
        EXPECT_FALSE(actions().save());
    }
    EXPECT_EQ(onDisk(), damaged);
    const QString other = folder.filePath(QStringLiteral("other.frontwright"));
    ASSERT_FALSE(writeFileWhole(other, "not a case"));
    const auto failed = window.file().saveAs(other);
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->sentence().english().find("another name"), std::string::npos);
    EXPECT_EQ(readFile(other).value(), "not a case");
    EXPECT_TRUE(window.file().isUnsaved());
    EXPECT_EQ(window.file().path(), path());
}

TEST_F(Asked, WhetherToForgetARecentCaseThatIsGone) {
    ASSERT_TRUE(window.openPath(path()));
    ASSERT_FALSE(window.file().startNew(threeRows()));
    ASSERT_TRUE(QFile::remove(path()));
    {
        const Answers answers({QStringLiteral("No")});
        EXPECT_FALSE(window.openPath(path()));
    }
    EXPECT_EQ(actions().recent(), QStringList{path()}) << "never dropped silently";
    {
        const Answers answers({QStringLiteral("Yes")});
        EXPECT_FALSE(window.openPath(path()));
    }
    EXPECT_EQ(actions().recent(), QStringList());
}

TEST_F(Asked, BeforeUnsavedWorkIsLeftWithTheCasesName) {
    widen();
    {
        const Answers answers({QStringLiteral("Cancel")});
        EXPECT_FALSE(window.close());
        EXPECT_TRUE(answers.said().contains(QLatin1String("case.frontwright")));
    }
    EXPECT_TRUE(window.isVisible());
    {
        const Answers answers({QStringLiteral("Save")});
        EXPECT_TRUE(window.close());
    }
    EXPECT_EQ(onDisk().toStdString(), bytes());
}

TEST_F(Asked, WhatToDoWithWorkThatWasNotSaved) {
    const QString state = folder.filePath(QStringLiteral("recovery"));
    { // A program that ended without leaving its case.
        RecoveryFolder torn(state);
        ASSERT_FALSE(torn.keep(saved, path(), QStringLiteral("case.frontwright")));
    }
    Recovery recovery(session(), window.file(), state);
    {
        const Answers answers({QStringLiteral("Later")});
        EXPECT_FALSE(offerRecovery(recovery, window));
        EXPECT_EQ(recovery.abandoned().size(), 1);
    }
    {
        const Answers answers({QStringLiteral("Throw it away"), QStringLiteral("Cancel"),
                               QStringLiteral("Open the copy")});
        EXPECT_TRUE(offerRecovery(recovery, window));
    }
    EXPECT_TRUE(window.file().isUnsaved());
    EXPECT_TRUE(window.isWindowModified());
    recovery.finish();
    EXPECT_FALSE(offerRecovery(recovery, window)) << "nothing is left, nobody is asked";
}

TEST_F(Asked, NothingWhenSeveralFilesAreDroppedEachGetsAWindow) {
    const QString other = folder.filePath(QStringLiteral("other.frontwright"));
    ASSERT_TRUE(QFile::copy(path(), other));
    ASSERT_FALSE(window.file().startNew(threeRows()));
    QMimeData dropped;
    dropped.setUrls({QUrl(QStringLiteral("https://example.org/a.frontwright")),
                     QUrl::fromLocalFile(path()), QUrl::fromLocalFile(other)});
    QSignalSpy wanted(&window, &MainWindow::windowWanted);
    QDragEnterEvent enter({5, 5}, Qt::CopyAction, &dropped, Qt::LeftButton, {});
    QApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({5, 5}, Qt::CopyAction, &dropped, Qt::LeftButton, {});
    QApplication::sendEvent(&window, &drop);
    EXPECT_EQ(window.file().path(), path());
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted[0][0].toString(), other);
}

TEST_F(Asked, NothingButToldOfSettingsAndCrashes) {
    {
        const Answers answers({QStringLiteral("OK")});
        tellOfBadSettings(QStringLiteral("/a/settings.bad"), window);
        EXPECT_TRUE(answers.said().contains(QLatin1String("/a/settings.bad")));
    }
    const Answers answers({QStringLiteral("OK")});
    tellOfCrashes({QStringLiteral("/a/told-crash.txt")}, window);
    EXPECT_TRUE(answers.said().contains(QLatin1String("/a/told-crash.txt")));
}

} // namespace
} // namespace frontwright::testing
