#pragma once

#include "core/wood/air.h"

#include <QWidget>

class QComboBox;
class QDoubleSpinBox;

namespace frontwright {

/// One time of the year: the air's temperature and humidity, or a moisture meter's reading.
class AirStateRow : public QWidget {
    Q_OBJECT
public:
    /// `name` begins what the fields are called: "When cut".
    explicit AirStateRow(const QString& name, QWidget* parent = nullptr);

    void setState(const AirState&);
    /// Of temperatures that were not given yet.
    void setUsualUnit(TemperatureUnit unit) { m_usualUnit = unit; }
    [[nodiscard]] AirState state() const;

Q_SIGNALS:
    void edited(); ///< by the maker, once a value is finished

protected:
    /// The wheel scrolls the panel; it changes no value.
    bool eventFilter(QObject*, QEvent*) override;

private:
    void showFields();
    void turnTo(MoistureBy);
    void convertTo(TemperatureUnit);

    QComboBox* m_by;
    QDoubleSpinBox* m_temperature;
    QComboBox* m_unit;
    QDoubleSpinBox* m_humidity;
    QDoubleSpinBox* m_reading;
    MoistureBy m_shownBy = MoistureBy::Air;
    TemperatureUnit m_shownUnit = TemperatureUnit::Celsius;
    TemperatureUnit m_usualUnit = TemperatureUnit::Celsius;
};

} // namespace frontwright
