#pragma once

#include <QObject>
#include <QSettings>

#include <optional>

class QAction;

namespace frontwright {

class CaseFile;
class Session;
enum class Theme : std::uint8_t;

/// The theme that the maker chose; nullopt: the desktop's.
std::optional<Theme> keptTheme(const QSettings& settings);

/// Keeps how the maker looks at cases from one start to the next: layers, theme, unit and
/// denominator. What was never chosen follows the document and the desktop. A new case is shown in
/// the unit that it was made in.
class ViewSettings : public QObject {
    Q_OBJECT
public:
    ViewSettings(QSettings&, Session&, const CaseFile&, QObject* parent);

    /// An action that is on or off; its objectName is its key. Restores it at once.
    void keepSwitch(QAction& action);
    /// An action that chooses unit or denominator.
    void keepStyleOf(const QAction& action);

private:
    void showStyle();

    QSettings& m_settings;
    Session& m_session;
};

} // namespace frontwright
