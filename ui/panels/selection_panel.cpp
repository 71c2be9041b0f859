#include "ui/panels/selection_panel.h"

#include "core/edits/divisions.h"
#include "ui/elevation/case_parts.h"
#include "ui/help/topics.h"
#include "ui/panels/forms.h"
#include "ui/panels/input_field.h"
#include "ui/panels/preset_row.h"

#include <QLabel>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

namespace {

PropertyForm* memberForm(Session& session) {
    auto* form = new PropertyForm(session, SelectionPanel::tr("Member"));
    const auto selected = [&session]() -> const MemberPlan* {
        const auto id = session.selection().member;
        return id ? session.plan().memberOf(*id) : nullptr;
    };
    form->add(PropertyForm::LengthRow{
        SelectionPanel::tr("Width"), SelectionPanel::tr("Set member width"),
        [selected](const Project&, EditTarget) -> std::optional<Length> {
            const MemberPlan* member = selected();
            if (!member)
                return std::nullopt;
            return isUpright(member->kind) ? member->rect.width() : member->rect.height();
        },
        [selected](const Project& p, EditTarget, WrittenLength v) {
            return setMemberWidth(p, selected()->id, v);
        }});
    return form;
}

} // namespace

SelectionPanel::SelectionPanel(Session& session, QWidget* parent)
    : QScrollArea(parent),
      m_session(session),
      m_heading(new QLabel) {
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setAccessibleName(tr("Properties of what is selected"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setSpacing(2);
    m_heading->setWordWrap(true);
    column->addWidget(m_heading);
    const auto add = [&](Subject subject, const char* name, const QString& title, FormMaker make,
                         std::optional<PresetKind> presets = {}) {
        addGroup(*column, subject, QString::fromLatin1(name), title, make, presets);
    };
    add(Subject::Member, "member", tr("Member"), memberForm);
    add(Subject::Opening, "opening", tr("Opening"), openingForm);
    add(Subject::Board, "board", tr("Pull-out board"), boardForm);
    add(Subject::Case, "case", tr("Case"), caseForm);
    add(Subject::Case, "surroundings", tr("Round the case"), surroundingsForm);
    add(Subject::Case, "system-holes", tr("System holes"), systemHolesForm);
    add(Subject::FrontOrCase, "fit", tr("Fit of the front"), fitForm);
    add(Subject::FrontOrCase, "stock", tr("Stock"), stockForm);
    add(Subject::FrontOrCase, "wood", tr("Wood"), woodForm);
    add(Subject::FrontOrCase, "profile", tr("Edge profile"), profileForm, PresetKind::Profile);
    add(Subject::DrawerOrCase, "box", tr("Drawer box"), boxForm, PresetKind::Box);
    add(Subject::ScrewedOrCase, "mounting", tr("Mounting screws"), mountingForm,
        PresetKind::Mounting);
    add(Subject::ScrewedOrCase, "hardware", tr("Handle"), hardwareForm, PresetKind::Hardware);
    add(Subject::ScrewedOrCase, "fittings", tr("Fittings"), fittingForm);
    add(Subject::Case, "document", tr("Document"), drawingForm);
    add(Subject::Case, "limits", tr("Limits"), limitsForm);
    column->addStretch();
    setWidget(page);
    setOpenFolds({QStringLiteral("member"), QStringLiteral("opening"), QStringLiteral("case"),
                  QStringLiteral("fit"), QStringLiteral("board")});
    connect(&session, &Session::selectionChanged, this, qOverload<>(&SelectionPanel::refresh));
    connect(&session, &Session::workChanged, this, qOverload<>(&SelectionPanel::refresh));
    connect(&session, &Session::styleChanged, this, qOverload<>(&SelectionPanel::refresh));
}

void SelectionPanel::addGroup(QLayout& column, Subject subject, const QString& name,
                              const QString& title, FormMaker make,
                              std::optional<PresetKind> presets) {
    auto* fold = new Fold(name, title, [this, make]() -> QWidget* {
        PropertyForm* form = make(m_session);
        form->hideTitle();
        return form;
    });
    setHelpTopic(*fold, QStringLiteral("decisions#") + name);
    const std::size_t index = m_groups.size();
    m_groups.push_back({subject, fold, presets});
    connect(fold, &Fold::made, this, [this, index] { refresh(m_groups[index]); });
    // While it was closed something else may have been selected.
    connect(fold, &Fold::toggled, this, [this, index] { refresh(m_groups[index]); });
    connect(fold, &Fold::toggled, this, &SelectionPanel::foldsChanged);
    column.addWidget(fold);
}

QStringList SelectionPanel::openFolds() const {
    QStringList names;
    for (const Group& group : m_groups)
        if (group.fold->isOpen())
            names << group.fold->name();
    return names;
}

void SelectionPanel::setOpenFolds(const QStringList& names) {
    for (const Group& group : m_groups) {
        const bool open = names.contains(group.fold->name());
        if (open == group.fold->isOpen())
            continue;
        open ? group.fold->open() : group.fold->close();
    }
    refresh();
}

PropertyForm* SelectionPanel::reveal(const QString& name) {
    const auto group = std::find_if(m_groups.begin(), m_groups.end(),
                                    [&](const Group& g) { return g.fold->name() == name; });
    if (group == m_groups.end() || !isWanted(group->subject))
        return nullptr;
    group->fold->open();
    group->fold->make();
    // The layout has to find the new fields' places first.
    QTimer::singleShot(0, group->fold, [this, fold = group->fold] {
        ensureWidgetVisible(fold->content(), 0, fold->fontMetrics().height());
    });
    return group->form();
}

QWidget* SelectionPanel::goTo(const InputField& where) {
    m_session.select(where.selection);
    PropertyForm* form = reveal(where.fold);
    QWidget* field = form ? form->field(where.label) : nullptr;
    if (!field)
        return nullptr;
    field->setFocus(Qt::ShortcutFocusReason);
    // The layout has to find the new fields' places first.
    QTimer::singleShot(0, field, [this, field] { ensureWidgetVisible(field); });
    return field;
}

std::vector<EditTarget> SelectionPanel::targetsOf(Subject subject) const {
    const Plan& plan = m_session.plan();
    const auto isMeant = [&](OpeningId id) {
        const FrontPlan* front = plan.frontOf(id);
        switch (subject) {
        case Subject::Member:
        case Subject::Case:
            return false;
        case Subject::Opening:
            return true;
        case Subject::FrontOrCase:
            return front != nullptr;
        case Subject::ScrewedOrCase:
            return front && front->isScrewedOn();
        case Subject::DrawerOrCase:
            return front && front->hasBox();
        case Subject::Board:
            break;
        }
        return plan.boardOf(id) != nullptr;
    };
    std::vector<EditTarget> targets;
    for (const OpeningId id : m_session.selection().openings)
        if (isMeant(id))
            targets.push_back({id});
    return targets;
}

bool SelectionPanel::isWanted(Subject subject) const {
    const Selection& selection = m_session.selection();
    const bool isWhole = selection.openings.empty() && !selection.member;
    switch (subject) {
    case Subject::Member:
        return selection.member.has_value();
    case Subject::Case:
        return isWhole;
    case Subject::FrontOrCase:
    case Subject::ScrewedOrCase:
    case Subject::DrawerOrCase:
        return isWhole || (!selection.member && !targetsOf(subject).empty());
    case Subject::Opening:
        return !selection.openings.empty();
    case Subject::Board:
        break;
    }
    return !selection.openings.empty() && targetsOf(subject).size() == selection.openings.size();
}

/// What is selected may have come to be for something else.
void SelectionPanel::showWanted() {
    for (const Group& group : m_groups) {
        const bool wanted = isWanted(group.subject);
        if (wanted)
            group.fold->make();
        group.fold->setVisible(wanted);
    }
}

/// A closed fold says where its values come from.
void SelectionPanel::summarise(const Group& group) {
    if (!group.presets || !isWanted(group.subject))
        return;
    std::vector<EditTarget> targets = targetsOf(group.subject);
    if (targets.empty())
        targets.push_back(EditTarget{});
    group.fold->setSummary(presetSummary(m_session.project(), targets, *group.presets));
}

void SelectionPanel::refresh(const Group& group) {
    summarise(group);
    PropertyForm* form = group.form();
    if (!form || !group.fold->isOpen() || !isWanted(group.subject))
        return;
    if (group.subject == Subject::Member || group.subject == Subject::Case)
        form->refresh();
    else
        form->setTargets(targetsOf(group.subject));
}

void SelectionPanel::refresh() {
    showWanted();
    const Selection& selection = m_session.selection();
    if (selection.openings.size() == 1) {
        m_heading->setText(tr("%1. What is changed here holds for it only.")
                               .arg(frontwright::nameOf(Selection::of(selection.openings.front()),
                                                        m_session.project(), m_session.plan())));
    } else if (!selection.openings.empty()) {
        m_heading->setText(tr("%1 openings. What is changed here holds for each of them.")
                               .arg(selection.openings.size()));
    } else if (selection.member) {
        m_heading->setText(tr("%1. Drag it, or nudge it with the arrow keys.")
                               .arg(frontwright::nameOf(Selection::of(*selection.member),
                                                        m_session.project(), m_session.plan())));
    } else {
        m_heading->setText(tr("The whole case. Click a front to change only that one."));
    }
    for (const Group& group : m_groups)
        refresh(group);
}

} // namespace frontwright
