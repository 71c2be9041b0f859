#pragma once

#include "core/findings/finding.h"
#include "core/plan/plan.h"
#include "core/plan/quantity.h"
#include "ui/session/selection.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <memory>

namespace frontwright {

/// A Project with all that follows from it. Never changes once made; the Plan points into the
/// Project beside it.
struct Work {
    Project project;
    std::shared_ptr<const Catalogue> catalogue; ///< the program's and the document's entries
    Plan plan;
    std::vector<Finding> findings;
};

/// Error: the project cannot be planned. `previous` may be null; its catalogue is shared where the
/// document's own entries are the same.
Result<std::shared_ptr<const Work>> workOut(Project, const Catalogue& programs,
                                            const Work* previous = nullptr);

/// Whether edits of the same kind that follow one another quickly become one undo step.
enum class Merge : std::uint8_t { Never, Quick };

/// The open case: the one place where the window's parts meet. Holds the Work, the undo stack, the
/// selection and how lengths are shown; computes nothing itself. Views listen and call apply().
class Session : public QObject {
    Q_OBJECT
public:
    explicit Session(Catalogue programs, QObject* parent = nullptr);

    [[nodiscard]] const Work& work() const { return *m_work; }
    [[nodiscard]] std::shared_ptr<const Work> sharedWork() const { return m_work; }
    [[nodiscard]] const Project& project() const { return m_work->project; }
    [[nodiscard]] const Plan& plan() const { return m_work->plan; }
    [[nodiscard]] const Catalogue& programsCatalogue() const { return m_programs; }

    /// Replaces the case, e.g. by an opened document: clears undo and selection.
    /// Error: it cannot be planned; then nothing has changed.
    std::optional<Error> start(Project project);

    /// Makes an edit one undo step called `name` (imperative: "Widen rail"). An edit that changes
    /// nothing is dropped; one that failed is reported by refused(). True where it was made.
    bool apply(const QString& name, const Result<Project>& edited, Merge merge = Merge::Never);

    /// The same, but an edit that failed is told to the caller alone, who shows it in its place.
    std::optional<Error> attempt(const QString& name, const Result<Project>& edited);

    // A gesture in progress: every view shows the previewed project, nothing is recorded.
    /// Shows `edited` until the next preview, commit or cancel. Emits refused() on an error.
    bool preview(const Result<Project>& edited);
    /// Records what is previewed as one step; nothing where it equals the start.
    void commitPreview(const QString& name, Merge merge = Merge::Never);
    /// Back to the very project from before the gesture.
    void cancelPreview();
    [[nodiscard]] bool isPreviewing() const { return m_beforePreview != nullptr; }
    /// The project from before the gesture; the present one where there is no gesture.
    [[nodiscard]] const Work& settled() const {
        return m_beforePreview ? *m_beforePreview : *m_work;
    }

    [[nodiscard]] const Selection& selection() const { return m_selection; }
    void select(Selection selection);

    /// How lengths are shown and what bare numbers mean; a view setting, not part of the document.
    [[nodiscard]] LengthStyle style() const { return m_style; }
    void setStyle(LengthStyle style);

    [[nodiscard]] QUndoStack& undoStack() { return m_undo; }

Q_SIGNALS:
    void started(); ///< another case is open
    void workChanged();
    void selectionChanged();
    void styleChanged();
    void refused(const frontwright::Error& error);
    /// Somebody asks how a number came about, or where a decision is made; whoever shows that
    /// listens. `about` is the number that the decision was found through.
    void numberAsked(frontwright::Quantity quantity);
    void inputAsked(frontwright::InputPlace place, std::optional<frontwright::Quantity> about);

private:
    friend class EditCommand;
    std::optional<Error> showEdited(const Result<Project>& edited);
    void show(std::shared_ptr<const Work> work);
    /// Undo and redo: ends a gesture in progress, which began from other work.
    void jumpTo(std::shared_ptr<const Work> work);
    void dropLostSelection();

    Catalogue m_programs;
    std::shared_ptr<const Work> m_work;
    std::shared_ptr<const Work> m_beforePreview;
    Selection m_selection;
    LengthStyle m_style;
    QUndoStack m_undo;
};

} // namespace frontwright
