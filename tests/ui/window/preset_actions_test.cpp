// Presets are kept and used from the drawing.

#include "core/edits/presets.h"
#include "tests/ui/elevation/open_window.h"
#include "tests/ui/window/in_dialog.h"

#include <QApplication>
#include <QTest>

namespace frontwright::testing {
namespace {

void strike(Qt::Key key) {
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    QTest::keyClick(QApplication::focusWidget(), key);
}

class PresetKeys : public OpenWindow {
protected:
    void keepHandles(const QString& name) {
        inDialog([name] {
            inDialog([name] {
                QTest::keyClicks(QApplication::focusWidget(), name);
                strike(Qt::Key_Return);
            });
            strike(Qt::Key_Return); // handles stand first
        });
        key(Qt::Key_P, Qt::ShiftModifier);
    }
};

TEST_F(PresetKeys, KeepAndUseAPreset) {
    view().setFocus();
    key(Qt::Key_Right);
    keepHandles(QStringLiteral("Deep"));
    ASSERT_EQ(presetNames(session().project().presets, PresetKind::Hardware),
              std::vector<std::string>{"Deep"});
    backTo(window, view());
    key(Qt::Key_A, Qt::ControlModifier);
    inDialog([] { strike(Qt::Key_Return); });
    key(Qt::Key_P);
    for (const FrontPlan& front : plan().fronts)
        EXPECT_EQ(originOf(session().project(), {front.opening}, PresetKind::Hardware),
                  (PresetOrigin{Origin::Preset, "Deep"}));
    EXPECT_EQ(steps(), 2);
}

TEST_F(PresetKeys, DoNothingWhereThereIsNone) {
    view().setFocus();
    key(Qt::Key_P);
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
    EXPECT_EQ(steps(), 0);
}

} // namespace
} // namespace frontwright::testing
