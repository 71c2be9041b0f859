#pragma once

#include "ui/elevation/elevation_view.h"

class QLabel;

namespace frontwright {

/// Tells readers of the screen what has changed: what is selected now, with its size and what is
/// to be heeded there; and, when an edit changed them, how the findings stand.
class Announcer : public QObject {
    Q_OBJECT
public:
    /// `place` is the visible line that the words stand in.
    Announcer(Session&, ElevationView&, QLabel& place);

Q_SIGNALS:
    void said(const QString& words);

private:
    void tellSelection();
    void tellFindings();
    void say(const QString& words);

    Session& m_session;
    ElevationView& m_view;
    QLabel& m_place;
    std::vector<Finding> m_told;
};

/// "2 would ruin a part · 1 to know"; says so where there is nothing.
QString findingsSummary(const std::vector<Finding>&);

} // namespace frontwright
