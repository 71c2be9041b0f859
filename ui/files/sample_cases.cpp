#include "ui/files/sample_cases.h"

#include "core/documents/document.h"

#include <QFile>

// A static library's resources have to be asked for, outside any namespace.
static void loadSamples() {
    Q_INIT_RESOURCE(samples);
}

namespace frontwright {

QStringList sampleFileNames() {
    QStringList names;
    for (const char* name :
         {"glaze-chest", "plan-chest", "first-try", "linen-cupboard", "tool-cabinet",
          "shell-cabinet", "binding-bench", "sink-base", "writing-chest"})
        names << QLatin1String(name) + QStringLiteral(".frontwright");
    return names;
}

SampleCase readSample(const QString& fileName) {
    loadSamples();
    QFile file(QStringLiteral(":/samples/") + fileName);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("A sample case is missing: %s", qPrintable(fileName));
    auto project = readDocument(file.readAll().toStdString());
    if (!project.ok())
        qFatal("%s: %s", qPrintable(fileName), project.error().sentence().english().c_str());
    return {fileName, std::move(project).value()};
}

} // namespace frontwright
