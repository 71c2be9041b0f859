#include "tests/gallery/window_states.h"

#include "core/edits/choices.h"
#include "ui/panels/findings_panel.h"
#include "ui/panels/wood_panel.h"
#include "ui/rendering/look_panel.h"
#include "ui/window/panel_dock.h"

#include <QCheckBox>
#include <QRadioButton>
#include <QScrollBar>
#include <QTest>
#include <QTreeWidget>

namespace frontwright::gallery {

namespace {

QPoint onScreen(MainWindow& window, const CaseRect& rect) {
    const auto centre = rect.centre();
    return window.elevation().mapFromScene(centre.x.inMillimetres(), centre.y.inMillimetres());
}

const MemberPlan& firstMember(const Session& session, MemberKind kind) {
    for (const MemberPlan& member : session.plan().members)
        if (member.kind == kind)
            return member;
    return session.plan().members.front();
}

QPixmap withPanel(MainWindow& window, const char* name) {
    if (auto* dock = window.findChild<PanelDock*>(QString::fromLatin1(name)))
        dock->bringForward();
    return grabbed(window);
}

OpeningId named(const Plan& plan, std::string_view name) {
    for (const FrontPlan& front : plan.fronts)
        if (*front.name == name)
            return front.opening;
    for (const SpacePlan& space : plan.spaces)
        if (*space.name == name)
            return space.opening;
    return plan.fronts.front().opening;
}

} // namespace

QPixmap selected(MainWindow& window, Unit unit, const char* sample, std::string_view opening) {
    open(window, sample, unit);
    window.session().select(Selection::of(named(window.session().plan(), opening)));
    return grabbed(window);
}

QPixmap dragging(MainWindow& window, Unit unit) {
    open(window, "glaze-chest", unit);
    QWidget* canvas = window.elevation().viewport();
    const QPoint at = onScreen(window, firstMember(window.session(), MemberKind::Rail).rect);
    QTest::mousePress(canvas, Qt::LeftButton, {}, at);
    QTest::mouseMove(canvas, at + QPoint(0, 8));
    QTest::mouseMove(canvas, at + QPoint(0, 14));
    QPixmap picture = grabbed(window);
    QTest::keyClick(canvas, Qt::Key_Escape);
    QTest::mouseRelease(canvas, Qt::LeftButton, {}, at);
    return picture;
}

QPixmap typing(MainWindow& window, Unit unit) {
    open(window, "glaze-chest", unit);
    window.session().select(Selection::of(window.session().plan().fronts[2].opening));
    settle();
    window.elevation().setFocus();
    QTest::keyClick(&window.elevation(), Qt::Key_Return);
    return grabbed(window);
}

QPixmap finding(MainWindow& window, Unit unit) {
    open(window, "first-try", unit);
    auto* list = window.findings().findChild<QTreeWidget*>();
    if (list->topLevelItemCount() > 0)
        list->setCurrentItem(list->topLevelItem(0));
    return grabbed(window);
}

QPixmap front(MainWindow& window, Unit unit, const char* panel) {
    open(window, "glaze-chest", unit);
    window.session().select(Selection::of(window.session().plan().fronts.back().opening));
    return withPanel(window, panel);
}

QPixmap frameless(MainWindow& window, Unit unit) {
    open(window, "binding-bench", unit);
    ShownLayers layers;
    layers.systemHoles = Shown::Yes;
    window.elevation().setLayers(layers);
    window.elevation().fit();
    return grabbed(window);
}

QPixmap everyLayer(MainWindow& window, Unit unit) {
    open(window, "plan-chest", unit);
    ShownLayers layers;
    layers.boxes = Shown::Yes;
    layers.allowedRegion = Shown::Yes;
    layers.fields = Shown::Yes;
    layers.bottoms = Shown::Yes;
    window.elevation().setLayers(layers);
    window.elevation().fit();
    return grabbed(window);
}

QPixmap several(MainWindow& window, Unit unit) {
    open(window, "plan-chest", unit);
    Selection selection;
    for (const FrontPlan& each : window.session().plan().fronts)
        if (selection.openings.size() < 3)
            selection.openings.push_back(each.opening);
    window.session().select(selection);
    return grabbed(window);
}

QPixmap look(MainWindow& window, Unit unit, CentralArea::Shows shows, bool exaggerated) {
    open(window, "glaze-chest", unit);
    const OpeningId front = window.session().plan().fronts[2].opening;
    window.session().apply(QStringLiteral("Cover more"),
                           setFrontFit(window.session().project(), EditTarget{front}, Side::Top,
                                       {Fit::Overlay, Length::inches(0, 24)}));
    window.session().select(Selection::of(front));
    window.views().choose(shows);
    settle();
    window.views().look().revealsBox().setChecked(exaggerated);
    return grabbed(window);
}

QPixmap wood(MainWindow& window, Unit unit) {
    open(window, "plan-chest", unit);
    window.session().select(Selection::of(window.session().plan().fronts[3].opening));
    if (auto* dock = window.findChild<PanelDock*>(QStringLiteral("section")))
        dock->hide();
    withPanel(window, "wood");
    settle();
    if (auto* panel = window.findChild<WoodPanel*>())
        panel->verticalScrollBar()->setValue(panel->verticalScrollBar()->maximum());
    return grabbed(window);
}

static void cutLevel(MainWindow& window) {
    for (auto* button : window.findChildren<QRadioButton*>())
        if (button->accessibleName() == QStringLiteral("Level"))
            button->click();
}

QPixmap levelSection(MainWindow& window, Unit unit) {
    open(window, "glaze-chest", unit);
    Selection hole = Selection::of(window.session().plan().fronts[4].opening);
    hole.mountingHole = 0;
    window.session().select(hole);
    cutLevel(window);
    return grabbed(window);
}

QPixmap selectedLevel(MainWindow& window, Unit unit, const char* sample, std::string_view opening) {
    cutLevel(window);
    return selected(window, unit, sample, opening);
}

QPixmap holeDragged(MainWindow& window, Unit unit) {
    open(window, "glaze-chest", unit);
    const FrontPlan& front = window.session().plan().fronts[5];
    const PointMm hole = toMm(front.box.origin) + toMm(front.mounting.holes[0].at);
    QWidget* canvas = window.elevation().viewport();
    const QPoint at = window.elevation().mapFromScene(hole.x(), hole.y());
    QTest::mousePress(canvas, Qt::LeftButton, {}, at);
    QTest::mouseMove(canvas, at + QPoint(8, -4));
    QTest::mouseMove(canvas, at + QPoint(16, -10));
    QPixmap picture = grabbed(window);
    QTest::keyClick(canvas, Qt::Key_Escape);
    QTest::mouseRelease(canvas, Qt::LeftButton, {}, at);
    return picture;
}

} // namespace frontwright::gallery
