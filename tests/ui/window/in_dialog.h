#pragma once

#include <QApplication>
#include <QTest>
#include <QTimer>
#include <QWidget>

#include <gtest/gtest.h>

#include <functional>

namespace frontwright::testing {

/// Does `act` once the dialog that is about to open has the keyboard.
inline void inDialog(const std::function<void()>& act, int tries = 400) {
    constexpr int milliseconds = 5;
    QTimer::singleShot(milliseconds, qApp, [act, tries] {
        const QWidget* dialog = QApplication::activeModalWidget();
        const QWidget* focus = QApplication::focusWidget();
        if (dialog != nullptr && focus != nullptr && dialog->isAncestorOf(focus))
            act();
        else if (tries > 0)
            inDialog(act, tries - 1);
        else
            ADD_FAILURE() << "no dialog opened";
    });
}

/// The window has the keyboard again after a dialog; `focus` gets it.
inline void backTo(QWidget& window, QWidget& focus) {
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    focus.setFocus();
}

} // namespace frontwright::testing
