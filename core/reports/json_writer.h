#pragma once

#include "core/lengths/length.h"

#include <memory>
#include <string>
#include <string_view>

namespace frontwright {

/// Writes JSON text with two spaces of indent. Keys come out in the order in which they are given.
class JsonWriter {
public:
    JsonWriter();
    ~JsonWriter();
    JsonWriter(const JsonWriter&) = delete;
    JsonWriter& operator=(const JsonWriter&) = delete;

    void beginObject();
    void endObject();
    void beginArray();
    void endArray();
    void key(std::string_view name);
    void text(std::string_view value);
    void number(std::int64_t value);
    /// In millimetres, exact: at most six decimals.
    void millimetres(Length value);
    /// `count` parts of which 10^`digits` make one: 1500, 3 → 1.5. Exact, no trailing zeros.
    void decimal(std::int64_t count, int digits);

    /// The whole text with a final newline. Precondition: everything was ended.
    [[nodiscard]] std::string finish();

private:
    struct Writer;
    std::unique_ptr<Writer> m_writer;
};

} // namespace frontwright
