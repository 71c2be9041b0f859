#pragma once

#include "core/drawings/glossary.h"
#include "ui/look/theme.h"

#include <QImage>
#include <QTextBrowser>

#include <functional>

namespace frontwright {

/// Shows a page of the help; draws the glossary's drawings with the ordinary painter, in the
/// window's theme and at the size of its letters.
class HelpBrowser : public QTextBrowser {
    Q_OBJECT
public:
    /// `actions` gives the table of all actions in HTML.
    explicit HelpBrowser(std::function<QString()> actions, QWidget* parent = nullptr);

    QVariant loadResource(int type, const QUrl& name) override;

protected:
    void changeEvent(QEvent*) override;
    void doSetSource(const QUrl& name, QTextDocument::ResourceType type) override;

private:
    std::function<QString()> m_actions;
};

/// One word's drawing, `pixelsPerPaperMm` large.
QImage glossaryImage(Term, Theme, double pixelsPerPaperMm, double devicePixelRatio);

} // namespace frontwright
