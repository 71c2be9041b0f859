#pragma once

#include "core/drawings/plain_marks.h"
#include "ui/files/sample_cases.h"
#include "ui/look/theme.h"
#include "ui/session/session.h"

#include <QAbstractButton>

#include <memory>
#include <optional>

namespace frontwright {

/// A sample case as a button: its elevation drawn small, its title, what there is to see in it. Its
/// document is read when it is drawn, or wanted sooner; until then it has its file's name.
class SampleCard : public QAbstractButton {
    Q_OBJECT
public:
    explicit SampleCard(QString fileName, QWidget* parent = nullptr);

    [[nodiscard]] const SampleCase& sample();
    [[nodiscard]] bool isRead() const { return m_sample.has_value(); }
    /// Works out the picture; until then the card shows an empty sheet.
    void draw(const Catalogue& programs);
    [[nodiscard]] bool isDrawn() const { return m_work != nullptr; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void paintCase(QPainter& painter, const QRectF& sheet, Theme theme) const;

    QString m_fileName;
    std::optional<SampleCase> m_sample; ///< once it was read
    std::shared_ptr<const Work> m_work;
    PlainMarks m_marks; ///< without words and hidden edges, which would be too small
};

} // namespace frontwright
