#include "tests/paper/sample_pages.h"

#include "core/documents/document.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/files/save_file.h"
#include "ui/paper/pdf.h"
#include "ui/session/session.h"

#include <QFile>

#include <gtest/gtest.h>

#include <ostream>

namespace frontwright::testing {

namespace {

const char* const samples[] = {"glaze-chest", "plan-chest", "shell-cabinet", "first-try"};

std::shared_ptr<const Work> workOf(const std::string& sample) {
    const QString path = QStringLiteral(FRONTWRIGHT_SOURCE_DIR "/samples/%1/%1.frontwright")
                             .arg(QString::fromStdString(sample));
    const auto bytes = readFile(path);
    EXPECT_TRUE(bytes.ok()) << path.toStdString();
    auto project = readDocument(bytes.value().toStdString());
    EXPECT_TRUE(project.ok());
    auto work = workOut(std::move(project).value(), builtInCatalogue());
    EXPECT_TRUE(work.ok());
    return work.value();
}

} // namespace

std::vector<OnPaper> allOnPaper() {
    std::vector<OnPaper> all;
    for (const char* sample : samples)
        for (const char* paper : {"A4", "Letter"})
            for (const Orientation orientation : {Orientation::Portrait, Orientation::Landscape})
                all.push_back({sample, paper, orientation});
    return all;
}

std::string nameOf(const OnPaper& given) {
    std::string name = given.sample + "_" + given.paper +
                       (given.orientation == Orientation::Portrait ? "_portrait" : "_landscape");
    for (char& c : name)
        if (c == '-')
            c = '_';
    return name;
}

std::ostream& operator<<(std::ostream& out, const OnPaper& given) {
    return out << nameOf(given);
}

std::vector<Page> pagesOf(const OnPaper& given) {
    const auto work = workOf(given.sample);
    SheetOptions options;
    options.paper = paperNamed(given.paper).value();
    options.orientation = given.orientation;
    options.documentName = given.sample + ".frontwright";
    const auto all = templates(work->project, work->plan, work->project.style);
    auto laid = pages(work->project, work->plan, all, options);
    EXPECT_TRUE(laid.ok());
    return std::move(laid).value();
}

QByteArray pdfBytes(const std::vector<Page>& all) {
    auto pdf = pdfOf(all, "templates");
    EXPECT_TRUE(pdf.ok());
    return pdf.ok() ? std::move(pdf).value() : QByteArray();
}

PdfFile::PdfFile(const QByteArray& bytes) {
    QFile file(path());
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    EXPECT_EQ(file.write(bytes), bytes.size());
}

QString PdfFile::path() const {
    return m_folder.filePath(QStringLiteral("templates.pdf"));
}

} // namespace frontwright::testing
