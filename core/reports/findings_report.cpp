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
        json.text(key(finding.code));
        json.key("severity");
        json.text(key(finding.severity));
        json.key("where");
        json.text(text.place);
        json.key("sentence");
        json.text(text.sentence);
        json.key("reason");
        json.text(text.reason);
        json.key("source");
        json.text(text.source.title);
        json.endObject();
    }
    json.endArray();
    json.endObject();
    return json.finish();
}

std::string findingsText(const Project& project, const Plan& plan,
                         const std::vector<Finding>& findings, LengthStyle style) {
    if (findings.empty())
        return "Nothing to heed.\n";
    std::string text;
    for (const Finding& finding : findings) {
        const FindingText words = describe(finding, project, plan, style);
        text += words.severity + ": " + words.place + "\n  " + words.sentence +
                "\n  Why: " + words.reason + "\n  Rule: " + words.source.title + "\n\n";
    }
    text.pop_back();
    return text;
}

} // namespace frontwright
