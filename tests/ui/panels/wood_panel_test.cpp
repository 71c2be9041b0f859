// The panel of the wood and its air: what is typed is understood or stays with its reason, and what
// follows is told, drawn and found.

#include "ui/panels/property_form.h"
#include "ui/panels/wood_panel.h"

#include "core/findings/finding.h"
#include "tests/ui/elevation/open_window.h"
#include "ui/panels/air_form.h"
#include "ui/panels/air_state_row.h"
#include "ui/panels/drawing_view.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDockWidget>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QSpinBox>
#include <QTest>

#include <algorithm>

namespace frontwright::testing {
namespace {

class Wood : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        openSample(QStringLiteral("glaze-chest"));
        auto* dock = window.findChild<QDockWidget*>(QStringLiteral("wood"));
        dock->show();
        dock->raise();
        QApplication::processEvents();
    }
    WoodPanel& panel() { return *window.findChild<WoodPanel*>(); }
    /// The field of that accessible name.
    template<class Field>
    Field& field(const QString& name) {
        for (Field* each : panel().findChildren<Field*>())
            if (each->accessibleName() == name)
                return *each;
        ADD_FAILURE() << name.toStdString();
        std::abort();
    }
    void tell() { field<QCheckBox>(QString()).click(); }
    /// Told by the air instead of by a meter's reading.
    void tellByAir(const QString& time) {
        choose(time + QStringLiteral(": told by air or by a moisture meter"),
               QStringLiteral("Air"));
    }
    /// As a maker types it: the old text is replaced, Tab ends it.
    void typeInto(const QString& name, const QString& text) {
        auto& box = field<QDoubleSpinBox>(name);
        box.setFocus();
        box.selectAll();
        QTest::keyClicks(&box, text);
        QTest::keyClick(&box, Qt::Key_Tab);
    }
    void choose(const QString& name, const QString& option) {
        auto& box = field<QComboBox>(name);
        const int index = box.findText(option);
        ASSERT_GE(index, 0) << option.toStdString();
        box.setCurrentIndex(index);
        Q_EMIT box.activated(index);
    }
    /// Words on the panel that are seen.
    QString words() {
        QString all;
        for (const QLabel* label : panel().findChildren<QLabel*>())
            if (label->isVisibleTo(&panel()))
                all += label->text() + u'\n';
        return all;
    }
    const Air& air() { return *session().project().air; }
    bool isFound(FindingCode code) {
        const auto& found = session().work().findings;
        return std::any_of(found.begin(), found.end(),
                           [code](const Finding& f) { return f.code == code; });
    }
    QImage picture(const QString& name) {
        QApplication::processEvents();
        return field<DrawingView>(name).grab().toImage();
    }
};

const QString humidityOfDriest = QStringLiteral("Driest: relative humidity");
const QString season = QStringLiteral("The case at that time of the year");

TEST_F(Wood, IsFollowedOnceItsAirIsTold) {
    ASSERT_FALSE(session().project().air);
    EXPECT_FALSE(field<DrawingView>(season).isVisibleTo(&panel()));
    const int before = steps();
    tell();
    ASSERT_TRUE(session().project().air);
    EXPECT_EQ(steps(), before + 1);
    EXPECT_TRUE(field<DrawingView>(season).isVisibleTo(&panel()));
    EXPECT_TRUE(words().contains(QStringLiteral("oisture"))) << words().toStdString();
    session().undoStack().undo();
    EXPECT_FALSE(session().project().air);
    EXPECT_FALSE(field<DrawingView>(season).isVisibleTo(&panel()));
    EXPECT_FALSE(field<QCheckBox>(QString()).isChecked());
}

TEST_F(Wood, TakesTheAirThatIsTyped) {
    tell();
    const auto driest = plan().season->driest;
    tellByAir(QStringLiteral("Driest"));
    typeInto(humidityOfDriest, QStringLiteral("12"));
    EXPECT_EQ(air().driest.humidity, Percent::whole(12));
    EXPECT_LT(plan().season->driest, driest);
    session().undoStack().undo();
    EXPECT_EQ(plan().season->driest, driest);
    EXPECT_NE(field<QDoubleSpinBox>(humidityOfDriest).value(), 12);
}

