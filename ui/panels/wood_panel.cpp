#include "ui/panels/wood_panel.h"

#include "core/drawings/season_chart.h"
#include "core/drawings/season_elevation.h"
#include "core/lengths/format.h"
#include "core/plan/quantity.h"
#include "core/reports/groups.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/panels/air_form.h"
#include "ui/panels/air_state_row.h"
#include "ui/panels/drawing_view.h"
#include "ui/panels/forms.h"
#include "ui/panels/input_field.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSpinBox>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

namespace {

constexpr int mostTimes = 50, usualTimes = 10;

QLabel* wrapped(const QString& text = {}) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    return label;
}

/// "Front height over the season, least: 13 1/16 in"
QString line(const Session& session, Quantity quantity) {
    // A season moves less than a maker's usual fraction.
    const LengthStyle fine{session.style().unit, 64, session.style().mark};
    const auto derivation = derive(session.project(), session.plan(), quantity, fine);
    if (!derivation)
        return {};
    const QString name = told(derivation->name);
    const QString which = told(indexName(quantity));
    const QString value = QString::fromStdString(shown(quantity.kind, derivation->value, fine));
    return which.isEmpty() ? WoodPanel::tr("%1: %2").arg(name, value)
                           : WoodPanel::tr("%1, %2: %3").arg(name, which, value);
}

bool isOfSeason(QuantityKind kind) {
    return (kind >= QuantityKind::SeasonWidth && kind <= QuantityKind::SeasonGapTop) ||
           (kind >= QuantityKind::FixedRow && kind <= QuantityKind::RowDrill);
}

} // namespace

