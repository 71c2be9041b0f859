#include "ui/panels/ways_panel.h"

#include "ui/language/told.h"

#include "core/edits/choices.h"
#include "core/hardware/way_words.h"
#include "core/lengths/format.h"
#include "ui/panels/forms.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

namespace frontwright {

namespace {

QString wayName(MountingWay way) {
    QString name = told(nameOf(way));
    return name.replace(0, 1, name.at(0).toUpper());
}

QString orderNote(MountingWay way) {
    return WaysPanel::tr("Order of work: %1").arg(told(orderOfWork(way)));
}

QString verdict(const WayPlan& way, LengthStyle style) {
    const QString by = QString::fromStdString(shown(way.shortBy, style));
    switch (way.verdict) {
    case BoltVerdict::Fits:
        return WaysPanel::tr("✓ fits");
    case BoltVerdict::TooShort:
        return WaysPanel::tr("✗ too short by %1").arg(by);
    case BoltVerdict::BottomsOut:
        return WaysPanel::tr("✗ bottoms out by %1").arg(by);
    case BoltVerdict::TooDeep:
        return WaysPanel::tr("✗ counterbore too deep");
    case BoltVerdict::NoneStocked:
        break;
    }
    return WaysPanel::tr("✗ none stocked fits");
}

} // namespace

WaysPanel::WaysPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_table(new QTableWidget(6, 3)),
      m_note(new QLabel) {
    m_table->setAccessibleName(tr("Three ways to hold the handle"));
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setVerticalHeaderLabels({tr("Counterbore"), tr("Grip"), tr("Least bolt"),
                                      tr("Greatest bolt"), tr("Bolt"), tr("Verdict")});
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::Alignment(Qt::AlignCenter) |
                                                     Qt::Alignment(Qt::TextWordWrap));
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->setWordWrap(true);
    m_table->horizontalHeader()->setMinimumHeight(fontMetrics().lineSpacing() * 3);
    m_note->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_table, 1);
    column->addWidget(m_note);
    connect(&session, &Session::selectionChanged, this, &WaysPanel::fill);
    connect(&session, &Session::workChanged, this, &WaysPanel::fill);
    connect(&session, &Session::styleChanged, this, &WaysPanel::fill);
    connect(m_table, &QTableWidget::cellDoubleClicked, this,
            [this](int, int columnIndex) { choose(columnIndex); });
    // By Enter; where a double click does it too, the second choice changes nothing.
    connect(m_table, &QTableWidget::cellActivated, this,
            [this](int, int columnIndex) { choose(columnIndex); });
}

void WaysPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fill();
}

void WaysPanel::fill() {
    if (!isVisible())
        return;
    const auto id = m_session.selection().lastOpening();
    const FrontPlan* front = id ? m_session.plan().frontOf(*id) : nullptr;
    m_table->setVisible(front && front->hardware);
    if (!front || !front->hardware) {
        m_note->setText(front ? tr("This front carries no handle.")
                              : tr("Select a front to compare the ways to hold its handle."));
        return;
    }
    const LengthStyle style = m_session.style();
    const auto text = [style](Length length, Rounding rounding = Rounding::Nearest) {
        return QString::fromStdString(shown(length, style, rounding));
    };
    // Behind a fixed front there is no wall that could make a difference.
    const bool isAlone = !front->hasBox();
    for (int i = 0; i < 3; ++i) {
        const WayPlan& way = front->hardware->ways[static_cast<std::size_t>(i)];
        const bool chosen = way.way == front->hardware->chosen;
        m_table->setHorizontalHeaderItem(
            i, new QTableWidgetItem(chosen ? tr("● %1").arg(wayName(way.way)) : wayName(way.way)));
        const QString cells[] = {text(way.counterbore),
                                 text(way.grip),
                                 text(way.leastLength, Rounding::Up),
                                 text(way.greatestLength, Rounding::Down),
                                 way.length ? text(*way.length) : tr("none"),
                                 verdict(way, style)};
        for (int row = 0; row < 6; ++row) {
            auto* item = new QTableWidgetItem(cells[row]);
            item->setTextAlignment(Qt::AlignCenter);
            QFont font = item->font();
            font.setBold(chosen);
            item->setFont(font);
            m_table->setItem(row, i, item);
        }
        m_table->setColumnHidden(i, isAlone && i > 0);
    }
    if (isAlone)
        m_note->setText(tr("There is no box wall behind a fixed front: the bolt goes through the "
                           "front alone, and goes in before the front is screwed on."));
    else
        m_note->setText(orderNote(front->hardware->chosen) +
                        tr("\nDouble-click a column, or press Enter in it, to choose that way."));
}

void WaysPanel::choose(int way) {
    const auto id = m_session.selection().lastOpening();
    if (!id)
        return;
    HardwareSpec spec = specOf(m_session.project(), EditTarget{*id}, &FrontChoices::hardware,
                               &FrontDefaults::hardware);
    spec.way = allMountingWays[static_cast<std::size_t>(way)];
    m_session.apply(tr("Choose how the handle is held"),
                    setHardware(m_session.project(), EditTarget{*id}, spec));
}

} // namespace frontwright
