#include "tests/ui/language/translation_file.h"

#include <QDir>
#include <QFile>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

namespace frontwright::testing {

namespace {

QStringList forms(QXmlStreamReader& xml) {
    QStringList told;
    QString whole;
    while (xml.readNext() != QXmlStreamReader::EndElement) {
        if (xml.isStartElement())
            told << xml.readElementText();
        else
            whole += xml.text();
    }
    return told.isEmpty() ? QStringList{whole} : told;
}

} // namespace

QStringList translationFiles(const QString& language) {
    const QDir folder(QStringLiteral(FRONTWRIGHT_SOURCE_DIR "/resources/translations/") + language);
    QStringList paths;
    for (const QString& name : folder.entryList({QStringLiteral("*.ts")}))
        paths << folder.filePath(name);
    return paths;
}

std::vector<TranslationEntry> entriesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    std::vector<TranslationEntry> entries;
    TranslationEntry entry;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == QLatin1String("name")) {
            entry.context = xml.readElementText();
        } else if (xml.name() == QLatin1String("message")) {
            entry.isCounted = xml.attributes().hasAttribute(QLatin1String("numerus"));
        } else if (xml.name() == QLatin1String("source")) {
            entry.source = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            entry.isUnfinished = xml.attributes().hasAttribute(QLatin1String("type"));
            entry.told = forms(xml);
            entries.push_back(entry);
        }
    }
    EXPECT_FALSE(xml.hasError()) << path.toStdString() << xml.errorString().toStdString();
    return entries;
}

} // namespace frontwright::testing
