#include "ui/window/help.h"

#include "ui/sheets/tell_tale_words.h"

#include <QAction>
#include <QCoreApplication>
#include <QMenu>
#include <QMessageBox>

namespace frontwright {

namespace {

struct Help {
    Q_DECLARE_TR_FUNCTIONS(frontwright::Help)
public:
    static QString keys() {
        return tr("<table cellpadding='3'>"
                  "<tr><td><b>Drag a member</b></td><td>moves it; type a distance to move by "
                  "exactly that; Alt suspends snapping; Esc puts it back</td></tr>"
                  "<tr><td><b>Drag a hole or a handle</b></td><td>places it by hand; Shift moves "
                  "those down the bank along</td></tr>"
                  "<tr><td><b>Arrow keys</b></td><td>nudge the selected member, hole or handle by "
                  "the shown grid (Shift ten times, Ctrl finest); else walk from front to "
                  "front</td></tr>"
                  "<tr><td><b>Enter, double-click</b></td><td>type the size or the height of "
                  "what is selected (Shift+Enter: a hole's place across)</td></tr>"
                  "<tr><td><b>Click a dimension</b></td><td>type it where it stands</td></tr>"
                  "<tr><td><b>R, C</b></td><td>split into rows, into columns (Shift: "
                  "several)</td></tr>"
                  "<tr><td><b>J, Delete</b></td><td>join openings, remove a member or a mounting "
                  "hole</td></tr>"
                  "<tr><td><b>E, G, L</b></td><td>equal heights, graduate, lock a height</td></tr>"
                  "<tr><td><b>Tab</b></td><td>what else lies under the pointer; else "
                  "the selected front's holes and handles</td></tr>"
                  "<tr><td><b>Alt+1 … Alt+7</b></td><td>show or hide a layer: dimensions, holes, "
                  "fields, boxes, bottoms, where a screw may go, signs</td></tr>"
                  "<tr><td><b>Wheel, Ctrl + 0</b></td><td>zoom about the pointer, fit</td></tr>"
                  "<tr><td><b>Middle button, Space + drag</b></td><td>move the drawing</td></tr>"
                  "</table>");
    }
    static QString scale() {
        return tr("<p>A 100 mm check bar that measures something else tells what happened:</p>"
                  "%1"
                  "<p>Where the two directions differ by 0.2 to 2 %, it is the printer's "
                  "mechanics: "
                  "File → Templates → Test page and correction measures it. Where one page alone "
                  "is "
                  "off, the paper slipped: print that page again.</p>")
            .arg(tellTaleTable());
    }
    static QString cautions() {
        return tr("<p>Test every setting on scrap of the same stock. Measure the check bars on "
                  "paper before you drill. Wear eye protection, keep guards and push blocks in "
                  "use at the router and the saw, and keep hands away from the cut. Ease sharp "
                  "edges. Anchor tall storage furniture to the wall.</p>"
                  "<p>These hints defer to your own judgement, to the tool makers' instructions, "
                  "to local codes and to licensed practice.</p>");
    }
    static void show(QWidget& window, const QString& title, const QString& text) {
        QMessageBox box(QMessageBox::NoIcon, title, text, QMessageBox::Close, &window);
        box.setTextFormat(Qt::RichText);
        box.exec();
    }
};

} // namespace

void addHelp(QMenu& menu, QWidget& window) {
    const auto add = [&](const QString& text, const QString& tip, QString (*page)()) {
        QAction* action = menu.addAction(text);
        action->setStatusTip(tip);
        QObject::connect(action, &QAction::triggered, &window,
                         [&window, tip, page] { Help::show(window, tip, page()); });
        return action;
    };
    add(Help::tr("&Mouse and keys"), Help::tr("What mouse and keys do"), &Help::keys)
        ->setShortcut(QKeySequence(Qt::Key_F1));
    add(Help::tr("It came out at the &wrong size"), Help::tr("When a check bar is not 100 mm"),
        &Help::scale);
    add(Help::tr("&Cautions"), Help::tr("Before you cut and drill"), &Help::cautions);
}

} // namespace frontwright
