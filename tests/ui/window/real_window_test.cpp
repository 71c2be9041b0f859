// The built program on a real X display, driven from outside by xdotool.

#include "core/documents/document.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/files/save_file.h"
#include "ui/session/session.h"

#include "tests/ui/elevation/open_window.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QStandardPaths>
#include <QThread>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

constexpr int patience = 60'000; // ms; a slow machine only takes longer

/// An X server without a screen, on a display that it finds free itself.
class Display {
public:
    Display() {
        m_server.start(QStringLiteral("Xvfb"),
                       {QStringLiteral("-displayfd"), QStringLiteral("1"),
                        QStringLiteral("-screen"), QStringLiteral("0"),
                        QStringLiteral("1600x1000x24"), QStringLiteral("-dpi"),
                        QStringLiteral("96"), QStringLiteral("-nolisten"), QStringLiteral("tcp")});
        while (m_server.waitForReadyRead(patience)) {
            m_number += m_server.readAllStandardOutput();
            if (m_number.endsWith('\n'))
                break;
        }
        m_number = m_number.trimmed();
    }
    Display(const Display&) = delete;
    Display& operator=(const Display&) = delete;
    ~Display() {
        m_server.terminate();
        m_server.waitForFinished(patience);
    }
    [[nodiscard]] bool isOpen() const { return !m_number.isEmpty(); }
    [[nodiscard]] QString name() const { return u':' + QString::fromLatin1(m_number); }

private:
    QProcess m_server;
    QByteArray m_number;
};

class RealWindow : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(display.isOpen()) << "Xvfb is wanted";
        path = folder.filePath(QStringLiteral("plan-chest.frontwright"));
        ASSERT_TRUE(QFile::copy(samplePath(QStringLiteral("plan-chest")), path));
        ASSERT_TRUE(QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner));
        environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("DISPLAY"), display.name());
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("xcb"));
        environment.insert(QStringLiteral("HOME"), folder.path());
        environment.insert(QStringLiteral("XDG_CONFIG_HOME"), folder.path());
        environment.insert(QStringLiteral("XDG_RUNTIME_DIR"), folder.path());
        environment.remove(QStringLiteral("WAYLAND_DISPLAY"));
        program.setProcessEnvironment(environment);
        program.start(QStringLiteral(FRONTWRIGHT_PROGRAM), {path});
        ASSERT_TRUE(program.waitForStarted(patience));
    }
    void TearDown() override {
        if (program.state() != QProcess::NotRunning) {
            program.kill();
            program.waitForFinished(patience);
        }
    }
    QString xdotool(const QStringList& arguments) {
        QProcess tool;
        tool.setProcessEnvironment(environment);
        tool.start(QStringLiteral("xdotool"), arguments);
        EXPECT_TRUE(tool.waitForFinished(patience)) << "xdotool is wanted";
        return QString::fromUtf8(tool.readAllStandardOutput()).trimmed();
    }
    QString xdotool(const char* arguments) {
        return xdotool(QString::fromLatin1(arguments).split(u' '));
    }
    /// Waits until `holds`, asking ten times a second.
    template<class Condition>
    bool eventually(Condition holds, int within = patience) {
        QElapsedTimer waited;
        waited.start();
        while (!holds()) {
            if (waited.elapsed() > within)
                return false;
            QThread::msleep(100);
        }
        return true;
    }
    bool findWindow() {
        return eventually([this] {
            const QString found =
                xdotool({QStringLiteral("search"), QStringLiteral("--onlyvisible"),
                         QStringLiteral("--name"), QStringLiteral("plan-chest.frontwright")});
            id = found.section(u'\n', -1);
            return !id.isEmpty();
        });
    }
    QString title() { return xdotool({QStringLiteral("getwindowname"), id}); }
    bool isMarkedUnsaved() { return title().contains(u'*'); }
    /// Presses at a place of the window and pulls down, as a hand does.
    void dragDown(int x, int y) {
        xdotool({QStringLiteral("mousemove"), QStringLiteral("--window"), id, QString::number(x),
                 QString::number(y), QStringLiteral("mousedown"), QStringLiteral("1")});
        for (int i = 0; i < 5; ++i)
            xdotool("mousemove_relative -- 0 4");
        xdotool("mouseup 1");
    }
    /// Down the elevation until a drag has got hold of a rail.
    bool dragSomeRail() {
        constexpr int x = 300;
        for (int y = 200; y < 520; y += 5) {
            dragDown(x, y);
            if (eventually([this] { return isMarkedUnsaved(); }, 300))
                return true;
            xdotool("key Escape");
        }
        return false;
    }

    Display display;
    QTemporaryDir folder;
    QString path;
    QProcessEnvironment environment;
    QProcess program;
    QString id;
};

TEST_F(RealWindow, DragsARailSavesItAndReadsItBack) {
    const QByteArray before = readFile(path).value();
    ASSERT_TRUE(findWindow());
    EXPECT_FALSE(isMarkedUnsaved());
    xdotool({QStringLiteral("windowfocus"), id});
    ASSERT_TRUE(dragSomeRail());
    EXPECT_EQ(readFile(path).value(), before) << "not before it is saved";

    xdotool("key ctrl+s");
    ASSERT_TRUE(eventually([this] { return !isMarkedUnsaved(); }));
    const QByteArray after = readFile(path).value();
    EXPECT_NE(after, before);
    const auto project = readDocument(after.toStdString());
    ASSERT_TRUE(project.ok());
    EXPECT_EQ(writeDocument(project.value()), after.toStdString());
    const auto old = readDocument(before.toStdString());
    EXPECT_EQ(project.value().casework.height, old.value().casework.height);
    EXPECT_NE(project.value().casework.divisions, old.value().casework.divisions);
    const auto work = workOut(project.value(), builtInCatalogue());
    ASSERT_TRUE(work.ok());
    EXPECT_EQ(brokenInvariant(work.value()->plan), "");
    EXPECT_EQ(readFile(path + QLatin1Char('~')).value(), before);

    // Undo by key: the mark comes back, the file stays.
    xdotool("key ctrl+z");
    EXPECT_TRUE(eventually([this] { return isMarkedUnsaved(); }));
    xdotool("key ctrl+shift+z");
    EXPECT_TRUE(eventually([this] { return !isMarkedUnsaved(); }));
    xdotool("key ctrl+q");
    ASSERT_TRUE(program.waitForFinished(patience));
    EXPECT_EQ(program.exitStatus(), QProcess::NormalExit);
    EXPECT_EQ(program.exitCode(), 0);
    EXPECT_EQ(program.readAllStandardError().toStdString(), "");
}

} // namespace
} // namespace frontwright::testing
