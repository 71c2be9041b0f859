#include "tests/core/catalogue/program_catalogue.h"

#include <algorithm>

namespace frontwright {
namespace {

using testing::programCatalogue;
using testing::readProgramFile;
using testing::tenths;
using testing::thousandths;

/// 1/4 in to 1 in by 1/8 in, then to 3 in by 1/4 in (trade steps, from memory), from `first` on.
std::vector<Length> tradeSteps(Length first) {
    std::vector<Length> steps;
    for (std::int64_t eighths = 2; eighths <= 24; eighths += eighths < 8 ? 1 : 2)
        if (Length::inches(0, 8) * eighths >= first)
            steps.push_back(Length::inches(0, 8) * eighths);
    return steps;
}

struct InchScrew {
    std::int64_t gauge;
    std::int64_t head, headHeight; ///< thousandths of an inch
};
// ASME B18.6.1, flat head: greatest (sharp) diameter and height.
constexpr std::array<InchScrew, 5> flatHeads{
    {{4, 225, 67}, {6, 279, 83}, {8, 332, 100}, {10, 385, 116}, {12, 438, 132}}};

TEST(WoodScrewFile, HasTheSizesOfTheStandard) {
    const Catalogue catalogue = programCatalogue();
    for (const InchScrew& row : flatHeads) {
        const WoodScrew* screw = catalogue.woodScrew("wood-screw-" + std::to_string(row.gauge));
        ASSERT_NE(screw, nullptr) << row.gauge;
        // ASME B18.6.1: D = 0.060 + 0.013 n
        EXPECT_EQ(screw->shankDiameter, thousandths(60 + 13 * row.gauge)) << row.gauge;
        EXPECT_EQ(screw->headDiameter, thousandths(row.head)) << row.gauge;
        EXPECT_EQ(screw->headHeight, thousandths(row.headHeight)) << row.gauge;
        EXPECT_EQ(screw->source.kind, SourceKind::Published);
        EXPECT_EQ(screw->lengths, tradeSteps(Length::inches(0, 32))) << row.gauge;
    }
}

TEST(WoodScrewFile, DoesNotTakeTheHeightOfTheBareCone) {
    // A sharp 82° cone from 0.332 in to 0.164 in is 0.084 / tan 41° = 0.097 in high; the standard's
    // No. 8 is 0.100 in.
    EXPECT_EQ(programCatalogue().woodScrew("wood-screw-8")->headHeight, thousandths(100));
}

TEST(WoodScrewFile, DoesNotMixInTheBritishGauge) {
    // The British rule 0.066 + 0.014 (n − 1) agrees at No. 8 only.
    const Catalogue catalogue = programCatalogue();
    for (const InchScrew& row : flatHeads) {
        const auto* screw = catalogue.woodScrew("wood-screw-" + std::to_string(row.gauge));
        EXPECT_EQ(screw->shankDiameter == thousandths(66 + 14 * (row.gauge - 1)), row.gauge == 8);
    }
}

TEST(WoodScrewFile, HasTheDrillsOfTheShop) {
    // A common shop chart: 3/32, 7/64, 1/8 in pilots in hardwood; No. 25 drill (0.1495 in) for No.
    // 12 from a boatbuilding chart. Clearance from the chart where it says more than the screw,
    // else (gauge + 3)/64 in from a British workshop text. No. 4 from memory.
    const Catalogue catalogue = programCatalogue();
    const auto drills = [&](const char* id) {
        const WoodScrew* screw = catalogue.woodScrew(id);
        return std::pair(screw->clearanceHole, screw->pilotHole);
    };
    const auto in64ths = [](std::int64_t a, std::int64_t b) {
        return std::pair(Length::fromSixtyFourths(a), Length::fromSixtyFourths(b));
    };
    EXPECT_EQ(drills("wood-screw-4"), in64ths(8, 5));
    EXPECT_EQ(drills("wood-screw-6"), in64ths(6 + 3, 6));
    EXPECT_EQ(drills("wood-screw-8"), in64ths(8 + 3, 7));
    EXPECT_EQ(drills("wood-screw-10"), in64ths(10 + 3, 8));
    EXPECT_EQ(drills("wood-screw-12"),
              std::pair(Length::fromSixtyFourths(12 + 3), Length::fromNanometres(1'495 * 2'540)));
}

TEST(WoodScrewFile, HasMetricScrewsFromMemory) {
    const Catalogue catalogue = programCatalogue();
    std::vector<Length> lengths;
    for (std::int64_t mm : {12, 16, 20, 25, 30, 35, 40, 45, 50})
        lengths.push_back(Length::millimetres(mm));
    for (std::int64_t d : {35, 40, 45}) {
        const std::string size = d == 40 ? "4" : std::to_string(d / 10) + ".5";
        const WoodScrew* screw = catalogue.woodScrew("wood-screw-" + size + "mm");
        ASSERT_NE(screw, nullptr) << size;
        EXPECT_EQ(screw->shankDiameter, tenths(d));
        EXPECT_EQ(screw->headDiameter, tenths(2 * d)); // common practice, no source
        EXPECT_EQ(screw->clearanceHole, tenths(d + 5));
        EXPECT_EQ(screw->lengths, lengths);
        EXPECT_EQ(screw->source.kind, SourceKind::FromMemory);
    }
}

TEST(WoodScrewFile, LetsEveryScrewThroughTheWallAndHoldInTheFront) {
    for (const WoodScrew& screw : readProgramFile("wood_screws.json").woodScrews) {
        EXPECT_GT(screw.clearanceHole, screw.shankDiameter)
            << screw.id; // one public chart: smaller
        EXPECT_LT(screw.pilotHole, screw.shankDiameter) << screw.id;
        EXPECT_LT(screw.clearanceHole, screw.headDiameter) << screw.id;
    }
}

struct BoltRow {
    const char* id;
    Length major, head, headHeight, clearance;
};

TEST(BoltFile, HasTheSizesOfTheStandards) {
    const Catalogue catalogue = programCatalogue();
    // Inch: ASME B18.6.3, recessed pan and truss heads, greatest sizes; holes ASME B18.2.8, normal.
    // Metric: ISO 7045 greatest sizes; holes ISO 273, medium.
    const std::array<BoltRow, 7> rows{{
        {"bolt-6-32", thousandths(138), thousandths(270), thousandths(103), thousandths(170)},
        {"bolt-8-32", thousandths(164), thousandths(322), thousandths(120), thousandths(196)},
        {"bolt-10-24", thousandths(190), thousandths(373), thousandths(137), thousandths(221)},
        {"bolt-8-32-truss", thousandths(164), thousandths(384), thousandths(102), thousandths(196)},
        {"bolt-m3", tenths(30), tenths(56), tenths(24), tenths(34)},
        {"bolt-m4", tenths(40), tenths(80), tenths(31), tenths(45)},
        {"bolt-m5", tenths(50), tenths(95), tenths(37), tenths(55)},
    }};
    EXPECT_EQ(catalogue.bolts.size(), rows.size());
    for (const BoltRow& row : rows) {
        const Bolt* bolt = catalogue.bolt(row.id);
        ASSERT_NE(bolt, nullptr) << row.id;
        EXPECT_EQ(bolt->majorDiameter, row.major) << row.id;
        EXPECT_EQ(bolt->headDiameter, row.head) << row.id;
        EXPECT_EQ(bolt->headHeight, row.headHeight) << row.id;
        EXPECT_EQ(bolt->clearanceHole, row.clearance) << row.id;
        EXPECT_EQ(bolt->source.kind, SourceKind::Published) << row.id;
    }
}

TEST(BoltFile, KeepsTheTwoConventionsOfClearanceApart) {
    // The older shop chart's close and free fits for No. 8 are 0.1695 and 0.177 in, ASME B18.2.8's
    // close fit is 0.180 in; all are smaller than the normal one.
    const Length hole = programCatalogue().bolt("bolt-8-32")->clearanceHole;
    EXPECT_GT(hole, thousandths(177));
    EXPECT_GT(hole, thousandths(180));
    EXPECT_EQ(hole, thousandths(196));
}

TEST(BoltFile, KeepsCrossRecessedHeadsApartFromSlottedAndOlderOnes) {
    // Slotted (ISO 1580): 1.8, 2.4, 3.0 mm high. Older (DIN 7985): 6, 8, 10 mm wide. Slotted inch
    // heads (ASME B18.6.3): 0.082, 0.096, 0.110 in high.
    const Catalogue catalogue = programCatalogue();
    EXPECT_GT(catalogue.bolt("bolt-m3")->headHeight, tenths(18));
    EXPECT_GT(catalogue.bolt("bolt-m4")->headHeight, tenths(24));
    EXPECT_GT(catalogue.bolt("bolt-m5")->headHeight, tenths(30));
    EXPECT_LT(catalogue.bolt("bolt-m3")->headDiameter, tenths(60));
    EXPECT_LT(catalogue.bolt("bolt-m5")->headDiameter, tenths(100));
    EXPECT_GT(catalogue.bolt("bolt-8-32")->headHeight, thousandths(96));
}

TEST(BoltFile, HasStockInTheStepsOfTheTrade) {
    const Catalogue catalogue = programCatalogue();
    for (const char* id : {"bolt-6-32", "bolt-8-32", "bolt-10-24", "bolt-8-32-truss"})
        EXPECT_EQ(catalogue.bolt(id)->lengths, tradeSteps({})) << id;
    // ISO 888 steps without the bracketed ones, in ISO 7045's usual ranges; M4 goes on to 50 mm, as
    // it is sold for handles (common practice, no source). All from memory.
    const auto steps = [](std::int64_t low, std::int64_t high) {
        std::vector<Length> lengths;
        for (std::int64_t mm : {4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50})
            if (low <= mm && mm <= high)
                lengths.push_back(Length::millimetres(mm));
        return lengths;
    };
    EXPECT_EQ(catalogue.bolt("bolt-m3")->lengths, steps(4, 30));
    EXPECT_EQ(catalogue.bolt("bolt-m4")->lengths, steps(5, 50));
    EXPECT_EQ(catalogue.bolt("bolt-m5")->lengths, steps(6, 45));
}

} // namespace
} // namespace frontwright
