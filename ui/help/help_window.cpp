#include "ui/help/help_window.h"
#include "ui/look/first_size.h"

#include "ui/help/pages.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace frontwright {

namespace {

constexpr int topicRole = Qt::UserRole;

QTreeWidgetItem* itemOf(const HelpSection& section) {
    auto* item = new QTreeWidgetItem({section.title});
    item->setData(0, topicRole, section.topic());
    item->setToolTip(0, section.title);
    return item;
}

} // namespace

HelpWindow::HelpWindow(std::function<QString()> actions, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_browser(new HelpBrowser(std::move(actions))),
      m_contents(new QTreeWidget),
      m_search(new QLineEdit),
      m_found(new QLabel) {
    setWindowTitle(tr("Help"));
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->addWidget(places());
    splitter->addWidget(m_browser);
    splitter->setStretchFactor(1, 1);
    splitter->setSizes({fontMetrics().averageCharWidth() * 34, 620});
    auto* column = new QVBoxLayout(this);
    column->addLayout(bar());
    column->addWidget(splitter, 1);
    listen();
    fillContents();
    resize(firstSize(*this,
                     {fontMetrics().averageCharWidth() * 120, fontMetrics().lineSpacing() * 40}));
}

QLayout* HelpWindow::bar() {
    auto* back = new QPushButton(tr("&Back"));
    auto* forward = new QPushButton(tr("&Forward"));
    for (QPushButton* button : {back, forward})
        button->setEnabled(false);
    back->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Left));
    forward->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Right));
    connect(back, &QPushButton::clicked, m_browser, &QTextBrowser::backward);
    connect(forward, &QPushButton::clicked, m_browser, &QTextBrowser::forward);
    connect(m_browser, &QTextBrowser::backwardAvailable, back, &QWidget::setEnabled);
    connect(m_browser, &QTextBrowser::forwardAvailable, forward, &QWidget::setEnabled);
    m_search->setAccessibleName(tr("Search the help"));
    m_search->setPlaceholderText(tr("Search the help"));
    m_search->setClearButtonEnabled(true);
    auto* searchLabel = new QLabel(tr("&Search"));
    searchLabel->setBuddy(m_search);
    auto* bar = new QHBoxLayout;
    bar->addWidget(back);
    bar->addWidget(forward);
    bar->addStretch();
    bar->addWidget(searchLabel);
    bar->addWidget(m_search, 1);
    return bar;
}

QWidget* HelpWindow::places() {
    m_contents->setAccessibleName(tr("Contents"));
    m_contents->setHeaderHidden(true);
    m_contents->setUniformRowHeights(true);
    m_found->setWordWrap(true);
    m_found->hide();
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_contents, 1);
    column->addWidget(m_found);
    return box;
}

void HelpWindow::listen() {
    connect(m_contents, &QTreeWidget::currentItemChanged, this, &HelpWindow::openItem);
    connect(m_search, &QLineEdit::textChanged, this, &HelpWindow::fillFound);
    connect(m_search, &QLineEdit::returnPressed, this, [this] {
        if (m_contents->topLevelItemCount() > 0) {
            m_contents->setCurrentItem(m_contents->topLevelItem(0));
            m_browser->setFocus(Qt::OtherFocusReason);
        }
    });
    connect(m_browser, &QTextBrowser::sourceChanged, this,
            [this](const QUrl& url) { followPage(topicAt(url)); });
}

void HelpWindow::fillContents() {
    const QSignalBlocker quiet(m_contents);
    m_contents->clear();
    m_contents->setRootIsDecorated(true);
    QTreeWidgetItem* page = nullptr;
    for (const HelpSection& section : helpSections()) {
        if (section.anchor.isEmpty()) {
            page = itemOf(section);
            m_contents->addTopLevelItem(page);
        } else if (page) {
            page->addChild(itemOf(section));
        }
    }
}

void HelpWindow::fillFound() {
    const QString words = m_search->text().trimmed();
    m_found->setVisible(!words.isEmpty());
    if (words.isEmpty()) {
        fillContents();
        followPage(topic());
        return;
    }
    const QSignalBlocker quiet(m_contents);
    m_contents->clear();
    m_contents->setRootIsDecorated(false);
    const auto found = foundInHelp(words);
    for (const HelpSection& section : found)
        m_contents->addTopLevelItem(itemOf(section));
    m_found->setText(found.empty() ? tr("Nothing was found. Try another word.")
                                   : tr("Places found: %1").arg(found.size()));
}

void HelpWindow::openItem(const QTreeWidgetItem* item) {
    if (item)
        m_browser->setSource(helpUrl(item->data(0, topicRole).toString()));
}

/// The contents show where the page is, however it was reached.
void HelpWindow::followPage(const QString& here) {
    if (!m_search->text().trimmed().isEmpty())
        return;
    const QSignalBlocker quiet(m_contents);
    for (int i = 0; i < m_contents->topLevelItemCount(); ++i) {
        QTreeWidgetItem* page = m_contents->topLevelItem(i);
        if (page->data(0, topicRole).toString() == here)
            return m_contents->setCurrentItem(page);
        for (int j = 0; j < page->childCount(); ++j)
            if (page->child(j)->data(0, topicRole).toString() == here)
                return m_contents->setCurrentItem(page->child(j));
    }
}

void HelpWindow::showTopic(const QString& topic) {
    m_search->clear();
    m_browser->setSource(helpUrl(topic));
    show();
    raise();
    activateWindow();
    m_browser->setFocus(Qt::OtherFocusReason);
}

QString HelpWindow::topic() const {
    return topicAt(m_browser->source());
}

void HelpWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        close();
    else
        QWidget::keyPressEvent(event);
}

} // namespace frontwright
