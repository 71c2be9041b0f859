#pragma once

#include "core/sheets/sheets.h"
#include "ui/session/session.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QPushButton;
class QSettings;
class QSpinBox;

namespace frontwright {

class LengthField;
class PageView;

/// Templates before they are printed: paper, overlap, every page as it will come out, always at
/// 100 %. Saves a PDF or prints the very pages that are shown.
class TemplateDialog : public QDialog {
    Q_OBJECT
public:
    TemplateDialog(const Session&, QSettings&, const QString& documentName,
                   QWidget* parent = nullptr);

    [[nodiscard]] const std::vector<Page>& shownPages() const { return m_pages; }

private:
    void layPages();
    void turnTo(int page);
    void savePdf();
    void print();
    void report(const Error& error);
    [[nodiscard]] SheetOptions options() const;

    const Session& m_session;
    QSettings& m_settings;
    QString m_documentName;
    std::vector<Template> m_templates;
    std::vector<Page> m_pages;
    QComboBox* m_paper;
    QComboBox* m_orientation;
    LengthField* m_overlapField;
    WrittenLength m_overlap;
    PageView* m_view;
    QLabel* m_pageLabel;
    QSpinBox* m_pageBox;
    QLabel* m_problem;
    QPushButton* m_save;
    QPushButton* m_print;
};

} // namespace frontwright
