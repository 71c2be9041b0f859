#pragma once

#include "ui/help/help_browser.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QTreeWidget;
class QTreeWidgetItem;

namespace frontwright {

/// The help beside the work: contents and search at the left, the page at the right, back and
/// forward. Esc closes it.
class HelpWindow : public QWidget {
    Q_OBJECT
public:
    HelpWindow(std::function<QString()> actions, QWidget* parent);

    void showTopic(const QString& topic);
    [[nodiscard]] QString topic() const;
    [[nodiscard]] HelpBrowser& browser() { return *m_browser; }
    [[nodiscard]] QTreeWidget& contents() { return *m_contents; }
    [[nodiscard]] QLineEdit& search() { return *m_search; }

protected:
    void keyPressEvent(QKeyEvent*) override;

private:
    QLayout* bar();    ///< back, forward, search
    QWidget* places(); ///< contents, or what was found
    void listen();
    void fillContents();
    void fillFound();
    void openItem(const QTreeWidgetItem*);
    void followPage(const QString& topic);

    HelpBrowser* m_browser;
    QTreeWidget* m_contents;
    QLineEdit* m_search;
    QLabel* m_found;
};

} // namespace frontwright
