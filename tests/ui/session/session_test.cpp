// The open case: edits, previews, undo and the view's units.

#include "ui/session/session.h"

#include "core/documents/document.h"
#include "core/edits/divisions.h"
#include "ui/files/built_in_catalogue.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

class OpenSession : public ::testing::Test {
protected:
    OpenSession() : session(builtInCatalogue()) {
        QObject::connect(&session, &Session::refused, &session,
                         [this](const Error& error) { refusals.push_back(error); });
    }
    Result<Project> wide(std::int64_t inches) {
        return setCaseSize(session.project(), Length::inches(inches),
                           session.project().casework.height);
    }
    std::string bytes() { return writeDocument(session.project()); }

    Session session;
    std::vector<Error> refusals;
};

TEST_F(OpenSession, MakesAnEditOneNamedStep) {
    const std::string before = bytes();
    EXPECT_TRUE(session.apply(QStringLiteral("Widen case"), wide(40)));
    EXPECT_EQ(session.plan().outline.width(), Length::inches(40));
    EXPECT_EQ(session.undoStack().count(), 1);
    EXPECT_EQ(session.undoStack().undoText().toStdString(), "Widen case");
    session.undoStack().undo();
    EXPECT_EQ(bytes(), before);
}

TEST_F(OpenSession, DropsAnEditThatChangesNothing) {
    session.apply(QStringLiteral("Widen case"), wide(40));
    const auto shown = session.sharedWork();
    session.apply(QStringLiteral("Widen case"), wide(40));
    EXPECT_EQ(session.undoStack().count(), 1);
    EXPECT_EQ(session.sharedWork(), shown);
    session.apply(QStringLiteral("Nothing"), session.project());
    EXPECT_EQ(session.undoStack().count(), 1);
    EXPECT_TRUE(refusals.empty());
}

TEST_F(OpenSession, ReportsAnEditThatFailedAndKeepsTheCase) {
    const std::string before = bytes();
    EXPECT_FALSE(session.apply(QStringLiteral("Narrow case"), wide(1)));
    EXPECT_EQ(refusals.size(), 1U);
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session.undoStack().count(), 0);
}

TEST_F(OpenSession, RefusesACaseWhoseScrewIsInNoCatalogue) {
    Project project = session.project();
    project.fronts.mounting.screw = "no-such-screw";
    EXPECT_FALSE(session.apply(QStringLiteral("Choose screw"), project));
    EXPECT_EQ(refusals.size(), 1U);
    EXPECT_TRUE(session.start(project).has_value());
}

TEST_F(OpenSession, PreviewsWithoutRecordingAndGoesBackToTheVeryWork) {
    const auto before = session.sharedWork();
    session.preview(wide(40));
    session.preview(wide(41));
    EXPECT_TRUE(session.isPreviewing());
    EXPECT_EQ(&session.settled(), before.get());
    session.cancelPreview();
    EXPECT_EQ(session.sharedWork(), before);
    EXPECT_EQ(session.undoStack().count(), 0);
}

TEST_F(OpenSession, CommitsAPreviewAsOneStepFromWhereItBegan) {
    const std::string before = bytes();
    for (const int width : {38, 39, 40})
        session.preview(wide(width));
    session.commitPreview(QStringLiteral("Widen case"));
    EXPECT_EQ(session.undoStack().count(), 1);
    session.undoStack().undo();
    EXPECT_EQ(bytes(), before);
}

TEST_F(OpenSession, MergesQuickEditsOfOneNameOnly) {
    session.apply(QStringLiteral("Nudge"), wide(40), Merge::Quick);
    session.apply(QStringLiteral("Nudge"), wide(41), Merge::Quick);
    EXPECT_EQ(session.undoStack().count(), 1);
    session.apply(QStringLiteral("Push"), wide(42), Merge::Quick);
    EXPECT_EQ(session.undoStack().count(), 2);
    session.apply(QStringLiteral("Push"), wide(43));
    EXPECT_EQ(session.undoStack().count(), 3);
}

TEST_F(OpenSession, UndoDuringAGestureEndsTheGesture) {
    const std::string before = bytes();
    session.apply(QStringLiteral("Widen case"), wide(40));
    session.preview(wide(44));
    session.undoStack().undo();
    EXPECT_FALSE(session.isPreviewing());
    EXPECT_EQ(bytes(), before);
    session.commitPreview(QStringLiteral("Move stile"));
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session.undoStack().count(), 1);
    EXPECT_EQ(session.undoStack().index(), 0);
}

TEST_F(OpenSession, LeavesTheDocumentAloneWhenUnitsAreSwitchedAThousandTimes) {
    session.apply(QStringLiteral("Odd width"),
                  setCaseSize(session.project(), Length::inches(40, 21), Length::inches(36, 1)));
    const std::string before = bytes();
    const int steps = session.undoStack().count();
    const LengthStyle style = session.style();
    QSignalSpy switched(&session, &Session::styleChanged);
    for (int i = 0; i < 500; ++i) {
        session.setStyle({Unit::Millimetre, 16});
        session.setStyle(style);
    }
    EXPECT_EQ(switched.count(), 1000);
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session.undoStack().count(), steps);
}

TEST_F(OpenSession, LetsGoOfASelectionThatIsNoMore) {
    session.apply(QStringLiteral("Split"), splitOpening(session.project(), OpeningId{firstFreeId},
                                                        Direction::Rows, 2, Length::inches(1)));
    const OpeningId second = session.plan().fronts[1].opening;
    session.select(Selection::of(second));
    session.undoStack().undo();
    EXPECT_TRUE(session.selection().isEmpty());
}

TEST_F(OpenSession, StartedAnewHasNoStepsAndNoSelection) {
    session.apply(QStringLiteral("Widen case"), wide(40));
    session.select(Selection::of(leftStile));
    EXPECT_EQ(session.start(newProject(Unit::Millimetre)), std::nullopt);
    EXPECT_EQ(session.undoStack().count(), 0);
    EXPECT_TRUE(session.selection().isEmpty());
    EXPECT_EQ(session.style().unit, Unit::Millimetre);
}

} // namespace
} // namespace frontwright::testing
