#pragma once

#include "core/edits/presets.h"
#include "ui/session/session.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QMenu;
class QPushButton;
class QToolButton;

namespace frontwright {

/// Where what holds for the targets (at least one) comes from, in a few words: a preset's name,
/// with ≠ where they depart from it; empty where there is nothing to say.
QString presetSummary(const Project&, const std::vector<EditTarget>& targets, PresetKind);

/// Where the values of a form come from: the case's, a preset by name, or its own; for one front or
/// many. Where fronts depart from a preset or from the case it says so, and leads back in one
/// click.
class PresetRow : public QWidget {
    Q_OBJECT
public:
    PresetRow(Session&, PresetKind, QWidget* parent = nullptr);

    void show(std::vector<EditTarget> targets);

    [[nodiscard]] QComboBox& choice() { return *m_choice; }
    [[nodiscard]] QPushButton& back() { return *m_back; }
    [[nodiscard]] const QLabel& sign() const { return *m_sign; }

private:
    void fillChoice(const std::vector<PresetOrigin>& origins);
    void fillMenu(const std::vector<PresetOrigin>& origins);
    void showSign(const std::vector<PresetOrigin>& origins);
    void choose(int index);
    void keep();
    void goBack();
    void rename(const QString& name);
    [[nodiscard]] bool areFronts() const { return m_targets.front().opening.has_value(); }
    [[nodiscard]] std::vector<OpeningId> openings() const;
    [[nodiscard]] std::vector<OpeningId> openingsOfTheirOwn() const;

    Session& m_session;
    PresetKind m_kind;
    QComboBox* m_choice;
    QToolButton* m_more;
    QMenu* m_menu;
    QWidget* m_departure;
    QLabel* m_sign;
    QPushButton* m_back;
    bool m_backToCase = false; ///< what the button leads back to
    std::vector<EditTarget> m_targets{EditTarget{}};
};

} // namespace frontwright
