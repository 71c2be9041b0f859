#pragma once

#include "core/edits/choices.h"
#include "ui/session/session.h"

#include <QWidget>

#include <functional>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace frontwright {

class FormRows;
class LengthField;
class PresetRow;

/// Properties of what is selected, one row each: reads from the session's project for every target
/// and shows the common value or "mixed"; a decision is made for all targets as one undo step.
class PropertyForm : public QWidget {
    Q_OBJECT
public:
    PropertyForm(Session&, const QString& title, QWidget* parent = nullptr);

    struct LengthRow {
        QString label;
        QString undoName;
        std::function<std::optional<Length>(const Project&, EditTarget)> get;
        std::function<Result<Project>(const Project&, EditTarget, WrittenLength)> set;
        /// Where set, the field may be emptied; `whenEmpty` says what then holds.
        std::function<Result<Project>(const Project&, EditTarget)> clear = {};
        QString whenEmpty = {};
        /// Where set, the row is there only while it holds.
        std::function<bool(const Project&)> isShown = {};
        /// Plays and the like, less than the fraction in which the case is shown.
        enum class To : std::uint8_t { CaseFraction, FinestFraction } shown = To::CaseFraction;
    };
    void add(LengthRow);

    struct ChoiceRow {
        QString label;
        QString undoName;
        std::function<QStringList(const Work&)> options;
        std::function<int(const Work&, EditTarget)> get; ///< index into options; −1 = none of them
        /// Options are those of the work that is shown; the rest is the project's.
        std::function<Result<Project>(const Work&, const Project&, EditTarget, int)> set;
        std::function<bool(const Project&)> isShown = {}; ///< as of a LengthRow
    };
    void add(ChoiceRow);

    /// Picks which of the first target's things the rows below show; changes nothing of the
    /// project.
    struct PickRow {
        QString label;
        std::function<QStringList(const Work&, EditTarget)> options;
        std::function<int(const Work&, EditTarget)> get; ///< index into options
        std::function<void(int)> pick;
    };
    void add(PickRow);

    struct TextRow {
        QString label;
        QString undoName;
        std::function<std::string(const Project&, EditTarget)> get;
        std::function<Result<Project>(const Project&, EditTarget, std::string)> set;
        QString example = {}; ///< stands in the empty field
        QString told = {};    ///< how it is written, as the field's tool tip
    };
    void add(TextRow);

    struct CheckRow {
        QString label;
        QString undoName;
        std::function<bool(const Project&, EditTarget)> get;
        std::function<Result<Project>(const Project&, EditTarget, bool)> set;
    };
    void add(CheckRow);

    /// First of all: where the values come from. Instead of setOwn.
    void addPresets(PresetKind);

    /// A front's form says whether it decides for itself, and offers to follow the case again.
    void setOwn(std::function<bool(const Project&, EditTarget)> isOwn,
                std::function<Result<Project>(const Project&, EditTarget)> follow);

    /// The last row shows this number of the front's, or decides it where it is left empty: its
    /// context menu tells how the number came about.
    void explains(QuantityKind kind);
    /// The field of that label; the first that takes the keyboard where the label is empty; nullptr
    /// where there is none.
    [[nodiscard]] QWidget* field(const QString& label) const;

    /// Where the title stands already above the form.
    void hideTitle();

    void setTargets(std::vector<EditTarget> targets);
    void refresh();

private:
    using Change = std::function<Result<Project>(const Project&, EditTarget)>;
    /// Makes `change` for every target as one step; the error of the first that failed.
    std::optional<Error> applyToAll(const QString& name, const Change& change);
    QComboBox* addChoice(const QString& label);
    /// The last row is there only while it holds.
    void showWhile(std::function<bool(const Project&)> isShown);
    void refreshOwn();
    void askWhy(QWidget& field, QuantityKind kind, QPoint globalPos);

    Session& m_session;
    QVBoxLayout* m_column;
    FormRows* m_rows;
    PresetRow* m_presets = nullptr; ///< where the form has one
    QLabel* m_title;
    QPushButton* m_follow;
    std::vector<EditTarget> m_targets{EditTarget{}};
    std::vector<std::function<void()>> m_refreshers;
    std::vector<std::function<void()>> m_discarders; ///< of what is typed for the former targets
    std::function<bool(const Project&, EditTarget)> m_isOwn;
    std::function<Result<Project>(const Project&, EditTarget)> m_followCase;
};

// For functions that make rows: a class's name before a function's would be taken, by what extracts
// the texts, for the context of those in it.
using LengthRow = PropertyForm::LengthRow;
using ChoiceRow = PropertyForm::ChoiceRow;
using TextRow = PropertyForm::TextRow;
using CheckRow = PropertyForm::CheckRow;

} // namespace frontwright