TEST_F(Wood, KeepsWhatCannotBeWithItsReasonBesideIt) {
    tell();
    tellByAir(QStringLiteral("Driest"));
    const Air before = air();
    const int step = steps();
    for (const char* typed : {"120", "-5"}) {
        typeInto(humidityOfDriest, QLatin1String(typed));
        EXPECT_EQ(air(), before);
        EXPECT_EQ(steps(), step);
        EXPECT_EQ(field<QDoubleSpinBox>(humidityOfDriest).value(), QString(typed).toDouble());
        EXPECT_TRUE(words().contains(QStringLiteral("⚠ Not taken:"))) << words().toStdString();
    }
    // What can be takes its place, and the reason goes.
    typeInto(humidityOfDriest, QStringLiteral("30"));
    EXPECT_EQ(air().driest.humidity, Percent::whole(30));
    EXPECT_FALSE(words().contains(QStringLiteral("Not taken")));
}

TEST_F(Wood, IsToldByAMoistureMeterAsWell) {
    tell();
    choose(QStringLiteral("When cut: told by air or by a moisture meter"), QStringLiteral("Meter"));
    const QString reading = QStringLiteral("When cut: moisture meter's reading");
    EXPECT_TRUE(field<QDoubleSpinBox>(reading).isVisibleTo(&panel()));
    typeInto(reading, QStringLiteral("9.5"));
    EXPECT_EQ(air().whenCut.by, MoistureBy::Meter);
    EXPECT_NEAR(plan().season->whenCut, 9.5, 1e-9);
    // Above fibre saturation wood no longer swells.
    const Air before = air();
    typeInto(reading, QStringLiteral("45"));
    EXPECT_EQ(air(), before);
    EXPECT_TRUE(words().contains(QStringLiteral("⚠ Not taken:")));
}

TEST_F(Wood, TurnsALineFromMeterToAirByItself) {
    tell();
    const Air before = air();
    ASSERT_EQ(before.driest.by, MoistureBy::Meter);
    tellByAir(QStringLiteral("Driest"));
    EXPECT_EQ(air().whenCut, before.whenCut);
    EXPECT_EQ(air().wettest, before.wettest);
    EXPECT_EQ(air().driest.by, MoistureBy::Air);
    EXPECT_EQ(air().driest.temperature, Temperature::fahrenheit(68)) << "a case in inches";
    EXPECT_NEAR(moistureOf(air().driest), before.driest.reading.value(), 0.05);
    choose(QStringLiteral("Driest: told by air or by a moisture meter"), QStringLiteral("Meter"));
    EXPECT_TRUE(tellTheSame(air().driest, before.driest));
    EXPECT_FALSE(words().contains(QStringLiteral("Not taken"))) << words().toStdString();
}

