// The file as such: the page's exact size, what viewers are asked, sound syntax, the same bytes.

#include "tests/paper/readers.h"
#include "tests/paper/sample_pages.h"

#include "ui/paper/pdf.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

class TemplateFile : public ::testing::TestWithParam<OnPaper> {};

TEST_P(TemplateFile, IsSoundAndAsksViewersNotToScale) {
    const PdfFile file(pdfBytes(pagesOf(GetParam())));
    const Printed check =
        printedBy(QStringLiteral("qpdf"), {QStringLiteral("--check"), file.path()});
    EXPECT_EQ(check.exit, 0) << check.errors.toStdString();
    EXPECT_TRUE(check.out.contains("No syntax or stream encoding errors found"))
        << check.out.toStdString();
    const Printed plain =
        printedBy(QStringLiteral("qpdf"),
                  {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"), file.path(),
                   QStringLiteral("-")});
    EXPECT_EQ(plain.exit, 0);
    EXPECT_TRUE(plain.out.startsWith("%PDF-1.7"));
    for (const char* asked : {"/ViewerPreferences", "/PrintScaling /None",
                              "/PickTrayByPDFSize true", "/Duplex /Simplex"})
        EXPECT_TRUE(plain.out.contains(asked)) << asked;
    EXPECT_FALSE(plain.out.contains("/CreationDate"));
}

TEST_P(TemplateFile, HasPagesOfExactlyThePapersSize) {
    const auto all = pagesOf(GetParam());
    const PdfFile file(pdfBytes(all));
    const auto read = pagesReadByMupdf(file.path());
    ASSERT_EQ(read.size(), all.size());
    const Paper paper = paperNamed(GetParam().paper).value();
    const bool lies = GetParam().orientation == Orientation::Landscape;
    const double width = (lies ? paper.height : paper.width).inMillimetres();
    const double height = (lies ? paper.width : paper.height).inMillimetres();
    for (const ReadPage& page : read) {
        EXPECT_NEAR(page.width, width, 0.0005);
        EXPECT_NEAR(page.height, height, 0.0005);
    }
    // Poppler: two decimals of a point.
    const Printed info =
        printedBy(QStringLiteral("pdfinfo"),
                  {QStringLiteral("-box"), QStringLiteral("-f"), QStringLiteral("1"),
                   QStringLiteral("-l"), QString::number(all.size()), file.path()});
    const QRegularExpression line(
        QStringLiteral("Page +\\d+ MediaBox: +(\\S+) +(\\S+) +(\\S+) +(\\S+)"));
    auto found = line.globalMatch(QString::fromUtf8(info.out));
    std::size_t count = 0;
    while (found.hasNext()) {
        const auto box = found.next();
        ++count;
        EXPECT_NEAR(box.captured(3).toDouble() - box.captured(1).toDouble(), width * 72 / 25.4,
                    0.0101);
        EXPECT_NEAR(box.captured(4).toDouble() - box.captured(2).toDouble(), height * 72 / 25.4,
                    0.0101);
    }
    EXPECT_EQ(count, all.size());
}

TEST_P(TemplateFile, HasTheSameBytesEachTime) {
    const QByteArray first = pdfBytes(pagesOf(GetParam()));
    const QByteArray second = pdfBytes(pagesOf(GetParam()));
    EXPECT_FALSE(first.isEmpty());
    EXPECT_TRUE(first == second);
}

TEST_P(TemplateFile, SaysOnEveryPageWhichPageItIs) {
    const auto all = pagesOf(GetParam());
    const PdfFile file(pdfBytes(all));
    const Printed text = printedBy(QStringLiteral("pdftotext"),
                                   {QStringLiteral("-raw"), file.path(), QStringLiteral("-")});
    const auto read = text.out.split('\f');
    ASSERT_EQ(static_cast<std::size_t>(read.size()), all.size() + 1);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QByteArray words = read[static_cast<qsizetype>(i)].simplified();
        EXPECT_TRUE(words.contains(QByteArray("page " + QByteArray::number(i + 1) + " of " +
                                              QByteArray::number(all.size()))))
            << words.toStdString();
        EXPECT_TRUE(words.contains("100 mm")) << i;
    }
}

INSTANTIATE_TEST_SUITE_P(EverySample, TemplateFile, ::testing::ValuesIn(allOnPaper()),
                         [](const auto& given) { return nameOf(given.param); });

TEST(TemplatePdf, OfNoPagesIsRefused) {
    const auto pdf = pdfOf({}, "nothing");
    ASSERT_FALSE(pdf.ok());
    EXPECT_NE(pdf.error().sentence().english().find("no page"), std::string::npos);
}

TEST(TemplatePdf, HoldsPagesOfDifferentSizes) {
    std::vector<Page> all = pagesOf({"plan-chest", "A4", Orientation::Portrait});
    const std::vector<Page> lying = pagesOf({"plan-chest", "Letter", Orientation::Landscape});
    all.resize(1);
    all.push_back(lying.front());
    const PdfFile file(pdfBytes(all));
    const auto read = pagesReadByMupdf(file.path());
    ASSERT_EQ(read.size(), 2U);
    EXPECT_NEAR(read[0].width, 210, 0.0005);
    EXPECT_NEAR(read[0].height, 297, 0.0005);
    EXPECT_NEAR(read[1].width, 279.4, 0.0005);
    EXPECT_NEAR(read[1].height, 215.9, 0.0005);
}

} // namespace
} // namespace frontwright::testing