WoodPanel::WoodPanel(Session& session, QWidget* parent)
    : QScrollArea(parent),
      m_session(session),
      m_wood(woodForm(session)),
      m_air(new AirForm(session)),
      m_heading(wrapped()),
      m_follows(wrapped()),
      m_pictures(new QWidget),
      m_time(new QComboBox),
      m_times(new QSpinBox),
      m_today(new AirStateRow(tr("Today"))) {
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setAccessibleName(tr("Wood and air"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->addWidget(m_heading);
    m_wood->hideTitle();
    column->addWidget(m_wood);
    column->addWidget(m_air);
    setHelpTopic(*m_wood, topicOf(InputPlace::Stock));
    setHelpTopic(*m_air, topicOf(InputPlace::Air));
    m_follows->setTextInteractionFlags(Qt::TextSelectableByMouse);
    column->addWidget(m_follows);
    auto* pictures = new QVBoxLayout(m_pictures);
    pictures->setContentsMargins({});
    addPicture(*pictures);
    addChart(*pictures);
    column->addWidget(m_pictures);
    column->addStretch();
    setWidget(page);
    connect(&session, &Session::selectionChanged, this, &WoodPanel::showSelection);
    connect(&session, &Session::workChanged, this, &WoodPanel::refresh);
    connect(&session, &Session::styleChanged, this, &WoodPanel::refresh);
    connect(&session, &Session::started, this, [this] { m_isTodaySet = false; });
    showSelection();
}

void WoodPanel::addPicture(QVBoxLayout& column) {
    m_time->addItems(
        {tr("As cut"), tr("At its driest (heating season)"), tr("At its wettest (summer)")});
    m_time->setAccessibleName(tr("Time of the year that the picture shows"));
    m_time->setCurrentIndex(static_cast<int>(Time::Wettest));
    m_times->setRange(1, mostTimes);
    m_times->setValue(usualTimes);
    m_times->setPrefix(tr("change × "));
    m_times->setAccessibleName(tr("How many times larger than true the change is drawn"));
    m_times->setToolTip(tr("The change is drawn so many times larger than it is; 1 is true"));
    auto* line = new QHBoxLayout;
    line->addWidget(m_time);
    line->addWidget(m_times);
    line->addStretch();
    column.addLayout(line);
    m_elevation = new DrawingView(tr("The case at that time of the year"),
                                  [this](double w, double h) { return picture(w, h); });
    m_elevation->setHint({260, 300});
    column.addWidget(m_elevation);
    auto* caution = wrapped(tr("The change is drawn larger than it is: take no sizes from this "
                               "picture."));
    column.addWidget(caution);
    connect(m_time, qOverload<int>(&QComboBox::activated), this, [this] { m_elevation->update(); });
    connect(m_times, qOverload<int>(&QSpinBox::valueChanged), this, [this, caution](int times) {
        caution->setVisible(times > 1);
        m_elevation->update();
    });
}

void WoodPanel::addChart(QVBoxLayout& column) {
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("&Today"), m_today);
    column.addLayout(form);
    m_chart = new DrawingView(tr("The smallest gap over the air's humidity"),
                              [this](double w, double h) { return chart(w, h); });
    m_chart->setHint({260, 240});
    m_chart->setWhenEmpty(tr("There is no gap between fronts to follow, or today's air is outside "
                             "what can be told."));
    column.addWidget(m_chart);
    connect(m_today, &AirStateRow::edited, this, [this] {
        m_isTodaySet = true;
        m_chart->update();
    });
}

QWidget* WoodPanel::goTo(const InputField& where) {
    m_session.select(where.selection);
    QWidget* field = where.label.isEmpty() ? m_air->firstField() : m_wood->field(where.label);
    if (!field)
        return nullptr;
    field->setFocus(Qt::ShortcutFocusReason);
    // A panel that was just made has to find its fields' places first.
    QTimer::singleShot(0, field, [this, field] { ensureWidgetVisible(field); });
    return field;
}

void WoodPanel::showSelection() {
    std::vector<EditTarget> targets;
    for (const OpeningId id : m_session.selection().openings)
        targets.push_back({id});
    m_heading->setText(targets.empty() ? tr("Wood of all fronts that do not decide otherwise")
                       : targets.size() == 1
                           ? tr("Wood of the selected front")
                           : tr("Wood of %1 selected fronts").arg(targets.size()));
    if (targets.empty())
        targets.push_back({});
    m_wood->setTargets(std::move(targets));
    refresh();
}

void WoodPanel::refresh() {
    m_wood->refresh();
    const bool hasAir = m_session.plan().season.has_value();
    m_follows->setText(summary());
    m_follows->setVisible(hasAir);
    m_pictures->setVisible(hasAir);
    m_today->setUsualUnit(temperatureUnitBeside(m_session.project().style.unit));
    if (hasAir && !m_isTodaySet)
        m_today->setState(m_session.project().air->whenCut);
    m_elevation->update();
    m_chart->update();
}

QString WoodPanel::summary() const {
    const Plan& plan = m_session.plan();
    if (!plan.season)
        return {};
    QStringList lines;
    for (const QuantityKind kind : {QuantityKind::MoistureWhenCut, QuantityKind::MoistureDriest,
                                    QuantityKind::MoistureWettest})
        lines << line(m_session, {kind});
    const auto id = m_session.selection().lastOpening();
    const FrontPlan* front = id ? plan.frontOf(*id) : nullptr;
    if (front == nullptr) {
        lines << tr("Select a front to read what follows for it.");
        return lines.join(QLatin1Char('\n'));
    }
    lines << tr("Front %1:").arg(QString::fromStdString(label(m_session.project(), *front)));
    const auto index = static_cast<std::uint32_t>(front - plan.fronts.data());
    for (const Quantity quantity : quantitiesOfFront(plan, index))
        if (isOfSeason(quantity.kind))
            lines << line(m_session, quantity);
    return lines.join(QLatin1Char('\n'));
}

double WoodPanel::moistureShown() const {
    const SeasonMoisture& season = *m_session.plan().season;
    switch (static_cast<Time>(m_time->currentIndex())) {
    case Time::WhenCut:
        return season.whenCut;
    case Time::Driest:
        return season.driest;
    case Time::Wettest:
        break;
    }
    return season.wettest;
}

std::optional<Drawing> WoodPanel::picture(double widthMm, double heightMm) const {
    const Plan& plan = m_session.plan();
    if (!plan.season)
        return std::nullopt;
    SeasonElevationOptions options;
    options.style = m_session.style();
    options.language = spokenLanguage();
    options.width = widthMm;
    options.height = heightMm;
    options.moisture = moistureShown();
    options.times = m_times->value();
    return seasonElevation(m_session.project(), plan, options);
}

std::optional<Drawing> WoodPanel::chart(double widthMm, double heightMm) const {
    SeasonChartOptions options;
    options.style = m_session.style();
    options.language = spokenLanguage();
    // Figures stand left of the plot and below it.
    constexpr double leastPlot = 20, left = 24, right = 6, below = 16, above = 8;
    options.width = std::max(leastPlot, widthMm - left - right);
    options.height = std::max(leastPlot, heightMm - below - above);
    options.today = m_today->state();
    return seasonChart(m_session.project(), m_session.plan(), options);
}

} // namespace frontwright
