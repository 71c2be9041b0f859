#include "ui/help/pages.h"

#include "ui/help/tell_tale_words.h"

#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <QTextDocumentFragment>

#include <algorithm>
#include <map>

// A static library's resources have to be asked for, outside any namespace.
static void loadHelpResources() {
    Q_INIT_RESOURCE(resources);
}

namespace frontwright {

namespace {

QString language() {
    return QLocale().name().section(u'_', 0, 0);
}

QString fileOf(const QString& page) {
    loadHelpResources();
    const QString inLanguage = QStringLiteral(":/help/%1/%2.html").arg(language(), page);
    return QFile::exists(inLanguage) ? inLanguage : QStringLiteral(":/help/en/%1.html").arg(page);
}

QString plainText(const QString& html) {
    return QTextDocumentFragment::fromHtml(html).toPlainText().simplified();
}

void addSections(std::vector<HelpSection>& sections, const QString& page) {
    static const QRegularExpression heading(
        QStringLiteral("<h1>(.*?)</h1>|<h3><a name=\"([^\"]*)\"></a>(.*?)</h3>"));
    const QString html = helpHtml(page);
    auto matches = heading.globalMatch(html);
    while (matches.hasNext()) {
        const auto match = matches.next();
        const qsizetype begin = match.capturedEnd();
        const qsizetype end = matches.hasNext() ? matches.peekNext().capturedStart() : html.size();
        const QString title = match.captured(1).isEmpty() ? match.captured(3) : match.captured(1);
        sections.push_back({page, match.captured(2), plainText(title),
                            plainText(html.sliced(begin, end - begin))});
    }
}

} // namespace

QStringList helpPages() {
    return {QStringLiteral("start"),    QStringLiteral("window"),   QStringLiteral("decisions"),
            QStringLiteral("numbers"),  QStringLiteral("findings"), QStringLiteral("keys"),
            QStringLiteral("printing"), QStringLiteral("glossary")};
}

QString helpHtml(const QString& page) {
    QFile file(fileOf(page));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return QString::fromUtf8(file.readAll())
        .replace(QLatin1String("<!--tell-tale sizes-->"), tellTaleTable());
}

const std::vector<HelpSection>& helpSections() {
    static std::map<QString, std::vector<HelpSection>> byLanguage;
    const auto [entry, isNew] = byLanguage.try_emplace(language());
    if (isNew)
        for (const QString& page : helpPages())
            addSections(entry->second, page);
    return entry->second;
}

std::vector<HelpSection> foundInHelp(const QString& words) {
    const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<HelpSection> found;
    if (wanted.isEmpty())
        return found;
    const auto holdsAll = [&](const QString& text) {
        return std::all_of(wanted.begin(), wanted.end(), [&](const QString& word) {
            return text.contains(word, Qt::CaseInsensitive);
        });
    };
    for (const HelpSection& section : helpSections())
        if (holdsAll(section.title + QLatin1Char(' ') + section.text))
            found.push_back(section);
    std::stable_partition(found.begin(), found.end(),
                          [&](const HelpSection& s) { return holdsAll(s.title); });
    return found;
}

QUrl helpUrl(const QString& topic) {
    QUrl url;
    url.setScheme(QStringLiteral("help"));
    url.setPath(topic.section(u'#', 0, 0) + QStringLiteral(".html"));
    if (topic.contains(u'#'))
        url.setFragment(topic.section(u'#', 1));
    return url;
}

QString topicAt(const QUrl& url) {
    QString page = url.path();
    if (page.endsWith(QLatin1String(".html")))
        page.chop(5);
    return url.hasFragment() ? page + QLatin1Char('#') + url.fragment() : page;
}

} // namespace frontwright
