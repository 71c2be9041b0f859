#include "core/reports/json_writer.h"

#include <rapidjson/prettywriter.h>
#include <rapidjson/stringbuffer.h>

namespace frontwright {

namespace {
rapidjson::SizeType sizeOf(std::string_view text) {
    return static_cast<rapidjson::SizeType>(text.size());
}
} // namespace

struct JsonWriter::Writer {
    rapidjson::StringBuffer buffer;
    rapidjson::PrettyWriter<rapidjson::StringBuffer> json{buffer};
};

JsonWriter::JsonWriter() : m_writer(std::make_unique<Writer>()) {
    m_writer->json.SetIndent(' ', 2);
}
JsonWriter::~JsonWriter() = default;

void JsonWriter::beginObject() {
    m_writer->json.StartObject();
}
void JsonWriter::endObject() {
    m_writer->json.EndObject();
}
void JsonWriter::beginArray() {
    m_writer->json.StartArray();
}
void JsonWriter::endArray() {
    m_writer->json.EndArray();
}
void JsonWriter::key(std::string_view name) {
    m_writer->json.Key(name.data(), sizeOf(name));
}
void JsonWriter::text(std::string_view value) {
    m_writer->json.String(value.data(), sizeOf(value));
}
void JsonWriter::number(std::int64_t value) {
    m_writer->json.Int64(value);
}

void JsonWriter::millimetres(Length value) {
    decimal(value.nanometres(), 6);
}

void JsonWriter::decimal(std::int64_t count, int digits) {
    // From whole parts, so that no double rounds on the way.
    std::int64_t one = 1;
    for (int i = 0; i < digits; ++i)
        one *= 10;
    const std::int64_t size = count < 0 ? -count : count;
    std::string fraction = std::to_string(size % one);
    fraction.insert(0, static_cast<std::size_t>(digits) - fraction.size(), '0');
    while (!fraction.empty() && fraction.back() == '0')
        fraction.pop_back();
    std::string number = (count < 0 ? "-" : "") + std::to_string(size / one);
    if (!fraction.empty())
        number += "." + fraction;
    m_writer->json.RawValue(number.data(), number.size(), rapidjson::kNumberType);
}

std::string JsonWriter::finish() {
    return std::string(m_writer->buffer.GetString(), m_writer->buffer.GetSize()) + "\n";
}

} // namespace frontwright
