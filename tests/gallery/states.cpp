#include "tests/gallery/states.h"

#include "core/drawings/seen_size.h"
#include "core/edits/choices.h"
#include "ui/help/help_desk.h"
#include "ui/help/help_window.h"
#include "ui/panels/findings_panel.h"
#include "ui/panels/wood_panel.h"
#include "ui/rendering/card_dialog.h"
#include "ui/rendering/look_panel.h"
#include "ui/sheets/calibration_dialog.h"
#include "ui/sheets/template_dialog.h"
#include "ui/window/central_area.h"
#include "ui/window/graduate_dialog.h"
#include "ui/window/new_case_dialog.h"
#include "ui/window/own_entries_dialog.h"
#include "ui/window/panel_dock.h"
#include "ui/window/recovery_dialog.h"
#include "ui/window/rules_dialog.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QRadioButton>
#include <QScrollBar>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTreeWidget>

namespace frontwright::gallery {

namespace {

void settle() {
    for (int turn = 0; turn < 5; ++turn)
        QApplication::processEvents();
}

void open(MainWindow& window, const char* sample, Unit unit) {
    const QString path =
        QStringLiteral(FRONTWRIGHT_SOURCE_DIR "/samples/%1/%1.frontwright").arg(sample);
    window.file().open(path);
    LengthStyle style = window.session().style();
    style.unit = unit;
    window.session().setStyle(style);
    settle();
}

QPixmap grabbed(QWidget& widget) {
    settle();
    return widget.grab();
}

QPixmap dialogOver(QDialog& dialog) {
    dialog.show();
    settle();
    return dialog.grab();
}

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

/// A frameless case along a wall with its rows of holes.
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

/// With one front that covers more than the others, so that the reveals differ.
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

QPixmap levelSection(MainWindow& window, Unit unit) {
    open(window, "glaze-chest", unit);
    Selection hole = Selection::of(window.session().plan().fronts[4].opening);
    hole.mountingHole = 0;
    window.session().select(hole);
    for (auto* button : window.findChildren<QRadioButton*>())
        if (button->accessibleName() == QStringLiteral("Level"))
            button->click();
    return grabbed(window);
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

QPixmap catalogue(MainWindow& window, Unit unit, int tab) {
    open(window, "glaze-chest", unit);
    OwnEntriesDialog dialog(window.session(), &window);
    dialog.findChild<QTabWidget*>()->setCurrentIndex(tab);
    return dialogOver(dialog);
}

QPixmap help(MainWindow& window, const char* topic) {
    HelpWindow* opened = window.help().open(QLatin1String(topic));
    settle();
    return opened->grab();
}

QPixmap recovery() {
    RecoveryCopy copy;
    copy.name = QStringLiteral("glaze-chest.frontwright");
    copy.origin = QStringLiteral("/home/maker/cases/glaze-chest.frontwright");
    copy.written = QDateTime(QDate(2026, 2, 28), QTime(12, 30));
    copy.size = 4096;
    RecoveryDialog dialog({copy}, nullptr);
    return dialogOver(dialog);
}

QPixmap calibration(Unit unit) {
    const QTemporaryDir home;
    QSettings settings(home.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
    CalibrationDialog dialog(settings, QStringLiteral("Workshop printer"), paperNamed("A4").value(),
                             Length::millimetres(10), LengthStyle{unit, 16}, Orientation::Portrait,
                             [](const Page&) { return true; });
    return dialogOver(dialog);
}

std::vector<State> allStates() {
    return {
        {"start",
         [](MainWindow& w, Unit) {
             w.showStart();
             return grabbed(w);
         }},
        {"new-case",
         [](MainWindow& w, Unit) {
             NewCaseDialog dialog(&w);
             return dialogOver(dialog);
         }},
        {"case",
         [](MainWindow& w, Unit u) {
             open(w, "glaze-chest", u);
             return grabbed(w);
         }},
        {"front", [](MainWindow& w, Unit u) { return front(w, u, "selected"); }},
        {"front-numbers", [](MainWindow& w, Unit u) { return front(w, u, "numbers"); }},
        {"front-ways", [](MainWindow& w, Unit u) { return front(w, u, "ways"); }},
        {"steps", [](MainWindow& w, Unit u) { return front(w, u, "steps"); }},
        {"several-fronts", several},
        {"member-dragged", dragging},
        {"size-typed", typing},
        {"finding", finding},
        {"layers", everyLayer},
        {"frameless", frameless},
        {"look", [](MainWindow& w, Unit u) { return look(w, u, CentralArea::Shows::Look, false); }},
        {"look-beside",
         [](MainWindow& w, Unit u) { return look(w, u, CentralArea::Shows::Both, false); }},
        {"look-reveals",
         [](MainWindow& w, Unit u) { return look(w, u, CentralArea::Shows::Look, true); }},
        {"wood", wood},
        {"level-section", levelSection},
        {"hole-dragged", holeDragged},
        {"catalogue", [](MainWindow& w, Unit u) { return catalogue(w, u, 2); }},
        {"catalogue-woods", [](MainWindow& w, Unit u) { return catalogue(w, u, 4); }},
        {"rules",
         [](MainWindow& w, Unit) {
             RulesDialog dialog(w.session().programsCatalogue());
             return dialogOver(dialog);
         }},
        {"help", [](MainWindow& w, Unit) { return help(w, "start"); }},
        {"help-glossary", [](MainWindow& w, Unit) { return help(w, "glossary"); }},
        {"help-printing", [](MainWindow& w, Unit) { return help(w, "printing"); }},
        {"recovery", [](MainWindow&, Unit) { return recovery(); }},
        {"calibration", [](MainWindow&, Unit u) { return calibration(u); }},
        {"screen-size",
         [](MainWindow& w, Unit) {
             CardDialog dialog(96 / 25.4, usualEyeDistance, w.session().style(), &w);
             return dialogOver(dialog);
         }},
        {"graduate",
         [](MainWindow& w, Unit u) {
             open(w, "glaze-chest", u);
             GraduateDialog dialog(w.session().project(), w.session().plan().fronts.front().opening,
                                   w.session().style(), &w);
             return dialogOver(dialog);
         }},
        {"graduate-series",
         [](MainWindow& w, Unit u) {
             open(w, "glaze-chest", u);
             GraduateDialog dialog(w.session().project(), w.session().plan().fronts.front().opening,
                                   w.session().style(), &w);
             dialog.findChild<QComboBox*>()->setCurrentIndex(2);
             return dialogOver(dialog);
         }},
        {"templates",
         [](MainWindow& w, Unit u) {
             open(w, "glaze-chest", u);
             const QTemporaryDir home;
             QSettings settings(home.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
             TemplateDialog dialog(w.session(), settings, QStringLiteral("glaze-chest"), &w);
             return dialogOver(dialog);
         }},
    };
}

} // namespace

const std::vector<State>& states() {
    static const std::vector<State> all = allStates();
    return all;
}

} // namespace frontwright::gallery
