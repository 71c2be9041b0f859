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

/// A rail in the middle of the case, held by the mouse.
class HeldRail {
public:
    HeldRail(ElevationView& view, const Session& session) : m_viewport(*view.viewport()) {
        const Plan& plan = session.plan();
        const FrontPlan& front = plan.fronts[517];
        const MemberPlan& rail = plan.members[front.neighbours.bottom.member];
        m_at = view.mapFromScene(
            QPointF(front.rect.centre().x.inMillimetres(), rail.rect.centre().y.inMillimetres()));
        QTest::mousePress(&m_viewport, Qt::LeftButton, {}, m_at);
    }
    ~HeldRail() { QTest::mouseRelease(&m_viewport, Qt::LeftButton, {}, m_at); }
    HeldRail(const HeldRail&) = delete;
    HeldRail& operator=(const HeldRail&) = delete;

    /// From the mouse's move to the repainted frame, recompute included.
    void drag() {
        QTest::mouseMove(&m_viewport, m_at + QPoint(0, 12 + (++m_step % 9)));
        QApplication::processEvents();
    }

private:
    QWidget& m_viewport;
    QPoint m_at;
    int m_step = 0;
};

constexpr int dragSteps = 300;

/// Times every frame.
void eachFrame(benchmark::State& state, ElevationView& view, const Session& session) {
    HeldRail rail(view, session);
    for (auto _ : state)
        rail.drag();
}

/// Times the longest of dragSteps frames, the first after the press among them.
void worstFrame(benchmark::State& state, ElevationView& view, const Session& session) {
    for (auto _ : state) {
        HeldRail rail(view, session);
        std::chrono::duration<double> worst{};
        for (int i = 0; i < dragSteps; ++i) {
            const auto begun = std::chrono::steady_clock::now();
            rail.drag();
            worst = std::max<std::chrono::duration<double>>(
                worst, std::chrono::steady_clock::now() - begun);
        }
        state.SetIterationTime(worst.count());
    }
}

using Timing = void (*)(benchmark::State&, ElevationView&, const Session&);

void onElevation(benchmark::State& state, Timing timing) {
    Session session(builtInCatalogue());
    if (session.start(largeCase()))
        return state.SkipWithError("the case can't be planned");
    ElevationView view(session);
    view.resize(frameSize);
    view.show();
    view.fit();
    QApplication::processEvents();
    timing(state, view, session);
}

void inWindow(benchmark::State& state, Timing timing) {
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
    MainWindow window(builtInCatalogue(), settings);
    if (window.session().start(largeCase()))
        return state.SkipWithError("the case can't be planned");
    window.resize(frameSize);
    window.show();
    QApplication::processEvents();
    window.elevation().fit();
    QApplication::processEvents();
    timing(state, window.elevation(), window.session());
}

/// Target: at most 3 times bareFrame.
void dragFrame(benchmark::State& state) {
    onElevation(state, eachFrame);
}
BENCHMARK(dragFrame)->Iterations(dragSteps)->Unit(benchmark::kMillisecond);

/// Target: under 16 ms.
void dragWorst(benchmark::State& state) {
    onElevation(state, worstFrame);
}
BENCHMARK(dragWorst)->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);

/// The same with the panels that follow the case.
void dragFrameInWindow(benchmark::State& state) {
    inWindow(state, eachFrame);
}
BENCHMARK(dragFrameInWindow)->Iterations(dragSteps)->Unit(benchmark::kMillisecond);

void dragWorstInWindow(benchmark::State& state) {
    inWindow(state, worstFrame);
}
BENCHMARK(dragWorstInWindow)->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);

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
