#pragma once

#include "core/results/result.h"
#include "core/sheets/sheets.h"

#include <QByteArray>

#include <span>
#include <string_view>

class QPagedPaintDevice;
class QPainter;

namespace frontwright {

/// Draws one page in black with a painter on a device of `unitsPerMmX/Y`; the page's lower left
/// corner lies `page.height` below the device's top. The one page model for screen, printer, PDF.
void paintPage(QPainter&, const Page&, double unitsPerMmX, double unitsPerMmY);

/// The pages as a PDF 1.7 at exactly 1:1: MediaBox exact, viewers are asked not to scale, not to
/// turn and to pick the tray by size. The same pages give the same bytes. Precondition: the
/// program set a deterministic hash seed at its start. Error: the writer's.
Result<QByteArray> pdfOf(std::span<const Page>, std::string_view title);

} // namespace frontwright
