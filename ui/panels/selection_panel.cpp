#include "ui/panels/selection_panel.h"

#include "core/edits/divisions.h"
#include "ui/panels/forms.h"

#include <QLabel>
#include <QVBoxLayout>

namespace frontwright {

namespace {

PropertyForm* memberForm(Session& session) {
    auto* form = new PropertyForm(session, SelectionPanel::tr("Member"));
    const auto selected = [&session]() -> const MemberPlan* {
        const auto id = session.selection().member;
        return id ? session.plan().memberOf(*id) : nullptr;
    };
    form->add(
        PropertyForm::LengthRow{SelectionPanel::tr("Width"), SelectionPanel::tr("Set member width"),
                                [selected](const Project&, EditTarget) -> std::optional<Length> {
                                    const MemberPlan* member = selected();
                                    if (!member)
                                        return std::nullopt;
                                    const bool upright = member->kind == MemberKind::Stile ||
                                                         member->kind == MemberKind::OuterStile;
                                    return upright ? member->rect.width() : member->rect.height();
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
      m_heading(new QLabel),
      m_forMember{memberForm(session)},
      m_forCase{caseForm(session), drawingForm(session), limitsForm(session)},
      m_forFront{openingForm(session)},
      m_forBoth{fitForm(session), stockForm(session),    profileForm(session),
                boxForm(session), mountingForm(session), hardwareForm(session)} {
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setAccessibleName(tr("Properties of what is selected"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    m_heading->setWordWrap(true);
    column->addWidget(m_heading);
    for (PropertyForm* form : m_forMember)
        column->addWidget(form);
    for (PropertyForm* form : m_forFront)
        column->addWidget(form);
    column->addWidget(m_forCase[0]);
    for (PropertyForm* form : m_forBoth)
        column->addWidget(form);
    column->addWidget(m_forCase[1]);
    column->addWidget(m_forCase[2]);
    column->addStretch();
    setWidget(page);
    connect(&session, &Session::selectionChanged, this, [this] { show(m_session.selection()); });
    connect(&session, &Session::workChanged, this, &SelectionPanel::refresh);
    connect(&session, &Session::styleChanged, this, &SelectionPanel::refresh);
    show(session.selection());
}

void SelectionPanel::show(const Selection& selection) {
    std::vector<EditTarget> targets;
    for (const OpeningId id : selection.openings)
        targets.push_back({id});
    const bool front = !targets.empty();
    const bool member = selection.member.has_value();
    for (PropertyForm* form : m_forMember)
        form->setVisible(member);
    for (PropertyForm* form : m_forCase)
        form->setVisible(!front && !member);
    for (PropertyForm* form : m_forFront) {
        form->setVisible(front);
        form->setTargets(targets);
    }
    for (PropertyForm* form : m_forBoth) {
        form->setVisible(!member);
        form->setTargets(targets);
    }
    refresh();
}

void SelectionPanel::refresh() {
    const Selection& selection = m_session.selection();
    if (selection.openings.size() == 1) {
        const FrontPlan* front = m_session.plan().frontOf(selection.openings.front());
        m_heading->setText(tr("Front %1. What is changed here holds for this front only.")
                               .arg(QString::fromStdString(label(m_session.project(), *front))));
    } else if (!selection.openings.empty()) {
        m_heading->setText(tr("%1 fronts. What is changed here holds for each of them.")
                               .arg(selection.openings.size()));
    } else if (selection.member) {
        m_heading->setText(tr("A member of the frame. Drag it, or nudge it with the arrow keys."));
    } else {
        m_heading->setText(tr("The whole case. Click a front to change only that one."));
    }
    for (const auto* group : {&m_forMember, &m_forCase, &m_forFront, &m_forBoth})
        for (PropertyForm* form : *group)
            if (!form->isHidden())
                form->refresh();
}

} // namespace frontwright
