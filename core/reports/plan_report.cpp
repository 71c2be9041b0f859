#include "core/lengths/format.h"
#include "core/plan/boards.h"
#include "core/reports/groups.h"
#include "core/reports/hardware_list.h"
#include "core/reports/json_writer.h"
#include "core/reports/report.h"

#include <algorithm>

namespace frontwright {

namespace {

void writeRect(JsonWriter& json, const CaseRect& rect) {
    json.beginObject();
    json.key("left");
    json.millimetres(rect.left);
    json.key("bottom");
    json.millimetres(rect.bottom);
    json.key("right");
    json.millimetres(rect.right);
    json.key("top");
    json.millimetres(rect.top);
    json.endObject();
}

void writeMeasure(JsonWriter& json, const Measure& measure) {
    switch (measure.kind()) {
    case MeasureKind::Length:
        json.key("mm");
        return json.millimetres(measure.length());
    case MeasureKind::Mass:
        json.key("kg");
        return json.decimal(measure.mass().micrograms(), 9);
    case MeasureKind::Force:
        json.key("N");
        return json.decimal(measure.force().micronewtons(), 6);
    case MeasureKind::Volume:
        json.key("dm3");
        return json.decimal(measure.volume().cubicMillimetres(), 6);
    case MeasureKind::Percent:
        json.key("percent");
        return json.decimal(measure.percent().thousandths(), 3);
    case MeasureKind::Ratio:
        break;
    }
    json.key("ratio");
    json.decimal(measure.ratio().thousandths(), 3);
}

void writeNumber(JsonWriter& json, const Derivation& derivation, Quantity quantity,
                 LengthStyle style) {
    json.beginObject();
    json.key("key");
    json.text(key(quantity.kind));
    if (const Phrase which = indexName(quantity); !which.empty()) {
        json.key("index");
        json.number(quantity.index);
        json.key("which");
        json.text(which.english());
    }
    json.key("name");
    json.text(derivation.name.english());
    writeMeasure(json, derivation.value);
    json.key("shown");
    json.text(shown(quantity.kind, derivation.value, style));
    json.key("formula");
    json.text(derivation.formula.english());
    json.key("figures");
    json.text(derivation.figures.english());
    json.key("source");
    json.text(derivation.source.title);
    json.endObject();
}

std::string_view kindName(PlanPart kind) {
    switch (kind) {
    case PlanPart::Case:
        return "case";
    case PlanPart::Member:
        return "member";
    case PlanPart::Front:
        return "front";
    case PlanPart::Spacer:
        return "spacer";
    case PlanPart::Filler:
        return "filler";
    case PlanPart::Space:
        return "space";
    case PlanPart::Stop:
        break;
    }
    return "stop";
}

void writePlaces(JsonWriter& json, const Plan& plan, const QuantityGroup& group) {
    if (group.kind == PlanPart::Member) {
        json.key("rect");
        writeRect(json, plan.members[group.item].rect);
    } else if (group.kind == PlanPart::Front) {
        json.key("opening");
        writeRect(json, plan.fronts[group.item].openingRect);
        json.key("rect");
        writeRect(json, plan.fronts[group.item].rect);
    } else if (group.kind == PlanPart::Space) {
        json.key("rect");
        writeRect(json, plan.spaces[group.item].rect);
    }
}

std::string_view kindName(HardwareRow::Kind kind) {
    switch (kind) {
    case HardwareRow::Kind::Handle:
        return "handle";
    case HardwareRow::Kind::Fitting:
        return "fitting";
    case HardwareRow::Kind::Bolt:
        return "bolt";
    case HardwareRow::Kind::WoodScrew:
        break;
    }
    return "wood_screw";
}

void writeHardware(JsonWriter& json, const Project& project, const Plan& plan) {
    json.key("hardware");
    json.beginArray();
    for (const HardwareRow& row : hardwareList(plan)) {
        json.beginObject();
        json.key("kind");
        json.text(kindName(row.kind));
        json.key("id");
        json.text(row.id);
        json.key("name");
        json.text(row.name);
        json.key("count");
        json.number(static_cast<std::int64_t>(row.count));
        if (row.length) {
            json.key("mm");
            json.millimetres(*row.length);
        }
        json.key("fronts");
        json.beginArray();
        for (const std::uint32_t front : row.fronts)
            json.text(label(project, plan.fronts[front]));
        json.endArray();
        json.endObject();
    }
    json.endArray();
}

void writeBoardNumbers(JsonWriter& json, const std::vector<BoardNumber>& numbers) {
    for (const BoardNumber& number : numbers) {
        json.beginObject();
        json.key("name");
        json.text(number.name.english());
        json.key("shown");
        json.text(number.value);
        json.key("formula");
        json.text(number.formula.english());
        json.key("figures");
        json.text(number.figures);
        json.key("source");
        json.text(number.source.title);
        json.endObject();
    }
}

void writeBoards(JsonWriter& json, const Plan& plan, LengthStyle style) {
    json.key("boards");
    json.beginArray();
    for (const PlannedBoard& board : plan.boards) {
        json.beginObject();
        json.key("title");
        json.text(titleOf(plan, board).english());
        json.key("opening");
        writeRect(json, board.place.opening);
        json.key("numbers");
        json.beginArray();
        writeBoardNumbers(json, numbersOf(board, style));
        json.endArray();
        json.endObject();
    }
    json.endArray();
}

/// The longest name that is listed has 51: the wood under the head of a counterbored bolt.
constexpr std::size_t nameColumns = 53;

/// Display columns of UTF-8 text: every code point counts as one.
std::size_t columns(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

std::string padded(std::string text, std::size_t width) {
    const std::size_t size = columns(text);
    text.append(size < width ? width - size : 1, ' ');
    return text;
}

/// "10 × Ring pull on a 45 mm backplate: A1, A2, …"
std::string hardwareText(const Project& project, const Plan& plan, LengthStyle style,
                         const Language& language) {
    const std::vector<HardwareRow> rows = hardwareList(plan);
    if (rows.empty())
        return {};
    std::string text =
        "\n" + told(Phrase(frontwright::text("Hardware and screws")), language) + "\n";
    for (const HardwareRow& row : rows) {
        std::vector<Phrase> fronts;
        for (const std::uint32_t front : row.fronts)
            fronts.push_back(label(project, plan.fronts[front]));
        const std::string name = told(nameFromData(row.name), language);
        text += "  " +
                padded(row.length ? name + ", " + shown(*row.length, style) : name, nameColumns) +
                padded(std::to_string(row.count) + " ×", 14) + told(listed(fronts), language) +
                "\n";
    }
    return text;
}

} // namespace

std::string planJson(const Project& project, const Plan& plan, LengthStyle style) {
    JsonWriter json;
    json.beginObject();
    json.key("format");
    json.text("frontwright-plan");
    json.key("version");
    json.text("1.2");
    json.key("title");
    json.text(project.title);
    json.key("items");
    json.beginArray();
    for (const QuantityGroup& group : grouped(project, plan)) {
        json.beginObject();
        json.key("kind");
        json.text(kindName(group.kind));
        json.key("title");
        json.text(group.title.english());
        writePlaces(json, plan, group);
        json.key("numbers");
        json.beginArray();
        for (const Quantity quantity : group.quantities)
            if (const auto derivation = derive(project, plan, quantity, style))
                writeNumber(json, *derivation, quantity, style);
        json.endArray();
        json.endObject();
    }
    json.endArray();
    writeHardware(json, project, plan);
    if (!plan.boards.empty())
        writeBoards(json, plan, style);
    json.endObject();
    return json.finish();
}

std::string planText(const Project& project, const Plan& plan, LengthStyle style,
                     const Language& language) {
    std::string text = project.title.empty() ? std::string() : project.title + "\n";
    for (const QuantityGroup& group : grouped(project, plan)) {
        text += "\n" + told(group.title, language) + "\n";
        for (const Quantity quantity : group.quantities) {
            const auto derivation = derive(project, plan, quantity, style);
            if (!derivation)
                continue;
            const std::string which = told(indexName(quantity), language);
            const std::string name = told(derivation->name, language);
            // Some names say already which of several is meant.
            const bool says = which.empty() || name.find(which) != std::string::npos;
            text += "  " + padded(says ? name : name + ", " + which, nameColumns) +
                    padded(shown(quantity.kind, derivation->value, style), 14) +
                    told(derivation->figures, language) + "\n";
        }
    }
    for (const PlannedBoard& board : plan.boards) {
        text += "\n" + told(titleOf(plan, board), language) + "\n";
        for (const BoardNumber& number : numbersOf(board, style))
            text += "  " + padded(told(number.name, language), nameColumns) +
                    padded(number.value, 14) + number.figures + "\n";
    }
    return text + hardwareText(project, plan, style, language);
}

} // namespace frontwright
