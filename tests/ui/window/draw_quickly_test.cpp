// A whole case from nothing, by keys and dialogs alone. Two minutes are 120 strokes at one a
// second, which is slow typing; the strokes are counted, not the time.

#include "core/edits/presets.h"
#include "tests/ui/elevation/open_window.h"
#include "tests/ui/window/in_dialog.h"

#include <QApplication>
#include <QTest>

namespace frontwright::testing {
namespace {

constexpr int strokesInTwoMinutes = 120;

class FromNothing : public OpenWindow {
protected:
    void stroke(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        ++strokes;
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    }
    void write(const QString& text) {
        strokes += static_cast<int>(text.size());
        QTest::keyClicks(QApplication::focusWidget(), text);
    }

    void outerSize();
    void rows();
    void handles();

    int strokes = 0;
};

/// 60 × 34 in, three banks.
void FromNothing::outerSize() {
    inDialog([this] {
        write(QStringLiteral("60"));
        stroke(Qt::Key_Tab);
        write(QStringLiteral("34"));
        stroke(Qt::Key_B, Qt::AltModifier); // banks side by side
        write(QStringLiteral("3"));
        stroke(Qt::Key_R, Qt::AltModifier); // drawers in each
        write(QStringLiteral("1"));
        stroke(Qt::Key_Return);
    });
    stroke(Qt::Key_N, Qt::ControlModifier);
}

/// Three graduated rows, two rows, four rows.
void FromNothing::rows() {
    backTo(window, view());
    stroke(Qt::Key_Right);
    stroke(Qt::Key_R);
    stroke(Qt::Key_3);
    inDialog([this] { stroke(Qt::Key_Return); }); // by a step of 1 in
    stroke(Qt::Key_G);
    backTo(window, view());
    stroke(Qt::Key_Right);
    stroke(Qt::Key_R);
    stroke(Qt::Key_Right);
    stroke(Qt::Key_R);
    stroke(Qt::Key_4);
    stroke(Qt::Key_M, Qt::ShiftModifier);
}

/// The case's handle is kept under a name and given to all.
void FromNothing::handles() {
    stroke(Qt::Key_Escape); // nothing selected: the case
    inDialog([this] {
        inDialog([this] {
            write(QStringLiteral("Knobs"));
            stroke(Qt::Key_Return);
        });
        stroke(Qt::Key_Return);
    });
    stroke(Qt::Key_P, Qt::ShiftModifier);
    backTo(window, view());
    stroke(Qt::Key_A, Qt::ControlModifier);
    inDialog([this] { stroke(Qt::Key_Return); });
    stroke(Qt::Key_P);
}

TEST_F(FromNothing, ACaseIsDrawnInFarFewerStrokesThanFitIntoTwoMinutes) {
    outerSize();
    ASSERT_EQ(plan().fronts.size(), 3U);
    EXPECT_EQ(plan().outline.width(), Length::inches(60));
    EXPECT_EQ(plan().outline.height(), Length::inches(34));
    rows();
    ASSERT_EQ(plan().fronts.size(), 9U);
    handles();
    // Mirrored: four rows on the left, the graduated three on the right, the deepest lowest.
    std::vector<int> perBank(3);
    for (const FrontPlan& front : plan().fronts)
        ++perBank.at(front.bank);
    EXPECT_EQ(perBank, (std::vector<int>{4, 2, 3}));
    const auto& fronts = plan().fronts;
    EXPECT_EQ(fronts[7].openingRect.height() - fronts[6].openingRect.height(), Length::inches(1));
    for (const FrontPlan& front : fronts)
        EXPECT_EQ(originOf(session().project(), {front.opening}, PresetKind::Hardware),
                  (PresetOrigin{Origin::Preset, "Knobs"}));
    RecordProperty("strokes", strokes);
    EXPECT_LT(strokes, strokesInTwoMinutes / 2);
}

} // namespace
} // namespace frontwright::testing
