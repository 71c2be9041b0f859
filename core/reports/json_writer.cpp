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
    // From whole nanometres, so that no double rounds on the way.
    const std::int64_t nm = value.nanometres();
    const std::int64_t size = nm < 0 ? -nm : nm;
    std::string digits = std::to_string(size % Length::nanometresPerMillimetre);
    digits.insert(0, 6 - digits.size(), '0');
    while (!digits.empty() && digits.back() == '0')
        digits.pop_back();
    std::string number =
        (nm < 0 ? "-" : "") + std::to_string(size / Length::nanometresPerMillimetre);
    if (!digits.empty())
        number += "." + digits;
    m_writer->json.RawValue(number.data(), number.size(), rapidjson::kNumberType);
}

std::string JsonWriter::finish() {
    return std::string(m_writer->buffer.GetString(), m_writer->buffer.GetSize()) + "\n";
}

} // namespace frontwright
