#include "ui/panels/findings_panel.h"

#include "core/findings/cause.h"
#include "ui/elevation/announcer.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/look/theme.h"
#include "ui/panels/input_field.h"
#include "ui/panels/wrapped_button.h"
#include "ui/panels/wrapped_rows.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace frontwright {

namespace {

/// Of the list, at most; the sentence has the rest.
constexpr double graveShare = 0.26, whereShare = 0.28;

/// On a chosen row the sign takes the row's own text colour: its shape tells it.
QIcon severityIcon(Severity severity, Theme theme, int side, qreal ratio, const QColor& chosen) {
    QPixmap pixmap(QSize(side, side) * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    drawSeverity(painter, QRectF(0, 0, side, side), severity, theme);
    painter.end();
    QIcon icon(pixmap);
    painter.begin(&pixmap);
    painter.setCompositionMode(QPainter::CompositionMode_SourceIn);
    painter.fillRect(QRect(0, 0, side, side), chosen);
    painter.end();
    icon.addPixmap(pixmap, QIcon::Selected);
    return icon;
}

} // namespace

FindingsPanel::FindingsPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_summary(new QLabel),
      m_list(new QTreeWidget),
      m_rows(new WrappedRows(*m_list, {graveShare, whereShare})),
      m_sentence(new QLabel),
      m_reason(new QLabel),
      m_remedies(new QVBoxLayout),
      m_asks(new QVBoxLayout) {
    m_list->setAccessibleName(tr("Findings"));
    m_list->setHeaderLabels({tr("How grave"), tr("Where"), tr("What")});
    m_list->setRootIsDecorated(false);
    m_list->setAllColumnsShowFocus(true);
    m_sentence->setWordWrap(true);
    m_sentence->setTextFormat(Qt::PlainText);
    m_reason->setWordWrap(true);
    m_reason->setAccessibleName(tr("Reason and rule"));
    m_reason->setTextFormat(Qt::PlainText);
    m_reason->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_reason->setAlignment(Qt::AlignTop | Qt::AlignLeft);

    auto* details = new QWidget;
    auto* column = new QVBoxLayout(details);
    column->addWidget(m_sentence);
    column->addLayout(m_remedies);
    column->addWidget(m_reason);
    column->addLayout(m_asks);
    column->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setWidget(details);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setAccessibleName(tr("Reason and remedies"));
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->addWidget(m_list);
    splitter->addWidget(scroll);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setChildrenCollapsible(false);
    splitter->setSizes({600, 400});
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(6, 2, 6, 6);
    whole->addWidget(m_summary);
    whole->addWidget(splitter, 1);

    connect(m_list, &QTreeWidget::itemSelectionChanged, this, &FindingsPanel::showChosen);
    connect(&session, &Session::workChanged, this, &FindingsPanel::fill);
    connect(&session, &Session::styleChanged, this, &FindingsPanel::fill);
    fill();
}

void FindingsPanel::fill() {
    const Work& work = m_session.work();
    if (work.findings == m_shown && m_session.style() == m_shownStyle &&
        m_list->topLevelItemCount() > 0)
        return;
    const auto before = chosen();
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        m_shown = work.findings;
        m_shownStyle = m_session.style();
        const Theme theme = themeOf(palette());
        const int side = fontMetrics().height();
        for (const Finding& finding : m_shown) {
            const FindingText text = describe(finding, work.project, work.plan, m_session.style());
            auto* item = new QTreeWidgetItem(m_list);
            item->setIcon(0, severityIcon(finding.severity, theme, side, devicePixelRatioF(),
                                          palette().color(QPalette::HighlightedText)));
            item->setText(0, told(text.severity));
            item->setText(1, told(text.place));
            item->setText(2, told(text.sentence));
        }
        m_rows->fit();
    }
    m_summary->setText(findingsSummary(m_shown));
    // The same finding stays chosen, with its new figures.
    for (std::size_t i = 0; before && i < m_shown.size(); ++i)
        if (m_shown[i].code == before->code && m_shown[i].where == before->where) {
            const QSignalBlocker quiet(m_list);
            m_list->setCurrentItem(m_list->topLevelItem(static_cast<int>(i)));
            // The maker may be at work elsewhere by now: what is selected stays.
            showDetails();
            return;
        }
    showChosen();
}

std::optional<Finding> FindingsPanel::chosen() const {
    const auto items = m_list->selectedItems();
    if (items.isEmpty())
        return std::nullopt;
    const int row = m_list->indexOfTopLevelItem(items.front());
    return row < 0 || static_cast<std::size_t>(row) >= m_shown.size()
               ? std::nullopt
               : std::optional(m_shown[static_cast<std::size_t>(row)]);
}

void FindingsPanel::clearDetails() {
    for (QVBoxLayout* buttons : {m_remedies, m_asks})
        while (QLayoutItem* item = buttons->takeAt(0)) {
            if (item->widget()) {
                item->widget()->hide();
                item->widget()->deleteLater();
            }
            delete item;
        }
}

void FindingsPanel::showChosen() {
    showDetails();
    const auto finding = chosen();
    if (!finding)
        return;
    if (finding->where.opening)
        m_session.select(Selection::of(*finding->where.opening));
    else if (finding->where.member)
        m_session.select(Selection::of(*finding->where.member));
    Q_EMIT findingChosen(finding);
}

void FindingsPanel::showDetails() {
    clearDetails();
    const auto finding = chosen();
    setHelpTopic(*this, finding ? topicOf(finding->code) : QStringLiteral("window#findings"));
    if (!finding) {
        m_reason->clear();
        m_sentence->setText(m_shown.empty()
                                ? tr("Every screw, bolt and front was checked against the limits.")
                                : tr("Select a finding to see its place, its reason and what cures "
                                     "it."));
        Q_EMIT findingChosen(std::nullopt);
        return;
    }
    const Work& work = m_session.work();
    const FindingText text = describe(*finding, work.project, work.plan, m_session.style());
    m_sentence->setText(told(text.sentence));
    m_reason->setText(tr("Why: %1\n\nRule: %2").arg(told(text.reason), told(text.source.words())));
    for (Remedy& remedy :
         remedies(*finding, work.project, *work.catalogue, work.plan, m_session.style())) {
        const QString label = told(remedy.label);
        auto* button = new WrappedButton(label);
        button->setObjectName(QStringLiteral("remedy"));
        connect(button, &QPushButton::clicked, this,
                [this, label, apply = std::move(remedy.apply)] {
                    m_session.apply(label, apply(m_session.project()));
                });
        m_remedies->addWidget(button);
    }
    addAsks(*finding);
}

void FindingsPanel::addAsks(const Finding& finding) {
    const auto number = numberOf(finding, m_session.plan());
    if (number) {
        auto* why = new WrappedButton(tr("Why this number: %1").arg(told(nameOf(number->kind))));
        connect(why, &QPushButton::clicked, this,
                [this, number] { Q_EMIT m_session.numberAsked(*number); });
        m_asks->addWidget(why);
    }
    const InputPlace place = causeOf(finding.code);
    auto* go = new WrappedButton(tr("Go to: %1").arg(nameOf(place)));
    connect(go, &QPushButton::clicked, this,
            [this, place, number] { Q_EMIT m_session.inputAsked(place, number); });
    m_asks->addWidget(go);
}

void FindingsPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        m_shownStyle.denominator = 0; // draw the signs anew
        fill();
    }
}

} // namespace frontwright
