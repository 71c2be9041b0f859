#include "ui/window/runner_columns.h"

#include "core/words/phrase.h"
#include "ui/window/entry_columns.h"

namespace frontwright {

namespace {

struct Columns {
    Q_DECLARE_TR_FUNCTIONS(frontwright::RunnerColumns)
public:
    /// In the order of RunnerForm.
    static QStringList forms() {
        return {tr("Clearances only"), tr("Wooden"), tr("Side-mounted"), tr("Under-mounted"),
                tr("Centre")};
    }
};

using Column = EntryColumn<RunnerKind>;

Column sizeOf(const QString& title, Length RunnerKind::*part) {
    return lengthColumn<RunnerKind>(title,
                                    [part](RunnerKind& kind) -> Length& { return kind.*part; });
}

Column maybeSizeOf(const QString& title, std::optional<Length> RunnerKind::*part) {
    return {title,
            [part](const RunnerKind& kind, Unit unit) {
                return kind.*part ? exact(*(kind.*part), unit) : std::string();
            },
            [part](RunnerKind& kind, const std::string& typed, Unit unit) -> std::optional<Error> {
                (kind.*part).reset();
                if (typed.empty())
                    return std::nullopt;
                const auto length = parseLength(typed, unit);
                if (!length.ok())
                    return length.error();
                kind.*part = length.value().length.length;
                return std::nullopt;
            }};
}

std::string written(const UprightSize& size, Unit unit) {
    return exact(size.width, unit) + " × " + exact(size.height, unit);
}

Result<UprightSize> readSize(const std::string& typed, Unit unit) {
    const QStringList parts = QString::fromStdString(typed).split(u'×');
    if (parts.size() != 2)
        return Error{{},
                     phrase("\"%1\" is not a width and a height", typed),
                     text("write it like 1 3/8 in × 1/2 in")};
    const auto width = parseLength(parts[0].trimmed().toStdString(), unit);
    if (!width.ok())
        return width.error();
    const auto height = parseLength(parts[1].trimmed().toStdString(), unit);
    if (!height.ok())
        return height.error();
    return UprightSize{width.value().length.length, height.value().length.length};
}

Column areaOf(const QString& title, std::optional<UprightSize> RunnerKind::*part) {
    return {title,
            [part](const RunnerKind& kind, Unit unit) {
                return kind.*part ? written(*(kind.*part), unit) : std::string();
            },
            [part](RunnerKind& kind, const std::string& typed, Unit unit) -> std::optional<Error> {
                (kind.*part).reset();
                if (typed.empty())
                    return std::nullopt;
                const auto size = readSize(typed, unit);
                if (!size.ok())
                    return size.error();
                kind.*part = size.value();
                return std::nullopt;
            }};
}

Column sectionColumn(const QString& title) {
    return {title, [](const RunnerKind& kind, Unit unit) { return written(kind.section, unit); },
            [](RunnerKind& kind, const std::string& typed, Unit unit) -> std::optional<Error> {
                const auto size = readSize(typed, unit);
                if (!size.ok())
                    return size.error();
                kind.section = size.value();
                return std::nullopt;
            }};
}

Column formColumn(const QString& title) {
    return {title,
            [](const RunnerKind& kind, Unit) {
                return Columns::forms().at(static_cast<int>(kind.form)).toStdString();
            },
            [](RunnerKind& kind, const std::string& chosen, Unit) -> std::optional<Error> {
                const auto form = Columns::forms().indexOf(QString::fromStdString(chosen));
                if (form < 0)
                    return Error{{}, text("there is no such form of runners"), {}};
                kind.form = static_cast<RunnerForm>(form);
                return std::nullopt;
            },
            Columns::forms()};
}

} // namespace

std::vector<Column> runnerColumns() {
    return {textColumn(Columns::tr("Name"), &RunnerKind::name),
            formColumn(Columns::tr("Form")),
            sizeOf(Columns::tr("At each side"), &RunnerKind::sideClearance),
            sizeOf(Columns::tr("Below"), &RunnerKind::clearanceBelow),
            sizeOf(Columns::tr("Above"), &RunnerKind::clearanceAbove),
            ratingColumn(Columns::tr("Rating")),
            lengthsColumn(Columns::tr("Stocked lengths"), &RunnerKind::lengths),
            maybeSizeOf(Columns::tr("Behind the box's face"), &RunnerKind::setback),
            sectionColumn(Columns::tr("Section")),
            sizeOf(Columns::tr("Top above box's lower edge"), &RunnerKind::top),
            maybeSizeOf(Columns::tr("For sides of"), &RunnerKind::forSides),
            maybeSizeOf(Columns::tr("Side tolerance"), &RunnerKind::tolerance),
            areaOf(Columns::tr("Notch in the back"), &RunnerKind::backNotch),
            areaOf(Columns::tr("Notch in the wall"), &RunnerKind::wallNotch),
            areaOf(Columns::tr("Clear zone"), &RunnerKind::clearZone),
            areaOf(Columns::tr("Kicker"), &RunnerKind::kicker),
            maybeSizeOf(Columns::tr("Guide's height"), &RunnerKind::guideHeight)};
}

} // namespace frontwright
