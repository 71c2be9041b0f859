#include "ui/rendering/look_panel.h"

#include "core/drawings/seen_size.h"
#include "ui/help/topics.h"
#include "ui/rendering/card_dialog.h"
#include "ui/rendering/reveal_words.h"
#include "ui/rendering/screen_size.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScreen>

namespace frontwright {

namespace {

/// What the size box offers; the distances are its items' data, in mm.
constexpr int wholeCase = 0;
constexpr int realSize = -1;

} // namespace

LookPanel::LookPanel(Session& session, QSettings& settings, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_settings(settings),
      m_view(new LookView(session)),
      m_reveals(new QCheckBox(tr("Re&veals ×10"))),
      m_size(new QComboBox),
      m_words(new QLabel),
      m_scaleWords(new QLabel) {
    setHelpTopic(*this, QStringLiteral("window#look"));
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setAccessibleName(tr("Reveals in words"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(bar());
    layout->addWidget(m_view, 1);
    auto* below = new QVBoxLayout;
    below->setContentsMargins(8, 4, 8, 6);
    below->addWidget(m_words);
    layout->addLayout(below);
    listen();
}

void LookPanel::offerSizes() {
    m_size->setAccessibleName(tr("Size on the screen"));
    m_size->setPlaceholderText(tr("Zoomed"));
    m_size->addItem(tr("Whole case"), wholeCase);
    m_size->addItem(tr("Real size"), realSize);
    for (const int metres : {1, 2, 3})
        m_size->addItem(tr("As seen from %1 m").arg(metres), metres * 1000);
    m_size->setCurrentIndex(0);
}

QLayout* LookPanel::bar() {
    m_reveals->setToolTip(tr("Show every reveal ten times as wide, to compare them"));
    m_reveals->setStatusTip(m_reveals->toolTip());
    offerSizes();
    auto* label = new QLabel(tr("Si&ze"));
    label->setBuddy(m_size);
    auto* measure = new QPushButton(tr("&Screen…"));
    measure->setToolTip(tr("Fit a card to the screen, so that sizes on it are real"));
    measure->setStatusTip(measure->toolTip());
    connect(measure, &QPushButton::clicked, this, &LookPanel::measureScreen);
    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(8, 4, 8, 4);
    bar->addWidget(m_reveals);
    bar->addSpacing(12);
    bar->addWidget(label);
    bar->addWidget(m_size);
    bar->addWidget(measure);
    bar->addSpacing(12);
    bar->addWidget(m_scaleWords, 1);
    return bar;
}

void LookPanel::listen() {
    connect(m_reveals, &QCheckBox::toggled, this, [this](bool on) {
        m_view->setReveals(on ? LookView::Reveals::Exaggerated : LookView::Reveals::AsPlanned);
    });
    connect(m_size, &QComboBox::activated, this, &LookPanel::applySize);
    connect(m_view, &LookView::zoomedByHand, this, [this] {
        m_size->setCurrentIndex(-1);
        m_scaleWords->clear();
    });
    connect(m_view, &LookView::fitted, this, [this] {
        m_size->setCurrentIndex(0);
        m_scaleWords->clear();
    });
    connect(m_view, &LookView::refreshed, this, &LookPanel::showWords);
    connect(&m_session, &Session::styleChanged, this, &LookPanel::showWords);
}

QString LookPanel::said() const {
    return m_words->text();
}

void LookPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    showWords();
}

void LookPanel::showWords() {
    if (isVisible() && m_view->rendered())
        m_words->setText(revealSentences(*m_view->rendered()->work, m_session.style()).join(u'\n'));
}

void LookPanel::applySize() {
    m_scaleWords->clear();
    const int choice = m_size->currentData().toInt();
    if (choice == wholeCase) {
        m_view->fit();
        return;
    }
    const ScreenSize screen(m_settings, *this->screen());
    const double shrink =
        choice == realSize ? 1 : shrinkSeenFrom(Length::millimetres(choice), screen.eyeDistance());
    m_view->showAt(screen.pixelsPerMm() * shrink);
    const QString scale =
        tr("%1 of its size").arg(QLocale().toString(shrink * 100, 'f', 0) + QLocale().percent());
    m_scaleWords->setText(screen.isMeasured()
                              ? scale
                              : tr("%1, if the screen tells its size rightly. Fit a card to it "
                                   "to be sure.")
                                    .arg(scale));
}

void LookPanel::measureScreen() {
    ScreenSize screen(m_settings, *this->screen());
    CardDialog dialog(screen.pixelsPerMm(), screen.eyeDistance(), m_session.style(), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    screen.setMeasured(dialog.pixelsPerMm());
    screen.setEyeDistance(dialog.eyeDistance());
    if (m_size->currentIndex() > wholeCase)
        applySize();
}

} // namespace frontwright
