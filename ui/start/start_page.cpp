#include "ui/start/start_page.h"

#include "ui/help/topics.h"

#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

namespace {

QLabel* heading(const QString& text, double size) {
    auto* label = new QLabel(text);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * size);
    font.setBold(true);
    label->setFont(font);
    return label;
}

QLabel* words(const QString& text) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

StartPage::StartPage(Catalogue programs, QWidget* parent)
    : QScrollArea(parent),
      m_programs(std::move(programs)) {
    setAccessibleName(tr("Start page"));
    setHelpTopic(*this, QStringLiteral("window#start-page"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    const int em = fontMetrics().height();
    layout->setContentsMargins(3 * em, 2 * em, 3 * em, 2 * em);
    layout->setSpacing(em / 2);
    layout->addWidget(heading(tr("Drawer fronts that fit"), 1.8));
    layout->addWidget(words(tr("Every front, hole, screw and bolt in its place before the drill "
                               "goes in.")));
    layout->addSpacing(em);
    layout->addWidget(beginnings());
    layout->addSpacing(em);
    layout->addWidget(heading(tr("Look at a sample"), 1.2));
    layout->addWidget(sampleRow());
    layout->addStretch();
    setWidget(page);
}

QWidget* StartPage::beginnings() {
    auto* box = new QWidget;
    auto* columns = new QHBoxLayout(box);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(3 * fontMetrics().height());

    // Layouts inside take the columns' wide spacing otherwise.
    const int line = fontMetrics().height() / 3;
    auto* first = new QVBoxLayout;
    first->setSpacing(line);
    first->addWidget(heading(tr("What to do first"), 1.2));
    for (const QString& step :
         {tr("1. Make a new case from its outer size, its frame and its rows."),
          tr("2. Drag the rails, or click a dimension and type it."),
          tr("3. Click a front and choose its profile, box, screws and handle."),
          tr("4. Heed the findings, then print the templates at full size.")})
        first->addWidget(words(step));
    first->addSpacing(line);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * line);
    auto* make = new QPushButton(tr("&New case…"));
    make->setStatusTip(tr("Start a case from a few numbers"));
    make->setDefault(true);
    connect(make, &QPushButton::clicked, this, &StartPage::newWanted);
    auto* open = new QPushButton(tr("&Open…"));
    open->setStatusTip(tr("Open a case file"));
    connect(open, &QPushButton::clicked, this, &StartPage::openWanted);
    buttons->addWidget(make);
    buttons->addWidget(open);
    m_back = new QPushButton;
    m_back->setStatusTip(tr("The case that is open stays as you left it"));
    connect(m_back, &QPushButton::clicked, this, &StartPage::backWanted);
    buttons->addWidget(m_back);
    buttons->addStretch();
    first->addLayout(buttons);
    first->addStretch();
    columns->addLayout(first, 1);

    auto* recent = new QVBoxLayout;
    recent->setSpacing(line);
    recent->addWidget(heading(tr("Recent cases"), 1.2));
    m_recent = new QVBoxLayout;
    m_recent->setSpacing(2);
    recent->addLayout(m_recent);
    recent->addStretch();
    columns->addLayout(recent, 1);
    return box;
}

void StartPage::leadBack(const QString& caseName) {
    QString name = caseName;
    m_back->setText(tr("&Back to %1").arg(name.replace(u'&', QStringLiteral("&&"))));
    m_back->setVisible(!caseName.isEmpty());
}

void StartPage::showRecent(const QStringList& paths) {
    while (QLayoutItem* item = m_recent->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (paths.isEmpty())
        m_recent->addWidget(words(tr("None yet. Cases that you save or open stand here.")));
    for (const QString& path : paths) {
        const QFileInfo info(path);
        QString name = info.fileName();
        name.replace(u'&', QStringLiteral("&&"));
        auto* button = new QPushButton(name);
        button->setFlat(true);
        button->setToolTip(path);
        button->setStatusTip(path);
        button->setAccessibleDescription(path);
        button->setStyleSheet(QStringLiteral("text-align: left; padding: 3px 6px;"));
        connect(button, &QPushButton::clicked, this, [this, path] { Q_EMIT recentWanted(path); });
        m_recent->addWidget(button);
    }
}

QWidget* StartPage::sampleRow() {
    auto* box = new QWidget;
    m_cards = new QGridLayout(box);
    m_cards->setContentsMargins(0, 0, 0, 0);
    m_cards->setSpacing(fontMetrics().height());
    for (const QString& name : sampleFileNames()) {
        auto* card = new SampleCard(name);
        connect(card, &QAbstractButton::clicked, this,
                [this, card] { Q_EMIT sampleWanted(card->sample()); });
        m_samples.push_back(card);
    }
    layCards();
    return box;
}

/// As many side by side as there is room for.
void StartPage::layCards() {
    const int between = m_cards->spacing();
    const int room = viewport()->width() - 6 * fontMetrics().height();
    const int card = m_samples.front()->sizeHint().width();
    const int columns = std::max(1, (room + between) / (card + between));
    if (columns == m_columns)
        return;
    m_cards->setColumnStretch(m_columns, 0);
    m_columns = columns;
    for (int i = 0; i < static_cast<int>(m_samples.size()); ++i)
        m_cards->addWidget(m_samples[static_cast<std::size_t>(i)], i / columns, i % columns);
    m_cards->setColumnStretch(columns, 1);
}

void StartPage::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    layCards();
}

void StartPage::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    QTimer::singleShot(0, this, &StartPage::drawNext);
}

void StartPage::drawNext() {
    for (SampleCard* card : m_samples)
        if (!card->isDrawn()) {
            card->draw(m_programs);
            if (card->isDrawn())
                QTimer::singleShot(0, this, &StartPage::drawNext);
            return;
        }
}

} // namespace frontwright
