#pragma once

#include <QStringList>
#include <QUrl>

#include <vector>

namespace frontwright {

/// One heading of a page, with the words below it.
struct HelpSection {
    QString page;   ///< "findings"
    QString anchor; ///< empty for what stands before the first heading
    QString title;
    QString text; ///< without marks, for searching

    [[nodiscard]] QString topic() const {
        return anchor.isEmpty() ? page : page + QLatin1Char('#') + anchor;
    }
};

/// The pages in the order of the contents.
QStringList helpPages();
/// The page's text as it lies in the program, in the window's language where it is there, else in
/// English; empty where there is no such page.
QString helpHtml(const QString& page);
/// All sections in the window's language, page by page.
const std::vector<HelpSection>& helpSections();
/// Those that hold every word that was typed, in any case; titles first.
std::vector<HelpSection> foundInHelp(const QString& words);

/// The address of a topic within the program, and back.
QUrl helpUrl(const QString& topic);
QString topicAt(const QUrl&);

} // namespace frontwright
