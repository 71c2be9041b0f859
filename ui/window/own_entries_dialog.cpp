#include "ui/window/own_entries_dialog.h"
#include "ui/look/first_size.h"

#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/window/entry_columns.h"
#include "ui/window/entry_table.h"
#include "ui/window/fitting_columns.h"
#include "ui/window/runner_columns.h"

#include <QDialogButtonBox>
#include <QTabWidget>

namespace frontwright {

namespace {

template<class Entry>
EntryColumn<Entry> sizeColumn(const QString& title, Length Entry::*part) {
    return lengthColumn<Entry>(title, [part](Entry& entry) -> Length& { return entry.*part; });
}

} // namespace

OwnEntriesDialog::OwnEntriesDialog(Session& session, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_tabs(new QTabWidget),
      m_message(new QLabel) {
    setWindowTitle(tr("Catalogue"));
    setHelpTopic(*this, QStringLiteral("window#catalogue"));
    m_message->setWordWrap(true);
    m_message->setAccessibleName(tr("What could not be done"));
    auto* about = new QLabel(tr("What you type or add becomes the case's own entry and is kept in "
                                "its file; the program's stay as they are."));
    about->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* column = new QVBoxLayout(this);
    column->addWidget(about);
    column->addWidget(m_tabs, 1);
    column->addWidget(m_message);
    column->addWidget(buttons);
    m_tabs->setAccessibleName(tr("Kinds of entries"));
    addScrews();
    addBolts();
    addHandles();
    addRunners();
    addSpecies();
    addFittings();
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(&session, &Session::refused, this,
            [this](const Error& error) { m_message->setText(told(error.sentence())); });
    const int line = fontMetrics().lineSpacing();
    resize(firstSize(*this, {line * 70, line * 28}));
}

void OwnEntriesDialog::addScrews() {
    using Table = EntryTable<WoodScrew>;
    const auto table = std::make_shared<Table>(
        m_session, &Catalogue::woodScrews, EntryKind::WoodScrew,
        std::vector<EntryColumn<WoodScrew>>{
            textColumn(tr("Name"), &WoodScrew::name),
            sizeColumn(tr("Shank"), &WoodScrew::shankDiameter),
            sizeColumn(tr("Head"), &WoodScrew::headDiameter),
            sizeColumn(tr("Head's height"), &WoodScrew::headHeight),
            sizeColumn(tr("Clearance hole"), &WoodScrew::clearanceHole),
            sizeColumn(tr("Pilot hole"), &WoodScrew::pilotHole), rootColumn(tr("Root")),
            lengthsColumn(tr("Stocked lengths"), &WoodScrew::lengths)},
        *m_message);
    m_tabs->addTab(Table::page(table, tr("Wood screws")), tr("&Wood screws"));
}

void OwnEntriesDialog::addBolts() {
    using Table = EntryTable<Bolt>;
    const auto table = std::make_shared<Table>(
        m_session, &Catalogue::bolts, EntryKind::Bolt,
        std::vector<EntryColumn<Bolt>>{textColumn(tr("Name"), &Bolt::name),
                                       textColumn(tr("Thread"), &Bolt::thread),
                                       sizeColumn(tr("Diameter"), &Bolt::majorDiameter),
                                       sizeColumn(tr("Head"), &Bolt::headDiameter),
                                       sizeColumn(tr("Head's height"), &Bolt::headHeight),
                                       sizeColumn(tr("Clearance hole"), &Bolt::clearanceHole),
                                       lengthsColumn(tr("Stocked lengths"), &Bolt::lengths)},
        *m_message);
    m_tabs->addTab(Table::page(table, tr("Bolts")), tr("&Bolts"));
}

void OwnEntriesDialog::addHandles() {
    using Table = EntryTable<HardwareForm>;
    const auto table = std::make_shared<Table>(
        m_session, &Catalogue::hardware, EntryKind::Hardware,
        std::vector<EntryColumn<HardwareForm>>{
            textColumn(tr("Name"), &HardwareForm::name),
            holesAcrossColumn(tr("Holes, right of the centre")),
            holesUpColumn(tr("Holes, above it")),
            lengthColumn<HardwareForm>(
                tr("Base's width"), [](HardwareForm& f) -> Length& { return f.footprint.width; }),
            lengthColumn<HardwareForm>(
                tr("Base's height"), [](HardwareForm& f) -> Length& { return f.footprint.height; }),
            sizeColumn(tr("Stands out"), &HardwareForm::projection),
            textColumn(tr("Bolt"), &HardwareForm::bolt),
            sizeColumn(tr("Thread's depth"), &HardwareForm::threadDepth),
            sizeColumn(tr("Least engagement"), &HardwareForm::leastEngagement)},
        *m_message);
    m_tabs->addTab(Table::page(table, tr("Handles")), tr("&Handles"));
}

void OwnEntriesDialog::addFittings() {
    using Table = EntryTable<FittingForm>;
    const auto table = std::make_shared<Table>(
        m_session, &Catalogue::fittings, EntryKind::Fitting,
        std::vector<EntryColumn<FittingForm>>{
            textColumn(tr("Name"), &FittingForm::name), fittingKindColumn(tr("Kind")),
            bearsOnColumn(tr("Bears on")),
            lengthColumn<FittingForm>(tr("Plate's width"),
                                      [](FittingForm& f) -> Length& { return f.footprint.width; }),
            lengthColumn<FittingForm>(tr("Plate's height"),
                                      [](FittingForm& f) -> Length& { return f.footprint.height; }),
            sizeColumn(tr("Plate's thickness"), &FittingForm::plate),
            sizeColumn(tr("Stands out"), &FittingForm::projection),
            textColumn(tr("Screw"), &FittingForm::screw),
            screwPlacesColumn(tr("Screws, from the centre")), boresColumn(tr("Bores")),
            mortisesColumn(tr("Mortises")), belowTopColumn(tr("Below the top edge"))},
        *m_message);
    m_tabs->addTab(Table::page(table, tr("Fittings")), tr("&Fittings"));
}

void OwnEntriesDialog::addRunners() {
    using Table = EntryTable<RunnerKind>;
    const auto table = std::make_shared<Table>(m_session, &Catalogue::runners, EntryKind::Runner,
                                               runnerColumns(), *m_message);
    m_tabs->addTab(Table::page(table, tr("Runners")), tr("&Runners"));
}

void OwnEntriesDialog::addSpecies() {
    using Table = EntryTable<Species>;
    const auto table = std::make_shared<Table>(
        m_session, &Catalogue::species, EntryKind::Species,
        std::vector<EntryColumn<Species>>{
            textColumn(tr("Name"), &Species::name), gravityColumn(tr("Specific gravity")),
            gravityBasisColumn(tr("Of the volume")),
            movementColumn(tr("Moves, flat-sawn"), &MovementCoefficients::tangential),
            movementColumn(tr("Moves, quarter-sawn"), &MovementCoefficients::radial)},
        *m_message);
    m_tabs->addTab(Table::page(table, tr("Woods")), tr("W&oods"));
}

} // namespace frontwright
