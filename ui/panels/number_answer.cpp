#include "ui/panels/number_answer.h"

#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/panels/input_field.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace frontwright {

NumberAnswer::NumberAnswer(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_words(new QLabel),
      m_leads(new QLabel(tr("It follows from:"))),
      m_inputs(new QVBoxLayout) {
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_words->setAccessibleName(tr("How the number came about"));
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_inputs->setSpacing(3);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_words);
    column->addWidget(m_leads);
    column->addLayout(m_inputs);
    column->addStretch();
}

void NumberAnswer::clearInputs() {
    while (QLayoutItem* item = m_inputs->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
}

void NumberAnswer::addInput(InputPlace place, std::optional<Quantity> about) {
    auto* button = new QPushButton(tr("Go to: %1").arg(nameOf(place)));
    button->setAutoDefault(false);
    setHelpTopic(*button, topicOf(place));
    connect(button, &QPushButton::clicked, this,
            [this, place, about] { Q_EMIT m_session.inputAsked(place, about); });
    m_inputs->addWidget(button);
}

void NumberAnswer::tell(const BoardNumber& number) {
    clearInputs();
    m_leads->setVisible(true);
    setHelpTopic(*this, topicOf(InputPlace::Board));
    m_words->setText(tr("%1 = %2\n%3\n\nRule: %4")
                         .arg(told(number.name), told(number.formula),
                              QString::fromStdString(number.figures), told(number.source.words())));
    addInput(InputPlace::Board, std::nullopt);
}

void NumberAnswer::tell(std::optional<Quantity> quantity) {
    clearInputs();
    const auto derivation =
        quantity ? derive(m_session.project(), m_session.plan(), *quantity, m_session.style())
                 : std::nullopt;
    m_leads->setVisible(derivation && !derivation->inputs.empty());
    if (!derivation) {
        m_words->clear();
        return;
    }
    setHelpTopic(*this, topicOf(quantity->kind));
    m_words->setText(tr("%1 = %2\n%3\n\nRule: %4")
                         .arg(told(derivation->name), told(derivation->formula),
                              told(derivation->figures), told(derivation->source.words())));
    for (const InputPlace place : derivation->inputs)
        addInput(place, quantity);
}

} // namespace frontwright
