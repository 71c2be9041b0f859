#include <QGuiApplication>
#include <QHashSeed>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    // As in the program: the order of fonts in a PDF follows Qt's hashes.
    QHashSeed::setDeterministicGlobalSeed();
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication app(argc, argv);
    ::testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
