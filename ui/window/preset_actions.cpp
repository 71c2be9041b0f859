#include "ui/window/preset_actions.h"

#include "ui/panels/preset_name_dialog.h"
#include "ui/window/action_list.h"

#include <QInputDialog>

#include <algorithm>
#include <array>
#include <utility>

namespace frontwright {

namespace {

QString wordsFor(PresetKind kind) {
    switch (kind) {
    case PresetKind::Hardware:
        return PresetActions::tr("Handle");
    case PresetKind::Profile:
        return PresetActions::tr("Edge profile");
    case PresetKind::Box:
        return PresetActions::tr("Drawer box");
    case PresetKind::Mounting:
        break;
    }
    return PresetActions::tr("Mounting screws");
}

} // namespace

PresetActions::PresetActions(Session& session, ActionList& list, QWidget& window)
    : QObject(&window),
      m_session(session),
      m_window(window) {
    list.addSeparator();
    list.add(
        tr("Use a pre&set…"), tr("Give the selected fronts, or the case, the values of a preset"),
        QKeySequence(Qt::Key_P),
        [this] {
            return std::ranges::any_of(allPresetKinds, [&](PresetKind kind) {
                return !presetNames(m_session.project().presets, kind).empty();
            });
        },
        [this] { use(); });
    list.add(
        tr("Kee&p as preset…"),
        tr("Keep the handle, profile, box or screws of the selected front, or of the case, under a "
           "name"),
        QKeySequence(Qt::SHIFT | Qt::Key_P),
        [this] { return m_session.selection().openings.size() <= 1; }, [this] { keep(); });
}

std::vector<EditTarget> PresetActions::targets() const {
    std::vector<EditTarget> targets;
    for (const OpeningId id : m_session.selection().openings)
        targets.push_back({id});
    if (targets.empty())
        targets.push_back({});
    return targets;
}

void PresetActions::use() {
    const Project& project = m_session.project();
    std::vector<std::pair<PresetKind, std::string>> presets;
    QStringList shown;
    for (const PresetKind kind : allPresetKinds)
        for (const std::string& name : presetNames(project.presets, kind)) {
            presets.emplace_back(kind, name);
            shown << tr("%1: %2", "kind: name of the preset")
                         .arg(wordsFor(kind), QString::fromStdString(name));
        }
    bool chosen = false;
    const QString item = QInputDialog::getItem(&m_window, tr("Use a preset"), tr("&Preset"), shown,
                                               0, false, &chosen);
    const auto index = shown.indexOf(item);
    if (!chosen || index < 0)
        return;
    const auto& [kind, name] = presets[static_cast<std::size_t>(index)];
    m_session.apply(tr("Use a preset"), usePreset(project, targets(), kind, name));
}

void PresetActions::keep() {
    const Project& project = m_session.project();
    QStringList shown;
    for (const PresetKind kind : allPresetKinds)
        shown << wordsFor(kind);
    bool chosen = false;
    const QString item = QInputDialog::getItem(&m_window, tr("Keep as preset"), tr("&What to keep"),
                                               shown, 0, false, &chosen);
    const auto index = shown.indexOf(item);
    if (!chosen || index < 0)
        return;
    const PresetKind kind = allPresetKinds[static_cast<std::size_t>(index)];
    const EditTarget target = targets().front();
    PresetNameDialog dialog(
        tr("Keep as preset"), {},
        [&](const std::string& name) -> std::optional<Error> {
            const auto kept = keepAsPreset(project, target, kind, name);
            return kept.ok() ? std::nullopt : std::optional(kept.error());
        },
        &m_window);
    if (dialog.exec() == QDialog::Accepted)
        m_session.apply(tr("Keep as preset"), keepAsPreset(project, target, kind, dialog.name()));
}

} // namespace frontwright
