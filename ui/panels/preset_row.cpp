#include "ui/panels/preset_row.h"

#include "ui/fields/choice_box.h"
#include "ui/panels/preset_name_dialog.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>

#include <algorithm>

namespace frontwright {

namespace {

/// What an entry of the choice stands for; a preset's has its name as well.
enum class Entry : std::uint8_t { TheCase, Preset, Own };
constexpr int entryRole = Qt::UserRole, nameRole = Qt::UserRole + 1;

void addEntry(QComboBox& box, const QString& text, Entry entry, const QString& name = {}) {
    box.addItem(text);
    box.setItemData(box.count() - 1, static_cast<int>(entry), entryRole);
    box.setItemData(box.count() - 1, name, nameRole);
}

int entryOf(const QComboBox& box, const PresetOrigin& origin) {
    const bool follows = origin.origin == Origin::Preset;
    const Entry wanted = follows                            ? Entry::Preset
                         : origin.origin == Origin::TheCase ? Entry::TheCase
                                                            : Entry::Own;
    const QString name = follows ? QString::fromStdString(origin.preset) : QString();
    for (int i = 0; i < box.count(); ++i)
        if (box.itemData(i, entryRole).toInt() == static_cast<int>(wanted) &&
            box.itemData(i, nameRole).toString() == name)
            return i;
    return -1;
}

} // namespace

QString presetSummary(const Project& project, const std::vector<EditTarget>& targets,
                      PresetKind kind) {
    const PresetOrigin first = originOf(project, targets.front(), kind);
    for (const EditTarget& target : targets)
        if (originOf(project, target, kind) != first)
            return PresetRow::tr("mixed");
    const QString name = QString::fromStdString(first.preset);
    switch (first.origin) {
    case Origin::TheCase:
        break;
    case Origin::Preset:
        return name;
    case Origin::Departs:
        return PresetRow::tr("≠ “%1”").arg(name);
    case Origin::Own:
        return targets.front().opening ? PresetRow::tr("≠ its own") : QString();
    }
    return {};
}

PresetRow::PresetRow(Session& session, PresetKind kind, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_kind(kind),
      m_choice(new ChoiceBox(tr("Follows"))),
      m_more(new QToolButton),
      m_menu(new QMenu(m_more)),
      m_departure(new QWidget),
      m_sign(new QLabel),
      m_back(new QPushButton) {
    m_more->setText(tr("Preset"));
    m_more->setToolTip(tr("Keep these values under a name, or change a preset"));
    m_more->setFocusPolicy(Qt::StrongFocus);
    m_more->setPopupMode(QToolButton::InstantPopup);
    m_more->setMenu(m_menu);
    auto* line = new QHBoxLayout;
    line->addWidget(m_choice, 1);
    line->addWidget(m_more);
    m_sign->setWordWrap(true);
    m_back->setAutoDefault(false);
    auto* departure = new QVBoxLayout(m_departure);
    departure->setContentsMargins(0, 0, 0, 0);
    departure->addWidget(m_sign);
    departure->addWidget(m_back, 0, Qt::AlignLeft);
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->addRow(tr("Follows"), line);
    form->addRow(m_departure);
    connect(m_choice, &QComboBox::activated, this, &PresetRow::choose);
    connect(m_back, &QPushButton::clicked, this, &PresetRow::goBack);
}

std::vector<OpeningId> PresetRow::openings() const {
    std::vector<OpeningId> ids;
    for (const EditTarget& target : m_targets)
        if (target.opening)
            ids.push_back(*target.opening);
    return ids;
}

/// Those that follow a preset override nothing.
std::vector<OpeningId> PresetRow::openingsOfTheirOwn() const {
    std::vector<OpeningId> ids = openings();
    std::erase_if(ids, [this](OpeningId id) {
        return originOf(m_session.project(), {id}, m_kind).origin != Origin::Own;
    });
    return ids;
}

void PresetRow::show(std::vector<EditTarget> targets) {
    m_targets = targets.empty() ? std::vector<EditTarget>{EditTarget{}} : std::move(targets);
    std::vector<PresetOrigin> origins;
    for (const EditTarget& target : m_targets)
        origins.push_back(originOf(m_session.project(), target, m_kind));
    fillChoice(origins);
    fillMenu(origins);
    showSign(origins);
}

void PresetRow::fillChoice(const std::vector<PresetOrigin>& origins) {
    const QSignalBlocker quiet(m_choice);
    const Project& project = m_session.project();
    m_choice->clear();
    if (areFronts()) {
        const PresetOrigin ofCase = originOf(project, EditTarget{}, m_kind);
        addEntry(*m_choice,
                 ofCase.origin == Origin::Preset
                     ? tr("The case’s (%1)").arg(QString::fromStdString(ofCase.preset))
                     : tr("The case’s"),
                 Entry::TheCase);
    }
    for (const std::string& name : presetNames(project.presets, m_kind))
        addEntry(*m_choice, QString::fromStdString(name), Entry::Preset,
                 QString::fromStdString(name));
    addEntry(*m_choice, tr("Its own"), Entry::Own);
    const int first = entryOf(*m_choice, origins.front());
    const bool mixed = std::ranges::any_of(
        origins, [&](const PresetOrigin& origin) { return entryOf(*m_choice, origin) != first; });
    m_choice->setPlaceholderText(mixed ? tr("mixed") : QString());
    m_choice->setCurrentIndex(mixed ? -1 : first);
}

void PresetRow::fillMenu(const std::vector<PresetOrigin>& origins) {
    m_menu->clear();
    const PresetOrigin& first = origins.front();
    const bool ofOnePreset = std::ranges::all_of(
        origins, [&](const PresetOrigin& origin) { return origin.preset == first.preset; });
    const bool same = holdTheSame(m_session.project(), m_targets, m_kind);
    const QString name = QString::fromStdString(first.preset);
    const auto add = [this](const QString& text, auto run) {
        connect(m_menu->addAction(text), &QAction::triggered, this, run);
    };
    if (same)
        add(tr("&Keep as preset…"), [this] { keep(); });
    if (ofOnePreset && same && first.origin == Origin::Departs)
        add(tr("&Change “%1” to this, for all that follow").arg(name), [this] {
            m_session.apply(tr("Change a preset"),
                            changePresetTo(m_session.project(), m_targets.front(), m_kind));
        });
    if (ofOnePreset && !name.isEmpty()) {
        add(tr("Re&name “%1”…").arg(name), [this, name] { rename(name); });
        add(tr("&Remove “%1”; its users keep their values").arg(name), [this, name] {
            m_session.apply(tr("Remove a preset"),
                            removePreset(m_session.project(), m_kind, name.toStdString()));
        });
    }
    m_more->setEnabled(!m_menu->isEmpty());
}

void PresetRow::showSign(const std::vector<PresetOrigin>& origins) {
    const auto departing = std::ranges::count(origins, Origin::Departs, &PresetOrigin::origin);
    const auto own = std::ranges::count(origins, Origin::Own, &PresetOrigin::origin);
    const auto all = static_cast<qsizetype>(origins.size());
    const auto first = std::ranges::find(origins, Origin::Departs, &PresetOrigin::origin);
    const bool ofOne = std::ranges::all_of(origins, [&](const PresetOrigin& origin) {
        return origin.origin != Origin::Departs || origin.preset == first->preset;
    });
    m_departure->setVisible(departing > 0 || (own > 0 && areFronts()));
    m_backToCase = departing == 0;
    if (departing > 0) {
        const QString name = QString::fromStdString(first->preset);
        m_sign->setText(
            all == 1 ? tr("≠ Departs from “%1”").arg(name)
            : ofOne ? tr("≠ %1 of %2 fronts depart from “%3”").arg(departing).arg(all).arg(name)
                    : tr("≠ %1 of %2 fronts depart from their presets").arg(departing).arg(all));
        m_back->setText(ofOne ? tr("Back to “%1”").arg(name) : tr("Back to their presets"));
    } else {
        m_sign->setText(all == 1 ? tr("≠ Its own, not the case’s")
                                 : tr("≠ %1 of %2 fronts have their own").arg(own).arg(all));
        m_back->setText(tr("Back to the case’s"));
    }
    m_back->setAccessibleDescription(m_sign->text());
}

void PresetRow::choose(int index) {
    const Project& project = m_session.project();
    switch (static_cast<Entry>(m_choice->itemData(index, entryRole).toInt())) {
    case Entry::TheCase:
        m_session.apply(tr("Follow the case"), followCase(project, openings(), m_kind));
        break;
    case Entry::Preset:
        m_session.apply(tr("Follow a preset"),
                        usePreset(project, m_targets, m_kind,
                                  m_choice->itemData(index, nameRole).toString().toStdString()));
        break;
    case Entry::Own:
        m_session.apply(tr("Make its own"), makeOwn(project, m_targets, m_kind));
        break;
    }
    show(m_targets);
}

void PresetRow::keep() {
    const Project& project = m_session.project();
    PresetNameDialog dialog(
        tr("Keep as preset"), {},
        [&](const std::string& name) -> std::optional<Error> {
            const auto kept = keepAsPreset(project, m_targets.front(), m_kind, name);
            return kept.ok() ? std::nullopt : std::optional(kept.error());
        },
        this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    auto kept = keepAsPreset(project, m_targets.front(), m_kind, dialog.name());
    if (kept.ok())
        kept = usePreset(kept.value(), m_targets, m_kind, dialog.name());
    m_session.apply(tr("Keep as preset"), kept);
}

void PresetRow::rename(const QString& name) {
    const Project& project = m_session.project();
    const std::string before = name.toStdString();
    PresetNameDialog dialog(
        tr("Rename the preset"), name,
        [&](const std::string& wanted) -> std::optional<Error> {
            const auto renamed = renamePreset(project, m_kind, before, wanted);
            return renamed.ok() ? std::nullopt : std::optional(renamed.error());
        },
        this);
    if (dialog.exec() == QDialog::Accepted)
        m_session.apply(tr("Rename a preset"),
                        renamePreset(project, m_kind, before, dialog.name()));
}

void PresetRow::goBack() {
    if (m_backToCase)
        m_session.apply(tr("Follow the case"),
                        followCase(m_session.project(), openingsOfTheirOwn(), m_kind));
    else
        m_session.apply(tr("Back to the preset"),
                        backToPreset(m_session.project(), m_targets, m_kind));
}

} // namespace frontwright
