#include "ui/session/session.h"

#include "ui/language/told.h"
#include "ui/session/edit_command.h"

#include <algorithm>

namespace frontwright {

namespace {

LengthStyle inWindow(LengthStyle style) {
    style.mark = spokenLanguage().decimalMark();
    return style;
}

} // namespace

bool Selection::contains(OpeningId id) const {
    return std::find(openings.begin(), openings.end(), id) != openings.end();
}

Result<std::shared_ptr<const Work>> workOut(Project project, const Catalogue& programs,
                                            const Work* previous) {
    auto work = std::make_shared<Work>();
    work->project = std::move(project);
    work->catalogue = previous && previous->project.own == work->project.own
                          ? previous->catalogue
                          : std::make_shared<Catalogue>(merged(programs, work->project.own));
    auto plan = makePlan(work->project, *work->catalogue);
    if (!plan.ok())
        return plan.error();
    work->plan = std::move(plan).value();
    work->findings = judge(work->project, work->plan);
    return std::shared_ptr<const Work>(std::move(work));
}

Session::Session(Catalogue programs, QObject* parent)
    : QObject(parent),
      m_programs(std::move(programs)) {
    const auto failed = start(newProject(Unit::Inch));
    Q_ASSERT(!failed);
}

std::optional<Error> Session::start(Project project) {
    auto work = workOut(std::move(project), m_programs);
    if (!work.ok())
        return work.error();
    m_beforePreview.reset();
    m_undo.clear();
    m_selection = {};
    m_style = inWindow(work.value()->project.style);
    show(std::move(work).value());
    Q_EMIT styleChanged();
    Q_EMIT selectionChanged();
    Q_EMIT started();
    return std::nullopt;
}

bool Session::apply(const QString& name, const Result<Project>& edited, Merge merge) {
    cancelPreview();
    if (!preview(edited))
        return false;
    commitPreview(name, merge);
    return true;
}

std::optional<Error> Session::attempt(const QString& name, const Result<Project>& edited) {
    cancelPreview();
    if (auto failed = showEdited(edited))
        return failed;
    commitPreview(name);
    return std::nullopt;
}

bool Session::preview(const Result<Project>& edited) {
    const auto failed = showEdited(edited);
    if (failed)
        Q_EMIT refused(*failed);
    return !failed;
}

std::optional<Error> Session::showEdited(const Result<Project>& edited) {
    if (!edited.ok())
        return edited.error();
    auto work = workOut(edited.value(), m_programs, m_work.get());
    if (!work.ok())
        return work.error();
    if (!m_beforePreview)
        m_beforePreview = m_work;
    show(std::move(work).value());
    return std::nullopt;
}

void Session::commitPreview(const QString& name, Merge merge) {
    if (!m_beforePreview)
        return;
    const auto before = std::exchange(m_beforePreview, nullptr);
    if (before->project == m_work->project) {
        show(before);
        return;
    }
    m_undo.push(new EditCommand(*this, name, before, m_work, merge));
}

void Session::cancelPreview() {
    if (m_beforePreview)
        show(std::exchange(m_beforePreview, nullptr));
}

void Session::select(Selection selection) {
    if (selection == m_selection)
        return;
    m_selection = std::move(selection);
    Q_EMIT selectionChanged();
}

void Session::setStyle(LengthStyle style) {
    style = inWindow(style);
    if (style == m_style)
        return;
    m_style = style;
    Q_EMIT styleChanged();
}

void Session::show(std::shared_ptr<const Work> work) {
    if (work == m_work)
        return;
    m_work = std::move(work);
    dropLostSelection();
    Q_EMIT workChanged();
}

void Session::jumpTo(std::shared_ptr<const Work> work) {
    m_beforePreview.reset();
    show(std::move(work));
}

void Session::dropLostSelection() {
    Selection kept = m_selection;
    std::erase_if(kept.openings, [&plan = m_work->plan](OpeningId id) {
        return plan.frontOf(id) == nullptr && plan.spaceOf(id) == nullptr;
    });
    if (kept.member && !m_work->plan.memberOf(*kept.member))
        kept.member.reset();
    if (kept.openings.empty()) {
        kept.mountingHole.reset();
        kept.handleHole.reset();
    }
    select(std::move(kept));
}

} // namespace frontwright
