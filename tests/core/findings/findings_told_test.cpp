#include "core/findings/remedying_fits.h"
#include "tests/core/findings/provoking.h"
#include "tests/core/shorthand.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <map>

// Nothing that a finding or a remedy says is left in English where another language is spoken.
namespace frontwright {
namespace {

using testing::sixteenths;

using testing::allProvocations;
using testing::Found;
using testing::n64;
using testing::untold;

using None = std::vector<std::string>;

/// The wood's name as the maker wrote it, and the bank's letter.
const std::set<std::string> asWritten{"cherry", "oak", "A"};

void expectTold(const FindingText& told, FindingCode code) {
    for (const Phrase& phrase : {told.severity, told.place, told.sentence, told.reason})
        EXPECT_EQ(untold(phrase, asWritten), None()) << key(code) << ": " << phrase;
}

constexpr LengthStyle millimetresWithComma{Unit::Millimetre, 16, DecimalMark::Comma};

TEST(FindingsTold, LeaveNoEnglishWordWhereTheyAreProvoked) {
    for (const auto& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        for (const Finding& finding : found.findings)
            for (const LengthStyle& style : {sixteenths, millimetresWithComma})
                expectTold(describe(finding, found.project, found.plan, style), finding.code);
    }
}

/// Of all that can be told: oak in air, a runner with a rating, screws that bear a pull.
Found knownCase() {
    Project project = testing::bank(2);
    testing::oakInAir(project, 8, 6, 14);
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    project.fronts.box.runner = "side-mounted";
    return Found(project);
}

/// Of either sign, none, and less than can be shown. The third is a shank, which is divided by.
constexpr std::array<std::array<Length, 4>, 5> figuresToTell{
    {{n64(40), n64(8), n64(4), n64(20)},
     {n64(4), n64(40), n64(64), n64(8)},
     {Length{}, Length{}, n64(1), Length{}},
     {-n64(9), -n64(7), -n64(5), -n64(5)},
     {testing::um(1), testing::um(-1), testing::um(2), testing::um(10'001)}}};

/// Every finding at every side, between fronts and at one, grave and less so.
std::vector<Finding> allFindings(const Found& found) {
    std::vector<Finding> all;
    for (int code = 0; code <= static_cast<int>(lastFindingCode); ++code)
        for (const Side side : allSides)
            for (const auto& figures : figuresToTell)
                for (const bool alone : {true, false}) {
                    Finding finding{static_cast<FindingCode>(code),
                                    alone ? Severity::WontWork : Severity::Ruins,
                                    {},
                                    figures};
                    finding.where.opening = found.front(0).opening;
                    finding.where.mountingHole = 0;
                    finding.where.side = side;
                    if (!alone) {
                        finding.where.handleHole = 0;
                        finding.where.other = found.front(1).opening;
                    }
                    all.push_back(finding);
                }
    return all;
}

TEST(FindingsTold, LeaveNoEnglishWordAtAnySideWithAnyFigures) {
    const Found found = knownCase();
    for (const Finding& finding : allFindings(found))
        for (const LengthStyle& style : {sixteenths, millimetresWithComma})
            expectTold(describe(finding, found.project, found.plan, style), finding.code);
}

/// What no sentence about the left says, and so on. A hole may be near the bottom and off the left.
const std::vector<std::pair<Side, std::string>> wrongNames{
    {Side::Left, "right e"},      {Side::Right, "left e"},      {Side::Left, "at the right"},
    {Side::Right, "at the left"}, {Side::Bottom, "at the top"}, {Side::Top, "at the bottom"},
    {Side::Bottom, "left e"},     {Side::Top, "right e"}};

TEST(FindingsTold, NameTheSideThatTheyAreAbout) {
    const Found found = knownCase();
    for (const Finding& finding : allFindings(found)) {
        const FindingText text = describe(finding, found.project, found.plan, sixteenths);
        for (const auto& [side, wrong] : wrongNames)
            if (finding.where.side == side) {
                EXPECT_EQ(text.sentence.english().find(wrong), std::string::npos) << text.sentence;
            }
    }
}

bool hasPointInNumber(const std::string& words) {
    for (std::size_t i = 1; i + 1 < words.size(); ++i)
        if (words[i] == '.' && words[i - 1] >= '0' && words[i - 1] <= '9' && words[i + 1] >= '0' &&
            words[i + 1] <= '9')
            return true;
    return false;
}

TEST(FindingsTold, WriteTheirFiguresInTheLanguagesMark) {
    const Found found = knownCase();
    for (const Finding& finding : allFindings(found)) {
        const FindingText text = describe(finding, found.project, found.plan, millimetresWithComma);
        EXPECT_FALSE(hasPointInNumber(text.sentence.english())) << text.sentence;
        if (finding.code != FindingCode::PilotHoleMissing && // "> 0.50" is the pattern's own
            finding.code != FindingCode::BoltHoleTight) {    // "ASME B18.2.8"
            EXPECT_FALSE(hasPointInNumber(text.reason.english())) << text.reason;
        }
    }
}

TEST(FindingsTold, TellOfAGoneFrontToo) {
    const Found found(testing::bank(1));
    Finding stray;
    stray.where.opening = OpeningId{999};
    expectTold(describe(stray, found.project, found.plan, sixteenths), stray.code);
}

constexpr std::array allThemes{
    remedying::forScrewLength,   remedying::forWallUnderHead, remedying::forScrewHole,
    remedying::forBolt,          remedying::forHandle,        remedying::forGap,
    remedying::forUnevenGaps,    remedying::forOverlay,       remedying::forProfile,
    remedying::forBox,           remedying::forSeason,        remedying::forHolding,
    remedying::forScrewDistance, remedying::forDrills,        remedying::forEngagement,
    remedying::forRunnerLoad,    remedying::forMixedFits};

/// What every theme proposes, tried or not.
std::vector<Remedy> allProposals(const Found& found, const Finding& finding,
                                 const Catalogue& catalogue) {
    std::vector<Remedy> proposed, forCase;
    for (const auto propose : allThemes)
        propose({finding, found.project, catalogue, found.plan, found.front(0), sixteenths,
                 proposed, forCase});
    std::move(forCase.begin(), forCase.end(), std::back_inserter(proposed));
    return proposed;
}

/// With one more of each kind, thicker, stronger and smaller.
Catalogue richerCatalogue(const Catalogue& small) {
    Catalogue catalogue = small;
    catalogue.woodScrews.push_back(small.woodScrews.front());
    catalogue.woodScrews.back().shankDiameter = n64(14);
    catalogue.hardware.push_back(small.hardware.front());
    catalogue.hardware.back().footprint.height = n64(20);
    catalogue.runners.push_back(small.runners.front());
    catalogue.runners.back().rating = Mass::pounds(500);
    return catalogue;
}

TEST(RemediesTold, LeaveNoEnglishWordWhateverIsProposed) {
    std::size_t told = 0;
    for (const auto& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        const Catalogue catalogue = richerCatalogue(found.catalogue);
        for (const Finding& finding : found.findings)
            for (const Remedy& remedy : allProposals(found, finding, catalogue)) {
                EXPECT_EQ(untold(remedy.label, asWritten), None()) << remedy.label;
                ++told;
            }
    }
    EXPECT_GT(told, 1000U);
}

TEST(RemediesTold, NameTheFrontOrTheWholeCase) {
    const Found found = knownCase();
    Finding finding;
    finding.where.opening = found.front(0).opening;
    for (const Remedy& remedy : allProposals(found, finding, richerCatalogue(found.catalogue))) {
        const std::string label = remedy.label.english();
        const bool isOfCase = label.find("whole case") != std::string::npos;
        EXPECT_NE(label.find("A1") != std::string::npos || label.find("bank A") != label.npos,
                  isOfCase)
            << label;
    }
}

TEST(RemediesTold, HaveAPatternForEachSide) {
    const std::map<Side, std::string> names{
        {Side::Left, "left"}, {Side::Right, "right"}, {Side::Bottom, "bottom"}, {Side::Top, "top"}};
    using namespace remedying;
    for (const auto& [side, name] : names) {
        EXPECT_EQ(makeOverlay(side, "B2", "1/4 in").ofFront,
                  "Make the " + name + " overlay of B2 1/4 in");
        EXPECT_EQ(makeOverlayWhenCut(side, "B2", "1/4 in").ofAll,
                  "Make the " + name + " overlay of all fronts 1/4 in when cut");
        EXPECT_EQ(makeGap(side, "B2", "1/8 in").ofAll,
                  "Make the gap at the " + name + " of all fronts 1/8 in");
        EXPECT_EQ(makeGapWhenCut(side, "B2", "1/8 in").ofFront,
                  "Make the gap at the " + name + " of B2 1/8 in when cut");
        for (const auto make : {makeOverlay, makeOverlayWhenCut, makeGap, makeGapWhenCut})
            for (const Phrase& label :
                 {make(side, "B2", "1/4 in").ofFront, make(side, "B2", "1/4 in").ofAll})
                EXPECT_EQ(untold(label), None()) << label;
    }
}

} // namespace
} // namespace frontwright
