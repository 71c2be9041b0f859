#include "core/documents/document.h"
#include "core/drawings/elevation.h"
#include "core/drawings/hatch.h"
#include "core/drawings/section.h"
#include "tests/core/documents/files.h"
#include "tests/core/drawings/drawn.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::allTextBoxes;
using testing::overlapping;

/// A sample with its plan, in the program's catalogue. Stays where it is made.
struct Sample {
    explicit Sample(const std::filesystem::path& file) : name(file.stem().string()) {
        Result<Project> read = readDocument(testing::contentOf(file));
        EXPECT_TRUE(read.ok()) << name;
        project = std::move(read).value();
        for (const auto& entry :
             testing::filesBelow(testing::sourceFolder() / "resources" / "catalogue", ".json")) {
            const auto part = readCatalogue(testing::contentOf(entry), entry.filename().string());
            EXPECT_TRUE(part.ok()) << entry;
            catalogue = merged(catalogue, part.value());
        }
        catalogue = merged(catalogue, project.own);
        Result<Plan> made = makePlan(project, catalogue);
        EXPECT_TRUE(made.ok()) << name;
        plan = std::move(made).value();
    }
    Sample(const Sample&) = delete;
    Sample& operator=(const Sample&) = delete;

    [[nodiscard]] ElevationOptions at(double paperScale) const {
        ElevationOptions options;
        options.style = project.style;
        options.paperScale = paperScale;
        return options;
    }

    std::string name;
    Project project;
    Catalogue catalogue;
    Plan plan;
};

constexpr std::array scales{0.5, 0.2, 0.1, 0.05}; // 1:2, 1:5, 1:10, 1:20 (ISO 5455)

TEST(DrawnSamples, HaveNoTextUponAnother) {
    for (const auto& file : testing::sampleFiles()) {
        const Sample sample(file);
        for (const double scale : scales) {
            const Drawing drawing = elevation(sample.project, sample.plan, sample.at(scale));
            EXPECT_TRUE(overlapping(allTextBoxes(drawing)).empty()) << sample.name << scale;
        }
    }
}

TEST(DrawnSamples, HaveNoDimensionUponTheCase) {
    for (const auto& file : testing::sampleFiles()) {
        const Sample sample(file);
        const BoxMm casework = toMm(sample.plan.outline);
        for (const double scale : scales)
            for (const BoxMm& box :
                 testing::textBoxes(elevation(sample.project, sample.plan, sample.at(scale))))
                EXPECT_FALSE(testing::haveCommonArea(box, casework)) << sample.name << scale;
    }
}

TEST(DrawnSamples, HaveNoTextUponAnotherWhicheverFrontIsEmphasised) {
    for (const auto& file : testing::sampleFiles()) {
        const Sample sample(file);
        for (const double scale : scales)
            for (const FrontPlan& front : sample.plan.fronts) {
                ElevationOptions options = sample.at(scale);
                options.emphasised = front.opening;
                options.boxes = options.bottoms = options.allowedRegion = Shown::Yes;
                const Drawing drawing = elevation(sample.project, sample.plan, options);
                EXPECT_TRUE(overlapping(allTextBoxes(drawing)).empty()) << sample.name << scale;
            }
    }
}

TEST(DrawnSamples, NameEveryFrontAtOneToTen) {
    for (const auto& file : testing::sampleFiles()) {
        const Sample sample(file);
        for (std::uint32_t i = 0; i < sample.plan.fronts.size(); ++i) {
            const auto texts = testing::textsOn(
                frontElevation(sample.project, sample.plan, i, sample.at(0.1)), Layer::Note);
            ASSERT_FALSE(texts.empty())
                << sample.name << label(sample.project, sample.plan.fronts[i]);
            // A long name stands in two lines.
            EXPECT_EQ(label(sample.project, sample.plan.fronts[i]).find(texts.front()), 0U);
        }
    }
}

TEST(DrawnSamples, HaveSectionsWithNoTextUponAnother) {
    for (const auto& file : testing::sampleFiles()) {
        const Sample sample(file);
        for (const double scale : {1.0, 0.5, 0.2})
            for (std::uint32_t i = 0; i < sample.plan.fronts.size(); ++i)
                for (std::uint32_t hole = 0; hole < sample.plan.fronts[i].mounting.holes.size();
                     ++hole) {
                    SectionOptions options;
                    options.style = sample.project.style;
                    options.paperScale = scale;
                    options.mountingHole = hole;
                    const Drawing drawing = frontSection(sample.project, sample.plan, i, options);
                    EXPECT_TRUE(overlapping(allTextBoxes(drawing)).empty())
                        << sample.name << " front " << i << " hole " << hole;
                }
    }
}

TEST(DrawnSamples, HatchOnlyWhatIsCut) {
    for (const auto& file : testing::sampleFiles()) {
        const Sample sample(file);
        SectionOptions options;
        options.style = sample.project.style;
        const Drawing drawing = frontSection(sample.project, sample.plan, 0, options);
        std::size_t lines = 0;
        for (const auto& [mark, hatch] : testing::shapesOn<HatchMark>(drawing, Layer::CutHatch)) {
            BoxMm outline;
            for (const PointMm& p : hatch.outline)
                outline.extend(p);
            const PointMm hair(1e-9, 1e-9);
            const BoxMm around(outline.min() - hair, outline.max() + hair);
            for (const LineMark& line : hatchLines(hatch, drawing.paperScale)) {
                EXPECT_TRUE(around.contains(line.from) && around.contains(line.to));
                ++lines;
            }
        }
        EXPECT_GT(lines, 20U) << sample.name;
    }
}

// The sample with honest mistakes has a screw that comes through: its section rings it.
TEST(DrawnSamples, RingTheScrewThatRuinsAFront) {
    const Sample sample(testing::sourceFolder() / "samples/first-try/first-try.frontwright");
    std::size_t ringed = 0, ruined = 0;
    for (std::uint32_t i = 0; i < sample.plan.fronts.size(); ++i) {
        const auto& holes = sample.plan.fronts[i].mounting.holes;
        if (!holes.empty() && holes[0].tipCover < Length{})
            ++ruined;
        SectionOptions options;
        options.style = sample.project.style;
        const Drawing drawing = frontSection(sample.project, sample.plan, i, options);
        for (const Mark& mark : drawing.marks)
            if (mark.part.name == "screw 1 through the face")
                ++ringed;
    }
    EXPECT_GT(ruined, 0U);
    EXPECT_EQ(ringed, ruined);
}

} // namespace
} // namespace frontwright
