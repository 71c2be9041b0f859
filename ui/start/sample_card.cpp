#include "ui/start/sample_card.h"

#include "core/drawings/elevation.h"
#include "ui/elevation/scene_rect.h"
#include "ui/language/data_names.h"
#include "ui/language/told.h"
#include "ui/paper/surface.h"

#include <QPainter>
#include <QPalette>

#include <algorithm>

namespace frontwright {

namespace {

constexpr double paperScale = 0.1;
constexpr int sheetEms = 25; ///< average letters across the sheet
constexpr int noteLines = 4;
constexpr double gap = 8;

} // namespace

SampleCard::SampleCard(QString fileName, QWidget* parent)
    : QAbstractButton(parent),
      m_fileName(std::move(fileName)) {
    setText(m_fileName);
    setAccessibleName(tr("Sample: %1").arg(m_fileName));
    setStatusTip(tr("Open a copy of this sample"));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

const SampleCase& SampleCard::sample() {
    if (m_sample)
        return *m_sample;
    m_sample = readSample(m_fileName);
    const QString title = toldName(m_sample->project.title);
    const QString note = toldName(m_sample->project.note);
    setText(title);
    setAccessibleName(tr("Sample: %1").arg(title));
    setAccessibleDescription(note);
    setToolTip(note);
    return *m_sample;
}

void SampleCard::draw(const Catalogue& programs) {
    auto work = workOut(sample().project, programs);
    if (!work.ok())
        return;
    m_work = std::move(work).value();
    ElevationOptions options;
    options.style = m_work->project.style;
    options.language = spokenLanguage();
    options.paperScale = paperScale;
    options.dimensions = Shown::No;
    options.holes = Shown::No;
    m_marks = plain(elevation(m_work->project, m_work->plan, options));
    m_marks.labels.clear();
    std::erase_if(m_marks.strokes,
                  [](const StrokeMark& stroke) { return stroke.layer == Layer::OpeningEdge; });
    update();
}

QSize SampleCard::sizeHint() const {
    const int width = fontMetrics().averageCharWidth() * sheetEms * 2;
    return {width, width * 3 / 4 + fontMetrics().lineSpacing() * (noteLines + 1) +
                       static_cast<int>(3 * gap)};
}

void SampleCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = themeOf(palette());
    const QRectF whole = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    const bool marked = hasFocus() || underMouse();
    painter.setPen(marked ? QPen(accentColour(theme), 2.5)
                          : QPen(palette().color(QPalette::Mid), 1));
    painter.setBrush(palette().color(isDown() ? QPalette::Button : QPalette::Base));
    painter.drawRoundedRect(whole, 4, 4);
    const double words = fontMetrics().lineSpacing() * (noteLines + 1) + gap;
    const QRectF sheet = whole.adjusted(gap, gap, -gap, -gap - words);
    painter.fillRect(sheet, sheetColour(theme));
    if (m_work)
        paintCase(painter, sheet, theme);
    if (!m_sample)
        return;
    QRectF text(sheet.left(), sheet.bottom() + gap, sheet.width(), words);
    painter.setPen(palette().color(QPalette::Text));
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.drawText(
        text, Qt::AlignLeft | Qt::AlignTop,
        fontMetrics().elidedText(this->text(), Qt::ElideRight, static_cast<int>(text.width())));
    text.setTop(text.top() + fontMetrics().lineSpacing());
    painter.setFont(font());
    painter.drawText(text, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                     accessibleDescription());
}

void SampleCard::paintCase(QPainter& painter, const QRectF& sheet, Theme theme) const {
    const QRectF outline = inScene(m_work->plan.outline);
    const double free = 0.86; // of the sheet; the rest is margin
    const double scale =
        free * std::min(sheet.width() / outline.width(), sheet.height() / outline.height());
    painter.save();
    painter.setClipRect(sheet);
    painter.translate(sheet.center());
    painter.scale(scale, -scale);
    painter.translate(-outline.center());
    painter.fillRect(outline, memberColour(theme));
    for (const FrontPlan& front : m_work->plan.fronts)
        painter.fillRect(inScene(front.rect), partColour(theme));
    paint(painter, m_marks, paperScale, theme);
    painter.restore();
}

} // namespace frontwright
