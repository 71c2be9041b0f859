// From the window's pages to what a print system receives: through a scheduler of our own, where
// one is installed.

#include "ui/paper/printing.h"

#include "tests/ui/paper/private_cups.h"

#include <QFile>
#include <QPrinter>
#include <QPrinterInfo>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <memory>

namespace frontwright::testing {
namespace {

/// A page with a line of 100 mm.
Page pageOf(double width, double height) {
    Page page;
    page.width = width;
    page.height = height;
    page.drawing.extent = {PointMm(0, 0), PointMm(width, height)};
    page.drawing.marks.push_back(
        {Layer::CheckBar, LineMark{PointMm(20, 20), PointMm(120, 20)}, {}});
    return page;
}

const QString printerName = QStringLiteral("Shop");

/// One scheduler for all: libcups asks once for its address.
class PrintPath : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        cups = std::make_unique<PrivateCups>();
        if (cups->runs())
            cups->addPrinter(printerName);
    }
    static void TearDownTestSuite() { cups.reset(); }
    void SetUp() override {
        if (!cups->runs())
            GTEST_SKIP() << cups->why();
        if (!QPrinterInfo::availablePrinterNames().contains(printerName))
            GTEST_SKIP() << "this build of Qt does not see the scheduler's printer";
    }
    /// What arrived of them.
    static std::vector<PrivateCups::Job> print(const std::vector<Page>& pages) {
        const std::size_t before = cups->jobs().size();
        QPrinter printer(QPrinter::HighResolution);
        printer.setPrinterName(printerName);
        preparePrinter(printer, pages.front(), QStringLiteral("templates"));
        EXPECT_EQ(printPages(printer, pages), std::nullopt);
        auto jobs = cups->jobs();
        jobs.erase(jobs.begin(), jobs.begin() + static_cast<std::ptrdiff_t>(before));
        return jobs;
    }
    static std::unique_ptr<PrivateCups> cups;
};
std::unique_ptr<PrivateCups> PrintPath::cups;

/// Of the first page, in whole points: "595 842".
std::string mediaBox(const QByteArray& pdf) {
    static const QRegularExpression box(
        QStringLiteral("/MediaBox \\[0 0 (\\d+)(?:\\.0+)? (\\d+)(?:\\.0+)?\\]"));
    const auto found = box.match(QString::fromLatin1(pdf));
    return (found.captured(1) + QLatin1Char(' ') + found.captured(2)).toStdString();
}

TEST_F(PrintPath, AsksForNoScalingOneSideAndItsPaper) {
    const auto jobs = print({pageOf(210, 297)});
    ASSERT_EQ(jobs.size(), 1U);
    EXPECT_TRUE(jobs[0].attributes.contains("print-scaling"));
    EXPECT_TRUE(jobs[0].attributes.contains("none"));
    EXPECT_TRUE(jobs[0].attributes.contains("one-sided"));
    EXPECT_TRUE(jobs[0].attributes.contains("A4"));
    EXPECT_EQ(mediaBox(jobs[0].file), "595 842");
}

TEST_F(PrintPath, SendsUprightAndLandscapePagesAsTwoJobs) {
    const auto jobs = print({pageOf(215.9, 279.4), pageOf(279.4, 215.9), pageOf(215.9, 279.4)});
    ASSERT_EQ(jobs.size(), 2U);
    EXPECT_EQ(jobs[0].file.count("/Type /Page\n"), 2);
    EXPECT_EQ(jobs[1].file.count("/Type /Page\n"), 1);
    EXPECT_EQ(mediaBox(jobs[0].file), "612 792");
    EXPECT_EQ(mediaBox(jobs[1].file), "792 612");
}

TEST_F(PrintPath, TakesAPieceOfARollAsAPaperOfItsOwn) {
    const auto jobs = print({pageOf(610, 1500)});
    ASSERT_EQ(jobs.size(), 1U);
    EXPECT_EQ(mediaBox(jobs[0].file), "1729 4252");
    EXPECT_TRUE(jobs[0].attributes.contains("Custom.610x1500mm")); // with its unit
}

// --- What needs no scheduler.

TEST(PaperMatch, TellsTheSameATurnedAndAnotherPaper) {
    const QPageSize a4(QPageSize::A4);
    const QPageLayout upright(a4, QPageLayout::Portrait, QMarginsF());
    const QPageLayout lying(a4, QPageLayout::Landscape, QMarginsF());
    const QPageLayout letter(QPageSize(QPageSize::Letter), QPageLayout::Portrait, QMarginsF());
    EXPECT_EQ(paperMatch(upright, pageOf(210, 297)), PaperMatch::Same);
    EXPECT_EQ(paperMatch(lying, pageOf(297, 210)), PaperMatch::Same);
    EXPECT_EQ(paperMatch(lying, pageOf(210, 297)), PaperMatch::Turned);
    EXPECT_EQ(paperMatch(letter, pageOf(210, 297)), PaperMatch::Differs);
    EXPECT_EQ(paperMatch(upright, pageOf(210, 279.4)), PaperMatch::Differs);
}

TEST(Jobs, HoldPagesOfOneSizeInTheirOrder) {
    const std::vector<Page> pages{pageOf(210, 297), pageOf(297, 210), pageOf(210, 297),
                                  pageOf(610, 900)};
    const std::vector<std::vector<std::size_t>> expected{{0, 2}, {1}, {3}};
    EXPECT_EQ(jobsOf(pages), expected);
    EXPECT_TRUE(jobsOf({}).empty());
}

TEST(PrintPages, IntoAFileAreAllInOne) {
    const QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("all.pdf")));
    const std::vector<Page> pages{pageOf(210, 297), pageOf(297, 210), pageOf(210, 297)};
    preparePrinter(printer, pages.front(), QStringLiteral("templates"));
    EXPECT_FALSE(printPages(printer, pages));
    QFile file(folder.filePath(QStringLiteral("all.pdf")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray pdf = file.readAll();
    EXPECT_EQ(pdf.count("/Type /Page\n"), 3);
    EXPECT_TRUE(pdf.contains("[0 0 842")) << mediaBox(pdf);
}

TEST(PrintPages, StopWhereThePrinterIsSetToAnotherPaper) {
    const QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("none.pdf")));
    const std::vector<Page> pages{pageOf(210, 297)};
    preparePrinter(printer, pages.front(), QStringLiteral("templates"));
    printer.setPageSize(QPageSize(QPageSize::Letter)); // as a driver's dialog does
    const auto failed = printPages(printer, pages);
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->what.english().find("another paper"), std::string::npos);
    EXPECT_FALSE(QFile::exists(folder.filePath(QStringLiteral("none.pdf"))));
}

} // namespace
} // namespace frontwright::testing
