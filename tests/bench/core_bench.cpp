// Speed of core. Targets are told beside each; absolute times vary with the machine, ratios less.

#include "core/documents/document.h"
#include "core/edits/divisions.h"
#include "core/findings/finding.h"
#include "core/lengths/parse.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/plan/small_case.h"

#include <benchmark/benchmark.h>

namespace frontwright::testing {
namespace {

/// Everything that a drag step recomputes, while the plan before it is still shown: plan and
/// findings, with air, in which all fronts move.
void recomputed(benchmark::State& state, const Project& project) {
    const Catalogue catalogue = smallCatalogue();
    Plan shown;
    for (auto _ : state) {
        auto plan = makePlan(project, catalogue);
        if (!plan.ok())
            return state.SkipWithError(plan.error().sentence().english().c_str());
        benchmark::DoNotOptimize(judge(project, plan.value()));
        shown = std::move(plan).value();
    }
}

/// Targets: 24 openings under 100 µs, 2 000 under 5 ms, 10 000 at most 11 times 1 000.
void recompute(benchmark::State& state) {
    const int count = static_cast<int>(state.range(0));
    Project project = count == 24 ? banks(4, 6) : banks(static_cast<std::size_t>(count) / 40, 40);
    project.air = meters(9, 6, 11);
    recomputed(state, project);
}
BENCHMARK(recompute)->Arg(24)->Arg(1'000)->Arg(2'000)->Arg(10'000)->Unit(benchmark::kMicrosecond);

/// The same where no front is alike another.
void recomputeDistinct(benchmark::State& state) {
    Project project = banks(static_cast<std::size_t>(state.range(0)) / 40, 40);
    project.air = meters(9, 6, 11);
    recomputed(state, withOpenings(std::move(project), [](Opening& opening, std::size_t i) {
                   opening.choices.thickness =
                       Length::inches(1) + Length::fromMicrometres(static_cast<std::int64_t>(i));
               }));
}
BENCHMARK(recomputeDistinct)->Arg(2'000)->Unit(benchmark::kMicrosecond);

void layOutOnly(benchmark::State& state) {
    const Project project = banks(static_cast<std::size_t>(state.range(0)) / 40, 40);
    for (auto _ : state)
        benchmark::DoNotOptimize(layOut(project.casework));
}
BENCHMARK(layOutOnly)->Arg(1'000)->Arg(10'000)->Unit(benchmark::kMicrosecond);

void dragStep(benchmark::State& state) {
    const Project project = banks(25, 40);
    const MemberId rail{firstFreeId + 1};
    for (auto _ : state)
        benchmark::DoNotOptimize(dragMember(project, rail, Length::millimetres(5)));
}
BENCHMARK(dragStep)->Unit(benchmark::kMicrosecond);

void readLength(benchmark::State& state) {
    for (auto _ : state) {
        benchmark::DoNotOptimize(parseWrittenLength("12 5/8 in"));
        benchmark::DoNotOptimize(parseWrittenLength("320.5 mm"));
    }
}
BENCHMARK(readLength);

void readLargeDocument(benchmark::State& state) {
    const std::string text = writeDocument(banks(250, 40));
    for (auto _ : state)
        benchmark::DoNotOptimize(readDocument(text));
    state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * text.size()));
}
BENCHMARK(readLargeDocument)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace frontwright::testing

BENCHMARK_MAIN();
