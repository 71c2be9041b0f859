#include "ui/panels/air_state_row.h"

#include "ui/fields/decimal_box.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include <cmath>

namespace frontwright {

namespace {

constexpr MoistureBy ways[] = {MoistureBy::Air, MoistureBy::Meter};
constexpr TemperatureUnit units[] = {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit};

/// More than what is taken, so that a value outside is refused in words and not bent in silence.
QDoubleSpinBox* spin(const QString& name, double least, double greatest, const QString& suffix) {
    auto* box = new DecimalBox;
    box->setAccessibleName(name);
    box->setRange(least, greatest);
    box->setDecimals(1);
    box->setSuffix(suffix);
    box->setKeyboardTracking(false);
    box->setFocusPolicy(Qt::StrongFocus);
    return box;
}

std::int64_t thousandths(double value) {
    return std::llround(value * 1000);
}

} // namespace

AirStateRow::AirStateRow(const QString& name, QWidget* parent)
    : QWidget(parent),
      m_by(new QComboBox),
      m_temperature(spin(tr("%1: temperature").arg(name), -100, 400, {})),
      m_unit(new QComboBox),
      m_humidity(spin(tr("%1: relative humidity").arg(name), -10, 200, tr(" %"))),
      m_reading(spin(tr("%1: moisture meter's reading").arg(name), -10, 100, tr(" %"))) {
    m_by->addItems({tr("Air"), tr("Meter")});
    m_by->setAccessibleName(tr("%1: told by air or by a moisture meter").arg(name));
    m_unit->addItems({tr("°C"), tr("°F")});
    m_unit->setAccessibleName(tr("%1: unit of temperature").arg(name));
    m_humidity->setToolTip(tr("Relative humidity of the air, 0 to 100 %"));
    m_reading->setToolTip(tr("The wood's moisture as the meter reads it, 0 to 30 %"));
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins({});
    line->setSpacing(4);
    for (QWidget* field :
         std::initializer_list<QWidget*>{m_by, m_temperature, m_unit, m_humidity, m_reading}) {
        line->addWidget(field);
        field->installEventFilter(this);
    }
    line->addStretch();
    setFocusProxy(m_by);
    setFocusPolicy(Qt::StrongFocus); // for a label's letter leads to nothing that takes no focus
    connect(m_by, qOverload<int>(&QComboBox::activated), this, [this](int index) {
        turnTo(ways[index]);
        Q_EMIT edited();
    });
    connect(m_unit, qOverload<int>(&QComboBox::activated), this, [this](int index) {
        convertTo(units[index]);
        Q_EMIT edited();
    });
    for (QDoubleSpinBox* box : {m_temperature, m_humidity, m_reading})
        connect(box, qOverload<double>(&QDoubleSpinBox::valueChanged), this, &AirStateRow::edited);
    setState({});
}

void AirStateRow::setState(const AirState& state) {
    const QSignalBlocker blockers[] = {QSignalBlocker(m_temperature), QSignalBlocker(m_humidity),
                                       QSignalBlocker(m_reading)};
    m_shownBy = state.by;
    m_by->setCurrentIndex(m_shownBy == MoistureBy::Air ? 0 : 1);
    m_shownUnit = state.temperature.unit;
    m_unit->setCurrentIndex(m_shownUnit == TemperatureUnit::Celsius ? 0 : 1);
    m_temperature->setValue(state.temperature.degrees());
    m_humidity->setValue(state.humidity.value());
    m_reading->setValue(state.reading.value());
    showFields();
}

AirState AirStateRow::state() const {
    AirState state;
    state.by = m_shownBy;
    state.temperature = {thousandths(m_temperature->value()), m_shownUnit};
    state.humidity = Percent::fromThousandths(thousandths(m_humidity->value()));
    state.reading = Percent::fromThousandths(thousandths(m_reading->value()));
    return state;
}

void AirStateRow::showFields() {
    const bool isAir = m_shownBy == MoistureBy::Air;
    for (QWidget* field : std::initializer_list<QWidget*>{m_temperature, m_unit, m_humidity})
        field->setVisible(isAir);
    m_reading->setVisible(!isAir);
}

/// The line's own moisture stays.
void AirStateRow::turnTo(MoistureBy by) {
    setState(toldBy(state(), by, m_usualUnit));
}

void AirStateRow::convertTo(TemperatureUnit unit) {
    const Temperature now{thousandths(m_temperature->value()), m_shownUnit};
    const QSignalBlocker blocker(m_temperature);
    m_shownUnit = unit;
    m_temperature->setValue(converted(now, unit).degrees());
}

bool AirStateRow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Wheel) {
        event->ignore();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace frontwright
