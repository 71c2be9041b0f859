#include "ui/language/language_menu.h"

#include "ui/language/language.h"

#include <QActionGroup>

namespace frontwright {

LanguageMenu::LanguageMenu(QSettings& settings, QWidget* parent)
    : QMenu(tr("La&nguage"), parent),
      m_settings(settings),
      m_choices(new QActionGroup(this)) {
    setObjectName(QStringLiteral("language"));
    add(tr("&As the desktop"), std::nullopt);
    for (const WindowLanguage& language : windowLanguages())
        add(u'&' + language.name, language.code);
}

void LanguageMenu::add(const QString& text, const std::optional<QString>& code) {
    QAction* action = m_choices->addAction(text);
    action->setCheckable(true);
    action->setChecked(keptLanguage(m_settings) == code);
    action->setStatusTip(tr("The program speaks this language from its next start on"));
    connect(action, &QAction::triggered, this, [this, code] {
        keepLanguage(m_settings, code);
        Q_EMIT chosen(tr("Frontwright changes its language when it is started again"));
    });
    addAction(action);
}

} // namespace frontwright
