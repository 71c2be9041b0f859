#include "ui/rendering/screen_size.h"

#include "core/drawings/seen_size.h"

#include <QGuiApplication>
#include <QScreen>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace frontwright {
namespace {

class OneScreen : public ::testing::Test {
protected:
    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    ScreenSize screen{settings, *QGuiApplication::primaryScreen()};
};

TEST_F(OneScreen, IsNotMeasuredUntilACardWasHeldAgainstIt) {
    EXPECT_FALSE(screen.isMeasured());
    EXPECT_GT(screen.pixelsPerMm(), 0.5);
    EXPECT_EQ(screen.eyeDistance(), usualEyeDistance);
}

TEST_F(OneScreen, KeepsWhatWasMeasuredInTheSettings) {
    screen.setMeasured(5.25);
    screen.setEyeDistance(Length::millimetres(550));
    const ScreenSize again(settings, *QGuiApplication::primaryScreen());
    EXPECT_TRUE(again.isMeasured());
    EXPECT_DOUBLE_EQ(again.pixelsPerMm(), 5.25);
    EXPECT_EQ(again.eyeDistance(), Length::millimetres(550));
}

TEST_F(OneScreen, IsKnownByItsNameAndResolution) {
    screen.setMeasured(5.25);
    const QScreen& glass = *QGuiApplication::primaryScreen();
    const QSize pixels = glass.size() * glass.devicePixelRatio();
    bool isNamed = false;
    for (const QString& key : settings.allKeys())
        isNamed |= key.contains(QStringLiteral("%1x%2").arg(pixels.width()).arg(pixels.height()));
    EXPECT_TRUE(isNamed);
}

TEST_F(OneScreen, DoesNotBelieveDamagedSettings) {
    screen.setMeasured(5.25);
    screen.setEyeDistance(Length::millimetres(550));
    for (const QVariant& bad :
         {QVariant(QStringLiteral("wide")), QVariant(-3), QVariant(0), QVariant(1e300)}) {
        for (const QString& key : settings.allKeys())
            settings.setValue(key, bad);
        EXPECT_FALSE(screen.isMeasured());
        EXPECT_GT(screen.pixelsPerMm(), 0.5);
        EXPECT_LT(screen.pixelsPerMm(), 60);
        EXPECT_EQ(screen.eyeDistance(), usualEyeDistance);
    }
}

} // namespace
} // namespace frontwright
