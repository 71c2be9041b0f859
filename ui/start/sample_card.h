#pragma once

#include "core/drawings/plain_marks.h"
#include "ui/files/sample_cases.h"
#include "ui/look/theme.h"
#include "ui/session/session.h"

#include <QAbstractButton>

#include <memory>

namespace frontwright {

/// A sample case as a button: its elevation drawn small, its title, what there is to see in it.
class SampleCard : public QAbstractButton {
    Q_OBJECT
public:
    explicit SampleCard(SampleCase sample, QWidget* parent = nullptr);

    [[nodiscard]] const SampleCase& sample() const { return m_sample; }
    /// Works out the picture; until then the card shows an empty sheet.
    void draw(const Catalogue& programs);
    [[nodiscard]] bool isDrawn() const { return m_work != nullptr; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void paintCase(QPainter& painter, const QRectF& sheet, Theme theme) const;

    SampleCase m_sample;
    std::shared_ptr<const Work> m_work;
    PlainMarks m_marks; ///< without words and hidden edges, which would be too small
};

} // namespace frontwright