TEST_F(Wood, SaysWhichSeasonIsTheDriest) {
    tell();
    const QString all = words();
    EXPECT_TRUE(all.contains(QStringLiteral("riest (heating season)"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("ettest (summer)"))) << all.toStdString();
}

TEST_F(Wood, KeepsTheTemperatureWhenItsUnitIsTurned) {
    tell();
    const double moisture = plan().season->whenCut;
    choose(QStringLiteral("When cut: unit of temperature"), QStringLiteral("°F"));
    EXPECT_EQ(air().whenCut.temperature.unit, TemperatureUnit::Fahrenheit);
    EXPECT_NEAR(plan().season->whenCut, moisture, 0.02);
}

TEST_F(Wood, FollowsSpeciesAndCut) {
    tell();
    const auto* form = panel().findChild<PropertyForm*>();
    auto* wood = qobject_cast<QComboBox*>(form->field(QStringLiteral("Wood")));
    auto* cut = qobject_cast<QComboBox*>(form->field(QStringLiteral("Cut")));
    ASSERT_TRUE(wood && cut);
    const auto pick = [](QComboBox& box, const QString& text) {
        const int index = box.findText(text, Qt::MatchContains);
        ASSERT_GE(index, 0) << text.toStdString();
        box.setCurrentIndex(index);
        Q_EMIT box.activated(index);
    };
    pick(*cut, QStringLiteral("Flat-sawn"));
    const auto moves = [this] {
        const auto& moved = plan().fronts.front().season;
        return moved ? moved->wettest - moved->driest : 0.0;
    };
    const double flat = moves();
    EXPECT_GT(flat, 0);
    pick(*cut, QStringLiteral("Quarter-sawn"));
    EXPECT_EQ(session().project().fronts.stock.cut, Cut::QuarterSawn);
    EXPECT_GT(moves(), 0);
    EXPECT_LT(moves(), flat) << "radially wood moves less";
    const std::string before = session().project().fronts.stock.species;
    pick(*wood, QStringLiteral("White oak"));
    EXPECT_EQ(session().project().fronts.stock.species, "white-oak");
    session().undoStack().undo();
    EXPECT_EQ(session().project().fronts.stock.species, before);
}

TEST_F(Wood, BringsFindingsAsSoonAsTheAirAsksForThem) {
    tell();
    tellByAir(QStringLiteral("Driest"));
    typeInto(humidityOfDriest, QStringLiteral("40"));
    EXPECT_FALSE(isFound(FindingCode::MoistureBeyondRange));
    // Nearly dry wood is outside what the coefficients are stated for.
    typeInto(humidityOfDriest, QStringLiteral("4"));
    EXPECT_TRUE(isFound(FindingCode::MoistureBeyondRange));
    typeInto(humidityOfDriest, QStringLiteral("40"));
    EXPECT_FALSE(isFound(FindingCode::MoistureBeyondRange));
}

TEST_F(Wood, IsDrawnAtItsDriestAndAtItsWettest) {
    tell();
    const QString time = QStringLiteral("Time of the year that the picture shows");
    choose(time, QStringLiteral("At its driest (heating season)"));
    const QImage dry = picture(season);
    choose(time, QStringLiteral("At its wettest (summer)"));
    const QImage wet = picture(season);
    choose(time, QStringLiteral("As cut"));
    const QImage cut = picture(season);
    EXPECT_NE(dry, wet);
    EXPECT_NE(dry, cut);
    EXPECT_NE(wet, cut);
    // The caution goes where the change is drawn as it is.
    choose(time, QStringLiteral("At its wettest (summer)"));
    EXPECT_TRUE(words().contains(QStringLiteral("take no sizes")));
    auto& times =
        field<QSpinBox>(QStringLiteral("How many times larger than true the change is drawn"));
    times.setValue(1);
    EXPECT_FALSE(words().contains(QStringLiteral("take no sizes")));
    EXPECT_NE(picture(season), wet);
}

TEST_F(Wood, ShowsTodaysPointInTheChart) {
    tell();
    const QString chart = QStringLiteral("The smallest gap over the air's humidity");
    tellByAir(QStringLiteral("Today"));
    const QImage before = picture(chart);
    typeInto(QStringLiteral("Today: relative humidity"), QStringLiteral("63"));
    EXPECT_NE(picture(chart), before);
}

TEST_F(Wood, SaysWhatFollowsForTheSelectedFront) {
    tell();
    EXPECT_TRUE(words().contains(QStringLiteral("Select a front")));
    session().select(Selection::of(plan().fronts.front().opening));
    QApplication::processEvents();
    EXPECT_FALSE(words().contains(QStringLiteral("Select a front")));
    EXPECT_TRUE(words().contains(QStringLiteral("Wood of the selected front")));
    EXPECT_TRUE(words().contains(QStringLiteral("season"))) << words().toStdString();
}

} // namespace
} // namespace frontwright::testing
