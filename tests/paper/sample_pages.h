#pragma once

#include "core/sheets/sheets.h"

#include <QByteArray>
#include <QTemporaryDir>

#include <iosfwd>
#include <string>
#include <vector>

namespace frontwright::testing {

/// One sample's templates on one paper.
struct OnPaper {
    std::string sample;
    std::string paper;
    Orientation orientation = Orientation::Portrait;
};
/// Every sample on A4 and Letter, upright and lying.
std::vector<OnPaper> allOnPaper();
std::string nameOf(const OnPaper&);
std::ostream& operator<<(std::ostream&, const OnPaper&);

std::vector<Page> pagesOf(const OnPaper&);
/// The pages as a PDF; fails the running test where there is none.
QByteArray pdfBytes(const std::vector<Page>&);

/// A PDF on disk for as long as it is in scope.
class PdfFile {
public:
    explicit PdfFile(const QByteArray& bytes);
    [[nodiscard]] QString path() const;

private:
    QTemporaryDir m_folder;
};

} // namespace frontwright::testing
