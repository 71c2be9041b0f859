#include "core/lengths/format.h"
#include "core/lengths/parse.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace {

using namespace frontwright;

void require(bool law) {
    if (!law)
        std::abort();
}

/// What was read is within its limits and is read back from its exact text.
void check(const Result<UnderstoodLength>& result) {
    if (!result.ok()) {
        require(result.error().place.english().rfind("position ", 0) == 0 &&
                !result.error().what.empty());
        return;
    }
    const Length length = result.value().length;
    require(length.magnitude() <= Length::millimetres(1'000'000));
    require(!result.value().echo.empty());
    for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
        const auto again = parseWrittenLength(written(result.value().length, unit));
        require(again.ok() && again.value().length == length);
        const auto exactly = parseLength(exact(length, unit), unit);
        require(exactly.ok() && exactly.value().length.length == length);
    }
}

/// A document's length is one that a maker could type, and means the same.
void checkDocument(std::string_view text) {
    const auto document = parseWrittenLength(text);
    if (!document.ok())
        return;
    const auto typed = parseLength(text, Unit::Millimetre);
    require(typed.ok() && typed.value().length == document.value());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
        check(parseLength(text, unit));
        check(parseLength(text, unit, CommaGrouping::Ambiguous));
        check(parseLengthChange(text, unit, Length::inches(3)));
    }
    checkDocument(text);
    return 0;
}
