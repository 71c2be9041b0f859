#pragma once

#include <QWidget>

#include <functional>

class QToolButton;

namespace frontwright {

/// A heading that opens and closes what stands below it. The content is made when it is needed for
/// the first time, so that a window with many folds is ready at once.
class Fold : public QWidget {
    Q_OBJECT
public:
    using Maker = std::function<QWidget*()>;
    /// `name` is the fold's stable name, for settings; not shown.
    Fold(const QString& name, const QString& title, Maker, QWidget* parent = nullptr);

    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] bool isOpen() const { return m_open; }
    void open();
    void close();
    /// Makes the content where the fold is open and has none yet. Whoever hides folds calls it when
    /// it shows one; the maker's click does so by itself.
    void make();
    /// nullptr until it was made.
    [[nodiscard]] QWidget* content() const { return m_content; }
    /// A few words beside the title while it is closed: what it holds at present.
    void setSummary(const QString& text);

Q_SIGNALS:
    void made();    ///< there is a content now
    void toggled(); ///< the maker opened or closed it

protected:
    void changeEvent(QEvent*) override;

private:
    void showState();

    QString m_name;
    QString m_title;
    QString m_summary;
    Maker m_maker;
    QToolButton* m_heading;
    QWidget* m_content = nullptr;
    bool m_open = false;
};

} // namespace frontwright
