#pragma once

#include "ui/language/language.h"
#include "ui/window/main_window.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <string>

namespace frontwright::testing {

/// 24 in × 30 in with three rows of one bank, rails 1 1/2 in wide, all rows flexible.
Project threeRows();
/// Of the source tree: "glaze-chest".
QString samplePath(const QString& name);

/// The whole window on the screenless platform, with a case open and shown. Settings and files go
/// to a folder of its own.
class OpenWindow : public ::testing::Test {
protected:
    explicit OpenWindow(const QString& language = QStringLiteral("en"));
    void SetUp() override;

    void open(const Project& project);
    void openSample(const QString& name);

    [[nodiscard]] Session& session() { return window.session(); }
    [[nodiscard]] const Plan& plan() { return window.session().plan(); }
    [[nodiscard]] ElevationView& view() { return window.elevation(); }
    [[nodiscard]] std::string bytes();
    [[nodiscard]] int steps() { return window.session().undoStack().index(); }

    /// In the viewport, from a place of the case.
    [[nodiscard]] QPoint onScreen(const PointMm& at);
    [[nodiscard]] QPoint middleOf(const CaseRect& rect) { return onScreen(toMm(rect.centre())); }
    /// The member of that kind, counted from the plan's first.
    [[nodiscard]] MemberPlan member(MemberKind kind, std::size_t number = 0);

    void press(QPoint at, Qt::KeyboardModifiers modifiers = {});
    void moveTo(QPoint at);
    void release(QPoint at, Qt::KeyboardModifiers modifiers = {});
    void click(QPoint at, Qt::KeyboardModifiers modifiers = {});
    /// To the widget that has the keyboard.
    void type(const QString& text);
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {});

    SpokenLanguage spoken;
    QTemporaryDir folder;
    QSettings settings;
    MainWindow window;
};

} // namespace frontwright::testing
