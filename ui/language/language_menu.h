#pragma once

#include <QMenu>
#include <QSettings>

#include <optional>

class QActionGroup;

namespace frontwright {

/// Chooses the language that the window speaks from its next start on.
class LanguageMenu : public QMenu {
    Q_OBJECT
public:
    LanguageMenu(QSettings& settings, QWidget* parent);

Q_SIGNALS:
    /// What the choice leads to, for the status bar.
    void chosen(const QString& sentence);

private:
    void add(const QString& text, const std::optional<QString>& code);

    QSettings& m_settings;
    QActionGroup* m_choices;
};

} // namespace frontwright
