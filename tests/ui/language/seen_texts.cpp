#include "tests/ui/language/seen_texts.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTabBar>

namespace frontwright::testing {

namespace {

QString placeOf(const QWidget& widget) {
    QStringList path;
    for (const QWidget* at = &widget; at; at = at->parentWidget())
        path << QLatin1String(at->metaObject()->className());
    return path.join(QStringLiteral(" in "));
}

void addModel(const QAbstractItemModel& model, const QModelIndex& parent, QStringList& texts) {
    for (int row = 0; row < model.rowCount(parent); ++row)
        for (int column = 0; column < model.columnCount(parent); ++column) {
            const QModelIndex index = model.index(row, column, parent);
            texts << index.data().toString() << index.data(Qt::ToolTipRole).toString();
            if (column == 0)
                addModel(model, index, texts);
        }
}

QStringList ofLists(const QWidget& widget) {
    QStringList texts;
    if (const auto* combo = qobject_cast<const QComboBox*>(&widget))
        addModel(*combo->model(), {}, texts);
    // A heading is a view of its own; a list that drops down is its box's.
    const auto* view = qobject_cast<const QAbstractItemView*>(&widget);
    if (const auto* header = qobject_cast<const QHeaderView*>(&widget)) {
        for (int i = 0; header->model() && i < header->count(); ++i)
            texts << header->model()->headerData(i, header->orientation()).toString();
    } else if (view && view->model()) {
        addModel(*view->model(), {}, texts);
    }
    return texts;
}

QStringList ofWidget(const QWidget& widget) {
    QStringList texts{widget.windowTitle(), widget.toolTip(), widget.statusTip(),
                      widget.accessibleName(), widget.accessibleDescription()};
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        texts << button->text();
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        texts << label->text();
    if (const auto* box = qobject_cast<const QGroupBox*>(&widget))
        texts << box->title();
    if (const auto* edit = qobject_cast<const QLineEdit*>(&widget))
        texts << edit->placeholderText();
    if (const auto* spin = qobject_cast<const QSpinBox*>(&widget))
        texts << spin->prefix() << spin->suffix() << spin->specialValueText();
    if (const auto* spin = qobject_cast<const QDoubleSpinBox*>(&widget))
        texts << spin->prefix() << spin->suffix() << spin->specialValueText();
    if (const auto* menu = qobject_cast<const QMenu*>(&widget))
        texts << menu->title();
    if (const auto* bar = qobject_cast<const QTabBar*>(&widget))
        for (int i = 0; i < bar->count(); ++i)
            texts << bar->tabText(i) << bar->tabToolTip(i);
    for (const QAction* action : widget.actions())
        if (!action->isSeparator())
            texts << action->text() << action->statusTip() << action->toolTip()
                  << action->iconText();
    return texts + ofLists(widget);
}

} // namespace

std::vector<SeenText> seenTexts(const QWidget& top) {
    std::vector<SeenText> seen;
    QList<QWidget*> widgets = top.findChildren<QWidget*>();
    for (QMenu* menu : top.findChildren<QMenu*>())
        Q_EMIT menu->aboutToShow();
    const auto add = [&seen](const QWidget& widget) {
        for (const QString& text : ofWidget(widget))
            if (!text.trimmed().isEmpty())
                seen.push_back({text, placeOf(widget)});
    };
    add(top);
    for (const QWidget* widget : widgets)
        add(*widget);
    return seen;
}

QString withoutBrackets(const QString& text) {
    QString left;
    int depth = 0;
    for (const QChar c : text) {
        depth += c == u'[' ? 1 : 0;
        if (depth == 0)
            left += c;
        depth -= c == u']' && depth > 0 ? 1 : 0;
    }
    return left;
}

bool isFigureOrName(QString text, const QStringList& names) {
    for (const QString& name : names)
        if (!name.isEmpty())
            text.remove(name);
    static const QRegularExpression word(QStringLiteral("\\p{L}{2,}"));
    static const QSet<QString> units{
        QStringLiteral("mm"),   QStringLiteral("cm"), QStringLiteral("in"),  QStringLiteral("lb"),
        QStringLiteral("kg"),   QStringLiteral("ft"), QStringLiteral("KiB"), QStringLiteral("PM"),
        QStringLiteral("Ctrl"), QStringLiteral("Alt")};
    for (auto found = word.globalMatch(text); found.hasNext();)
        if (!units.contains(found.next().captured()))
            return false;
    return true;
}

} // namespace frontwright::testing
