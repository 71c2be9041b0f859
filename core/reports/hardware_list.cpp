#include "core/reports/hardware_list.h"

#include <algorithm>

namespace frontwright {

namespace {

class Rows {
public:
    void add(HardwareRow::Kind kind, const std::string& id, const std::string& name,
             std::optional<Length> length, std::size_t count, std::uint32_t front) {
        const auto same = std::ranges::find_if(m_rows, [&](const HardwareRow& row) {
            return row.kind == kind && row.id == id && row.length == length;
        });
        HardwareRow& row = same == m_rows.end()
                               ? m_rows.emplace_back(HardwareRow{kind, id, name, length, 0, {}})
                               : *same;
        row.count += count;
        if (row.fronts.empty() || row.fronts.back() != front)
            row.fronts.push_back(front);
    }
    [[nodiscard]] std::vector<HardwareRow> byKind() && {
        std::ranges::stable_sort(m_rows, {}, &HardwareRow::kind);
        return std::move(m_rows);
    }

private:
    std::vector<HardwareRow> m_rows;
};

} // namespace

std::vector<HardwareRow> hardwareList(const Plan& plan) {
    using enum HardwareRow::Kind;
    Rows rows;
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i) {
        const FrontPlan& front = plan.fronts[i];
        if (front.hardware) {
            const HardwarePlan& hardware = *front.hardware;
            rows.add(Handle, hardware.form->id, hardware.form->name, std::nullopt,
                     hardware.handles.size(), i);
            rows.add(Bolt, hardware.bolt->id, hardware.bolt->name, hardware.chosenWay().length,
                     hardware.holes.size(), i);
        }
        if (!front.mounting.holes.empty())
            rows.add(WoodScrew, front.mounting.screw->id, front.mounting.screw->name,
                     front.mounting.length, front.mounting.holes.size(), i);
        if (!front.fittings)
            continue;
        for (const FittingPlan& fitting : *front.fittings) {
            rows.add(Fitting, fitting.form->id, fitting.form->name, std::nullopt, 1, i);
            if (!fitting.screws.empty())
                rows.add(WoodScrew, fitting.screw->id, fitting.screw->name, fitting.screwLength,
                         fitting.screws.size(), i);
        }
    }
    return std::move(rows).byKind();
}

} // namespace frontwright
