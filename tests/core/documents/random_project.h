#pragma once

#include "core/project/project.h"

#include <random>
#include <string>

namespace frontwright::testing {

/// Projects that a document can hold, with something in every place: any notation, any choice,
/// unknown members at every level. The same seed gives the same project on every machine.
class RandomProject {
public:
    explicit RandomProject(unsigned seed) : m_dice(seed) {}
    Project project();

private:
    std::int64_t upTo(std::int64_t most) { // 0 … most
        return static_cast<std::int64_t>(m_dice() % static_cast<unsigned>(most + 1));
    }
    bool chance(int percent) { return upTo(99) < percent; }
    template<class E>
    E anyOf(E last) {
        return static_cast<E>(upTo(static_cast<std::int64_t>(last)));
    }
    template<class Optional, class Make>
    void maybe(Optional& place, Make make) {
        if (chance(40))
            place = make();
    }

    WrittenLength length(std::int64_t least = 0);
    WrittenLength positive() { return length(1); }
    Length plain() { return length(); }
    Mass mass() {
        return chance(50) ? Mass::tenthsOfPound(upTo(999))
                          : Mass::fromMicrograms(upTo(99'999'999'999));
    }
    std::string text();
    template<class Frame>
    PointIn<Frame> point() {
        return {chance(50) ? plain() : -plain(), plain()};
    }
    /// Two strange members, or none, below `path`.
    void addUnknowns(Unknowns& to, const std::string& path = {});

    SideFit sideFit() { return {anyOf(Fit::Inset), length()}; }
    PerSide<WrittenLength> lengthsPerSide();
    FrontFit frontFit();
    Profile profile();
    BoxSpec box();
    MountingSpec mounting();
    HardwareSpec hardware();
    BoardSpec board();
    Presets presets();
    /// The preset that `value` comes from; it follows it, or departs from it. Or none.
    template<class Spec>
    std::string nameFor(const PresetList<Spec>& list, Spec& value) {
        if (list.empty() || chance(40))
            return {};
        const Preset<Spec>& preset = list[static_cast<std::size_t>(upTo(1)) % list.size()];
        if (chance(50))
            value = preset.value;
        return preset.name;
    }
    FrontChoices choices(Unknowns& unknowns);
    Source source() { return {anyOf(SourceKind::Maker), text()}; }
    std::vector<Length> stock();
    Percent percent(std::int64_t most);
    Stock stockOfFronts();
    WoodFigures woodFigures();
    AirState airState();
    Air air();
    RunnerKind runnerKind(std::string id);
    FittingForm fitting(const std::string& id);
    Catalogue catalogue(Unknowns& unknowns);
    FrontDefaults fronts();
    Surround surround(Side);
    SystemHoles systemHoles();
    Case casework();
    Limits limits();
    SizeRule rule();
    RegionPtr region(int depth);

    std::mt19937 m_dice;
    Presets m_presets;
    std::int32_t m_nextId = firstFreeId;
};

} // namespace frontwright::testing
