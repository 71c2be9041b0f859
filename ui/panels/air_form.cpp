#include "ui/panels/air_form.h"

#include "core/edits/choices.h"
#include "ui/fields/choice_box.h"
#include "ui/language/data_names.h"
#include "ui/language/told.h"
#include "ui/panels/air_state_row.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace frontwright {

namespace {

const std::vector<AirRange>& rangesOf(const Session& session) {
    return session.work().catalogue->airs;
}

} // namespace

AirForm::AirForm(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_told(new QCheckBox(tr("&Follow the wood through the year"))),
      m_range(new ChoiceBox(tr("Ordinary air indoors"))),
      m_rows{new AirStateRow(tr("When cut")), new AirStateRow(tr("Driest")),
             new AirStateRow(tr("Wettest"))},
      m_fields(new QWidget),
      m_source(new QLabel),
      m_problem(new QLabel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->addWidget(m_told);
    column->addWidget(m_fields);
    auto* form = new QFormLayout(m_fields);
    form->setContentsMargins({});
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("&Room"), m_range);
    form->addRow(tr("When &cut"), m_rows[0]);
    form->addRow(tr("&Driest (heating season)"), m_rows[1]);
    form->addRow(tr("&Wettest (summer)"), m_rows[2]);
    for (QLabel* label : {m_source, m_problem}) {
        label->setWordWrap(true);
        form->addRow(label);
    }
    connect(m_told, &QCheckBox::clicked, this, &AirForm::tell);
    connect(m_range, qOverload<int>(&QComboBox::activated), this, &AirForm::choose);
    for (AirStateRow* row : m_rows)
        connect(row, &AirStateRow::edited, this, &AirForm::change);
    connect(&session, &Session::workChanged, this, &AirForm::refresh);
    refresh();
}

QWidget* AirForm::firstField() const {
    if (m_session.project().air)
        return m_range;
    return m_told;
}

void AirForm::refresh() {
    const auto& air = m_session.project().air;
    m_told->setChecked(air.has_value());
    m_fields->setVisible(air.has_value());
    m_problem->hide();
    if (!air)
        return;
    for (AirStateRow* row : m_rows)
        row->setUsualUnit(temperatureUnitBeside(m_session.project().style.unit));
    m_rows[0]->setState(air->whenCut);
    m_rows[1]->setState(air->driest);
    m_rows[2]->setState(air->wettest);
    m_range->clear();
    int chosen = -1;
    for (const AirRange& range : rangesOf(m_session)) {
        if (tellTheSame(range.driest, air->driest) && tellTheSame(range.wettest, air->wettest))
            chosen = m_range->count();
        m_range->addItem(toldName(range.name));
    }
    m_range->setPlaceholderText(tr("As given below"));
    m_range->setCurrentIndex(chosen);
    m_source->setVisible(chosen >= 0);
    if (chosen >= 0)
        m_source->setText(
            tr("Source: %1")
                .arg(QString::fromStdString(
                    rangesOf(m_session)[static_cast<std::size_t>(chosen)].source.title)));
}

void AirForm::tell(bool isTold) {
    std::optional<Air> air;
    if (isTold) {
        air.emplace();
        if (const auto& ranges = rangesOf(m_session); !ranges.empty())
            air = Air{ranges.front().average, ranges.front().driest, ranges.front().wettest};
    }
    m_session.apply(isTold ? tr("Follow the wood through the year") : tr("Forget the air"),
                    setAir(m_session.project(), air));
    refresh();
}

void AirForm::choose(int range) {
    const AirRange& chosen = rangesOf(m_session).at(static_cast<std::size_t>(range));
    Air air = *m_session.project().air;
    air.driest = chosen.driest;
    air.wettest = chosen.wettest;
    m_session.apply(tr("Choose the room's air"), setAir(m_session.project(), air));
}

void AirForm::change() {
    const Result<Project> changed = setAir(
        m_session.project(), Air{m_rows[0]->state(), m_rows[1]->state(), m_rows[2]->state()});
    m_problem->setVisible(!changed.ok());
    if (changed.ok()) {
        m_session.apply(tr("Change the air"), changed, Merge::Quick);
        return;
    }
    // What was typed stays, with the reason beside it.
    m_problem->setText(tr("⚠ Not taken: %1").arg(told(changed.error().sentence())));
}

} // namespace frontwright
