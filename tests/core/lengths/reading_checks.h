#pragma once

#include "core/lengths/parse.h"

#include <gtest/gtest.h>

#include <string_view>

namespace frontwright::test {

/// What `text` is read as; a refusal fails the test and is told.
inline WrittenLength lengthIn(std::string_view text, Unit bareUnit) {
    const auto result = parseLength(text, bareUnit);
    if (result.ok())
        return result.value().length;
    ADD_FAILURE() << "\"" << text << "\" was refused: " << result.error().sentence();
    return {};
}

inline Length inInches(std::string_view text) {
    return lengthIn(text, Unit::Inch);
}
inline Length inMillimetres(std::string_view text) {
    return lengthIn(text, Unit::Millimetre);
}

} // namespace frontwright::test
