#include "ui/look/roomy_style.h"

#include <QAccessible>
#include <QApplication>
#include <QHashSeed>
#include <QStandardPaths>

#include <gtest/gtest.h>

namespace {

/// What Qt complains of is a defect of ours, but for what the screenless platform can't do.
void failOnWarning(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtDebugMsg || type == QtInfoMsg ||
        text.startsWith(QLatin1String("This plugin does not support")))
        return;
    ADD_FAILURE() << "Qt warns: " << text.toStdString();
}

} // namespace

int main(int argc, char** argv) {
    QHashSeed::setDeterministicGlobalSeed();
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    const QApplication app(argc, argv);
    QApplication::setStyle(new frontwright::RoomyStyle);
    QApplication::setOrganizationName(QStringLiteral("frontwright"));
    QApplication::setApplicationName(QStringLiteral("frontwright-tests"));
    qInstallMessageHandler(failOnWarning);
    return RUN_ALL_TESTS();
}
