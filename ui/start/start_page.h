#pragma once

#include "ui/start/sample_card.h"

#include <QScrollArea>
#include <QStringList>

class QGridLayout;
class QPushButton;
class QVBoxLayout;

namespace frontwright {

/// What is shown while no case is open: what to do first, the recent cases, the samples drawn
/// small. Their pictures are drawn one after the other once the page is there.
class StartPage : public QScrollArea {
    Q_OBJECT
public:
    StartPage(Catalogue programs, QWidget* parent = nullptr);

    /// Names only: nothing looks at the disk.
    void showRecent(const QStringList& paths);
    /// Offers the way back to a case that is open; empty: there is none.
    void leadBack(const QString& caseName);

    [[nodiscard]] const std::vector<SampleCard*>& samples() const { return m_samples; }

Q_SIGNALS:
    void newWanted();
    void backWanted();
    void openWanted();
    void recentWanted(const QString& path);
    void sampleWanted(const frontwright::SampleCase& sample);

protected:
    void showEvent(QShowEvent*) override;
    void resizeEvent(QResizeEvent*) override;

private:
    QWidget* beginnings();
    QWidget* sampleRow();
    void layCards();
    void drawNext();

    Catalogue m_programs;
    QVBoxLayout* m_recent = nullptr;
    QPushButton* m_back = nullptr;
    QGridLayout* m_cards = nullptr;
    int m_columns = 0;
    std::vector<SampleCard*> m_samples;
};

} // namespace frontwright
