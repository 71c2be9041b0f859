#pragma once

#include "ui/panels/fold.h"
#include "ui/panels/property_form.h"

#include <QScrollArea>

namespace frontwright {

struct InputField;

/// What is selected, with every property to change: the case where nothing is, a member, one front
/// or several ("mixed"). Properties lie in folds; a fold's fields are made when it is opened.
class SelectionPanel : public QScrollArea {
    Q_OBJECT
public:
    explicit SelectionPanel(Session&, QWidget* parent = nullptr);

    /// Names of the folds that the maker keeps open: "case", "fit", "stock", …
    [[nodiscard]] QStringList openFolds() const;
    void setOpenFolds(const QStringList& names);
    /// Opens a fold where it may be seen at present, and scrolls there; its form, or nullptr.
    PropertyForm* reveal(const QString& fold);
    /// Selects what has the decision's field, and puts the keyboard there; the field, or nullptr.
    QWidget* goTo(const InputField&);

Q_SIGNALS:
    void foldsChanged();

private:
    /// For what a group of properties is shown.
    enum class Subject : std::uint8_t {
        Member,
        Case,
        Opening,
        FrontOrCase,
        ScrewedOrCase, ///< what a front has that is screwed on: a drawer's, a fixed one
        DrawerOrCase,  ///< what only a front with a box has
        Board
    };
    struct Group {
        Subject subject;
        Fold* fold;
        std::optional<PresetKind> presets; ///< of what its presets are, where it has any
        [[nodiscard]] PropertyForm* form() const {
            return qobject_cast<PropertyForm*>(fold->content());
        }
    };
    using FormMaker = PropertyForm* (*)(Session&);

    void addGroup(QLayout& column, Subject, const QString& name, const QString& title, FormMaker,
                  std::optional<PresetKind> = {});
    [[nodiscard]] bool isWanted(Subject) const;
    /// Those of the selected openings for which the group decides: a space has no stock.
    [[nodiscard]] std::vector<EditTarget> targetsOf(Subject) const;
    void showWanted();
    void refresh();
    void refresh(const Group&);
    void summarise(const Group&);

    Session& m_session;
    QLabel* m_heading;
    std::vector<Group> m_groups;
};

} // namespace frontwright
