#include "ui/panels/property_form.h"

#include "ui/fields/choice_box.h"
#include "ui/fields/form_rows.h"
#include "ui/fields/length_field.h"
#include "ui/fields/text_field.h"
#include "ui/language/told.h"
#include "ui/panels/preset_row.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <memory>

namespace frontwright {

PropertyForm::PropertyForm(Session& session, const QString& title, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_column(new QVBoxLayout(this)),
      m_rows(new FormRows),
      m_title(new QLabel(title)),
      m_follow(new QPushButton(tr("Follow the case"))) {
    QFont bold = m_title->font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_follow->hide();
    m_follow->setAutoDefault(false);
    auto* head = new QHBoxLayout;
    head->addWidget(m_title);
    head->addStretch();
    head->addWidget(m_follow);
    m_column->setContentsMargins(0, 6, 0, 6);
    m_column->addLayout(head);
    m_column->addLayout(m_rows);
    connect(m_follow, &QPushButton::clicked, this,
            [this] { applyToAll(tr("Follow the case: %1").arg(m_title->text()), m_followCase); });
}

void PropertyForm::showWhile(std::function<bool(const Project&)> isShown) {
    if (!isShown)
        return;
    m_refreshers.push_back([this, row = m_rows->rows().size() - 1, isShown] {
        m_rows->setShown(row, isShown(m_session.project()));
    });
}

std::optional<Error> PropertyForm::applyToAll(const QString& name, const Change& change) {
    Project project = m_session.project();
    for (const EditTarget& target : m_targets) {
        auto edited = change(project, target);
        if (!edited.ok())
            return edited.error();
        project = std::move(edited).value();
    }
    return m_session.attempt(name, project);
}

void PropertyForm::add(LengthRow row) {
    auto* field = new LengthField(row.label);
    m_rows->add(row.label, field);
    showWhile(row.isShown);
    m_discarders.push_back([field] { field->discard(); });
    field->setEmpty(row.clear ? LengthField::Empty::Clears : LengthField::Empty::IsAMistake);
    connect(field, &LengthField::decided, this, [this, row, field](const WrittenLength& value) {
        const auto failed =
            applyToAll(row.undoName, [&](const Project& project, EditTarget target) {
                return row.set(project, target, value);
            });
        if (failed)
            field->refuse(told(failed->sentence()));
    });
    connect(field, &LengthField::cleared, this, [this, row, field] {
        if (const auto failed = applyToAll(row.undoName, row.clear))
            field->refuse(told(failed->sentence()));
    });
    m_refreshers.push_back([this, row, field] {
        const Project& project = m_session.project();
        const auto first = row.get(project, m_targets.front());
        bool mixed = false;
        for (const EditTarget& target : m_targets)
            mixed = mixed || row.get(project, target) != first;
        field->setPlaceholder(mixed ? tr("mixed") : row.whenEmpty);
        LengthStyle style = m_session.style();
        if (row.shown == LengthRow::To::FinestFraction)
            style.denominator = 64;
        field->setValue(mixed ? std::nullopt : first, style);
    });
}

QComboBox* PropertyForm::addChoice(const QString& label) {
    auto* box = new ChoiceBox(label);
    m_rows->add(label, box);
    return box;
}

void PropertyForm::add(PickRow row) {
    QComboBox* box = addChoice(row.label);
    connect(box, &QComboBox::activated, this, [this, row](int index) {
        row.pick(index);
        refresh();
    });
    m_refreshers.push_back([this, row, box] {
        const QSignalBlocker quiet(box);
        box->clear();
        box->addItems(row.options(m_session.work(), m_targets.front()));
        box->setCurrentIndex(row.get(m_session.work(), m_targets.front()));
    });
}

void PropertyForm::add(ChoiceRow row) {
    QComboBox* box = addChoice(row.label);
    showWhile(row.isShown);
    connect(box, &QComboBox::activated, this, [this, row](int index) {
        const auto failed =
            applyToAll(row.undoName, [&](const Project& project, EditTarget target) {
                return row.set(m_session.work(), project, target, index);
            });
        if (failed)
            Q_EMIT m_session.refused(*failed);
    });
    m_refreshers.push_back([this, row, box] {
        const QSignalBlocker quiet(box);
        const QStringList options = row.options(m_session.work());
        box->clear();
        box->addItems(options);
        const int first = row.get(m_session.work(), m_targets.front());
        bool mixed = false;
        for (const EditTarget& target : m_targets)
            mixed = mixed || row.get(m_session.work(), target) != first;
        box->setPlaceholderText(mixed ? tr("mixed") : QString());
        box->setCurrentIndex(mixed ? -1 : first);
    });
}

void PropertyForm::add(TextRow row) {
    auto* field = new TextField(row.label);
    field->lineEdit().setPlaceholderText(row.example);
    field->lineEdit().setToolTip(row.told);
    field->lineEdit().setAccessibleDescription(row.told);
    m_rows->add(row.label, field);
    m_discarders.push_back([field] { field->discard(); });
    connect(field, &TextField::decided, this, [this, row, field](const QString& typed) {
        const std::string text = typed.toStdString();
        const auto failed =
            applyToAll(row.undoName, [&](const Project& project, EditTarget target) {
                return row.set(project, target, text);
            });
        if (failed)
            field->refuse(told(failed->sentence()));
    });
    m_refreshers.push_back([this, row, field] {
        field->setText(QString::fromStdString(row.get(m_session.project(), m_targets.front())));
    });
}

void PropertyForm::add(CheckRow row) {
    auto* box = new QCheckBox(row.label);
    m_rows->add(box);
    connect(box, &QCheckBox::clicked, this, [this, row](bool on) {
        const auto failed =
            applyToAll(row.undoName, [&](const Project& project, EditTarget target) {
                return row.set(project, target, on);
            });
        if (failed)
            Q_EMIT m_session.refused(*failed);
    });
    m_refreshers.push_back(
        [this, row, box] { box->setChecked(row.get(m_session.project(), m_targets.front())); });
}

void PropertyForm::explains(QuantityKind kind) {
    const auto& [label, field] = m_rows->rows().back();
    for (QWidget* widget : std::initializer_list<QWidget*>{label, field, field->focusProxy()}) {
        if (!widget)
            continue;
        widget->setContextMenuPolicy(Qt::CustomContextMenu);
        connect(widget, &QWidget::customContextMenuRequested, this,
                [this, widget, field = field, kind](QPoint at) {
                    askWhy(*field, kind, widget->mapToGlobal(at));
                });
    }
}

void PropertyForm::askWhy(QWidget& field, QuantityKind kind, QPoint globalPos) {
    auto* edit = qobject_cast<QLineEdit*>(field.focusProxy());
    std::unique_ptr<QMenu> menu(edit ? edit->createStandardContextMenu() : new QMenu);
    const auto id = m_targets.front().opening;
    const FrontPlan* front = id ? m_session.plan().frontOf(*id) : nullptr;
    Quantity quantity{kind, 0, 0};
    if (front)
        quantity.item = static_cast<std::uint32_t>(front - m_session.plan().fronts.data());
    const bool isOfWay = kind == QuantityKind::BoltLength || kind == QuantityKind::Counterbore;
    if (front && front->hardware && isOfWay)
        quantity.index = static_cast<std::uint32_t>(front->hardware->chosen);
    const bool isKnown =
        (front || kind == QuantityKind::CaseWidth || kind == QuantityKind::CaseHeight) &&
        measureOf(m_session.plan(), quantity);
    menu->addSeparator();
    QAction* why = menu->addAction(tr("Why this &number?"));
    why->setEnabled(isKnown);
    connect(why, &QAction::triggered, this,
            [this, quantity] { Q_EMIT m_session.numberAsked(quantity); });
    menu->exec(globalPos);
}

QWidget* PropertyForm::field(const QString& label) const {
    for (const auto& row : m_rows->rows())
        if (label.isEmpty() || (row.label && row.label->text() == label))
            return row.field;
    return nullptr;
}

void PropertyForm::addPresets(PresetKind kind) {
    m_presets = new PresetRow(m_session, kind);
    m_column->insertWidget(1, m_presets);
}

void PropertyForm::setOwn(std::function<bool(const Project&, EditTarget)> isOwn,
                          std::function<Result<Project>(const Project&, EditTarget)> follow) {
    m_isOwn = std::move(isOwn);
    m_followCase = std::move(follow);
}

void PropertyForm::refreshOwn() {
    bool own = false;
    if (m_isOwn)
        for (const EditTarget& target : m_targets)
            own = own || (target.opening && m_isOwn(m_session.project(), target));
    m_follow->setVisible(own);
    m_follow->setToolTip(tr("This front decides for itself here. Click to follow the case again."));
}

void PropertyForm::hideTitle() {
    m_title->hide();
}

void PropertyForm::setTargets(std::vector<EditTarget> targets) {
    if (targets.empty())
        targets.emplace_back();
    if (targets != m_targets)
        for (const auto& discard : m_discarders)
            discard();
    m_targets = std::move(targets);
    refresh();
}

void PropertyForm::refresh() {
    for (const auto& refresher : m_refreshers)
        refresher();
    if (m_presets)
        m_presets->show(m_targets);
    refreshOwn();
}

} // namespace frontwright
