#pragma once

#include "ui/panels/property_form.h"

#include <QScrollArea>

namespace frontwright {

/// What is selected, with every property to change: the case where nothing is, a member, one front
/// or several ("mixed").
class SelectionPanel : public QScrollArea {
    Q_OBJECT
public:
    explicit SelectionPanel(Session&, QWidget* parent = nullptr);

private:
    void show(const Selection&);
    void refresh();

    Session& m_session;
    QLabel* m_heading;
    std::vector<PropertyForm*> m_forMember;
    std::vector<PropertyForm*> m_forCase;  ///< the case's own
    std::vector<PropertyForm*> m_forFront; ///< a front's own
    std::vector<PropertyForm*> m_forBoth;  ///< a front's, or the case's default
};

} // namespace frontwright
