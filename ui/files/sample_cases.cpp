#include "ui/files/sample_cases.h"

#include "core/documents/document.h"

#include <QFile>

// A static library's resources have to be asked for, outside any namespace.
static void loadSamples() {
    Q_INIT_RESOURCE(samples);
}

namespace frontwright {

std::vector<SampleCase> sampleCases() {
    loadSamples();
    std::vector<SampleCase> all;
    for (const char* name :
         {"glaze-chest", "plan-chest", "first-try", "linen-cupboard", "tool-cabinet",
          "shell-cabinet", "binding-bench", "sink-base", "writing-chest"}) {
        const QString fileName = QLatin1String(name) + QStringLiteral(".frontwright");
        QFile file(QStringLiteral(":/samples/") + fileName);
        if (!file.open(QIODevice::ReadOnly))
            qFatal("A sample case is missing: %s", name);
        auto project = readDocument(file.readAll().toStdString());
        if (!project.ok())
            qFatal("%s: %s", name, project.error().sentence().english().c_str());
        all.push_back({fileName, std::move(project).value()});
    }
    return all;
}

} // namespace frontwright
