#include "core/lengths/parse.h"

#include "core/lengths/echo.h"
#include "core/lengths/grammar.h"
#include "core/words/figure.h"

namespace frontwright {
namespace {

Result<UnderstoodLength> understood(const Result<reading::Reading>& result, Unit bareUnit,
                                    Length current) {
    if (!result.ok())
        return result.error();
    const reading::Reading& reading = result.value();
    const Length length = Length::fromNanometres(reading::nearestWhole(reading.nanometres));
    return UnderstoodLength{{length, reading.notation},
                            figure(reading::echoOf(reading, bareUnit, current)),
                            reading.isSum};
}

} // namespace

Result<UnderstoodLength> parseLength(std::string_view text, Unit bareUnit, CommaGrouping grouping) {
    return understood(reading::readLength(text, bareUnit, grouping), bareUnit, Length());
}

Result<UnderstoodLength> parseLengthChange(std::string_view text, Unit bareUnit, Length current,
                                           CommaGrouping grouping) {
    return understood(reading::readLength(text, bareUnit, grouping, current), bareUnit, current);
}

} // namespace frontwright
