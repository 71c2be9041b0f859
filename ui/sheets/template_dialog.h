#pragma once

#include "core/sheets/sheets.h"
#include "ui/session/session.h"
#include "ui/sheets/print_run.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QSettings;
class QSpinBox;
class QToolButton;

namespace frontwright {

class PageView;
class PrinterPanel;
class SheetChoice;
class SheetSetup;
class TileMapView;

/// Templates before they are printed: which sheets, on which paper, corrected for which printer,
/// every page as it will come out, always at 100 %. Saves or prints the very pages it shows.
class TemplateDialog : public QDialog {
    Q_OBJECT
public:
    TemplateDialog(const Session&, QSettings&, const QString& documentName,
                   QWidget* parent = nullptr);

    /// What is shown, and would be printed.
    [[nodiscard]] const std::vector<Page>& shownPages() const { return m_shown; }
    [[nodiscard]] int currentPage() const;
    void setAsk(AskHowToPrint ask) { m_ask = std::move(ask); }

private:
    QWidget* choiceColumn();
    QWidget* pageColumn();
    QWidget* setupColumn();
    void connectParts();

    [[nodiscard]] SheetOptions options(const Paper&) const;
    void layPages();
    void showWanted();
    void turnTo(int page);
    void showPlace();
    void tellCount();
    [[nodiscard]] int shownIndex(std::size_t laidIndex) const;

    void savePdf();
    [[nodiscard]] std::vector<Page> pagesForFile(bool& isCancelled);
    void print();
    void heed(const PrintOutcome&);
    void openTestPage();
    [[nodiscard]] bool printTestPage(const Page&, const QString& printer);
    void report(const QString& text);

    const Session& m_session;
    QSettings& m_settings;
    QString m_documentName;
    std::vector<Template> m_wanted; ///< templates that were laid
    Paper m_paper;
    std::vector<Page> m_laid;
    std::vector<Page> m_shown;
    std::vector<std::size_t> m_laidIndex; ///< of each shown page
    AskHowToPrint m_ask = askByDialog;
    SheetChoice* m_choice;
    TileMapView* m_map;
    SheetSetup* m_setup;
    PrinterPanel* m_printer;
    PageView* m_view;
    QLabel* m_pageLabel;
    QSpinBox* m_pageBox;
    QToolButton* m_back;
    QToolButton* m_forward;
    QLabel* m_count;
    QLabel* m_problem;
    QPushButton* m_save;
    QPushButton* m_print;
};

} // namespace frontwright
