#pragma once

#include "core/edits/presets.h"
#include "ui/session/session.h"

#include <QObject>

#include <vector>

class QWidget;

namespace frontwright {

class ActionList;

/// Presets by keyboard: kept from the selected front, given to all that are selected.
class PresetActions : public QObject {
    Q_OBJECT
public:
    PresetActions(Session&, ActionList&, QWidget& window);

private:
    void use();
    void keep();
    [[nodiscard]] std::vector<EditTarget> targets() const;

    Session& m_session;
    QWidget& m_window;
};

} // namespace frontwright
