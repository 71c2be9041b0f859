#include "ui/window/recovery_dialog.h"
#include "ui/look/first_size.h"

#include "ui/help/topics.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace frontwright {

RecoveryDialog::RecoveryDialog(QList<RecoveryCopy> copies, QWidget* parent)
    : QDialog(parent),
      m_copies(std::move(copies)),
      m_list(new QTreeWidget) {
    setWindowTitle(tr("Unsaved work was kept"));
    setHelpTopic(*this, QStringLiteral("window#recovery"));
    auto* words =
        new QLabel(tr("Frontwright was ended before these cases were saved. Each case file is as "
                      "it was saved last. Open a copy to go on with it under a name of its own: "
                      "both versions are kept."));
    words->setWordWrap(true);
    m_list->setAccessibleName(tr("Recovery copies"));
    m_list->setHeaderLabels({tr("Case"), tr("Last step kept"), tr("Size"), tr("Where it was")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    const QLocale locale;
    for (const RecoveryCopy& copy : std::as_const(m_copies)) {
        auto* row = new QTreeWidgetItem(
            m_list, {copy.name, locale.toString(copy.written, QLocale::ShortFormat),
                     locale.formattedDataSize(copy.size),
                     copy.origin.isEmpty() ? tr("never saved") : copy.origin});
        row->setToolTip(0, copy.document);
        row->setTextAlignment(2, Qt::AlignRight | Qt::AlignVCenter);
    }
    for (int column = 0; column < m_list->columnCount(); ++column)
        m_list->resizeColumnToContents(column);
    m_list->setCurrentItem(m_list->topLevelItem(0));

    QPushButton* open = addAnswer(tr("&Open the copy"), Answer::Open);
    QPushButton* away = addAnswer(tr("&Throw it away"), Answer::ThrowAway);
    QPushButton* later = addAnswer(tr("&Later"), Answer::Later);
    open->setDefault(true);
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(open, QDialogButtonBox::AcceptRole);
    buttons->addButton(away, QDialogButtonBox::DestructiveRole);
    buttons->addButton(later, QDialogButtonBox::RejectRole);
    connect(m_list, &QTreeWidget::itemActivated, open, &QPushButton::click);

    auto* layout = new QVBoxLayout(this);
    layout->addWidget(words);
    layout->addWidget(m_list);
    layout->addWidget(buttons);
    const int em = fontMetrics().averageCharWidth();
    resize(firstSize(*this, {em * 100, em * 40}));
}

QPushButton* RecoveryDialog::addAnswer(const QString& text, Answer answer) {
    auto* button = new QPushButton(text);
    connect(button, &QPushButton::clicked, this, [this, answer] {
        m_answer = answer;
        accept();
    });
    return button;
}

const RecoveryCopy& RecoveryDialog::chosen() const {
    return m_copies.at(std::max(0, m_list->indexOfTopLevelItem(m_list->currentItem())));
}

} // namespace frontwright
