#pragma once

#include "ui/session/session.h"

#include <QDialog>

class QLabel;
class QTabWidget;

namespace frontwright {

/// The catalogue as tables, one for each kind; what is changed or added becomes the case's own, as
/// undoable steps.
class OwnEntriesDialog : public QDialog {
    Q_OBJECT
public:
    explicit OwnEntriesDialog(Session&, QWidget* parent = nullptr);

private:
    void addScrews();
    void addBolts();
    void addHandles();
    void addFittings();
    void addRunners();
    void addSpecies();

    Session& m_session;
    QTabWidget* m_tabs;
    QLabel* m_message;
};

} // namespace frontwright
