#include "tests/paper/readers.h"

#include <QImageReader>
#include <QProcess>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace frontwright::testing {

namespace {

constexpr double mmPerPoint = 25.4 / 72;

double attribute(const QString& line, const QString& name) {
    const qsizetype at = line.indexOf(u' ' + name + QStringLiteral("=\""));
    if (at < 0)
        return std::nan("");
    const qsizetype from = at + name.size() + 3;
    return line.mid(from, line.indexOf(u'"', from) - from).toDouble();
}

std::vector<double> numbers(const QString& line, const QString& name) {
    const qsizetype at = line.indexOf(u' ' + name + QStringLiteral("=\""));
    std::vector<double> result;
    if (at < 0)
        return result;
    const qsizetype from = at + name.size() + 3;
    const auto words = line.mid(from, line.indexOf(u'"', from) - from).split(u' ');
    for (const QString& word : words)
        result.push_back(word.toDouble());
    return result;
}

/// Reads one stroked path after the other out of mupdf's trace, which has one element a line.
class Trace {
public:
    void read(const QString& line) {
        if (line.startsWith(QLatin1String("<page ")))
            startPage(line);
        else if (line.startsWith(QLatin1String("<stroke_path ")))
            startPath(line);
        else if (line.startsWith(QLatin1String("<moveto ")))
            moveTo(at(line, QStringLiteral("x"), QStringLiteral("y")));
        else if (line.startsWith(QLatin1String("<lineto ")))
            lineTo(at(line, QStringLiteral("x"), QStringLiteral("y")));
        else if (line.startsWith(QLatin1String("<curveto ")))
            curveTo(at(line, QStringLiteral("x3"), QStringLiteral("y3")));
        else if (line.startsWith(QLatin1String("</stroke_path")))
            endPath();
    }
    [[nodiscard]] std::vector<ReadPage> pages() && { return std::move(m_pages); }

private:
    void startPage(const QString& line) {
        const auto box = numbers(line, QStringLiteral("mediabox"));
        ReadPage page;
        if (box.size() == 4) {
            page.width = (box[2] - box[0]) * mmPerPoint;
            page.height = (box[3] - box[1]) * mmPerPoint;
        }
        m_pages.push_back(page);
    }
    void startPath(const QString& line) {
        m_inPath = true;
        m_matrix = numbers(line, QStringLiteral("transform"));
        m_matrix.resize(6);
        m_curveEnds.clear();
    }
    [[nodiscard]] PointMm at(const QString& line, const QString& x, const QString& y) const {
        if (!m_inPath)
            return {0, 0};
        const double u = attribute(line, x);
        const double v = attribute(line, y);
        // mupdf's device has its origin at the page's upper left corner, y down.
        const double right = m_matrix[0] * u + m_matrix[2] * v + m_matrix[4];
        const double down = m_matrix[1] * u + m_matrix[3] * v + m_matrix[5];
        return {right * mmPerPoint, m_pages.back().height - down * mmPerPoint};
    }
    void moveTo(const PointMm& p) {
        if (!m_inPath)
            return;
        m_pages.back().ends.push_back(p);
        m_last = p;
    }
    void lineTo(const PointMm& p) {
        if (!m_inPath)
            return;
        m_pages.back().ends.push_back(p);
        m_pages.back().lines.emplace_back(m_last, p);
        m_last = p;
    }
    void curveTo(const PointMm& p) {
        if (m_inPath)
            m_curveEnds.push_back(p);
        m_last = p;
    }
    void endPath() {
        m_inPath = false;
        if (m_curveEnds.size() != 4)
            return;
        BoxMm box;
        for (const PointMm& p : m_curveEnds)
            box.extend(p);
        m_pages.back().circles.push_back({box.center(), box.sizes().x() / 2});
    }

    std::vector<ReadPage> m_pages;
    std::vector<double> m_matrix;
    std::vector<PointMm> m_curveEnds;
    PointMm m_last{0, 0};
    bool m_inPath = false;
};

} // namespace

Printed printedBy(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    constexpr int patience = 300'000;
    if (!process.waitForStarted(patience) || !process.waitForFinished(patience))
        return {};
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

std::vector<ReadPage> pagesReadByMupdf(const QString& pdf) {
    const Printed printed =
        printedBy(QStringLiteral("mutool"),
                  {QStringLiteral("draw"), QStringLiteral("-F"), QStringLiteral("trace"), pdf});
    Trace trace;
    for (const QByteArray& line : printed.out.split('\n'))
        trace.read(QString::fromUtf8(line).trimmed());
    return std::move(trace).pages();
}

QImage pageDrawnByPoppler(const QString& pdf, int page, int dotsPerInch) {
    const QString number = QString::number(page);
    const Printed printed =
        printedBy(QStringLiteral("pdftoppm"),
                  {QStringLiteral("-r"), QString::number(dotsPerInch), QStringLiteral("-gray"),
                   QStringLiteral("-f"), number, QStringLiteral("-l"), number, pdf});
    // A sheet at 600 dots per inch is beyond what Qt reads unasked.
    QImageReader::setAllocationLimit(0);
    return QImage::fromData(printed.out, "PGM").convertToFormat(QImage::Format_Grayscale8);
}

} // namespace frontwright::testing
