#include "ui/window/new_case_dialog.h"

#include "core/case/layout.h"
#include "core/edits/divisions.h"
#include "core/lengths/format.h"
#include "ui/fields/length_field.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>

namespace frontwright {

namespace {

/// The unit of the desktop's country; inches where none is told.
bool measuresInInches(const QLocale& locale) {
    return locale == QLocale::c() || locale.measurementSystem() == QLocale::ImperialUSSystem;
}

/// The first opening of a case, in the order of the tree.
OpeningId firstOpening(const RegionPtr& region) {
    const Region* at = region.get();
    while (const auto* split = std::get_if<Split>(&at->content))
        at = split->children.front().region.get();
    return std::get<Opening>(at->content).id;
}

QSpinBox* countBox(const QString& name, int value) {
    auto* box = new QSpinBox;
    box->setRange(1, 12);
    box->setValue(value);
    box->setAccessibleName(name);
    return box;
}

} // namespace

NewCaseDialog::NewCaseDialog(QWidget* parent)
    : QDialog(parent),
      m_unit(new QComboBox),
      m_construction(new QComboBox),
      m_width(new LengthField(tr("Width of the case"))),
      m_height(new LengthField(tr("Height of the case"))),
      m_depth(new LengthField(tr("Depth inside"))),
      m_frame(new LengthField(tr("Width of the frame's stiles and rails"))),
      m_member(new LengthField(tr("Width of the members between"))),
      m_shelf(new LengthField(tr("Thickness of the shelves between drawers"))),
      m_banks(countBox(tr("Banks"), 2)),
      m_drawers(countBox(tr("Drawers in each bank"), 3)),
      m_fit(new QComboBox),
      m_fitAmount(new LengthField(tr("Overlay or gap"))),
      m_summary(new QLabel) {
    setWindowTitle(tr("New case"));
    setHelpTopic(*this, QStringLiteral("window#new-case"));
    m_unit->addItem(tr("Inches"));
    m_unit->addItem(tr("Millimetres"));
    m_unit->setCurrentIndex(measuresInInches(QLocale()) ? 0 : 1);
    m_unit->setAccessibleName(tr("Unit"));
    m_construction->addItem(tr("Face frame"));
    m_construction->addItem(tr("Frameless: panels only"));
    m_construction->setAccessibleName(tr("Construction"));
    m_fit->addItem(tr("Overlay: cover the members by"));
    m_fit->addItem(tr("Gap first: leave between fronts"));
    m_fit->addItem(tr("Inset: leave round each front"));
    m_fit->setAccessibleName(tr("How the fronts fit"));
    m_summary->setWordWrap(true);
    addRows();
    listen();
    m_width->startTyping();
    basisChanged();
}

void NewCaseDialog::addRows() {
    auto* form = m_form = new QFormLayout(this);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->addRow(tr("&Unit"), m_unit);
    form->addRow(tr("&Construction"), m_construction);
    form->addRow(tr("&Width, outside"), m_width);
    form->addRow(tr("&Height, outside"), m_height);
    form->addRow(tr("&Depth, inside"), m_depth);
    form->addRow(tr("&Frame: stiles and rails"), m_frame);
    form->addRow(tr("M&embers between"), m_member);
    form->addRow(tr("&Shelves between drawers"), m_shelf);
    form->addRow(tr("&Banks side by side"), m_banks);
    form->addRow(tr("D&rawers in each"), m_drawers);
    form->addRow(tr("Fr&onts"), m_fit);
    form->addRow(QString(), m_fitAmount);
    form->addRow(m_summary);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_make = buttons->addButton(tr("&Make the case"), QDialogButtonBox::AcceptRole);
    form->addRow(buttons);
    // Only now do the buttons belong to a dialog that can have a default.
    buttons->button(QDialogButtonBox::Cancel)->setAutoDefault(false);
    m_make->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &NewCaseDialog::make);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    const std::initializer_list<QWidget*> order = {
        m_unit,  m_construction, m_width,   m_height, m_depth,     m_frame, m_member,
        m_shelf, m_banks,        m_drawers, m_fit,    m_fitAmount, m_make};
    for (auto at = order.begin(); at + 1 != order.end(); ++at)
        setTabOrder(*at, *(at + 1));
}

void NewCaseDialog::listen() {
    for (QComboBox* box : {m_unit, m_construction})
        connect(box, &QComboBox::currentIndexChanged, this, [this] { basisChanged(); });
    connect(m_fit, &QComboBox::currentIndexChanged, this, [this] { summarise(); });
    for (QSpinBox* box : {m_banks, m_drawers})
        connect(box, &QSpinBox::valueChanged, this, [this] { summarise(); });
    const auto decides = [this](LengthField* field, auto set) {
        field->keepRoomForEcho();
        connect(field, &LengthField::decided, this, [this, set](const WrittenLength& value) {
            set(value);
            summarise();
        });
    };
    decides(m_width, [this](WrittenLength v) { m_base.casework.width = *(m_own.width = v); });
    decides(m_height, [this](WrittenLength v) { m_base.casework.height = *(m_own.height = v); });
    decides(m_depth, [this](WrittenLength v) { m_base.casework.depth = *(m_own.depth = v); });
    decides(m_frame,
            [this](WrittenLength v) { m_base.casework.frame = PerSide<WrittenLength>::all(v); });
    decides(m_member, [this](WrittenLength v) { m_memberWidth = v; });
    decides(m_shelf, [this](WrittenLength v) { m_shelfThickness = v; });
    decides(m_fitAmount, [this](WrittenLength v) { m_amount = v; });
}

