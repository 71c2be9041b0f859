// Speed and memory of the window, each beside what it is measured against in the same run.

#include "core/documents/document.h"
#include "core/sheets/sheets.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/plan/small_case.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/look/theme.h"
#include "ui/paper/pdf.h"
#include "ui/paper/surface.h"
#include "ui/rendering/look_view.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QBuffer>
#include <QHashSeed>
#include <QJsonDocument>
#include <QPaintEvent>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <QTest>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <fstream>

namespace frontwright::testing {
namespace {

class FilledWidget : public QWidget {
protected:
    void paintEvent(QPaintEvent* event) override {
        QPainter painter(this);
        painter.fillRect(event->rect(), Qt::darkYellow);
    }
};

constexpr QSize frameSize(1600, 1000);

void bareFrame(benchmark::State& state) {
    FilledWidget widget;
    widget.resize(frameSize);
    widget.show();
    QApplication::processEvents();
    for (auto _ : state)
        widget.repaint();
}
BENCHMARK(bareFrame)->Unit(benchmark::kMillisecond);

/// 1 000 openings whose fronts move in the room's air.
Project largeCase() {
    Project project = banks(25, 40);
    project.air = meters(9, 6, 11);
    return project;
}

/// Drags a rail in the middle of the case: from the mouse's move to the repainted frame, recompute
/// included. Counts the worst of the frames too, in milliseconds.
void dragged(benchmark::State& state, ElevationView& view, const Session& session) {
    const FrontPlan& front = session.plan().fronts[517];
    const MemberPlan& rail = session.plan().members[front.neighbours.bottom.member];
    const QPointF mm(front.rect.centre().x.inMillimetres(), rail.rect.centre().y.inMillimetres());
    const QPoint at = view.mapFromScene(mm);
    QTest::mousePress(view.viewport(), Qt::LeftButton, {}, at);
    int step = 0;
    double worst = 0;
    for (auto _ : state) {
        const auto begun = std::chrono::steady_clock::now();
        QTest::mouseMove(view.viewport(), at + QPoint(0, 12 + (++step % 9)));
        QApplication::processEvents();
        const std::chrono::duration<double, std::milli> taken =
            std::chrono::steady_clock::now() - begun;
        worst = std::max(worst, taken.count());
    }
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, at);
    state.counters["worst"] = worst;
}

constexpr int dragSteps = 300;

/// Targets: at most 3 times bareFrame, the worst under 16 ms.
void dragFrame(benchmark::State& state) {
    Session session(builtInCatalogue());
    if (session.start(largeCase()))
        state.SkipWithError("the case can't be planned");
    ElevationView view(session);
    view.resize(frameSize);
    view.show();
    view.fit();
    QApplication::processEvents();
    dragged(state, view, session);
}
BENCHMARK(dragFrame)->Iterations(dragSteps)->Unit(benchmark::kMillisecond);

/// The same in the whole window, with the panels that follow the case.
void dragFrameInWindow(benchmark::State& state) {
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
    MainWindow window(builtInCatalogue(), settings);
    if (window.session().start(largeCase()))
        state.SkipWithError("the case can't be planned");
    window.resize(frameSize);
    window.show();
    QApplication::processEvents();
    window.elevation().fit();
    QApplication::processEvents();
    dragged(state, window.elevation(), window.session());
}
BENCHMARK(dragFrameInWindow)->Iterations(dragSteps)->Unit(benchmark::kMillisecond);

/// The look of 1 000 fronts: made anew and painted, each time with other reveals.
void lookFrame(benchmark::State& state) {
    Session session(builtInCatalogue());
    if (session.start(largeCase()))
        state.SkipWithError("the case can't be planned");
    LookView view(session);
    view.resize(frameSize);
    view.show();
    QApplication::processEvents();
    using Reveals = LookView::Reveals;
    for (auto _ : state) {
        view.setReveals(view.reveals() == Reveals::AsPlanned ? Reveals::Exaggerated
                                                             : Reveals::AsPlanned);
        view.viewport()->repaint();
    }
}
BENCHMARK(lookFrame)->Unit(benchmark::kMillisecond);

void readWithQJson(benchmark::State& state) {
    const QByteArray bytes = QByteArray::fromStdString(writeDocument(banks(250, 40)));
    for (auto _ : state)
        benchmark::DoNotOptimize(QJsonDocument::fromJson(bytes));
}
BENCHMARK(readWithQJson)->Unit(benchmark::kMillisecond);

/// Target: no slower than readWithQJson.
void readDocumentOf10000(benchmark::State& state) {
    const std::string text = writeDocument(banks(250, 40));
    for (auto _ : state)
        benchmark::DoNotOptimize(readDocument(text));
}
BENCHMARK(readDocumentOf10000)->Unit(benchmark::kMillisecond);

std::vector<Page> twoHundredPages() {
    const auto work = workOut(banks(6, 6), builtInCatalogue()).value();
    SheetOptions options;
    options.paper = paperNamed("A4").value();
    const auto all = templates(work->project, work->plan, {});
    auto laid = pages(work->project, work->plan, all, options).value();
    std::vector<Page> result;
    while (result.size() < 200)
        result.push_back(laid[result.size() % laid.size()]);
    return result;
}

void pagesWithQPdfWriter(benchmark::State& state) {
    const auto pages = twoHundredPages();
    for (auto _ : state) {
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        writer.setPageSize(QPageSize(QPageSize::A4));
        QPainter painter(&writer);
        for (const Page& page : pages) {
            painter.save();
            paintPage(painter, page, 1200 / 25.4, 1200 / 25.4);
            painter.restore();
            writer.newPage();
        }
        painter.end();
    }
}
BENCHMARK(pagesWithQPdfWriter)->Unit(benchmark::kMillisecond);

/// Target: no slower than pagesWithQPdfWriter.
void templatePages(benchmark::State& state) {
    const auto pages = twoHundredPages();
    for (auto _ : state)
        benchmark::DoNotOptimize(pdfOf(pages, "bench"));
}
BENCHMARK(templatePages)->Unit(benchmark::kMillisecond);

/// Shows one window, painted, then ends: timed from outside as a whole process.
template<class Window>
int shownOnce(Window& window) {
    window.resize(1360, 900);
    window.show();
    window.repaint();
    QApplication::processEvents();
    return 0;
}

double residentMegabytes() {
    std::ifstream status("/proc/self/status");
    std::string word;
    while (status >> word)
        if (word == "VmRSS:") {
            double kilobytes = 0;
            status >> kilobytes;
            return kilobytes / 1024;
        }
    return 0;
}

} // namespace
} // namespace frontwright::testing

static const QString sample =
    QStringLiteral(FRONTWRIGHT_SOURCE_DIR "/samples/glaze-chest/glaze-chest.frontwright");

int main(int argc, char** argv) {
    QHashSeed::setDeterministicGlobalSeed();
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    const QStringList arguments = QApplication::arguments();
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
    if (arguments.contains(QStringLiteral("--bare"))) {
        QMainWindow window;
        return frontwright::testing::shownOnce(window);
    }
    if (arguments.contains(QStringLiteral("--sample"))) {
        frontwright::MainWindow window(frontwright::builtInCatalogue(), settings);
        window.openPath(sample);
        frontwright::testing::shownOnce(window);
        std::printf("resident with a sample open: %.0f MB (target: under 120)\n",
                    frontwright::testing::residentMegabytes());
        return 0;
    }
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
