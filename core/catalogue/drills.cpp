#include "core/catalogue/drills.h"

#include "core/lengths/format.h"

#include <array>

namespace frontwright {
namespace {

constexpr std::int64_t nanometresPerTenThousandth = 2'540;

/// In ten thousandths of an inch, from No. 1 on.
constexpr std::array<std::int64_t, 60> numberDrills{
    2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800,
    1770, 1730, 1695, 1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285,
    1200, 1160, 1130, 1110, 1100, 1065, 1040, 1015, 995,  980,  960,  935,  890,  860,  820,
    810,  785,  760,  730,  700,  670,  635,  595,  550,  520,  465,  430,  420,  410,  400};

} // namespace

std::optional<int> numberDrill(Length diameter) {
    constexpr std::int64_t halfThousandth = 5 * nanometresPerTenThousandth;
    for (std::size_t i = 0; i < numberDrills.size(); ++i) {
        const std::int64_t off =
            diameter.nanometres() - numberDrills[i] * nanometresPerTenThousandth;
        if (off >= -halfThousandth && off <= halfThousandth)
            return static_cast<int>(i) + 1;
    }
    return std::nullopt;
}

std::string shownDrill(Length diameter, LengthStyle style) {
    switch (style.unit) {
    case Unit::Inch:
        return shownInFull(diameter, style);
    case Unit::Millimetre:
        break;
    }
    return shown(diameter, style);
}

} // namespace frontwright
