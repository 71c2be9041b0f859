#include "ui/window/help.h"

#include "ui/files/built_in_catalogue.h"
#include "ui/help/help_desk.h"
#include "ui/window/rules_dialog.h"

#include <QAction>
#include <QCoreApplication>
#include <QMenu>

namespace frontwright {

namespace {

struct Help {
    Q_DECLARE_TR_FUNCTIONS(frontwright::Help)
};

} // namespace

void addHelp(QMenu& menu, HelpDesk& desk, QWidget& window) {
    const auto add = [&](const QString& text, const QString& tip, const HelpTopic& topic) {
        QAction* action = menu.addAction(text);
        action->setStatusTip(tip);
        QObject::connect(action, &QAction::triggered, &desk,
                         [&desk, topic] { topic.isEmpty() ? desk.openHere() : desk.open(topic); });
        return action;
    };
    add(Help::tr("&Help on this"), Help::tr("Open the help at what is selected"), {})
        ->setShortcut(QKeySequence(Qt::Key_F1));
    add(Help::tr("&Contents"), Help::tr("Open the help at its beginning"), firstTopic());
    add(Help::tr("&Mouse and keys"), Help::tr("What mouse and keys do"), QStringLiteral("keys"));
    add(Help::tr("Words of the &trade"), Help::tr("What the words mean, each with a drawing"),
        QStringLiteral("glossary"));
    menu.addSeparator();
    add(Help::tr("It came out at the &wrong size"), Help::tr("When a check bar is not 100 mm"),
        QStringLiteral("printing#wrong-size"));
    QAction* rules = menu.addAction(Help::tr("&Rules and their sources…"));
    rules->setStatusTip(Help::tr("Every rule, its value and where it is from"));
    QObject::connect(rules, &QAction::triggered, &desk, [&window] {
        auto* dialog = new RulesDialog(builtInCatalogue(), &window);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->show();
    });
    add(Help::tr("C&autions"), Help::tr("Before you cut and drill"),
        QStringLiteral("printing#cautions"));
}

} // namespace frontwright
