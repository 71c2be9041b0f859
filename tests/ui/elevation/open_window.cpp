#include "tests/ui/elevation/open_window.h"

#include "core/documents/document.h"
#include "core/edits/divisions.h"
#include "ui/files/built_in_catalogue.h"

#include <QApplication>
#include <QFile>
#include <QTest>

namespace frontwright::testing {

Project threeRows() {
    Project project = newProject(Unit::Inch);
    project = setCaseSize(project, Length::inches(24), Length::inches(30)).value();
    return splitOpening(project, OpeningId{firstFreeId}, Direction::Rows, 3, Length::inches(1, 32))
        .value();
}

QString samplePath(const QString& name) {
    return QStringLiteral(FRONTWRIGHT_SOURCE_DIR "/samples/%1/%1.frontwright").arg(name);
}

OpenWindow::OpenWindow(const QString& language)
    : spoken(language),
      settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat),
      window(builtInCatalogue(), settings) {}

void OpenWindow::SetUp() {
    // The screenless platform's screen is smaller than a maker's.
    window.resize(1360, 900);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    open(threeRows());
}

void OpenWindow::open(const Project& project) {
    ASSERT_FALSE(window.file().startNew(project));
    view().fit();
    QApplication::processEvents();
}

void OpenWindow::openSample(const QString& name) {
    // A copy: the lock beside an open case would be met by tests that run at the same time.
    const QString copy = folder.filePath(name + QStringLiteral(".frontwright"));
    if (!QFile::exists(copy))
        ASSERT_TRUE(QFile::copy(samplePath(name), copy));
    ASSERT_TRUE(window.openPath(copy));
    view().fit();
    QApplication::processEvents();
}

std::string OpenWindow::bytes() {
    return writeDocument(session().project());
}

QPoint OpenWindow::onScreen(const PointMm& at) {
    return view().mapFromScene(QPointF(at.x(), at.y()));
}

MemberPlan OpenWindow::member(MemberKind kind, std::size_t number) {
    for (const MemberPlan& plan : session().plan().members)
        if (plan.kind == kind && number-- == 0)
            return plan;
    ADD_FAILURE() << "no such member";
    return {};
}

void OpenWindow::press(QPoint at, Qt::KeyboardModifiers modifiers) {
    QTest::mousePress(view().viewport(), Qt::LeftButton, modifiers, at);
}

void OpenWindow::moveTo(QPoint at) {
    QTest::mouseMove(view().viewport(), at);
    QApplication::processEvents();
}

void OpenWindow::release(QPoint at, Qt::KeyboardModifiers modifiers) {
    QTest::mouseRelease(view().viewport(), Qt::LeftButton, modifiers, at);
}

void OpenWindow::click(QPoint at, Qt::KeyboardModifiers modifiers) {
    QTest::mouseClick(view().viewport(), Qt::LeftButton, modifiers, at);
}

void OpenWindow::type(const QString& text) {
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    QTest::keyClicks(QApplication::focusWidget(), text);
}

void OpenWindow::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
}

} // namespace frontwright::testing
