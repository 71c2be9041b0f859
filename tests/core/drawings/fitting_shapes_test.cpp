// Fittings are drawn as what they are: in the elevation, in both sections, in the look.
#include "core/drawings/fitting_shapes.h"

#include "core/drawings/elevation.h"
#include "core/drawings/rendering.h"
#include "core/drawings/section.h"
#include "tests/core/drawings/drawn.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace frontwright {
namespace {

using testing::Planned;

/// A front 13 1/2 in × 6 1/2 in × 3/4 in with a lock, and a label 1 1/2 in above its lower edge.
Project withLockAndLabel() {
    Project project = testing::bank(1);
    project.fronts.hardware.form.clear();
    project.fronts.hardware.fittings.emplace_back().form = "lock";
    FittingSpec& label = project.fronts.hardware.fittings.emplace_back();
    label.form = "label-holder";
    label.upright = FittingUpright::FromBottom;
    label.fromEdge = Length::inches(1, 32);
    return project;
}

FittingPlan fittingOfKind(FittingKind kind, FrontFace face) {
    static const Planned planned(withLockAndLabel());
    static std::vector<FittingForm> forms;
    forms.reserve(32);
    FittingForm form = *planned.catalogue.fittingForm("label-holder");
    form.kind = kind;
    form.bearsOn = face;
    forms.push_back(form);
    FittingPlan plan = (*planned.front(0).fittings)[1];
    plan.form = &forms.back();
    return plan;
}

BoxMm drawnBox(const FittingPlan& fitting) {
    Sketch sketch(1);
    drawFitting(sketch, fitting, {0, 0}, {});
    return sketch.finished(0).extent;
}

TEST(FittingShapes, OfTheShowFaceFillTheirPlate) {
    for (const FittingKind kind : {FittingKind::CupPull, FittingKind::RingPull,
                                   FittingKind::LabelHolder, FittingKind::EdgePull}) {
        const FittingPlan fitting = fittingOfKind(kind, FrontFace::Show);
        const BoxMm box = drawnBox(fitting), plate = toMm(fitting.footprint);
        EXPECT_NEAR(box.sizes().x(), plate.sizes().x(), 0.5) << static_cast<int>(kind);
        EXPECT_NEAR(box.sizes().y(), plate.sizes().y(), 0.5) << static_cast<int>(kind);
    }
}

TEST(TheNotesOfASection, TellEachKindOfFittingOnce) {
    Project project = withLockAndLabel();
    std::vector<FittingSpec>& fittings = project.fronts.hardware.fittings;
    const FittingSpec lock = fittings[0];
    fittings.push_back(lock); // lock, label holder, lock
    const Planned planned(std::move(project));
    const Drawing section = frontSection(planned.project, planned.plan, 0, {});
    int told = 0;
    for (const Mark& mark : section.marks)
        if (const auto* text = std::get_if<TextMark>(&mark.shape))
            told += text->text.find("Half-mortise lock") != std::string::npos ? 1 : 0;
    EXPECT_EQ(told, 1);
}

TEST(FittingShapes, OfALockIsItsKeyHoleAlone) {
    const Planned planned(withLockAndLabel());
    const FittingPlan& lock = planned.front(0).fittings->front();
    const BoxMm box = drawnBox(lock);
    // 5/16 in across, round the key's pin
    EXPECT_NEAR(box.sizes().x(), 7.9375, 0.1);
    EXPECT_NEAR(box.center().x(), lock.centre.x.inMillimetres(), 1e-6);
    EXPECT_TRUE(
        toMm(FrontRect::atOrigin(planned.front(0).rect.width(), planned.front(0).rect.height()))
            .contains(box));
}

TEST(FittingShapes, LeaveSmallDetailsOutWhereTheyWouldRunTogether) {
    const FittingPlan label = fittingOfKind(FittingKind::LabelHolder, FrontFace::Show);
    Sketch large(1), small(0.02);
    drawFitting(large, label, {0, 0}, {});
    drawFitting(small, label, {0, 0}, {});
    EXPECT_GT(large.marks().size(), small.marks().size());
    EXPECT_EQ(small.marks().size(), 1U); // its outline
}

std::size_t marksNamed(const Drawing& drawing, std::string_view name) {
    return static_cast<std::size_t>(std::ranges::count_if(
        drawing.marks, [&](const Mark& mark) { return mark.part.name.starts_with(name); }));
}

TEST(Elevation, ShowsFittingsAndWhereItIsAskedForTheirCuts) {
    const Planned planned(withLockAndLabel());
    ElevationOptions options;
    options.paperScale = 0.5;
    options.holes = Shown::No;
    const Drawing plain = elevation(planned.project, planned.plan, options);
    EXPECT_GT(marksNamed(plain, "fitting 1"), 0U);
    EXPECT_GT(marksNamed(plain, "fitting 2"), 0U);
    EXPECT_EQ(marksNamed(plain, "cuts of fitting"), 0U);
    options.holes = Shown::Yes;
    // two mortises in the back, the key-hole and two screws
    EXPECT_EQ(marksNamed(elevation(planned.project, planned.plan, options), "cuts of fitting 1"),
              5U);
}

TEST(Section, ShowsWhatIsLetInForALock) {
    const Planned planned(withLockAndLabel());
    SectionOptions options;
    options.paperScale = 1;
    const Drawing drawing = frontSection(planned.project, planned.plan, 0, options);
    // The body lies 7/16 in deep in the back, its selvedge in the top edge.
    const auto mortises = testing::shapesOn<PathMark>(drawing, Layer::Counterbore);
    double deepest = 0, highest = 0;
    for (const auto& [mark, path] : mortises)
        for (const PointMm& p : path.points) {
            deepest = std::min(deepest, p.x());
            highest = std::max(highest, p.y());
        }
    EXPECT_NEAR(highest, planned.front(0).rect.height().inMillimetres(), 1e-6);
    EXPECT_NEAR(deepest, -11.1125, 1e-6);
    EXPECT_GT(marksNamed(drawing, "fitting 2"), 0U);
    EXPECT_FALSE(levelSection(planned.project, planned.plan, 0, options).marks.empty());
}

} // namespace
} // namespace frontwright
