#pragma once

#include "core/geometry/mm.h"

#include <QByteArray>
#include <QImage>
#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace frontwright::testing {

/// What a program of the system printed. Exit -1: it could not be started.
struct Printed {
    int exit = -1;
    QByteArray out;
    QByteArray errors;
};
Printed printedBy(const QString& program, const QStringList& arguments);

/// A circle as mupdf read it from its four arcs, in mm from the page's lower left corner.
struct ReadCircle {
    PointMm centre;
    double radius = 0;
};
/// What mupdf found on one page: `mutool draw -F trace`, exact to seven digits.
struct ReadPage {
    double width = 0;          ///< mm, of the MediaBox
    double height = 0;         ///< mm
    std::vector<PointMm> ends; ///< ends and corners of all lines
    std::vector<std::pair<PointMm, PointMm>> lines;
    std::vector<ReadCircle> circles;
};
std::vector<ReadPage> pagesReadByMupdf(const QString& pdf);

/// One page as poppler draws it in grey, page numbers from 1.
QImage pageDrawnByPoppler(const QString& pdf, int page, int dotsPerInch);

} // namespace frontwright::testing
