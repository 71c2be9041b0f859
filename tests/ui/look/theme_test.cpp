// Told apart without colour, and read with weak eyes.

#include "ui/look/theme.h"

#include <QImage>
#include <QPainter>
#include <QPalette>

#include <gtest/gtest.h>

#include <cmath>

namespace frontwright::testing {
namespace {

constexpr Theme themes[] = {Theme::Paper, Theme::Blueprint};
constexpr Severity severities[] = {Severity::Ruins, Severity::WontWork, Severity::OutsidePractice,
                                   Severity::ToKnow};
// WCAG 2.1, 1.4.3 and 1.4.11.
constexpr double leastForText = 4.5;
constexpr double leastForMarks = 3.0;

/// WCAG 2.1, relative luminance of sRGB.
double luminance(const QColor& colour) {
    const auto linear = [](double c) {
        return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

std::string told(const QColor& a, const QColor& b) {
    return a.name().toStdString() + " on " + b.name().toStdString();
}

/// By hand: black on white is 21 : 1, and #767676 on white 4.54 : 1 (WCAG's own example).
TEST(Contrast, IsComputedAsTheRuleSays) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrast(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.01);
    EXPECT_NEAR(contrast(Qt::red, Qt::red), 1, 1e-9);
}

TEST(Contrast, IsEnoughForTextInBothThemes) {
    using Role = QPalette::ColorRole;
    constexpr std::pair<Role, Role> pairs[] = {
        {QPalette::WindowText, QPalette::Window},
        {QPalette::Text, QPalette::Base},
        {QPalette::Text, QPalette::AlternateBase},
        {QPalette::Text, QPalette::Window},
        {QPalette::ButtonText, QPalette::Button},
        {QPalette::ToolTipText, QPalette::ToolTipBase},
        {QPalette::PlaceholderText, QPalette::Base},
        {QPalette::PlaceholderText, QPalette::Window},
        {QPalette::HighlightedText, QPalette::Highlight},
        {QPalette::Link, QPalette::Base},
        {QPalette::Link, QPalette::Window},
    };
    for (const Theme theme : themes) {
        const QPalette palette = windowPalette(theme);
        for (const auto& [text, ground] : pairs)
            EXPECT_GE(contrast(palette.color(text), palette.color(ground)), leastForText)
                << told(palette.color(text), palette.color(ground));
        // On the sheet: placeholder words of empty panels, tags, labels of the drawing.
        for (const QColor& ground : {sheetColour(theme), partColour(theme), memberColour(theme)})
            for (const QColor& text : {inkColour(theme), accentColour(theme), wrongColour(theme),
                                       palette.color(QPalette::PlaceholderText),
                                       screenPen(Layer::Dimension, theme).color(),
                                       screenPen(Layer::Note, theme).color()})
                EXPECT_GE(contrast(text, ground), leastForText) << told(text, ground);
    }
}

TEST(Contrast, IsEnoughForMarksInBothThemes) {
    for (const Theme theme : themes) {
        const QPalette palette = windowPalette(theme);
        for (int i = 0; i <= static_cast<int>(Layer::CheckBar); ++i)
            for (const QColor& ground :
                 {sheetColour(theme), partColour(theme), memberColour(theme)}) {
                const QColor line = screenPen(static_cast<Layer>(i), theme).color();
                EXPECT_GE(contrast(line, ground), leastForMarks)
                    << key(static_cast<Layer>(i)) << ": " << told(line, ground);
            }
        for (const Severity severity : severities)
            for (const QColor& ground :
                 {palette.color(QPalette::Base), palette.color(QPalette::Window),
                  sheetColour(theme), partColour(theme), memberColour(theme)})
                EXPECT_GE(contrast(severityColour(severity, theme), ground), leastForMarks)
                    << key(severity) << ": " << told(severityColour(severity, theme), ground);
        // What has the keyboard is framed by the highlight.
        EXPECT_GE(contrast(palette.color(QPalette::Highlight), palette.color(QPalette::Window)),
                  leastForMarks);
    }
}

/// Ink only, as a grey picture of the screen has it: 1 where the sign covers the pixel.
std::vector<double> inkOf(Severity severity, Theme theme, int side) {
    QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
    image.fill(sheetColour(theme));
    QPainter painter(&image);
    drawSeverity(painter, QRectF(0, 0, side, side), severity, theme);
    painter.end();
    const QImage grey = image.convertToFormat(QImage::Format_Grayscale8);
    const double ground = qGray(sheetColour(theme).rgb());
    const double ink = qGray(severityColour(severity, theme).rgb());
    std::vector<double> covered;
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x)
            covered.push_back(
                std::clamp((grey.pixelColor(x, y).red() - ground) / (ink - ground), 0.0, 1.0));
    return covered;
}

/// How much of one shape the other lacks or adds: 0 the same, 1 nothing in common.
double difference(const std::vector<double>& a, const std::vector<double>& b) {
    double apart = 0, together = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        apart += std::abs(a[i] - b[i]);
        together += std::max(a[i], b[i]);
    }
    return apart / together;
}

TEST(Severities, DifferInShapeInAGreyPicture) {
    for (const Theme theme : themes)
        for (const int side : {14, 18, 32})
            for (const Severity a : severities)
                for (const Severity b : severities) {
                    const double apart = difference(inkOf(a, theme, side), inkOf(b, theme, side));
                    if (a == b)
                        EXPECT_EQ(apart, 0);
                    else
                        EXPECT_GT(apart, 0.2) << key(a) << " and " << key(b) << " at " << side;
                }
}

TEST(Severities, AreSomethingToBeSeen) {
    for (const Theme theme : themes)
        for (const Severity severity : severities) {
            double ink = 0;
            for (const double covered : inkOf(severity, theme, 18))
                ink += covered;
            EXPECT_GT(ink, 18 * 2) << key(severity);
        }
}

} // namespace
} // namespace frontwright::testing
