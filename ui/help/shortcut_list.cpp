#include "ui/help/shortcut_list.h"

#include <QAction>
#include <QKeySequence>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>

namespace frontwright {

namespace {

QString keysOf(const QAction& action) {
    QStringList keys;
    for (const QKeySequence& sequence : action.shortcuts())
        keys << sequence.toString(QKeySequence::NativeText).toHtmlEscaped();
    keys.removeDuplicates();
    return keys.join(QStringLiteral(", "));
}

void addRows(QString& html, const QMenu& menu, const QString& path) {
    for (const QAction* action : menu.actions()) {
        if (action->isSeparator())
            continue;
        const QString name = path + withoutMnemonic(action->text()).section(u'\t', 0, 0);
        if (const QMenu* inner = action->menu()) {
            addRows(html, *inner, name + QStringLiteral(", "));
            continue;
        }
        html +=
            QStringLiteral("<tr><td>%1</td><td><b>%2</b></td><td>%3</td></tr>\n")
                .arg(name.toHtmlEscaped(), keysOf(*action), action->statusTip().toHtmlEscaped());
    }
}

} // namespace

QString withoutMnemonic(const QString& text) {
    static const QRegularExpression mark(QStringLiteral("&(.)"));
    return QString(text).replace(mark, QStringLiteral("\\1"));
}

QString shortcutTable(const QMenuBar& bar) {
    QString html = QStringLiteral("<table cellpadding=\"3\">\n");
    for (const QAction* action : bar.actions())
        if (const QMenu* menu = action->menu())
            addRows(html, *menu, withoutMnemonic(action->text()) + QStringLiteral(", "));
    return html + QStringLiteral("</table>\n");
}

} // namespace frontwright
