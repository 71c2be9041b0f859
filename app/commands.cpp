#include "app/commands.h"

#include "core/documents/document.h"
#include "core/drawings/elevation.h"
#include "core/drawings/plain_marks.h"
#include "core/drawings/rendering.h"
#include "core/reports/report.h"
#include "core/rules/rules.h"
#include "core/sheets/sheets.h"
#include "ui/files/built_in_catalogue.h"
#include "ui/files/revision.h"
#include "ui/files/save_file.h"
#include "ui/files/save_files.h"
#include "ui/paper/pdf.h"
#include "ui/paper/picture.h"
#include "ui/session/session.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <optional>
#include <utility>

namespace frontwright {

namespace {

using Outputs = std::vector<std::pair<QString, QByteArray>>;

Result<std::shared_ptr<const Work>> opened(const std::string& file) {
    const auto bytes = readFile(QString::fromStdString(file));
    if (!bytes.ok())
        return bytes.error();
    auto project =
        readDocument({bytes.value().constData(), static_cast<std::size_t>(bytes.value().size())});
    if (!project.ok()) {
        Error error = project.error();
        error.place = error.place.empty() ? Phrase(file) : phrase("%1, %2", file, error.place);
        return error;
    }
    auto work = workOut(std::move(project).value(), builtInCatalogue());
    if (!work.ok())
        return Error{file, work.error().sentence(), {}};
    return work;
}

void print(const std::string& text) {
    std::fwrite(text.data(), 1, text.size(), stdout);
}

/// What can be known to fail before the first output is written, so that none is where one fails.
std::optional<Error> refused(const std::string& path, const std::string& caseFile) {
    if (path.empty())
        return std::nullopt;
    const QFileInfo info(QString::fromStdString(path));
    const QFileInfo folder(info.absolutePath());
    if (!folder.isDir())
        return Error{path, text("its folder does not exist"),
                     text("make the folder or choose another one")};
    if (info.exists() && !info.isFile())
        return Error{path, text("is not a regular file"), text("choose another name")};
    if (!folder.isWritable() || (info.exists() && !info.isWritable()))
        return Error{path, text("it can't be written there"), text("choose another folder")};
    if (info.exists() &&
        info.canonicalFilePath() == QFileInfo(QString::fromStdString(caseFile)).canonicalFilePath())
        return Error{path, text("is the case file itself"), text("choose another name")};
    return std::nullopt;
}

int written(const Outputs& outputs) {
    const auto failed = writeFilesWhole(outputs);
    return failed ? failedWith(*failed) : exitWell;
}

/// "Front A2 · tile B1 · page 3 of 12" → "03-front-a2-tile-b1"
QString sheetFileName(std::size_t number, const std::string& pageLabel) {
    QString name = QString::fromStdString(pageLabel).toLower();
    name = name.left(name.lastIndexOf(QStringLiteral("page")));
    QString safe;
    for (const QChar c : name) {
        if (c.isLetterOrNumber() && c.unicode() < 128)
            safe += c;
        else if (!safe.isEmpty() && !safe.endsWith(u'-'))
            safe += u'-';
    }
    while (safe.endsWith(u'-'))
        safe.chop(1);
    return QStringLiteral("%1-%2.svg").arg(number, 3, 10, QLatin1Char('0')).arg(safe);
}

Result<SheetOptions> sheetOptions(const TemplatesCommand& command, const Project& project) {
    SheetOptions options;
    const std::string name = !command.paper.empty()                   ? command.paper
                             : project.style.unit == Unit::Millimetre ? "A4"
                                                                      : "Letter";
    auto paper = paperNamed(name);
    if (!paper.ok())
        return paper.error();
    options.paper = std::move(paper).value();
    options.orientation = command.orientation;
    options.overlap = command.overlap;
    options.documentName = QFileInfo(QString::fromStdString(command.file)).fileName().toStdString();
    options.revision = revisionOf(project);
    return options;
}

Result<Outputs> templateOutputs(const TemplatesCommand& command, const Work& work) {
    const auto options = sheetOptions(command, work.project);
    if (!options.ok())
        return options.error();
    const auto all = templates(work.project, work.plan, work.project.style);
    const auto laid = pages(work.project, work.plan, all, options.value());
    if (!laid.ok())
        return laid.error();
    Outputs outputs;
    if (!command.pdf.empty()) {
        auto pdf = pdfOf(laid.value(), options.value().documentName);
        if (!pdf.ok())
            return pdf.error();
        outputs.emplace_back(QString::fromStdString(command.pdf), std::move(pdf).value());
    }
    if (!command.marks.empty())
        outputs.emplace_back(QString::fromStdString(command.marks),
                             QByteArray::fromStdString(marksJson(laid.value())));
    if (!command.svgFolder.empty()) {
        const QDir folder(QString::fromStdString(command.svgFolder));
        for (std::size_t i = 0; i < laid.value().size(); ++i) {
            const Page& page = laid.value()[i];
            outputs.emplace_back(
                folder.filePath(sheetFileName(i + 1, page.label.english())),
                QByteArray::fromStdString(svg(page.drawing, page.label.english())));
        }
    }
    return outputs;
}

int windowPicture(const PictureCommand& command) {
    // Settings of its own: the picture does not depend on how somebody left the window.
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    MainWindow window(builtInCatalogue(), settings);
    if (const auto failed = window.file().open(QString::fromStdString(command.file)))
        return failedWith(*failed);
    window.show();
    QApplication::processEvents();
    const auto& fronts = window.session().plan().fronts;
    if (!fronts.empty())
        window.session().select(Selection::of(fronts.back().opening));
    QApplication::processEvents();
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    window.grab().save(&buffer, "PNG");
    return written({{QString::fromStdString(command.out), png}});
}

/// At a scale of the standard series at which the case fits an A3 sheet.
double pictureScale(const BoxMm& outline) {
    const double size = outline.sizes().maxCoeff();
    return size <= 600 ? 0.5 : size <= 1'500 ? 0.2 : size <= 3'000 ? 0.1 : 0.05;
}

Drawing drawn(const Work& work, PictureOf what) {
    if (what == PictureOf::Look || what == PictureOf::LookReveals) {
        const FrontPlaces places =
            what == PictureOf::Look
                ? placesAsPlanned(work.plan)
                : placesExaggerated(work.project, work.plan, exaggeratedReveals);
        return rendering(
            {work.project, *work.catalogue, work.plan, places, pictureScale(places.outline)});
    }
    ElevationOptions options;
    options.style = work.project.style;
    options.paperScale = pictureScale(toMm(work.plan.outline));
    return elevation(work.project, work.plan, options);
}

} // namespace

int failedWith(const Error& error) {
    std::fprintf(stderr, "%s\n", error.sentence().english().c_str());
    return exitUnusable;
}

int run(const CheckCommand& command) {
    const auto work = opened(command.file);
    if (!work.ok())
        return failedWith(work.error());
    const Work& w = *work.value();
    print(command.form == ReportForm::Json
              ? findingsJson(w.project, w.plan, w.findings, w.project.style)
              : findingsText(w.project, w.plan, w.findings, w.project.style));
    const bool grave = std::any_of(w.findings.begin(), w.findings.end(), [](const Finding& f) {
        return f.severity == Severity::Ruins || f.severity == Severity::WontWork;
    });
    return grave ? exitHeed : exitWell;
}

int run(const PlanCommand& command) {
    const auto work = opened(command.file);
    if (!work.ok())
        return failedWith(work.error());
    const Work& w = *work.value();
    print(command.form == ReportForm::Json ? planJson(w.project, w.plan, w.project.style)
                                           : planText(w.project, w.plan, w.project.style));
    return exitWell;
}

int run(const RulesCommand&) {
    print(rulesPage(builtInCatalogue()));
    return exitWell;
}

int run(const TemplatesCommand& command) {
    const auto work = opened(command.file);
    if (!work.ok())
        return failedWith(work.error());
    for (const std::string& path : {command.pdf, command.marks})
        if (const auto error = refused(path, command.file))
            return failedWith(*error);
    const auto outputs = templateOutputs(command, *work.value());
    if (!outputs.ok())
        return failedWith(outputs.error());
    const QString folder = QString::fromStdString(command.svgFolder);
    const bool isNewFolder = !folder.isEmpty() && !QDir(folder).exists();
    if (!folder.isEmpty() && !QDir().mkpath(folder))
        return failedWith(
            {command.svgFolder, text("the folder can't be made"), text("choose another one")});
    const int outcome = written(outputs.value());
    if (outcome != exitWell && isNewFolder)
        QDir().rmdir(folder); // only where it is empty
    return outcome;
}

int run(const PictureCommand& command) {
    if (const auto error = refused(command.out, command.file))
        return failedWith(*error);
    if (command.of == PictureOf::Window)
        return windowPicture(command);
    const auto work = opened(command.file);
    if (!work.ok())
        return failedWith(work.error());
    const Work& w = *work.value();
    const Drawing drawing = drawn(w, command.of);
    const QString out = QString::fromStdString(command.out);
    if (command.out.ends_with(".svg"))
        return written({{out, QByteArray::fromStdString(svg(drawing, w.project.title))}});
    const auto png = pngOf(drawing);
    return png.ok() ? written({{out, png.value()}}) : failedWith(png.error());
}

} // namespace frontwright