void NewCaseDialog::make() {
    // What can't be read is not passed over in silence: its reason stands beside it.
    for (LengthField* field : {m_width, m_height, m_depth, m_frame, m_member, m_shelf, m_fitAmount})
        if (!field->isUnderstood()) {
            field->lineEdit().setFocus(Qt::OtherFocusReason);
            return;
        }
    accept();
}

Construction NewCaseDialog::construction() const {
    return m_construction->currentIndex() == 0 ? Construction::FaceFrame : Construction::Frameless;
}

void NewCaseDialog::nameMembers() {
    const auto name = [this](LengthField* field, const QString& label, const QString& whole) {
        static_cast<QLabel*>(m_form->labelForField(field))->setText(label);
        field->lineEdit().setAccessibleName(whole);
    };
    switch (construction()) {
    case Construction::FaceFrame:
        name(m_frame, tr("&Frame: stiles and rails"), tr("Width of the frame's stiles and rails"));
        name(m_member, tr("M&embers between"), tr("Width of the members between"));
        break;
    case Construction::Frameless:
        name(m_frame, tr("&Panels: sides, bottom, top"), tr("Thickness of the outer panels"));
        name(m_member, tr("Divid&ers between banks"), tr("Thickness of the dividers"));
        break;
    }
    m_form->setRowVisible(m_shelf, construction() == Construction::Frameless);
}

void NewCaseDialog::basisChanged() {
    const bool inches = m_unit->currentIndex() == 0;
    m_base = newProject(inches ? Unit::Inch : Unit::Millimetre, construction());
    m_base.title = tr("New case").toStdString();
    m_base.casework.width = m_own.width.value_or(m_base.casework.width);
    m_base.casework.height = m_own.height.value_or(m_base.casework.height);
    m_base.casework.depth = m_own.depth.value_or(m_base.casework.depth);
    nameMembers();
    m_shelfThickness = {}; // nothing between drawers but the fronts' gap
    if (construction() == Construction::Frameless) {
        m_memberWidth = m_base.casework.frame.left;
        m_amount = m_base.fronts.fit.left.amount;
        m_fit->setCurrentIndex(1);
    } else {
        m_memberWidth = inches ? Length::inches(1, 16) : Length::millimetres(30);
        m_amount = inches ? Length::inches(0, 16) : Length::millimetres(6);
        m_fit->setCurrentIndex(0);
    }
    const LengthStyle style = m_base.style;
    m_width->setValue(m_base.casework.width, style);
    m_height->setValue(m_base.casework.height, style);
    m_depth->setValue(m_base.casework.depth, style);
    m_frame->setValue(m_base.casework.frame.left, style);
    m_member->setValue(m_memberWidth, style);
    m_shelf->setValue(m_shelfThickness, style);
    m_fitAmount->setValue(m_amount, style);
    summarise();
}

Result<Project> NewCaseDialog::divided(Project project) const {
    const int banks = m_banks->value();
    if (banks > 1) {
        auto columns = splitOpening(project, firstOpening(project.casework.divisions),
                                    Direction::Columns, banks, m_memberWidth);
        if (!columns.ok())
            return columns;
        project = std::move(columns).value();
    }
    if (m_drawers->value() < 2)
        return project;
    const auto layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    std::vector<OpeningId> openings;
    for (const PlacedOpening& opening : layout.value().openings)
        openings.push_back(opening.id);
    for (const OpeningId id : openings) {
        auto rows = splitOpening(project, id, Direction::Rows, m_drawers->value(),
                                 construction() == Construction::Frameless ? m_shelfThickness
                                                                           : m_memberWidth);
        if (!rows.ok())
            return rows;
        project = std::move(rows).value();
    }
    return project;
}

Result<Project> NewCaseDialog::project() const {
    Project project = m_base;
    const Fit fit = m_fit->currentIndex() == 0   ? Fit::Overlay
                    : m_fit->currentIndex() == 1 ? Fit::Gap
                                                 : Fit::Inset;
    project.fronts.fit = FrontFit::all({fit, m_amount});
    return divided(std::move(project));
}

void NewCaseDialog::summarise() {
    const auto made = project();
    m_make->setEnabled(made.ok());
    if (!made.ok()) {
        m_summary->setText(told(made.error().sentence()));
        return;
    }
    const auto layout = layOut(made.value().casework);
    if (!layout.ok() || layout.value().openings.empty())
        return;
    const CaseRect& rect = layout.value().openings.front().rect;
    const LengthStyle style = made.value().style;
    m_summary->setText(tr("Openings: %1. The first is %2 wide and %3 high.")
                           .arg(layout.value().openings.size())
                           .arg(QString::fromStdString(shown(rect.width(), style)),
                                QString::fromStdString(shown(rect.height(), style))));
}

} // namespace frontwright
