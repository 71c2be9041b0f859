#include "core/drawings/lettering.h"
#include "core/drawings/line_style.h"
#include "core/drawings/plain_marks.h"

#include <array>
#include <charconv>
#include <cmath>
#include <map>

namespace frontwright {

namespace {

/// At most six decimals, with a point, never "-0".
std::string number(double value) {
    std::array<char, 400> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, 6);
    std::string result(text.data(), end.ptr);
    if (result.find('.') != std::string::npos) {
        result.erase(result.find_last_not_of('0') + 1);
        if (result.back() == '.')
            result.pop_back();
    }
    return result == "-0" ? "0" : result;
}

/// What XML 1.0 does not allow in a text becomes a space.
std::string escaped(std::string_view text) {
    std::string result;
    for (const char c : text) {
        switch (c) {
        case '&':
            result += "&amp;";
            break;
        case '<':
            result += "&lt;";
            break;
        case '>':
            result += "&gt;";
            break;
        case '"':
            result += "&quot;";
            break;
        default:
            result += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
        }
    }
    return result;
}

std::string colour(const Tone& tone) {
    static constexpr std::string_view hex = "0123456789abcdef";
    std::string text = "#";
    for (const std::uint8_t part : {tone.red, tone.green, tone.blue}) {
        text += hex[part >> 4U];
        text += hex[part & 0xfU];
    }
    return text;
}

/// Writes marks in mm of paper, y down, from the upper left corner of the drawing's extent. Each
/// layer's elements are gathered by themselves, to become one group.
class SvgWriter {
public:
    explicit SvgWriter(const Drawing& drawing)
        : m_scale(drawing.paperScale),
          m_origin(drawing.extent.isEmpty()
                       ? PointMm(0, 0)
                       : PointMm(drawing.extent.min().x(), drawing.extent.max().y())),
          m_size(drawing.extent.isEmpty() ? PointMm(0, 0)
                                          : PointMm(drawing.extent.sizes() * drawing.paperScale)) {}

    void write(const PlainMarks& marks) {
        for (const WashMark& wash : marks.washes)
            write(wash);
        for (const StrokeMark& stroke : marks.strokes)
            write(stroke);
        for (const RoundMark& round : marks.rounds)
            write(round);
        for (const FillMark& fill : marks.fills)
            m_groups[fill.layer] += "    <path d=\"" +
                                    pathData(fill.points, PathMark::End::Closed) +
                                    "\" fill=\"#000\" stroke=\"none\"/>\n";
        for (const LabelMark& label : marks.labels)
            write(label);
    }

    [[nodiscard]] std::string document(std::string_view title) const {
        const std::string width = number(m_size.x()), height = number(m_size.y());
        std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                           "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" +
                           width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " +
                           height + "\" font-family=\"DejaVu Sans, sans-serif\">\n  <title>" +
                           escaped(title) + "</title>\n";
        for (const auto& [layer, elements] : m_groups)
            text += groupStart(layer) + elements + "  </g>\n";
        return text + "</svg>\n";
    }

private:
    [[nodiscard]] PointMm onPaper(const PointMm& p) const {
        return {(p.x() - m_origin.x()) * m_scale, (m_origin.y() - p.y()) * m_scale};
    }
    [[nodiscard]] std::string pathData(const std::vector<PointMm>& points,
                                       PathMark::End end) const {
        std::string data;
        for (const PointMm& p : points) {
            const PointMm q = onPaper(p);
            data += (data.empty() ? "M" : " L") + number(q.x()) + " " + number(q.y());
        }
        return end == PathMark::End::Closed ? data + " Z" : data;
    }
    static std::string partOf(const Part& part) {
        return part.name.empty() ? "" : " data-part=\"" + escaped(part.name) + "\"";
    }

    void write(const WashMark& wash) {
        const bool isLine = wash.width > 0;
        const std::string paint = colour(wash.tone);
        std::string strength;
        if (wash.tone.opacity < 255)
            strength = std::string(isLine ? " stroke" : " fill") + "-opacity=\"" +
                       number(wash.tone.opacity / 255.0) + '"';
        m_groups[Layer::Wash] +=
            "    <path" + partOf(wash.part) + " d=\"" +
            pathData(wash.points, isLine ? PathMark::End::Open : PathMark::End::Closed) +
            (isLine ? "\" stroke=\"" + paint + "\" stroke-width=\"" + number(wash.width * m_scale)
                    : "\" stroke=\"none\" fill=\"" + paint) +
            "\"" + strength + "/>\n";
    }
    void write(const StrokeMark& stroke) {
        m_groups[stroke.layer] += "    <path" + partOf(stroke.part) + " d=\"" +
                                  pathData(stroke.points, stroke.end) + "\"/>\n";
    }
    void write(const RoundMark& round) {
        const PointMm centre = onPaper(round.centre);
        m_groups[round.layer] += "    <circle" + partOf(round.part) + " cx=\"" +
                                 number(centre.x()) + "\" cy=\"" + number(centre.y()) + "\" r=\"" +
                                 number(round.radius * m_scale) + "\"/>\n";
    }
    void write(const LabelMark& label) {
        static constexpr std::array anchors{"start", "middle", "end"};
        const TextMark& text = label.text;
        const PointMm at = onPaper(text.at);
        const std::string x = number(at.x()), y = number(at.y());
        std::string turn;
        if (text.turned != 0)
            turn = " transform=\"rotate(" + number(-text.turned) + " " + x + " " + y + ")\"";
        m_groups[label.layer] +=
            "    <text" + partOf(label.part) + " fill=\"#000\" stroke=\"none\" x=\"" + x +
            "\" y=\"" + y + "\" font-size=\"" + number(text.height / capHeightPerEm) +
            "\" text-anchor=\"" + anchors.at(static_cast<std::size_t>(text.anchor)) + "\"" + turn +
            ">" + escaped(text.text) + "</text>\n";
    }

    [[nodiscard]] std::string groupStart(Layer layer) const {
        const LineStyle style = lineStyle(layer, m_scale);
        std::string dashes;
        for (const double dash : style.dashes)
            dashes += (dashes.empty() ? " stroke-dasharray=\"" : " ") + number(dash);
        if (!dashes.empty())
            dashes += '"';
        return "  <g id=\"" + std::string(key(layer)) + "\" fill=\"none\" stroke=\"#000\"" +
               " stroke-width=\"" + number(style.width) + "\"" + dashes + ">\n";
    }

    double m_scale;
    PointMm m_origin;
    PointMm m_size;
    std::map<Layer, std::string> m_groups;
};

} // namespace

std::string svg(const Drawing& drawing, std::string_view title) {
    SvgWriter writer(drawing);
    writer.write(plain(drawing));
    return writer.document(title);
}

} // namespace frontwright
