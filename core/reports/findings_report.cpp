#include "core/reports/json_writer.h"
#include "core/reports/report.h"

namespace frontwright {

std::string findingsJson(const Project& project, const Plan& plan,
                         const std::vector<Finding>& findings, LengthStyle style) {
    JsonWriter json;
    json.beginObject();
    json.key("format");
    json.text("frontwright-findings");
    json.key("version");
    json.text("1.0");
    json.key("title");
    json.text(project.title);
    json.key("findings");
    json.beginArray();
    for (const Finding& finding : findings) {
        const FindingText text = describe(finding, project, plan, style);
        json.beginObject();
        json.key("code");
        json.text(key(finding));
        json.key("severity");
        json.text(key(finding.severity));
        json.key("where");
        json.text(text.place.english());
        json.key("sentence");
        json.text(text.sentence.english());
        json.key("reason");
        json.text(text.reason.english());
        json.key("source");
        json.text(text.source.title);
        json.endObject();
    }
    json.endArray();
    json.endObject();
    return json.finish();
}

std::string findingsText(const Project& project, const Plan& plan,
                         const std::vector<Finding>& findings, LengthStyle style,
                         const Language& language) {
    if (findings.empty())
        return told(text("Nothing to heed."), language) + "\n";
    std::string text;
    for (const Finding& finding : findings) {
        const FindingText words = describe(finding, project, plan, style);
        const auto line = [&](const Phrase& phrase) { text += told(phrase, language) + "\n"; };
        line(phrase("%1: %2", words.severity, words.place));
        line(phrase("  %1", words.sentence));
        line(phrase("  Why: %1", words.reason));
        line(phrase("  Rule: %1", words.source.words()));
        text += '\n';
    }
    text.pop_back();
    return text;
}

} // namespace frontwright
