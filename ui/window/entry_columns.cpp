#include "ui/window/entry_columns.h"

#include "core/words/phrase.h"

#include <cmath>

namespace frontwright {

namespace {

struct Columns {
    Q_DECLARE_TR_FUNCTIONS(frontwright::EntryColumns)
public:
    /// In the order of GravityBasis.
    static QStringList bases() { return {tr("at 12 % moisture"), tr("ovendry"), tr("green")}; }
};

std::string joined(const std::vector<Length>& lengths, Unit unit) {
    std::string text;
    for (const Length length : lengths)
        text += (text.empty() ? "" : "; ") + exact(length, unit);
    return text;
}

Result<std::vector<Length>> lengthsIn(const std::string& typed, Unit unit) {
    std::vector<Length> lengths;
    for (const QString& one : QString::fromStdString(typed).split(u';', Qt::SkipEmptyParts)) {
        const auto length = parseLength(one.trimmed().toStdString(), unit);
        if (!length.ok())
            return length.error();
        lengths.push_back(length.value().length.length);
    }
    return lengths;
}

/// Without the noughts at its end.
std::string trimmed(std::string number) {
    number.erase(number.find_last_not_of('0') + 1);
    return number;
}

/// Point or comma; none where it is no plain number.
std::optional<double> numberIn(const std::string& typed) {
    bool isNumber = false;
    const double value = QString::fromStdString(typed).replace(u',', u'.').toDouble(&isNumber);
    return isNumber && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

} // namespace

EntryColumn<WoodScrew> rootColumn(const QString& title) {
    return {title,
            [](const WoodScrew& screw, Unit unit) {
                return screw.rootDiameter ? exact(*screw.rootDiameter, unit) : std::string();
            },
            [](WoodScrew& screw, const std::string& typed, Unit unit) -> std::optional<Error> {
                screw.rootDiameter.reset();
                if (typed.empty())
                    return std::nullopt;
                const auto length = parseLength(typed, unit);
                if (!length.ok())
                    return length.error();
                screw.rootDiameter = length.value().length.length;
                return std::nullopt;
            }};
}

EntryColumn<RunnerKind> ratingColumn(const QString& title) {
    return {title,
            [](const RunnerKind& runner, Unit) {
                return runner.rating ? exact(*runner.rating) : std::string();
            },
            [](RunnerKind& runner, const std::string& typed, Unit) -> std::optional<Error> {
                runner.rating.reset();
                if (typed.empty())
                    return std::nullopt;
                const auto mass = parseMass(typed);
                if (!mass.ok())
                    return mass.error();
                runner.rating = mass.value();
                return std::nullopt;
            }};
}

EntryColumn<HardwareForm> holesAcrossColumn(const QString& title) {
    return {title,
            [](const HardwareForm& form, Unit unit) {
                std::vector<Length> across;
                for (const FrontPoint& hole : form.holes)
                    across.push_back(hole.x);
                return joined(across, unit);
            },
            [](HardwareForm& form, const std::string& typed, Unit unit) -> std::optional<Error> {
                const auto across = lengthsIn(typed, unit);
                if (!across.ok())
                    return across.error();
                const Length height = form.holes.empty() ? Length() : form.holes.front().y;
                form.holes.resize(across.value().size(), FrontPoint{{}, height});
                for (std::size_t i = 0; i < form.holes.size(); ++i)
                    form.holes[i].x = across.value()[i];
                return std::nullopt;
            }};
}

EntryColumn<HardwareForm> holesUpColumn(const QString& title) {
    return {title,
            [](const HardwareForm& form, Unit unit) {
                std::vector<Length> heights;
                for (const FrontPoint& hole : form.holes)
                    heights.push_back(hole.y);
                const bool areAlike = std::all_of(heights.begin(), heights.end(),
                                                  [&](Length y) { return y == heights.front(); });
                if (areAlike && !heights.empty())
                    heights.resize(1);
                return joined(heights, unit);
            },
            [](HardwareForm& form, const std::string& typed, Unit unit) -> std::optional<Error> {
                const auto heights = lengthsIn(typed, unit);
                if (!heights.ok())
                    return heights.error();
                const std::size_t count = heights.value().size();
                if (count != 1 && count != form.holes.size())
                    return Error{{},
                                 text("there are not as many heights as holes"),
                                 text("write one for all, or one for each: 0; 0")};
                for (std::size_t i = 0; i < form.holes.size(); ++i)
                    form.holes[i].y = heights.value()[count == 1 ? 0 : i];
                return std::nullopt;
            }};
}

EntryColumn<Species> gravityColumn(const QString& title) {
    return {title,
            [](const Species& wood, Unit) {
                return wood.gravity
                           ? decimal(static_cast<double>(wood.gravity->thousandths) / 1000, 3)
                           : std::string();
            },
            [](Species& wood, const std::string& typed, Unit) -> std::optional<Error> {
                if (typed.empty()) {
                    wood.gravity.reset();
                    return std::nullopt;
                }
                const auto value = numberIn(typed);
                if (!value || *value < 0 || *value > 10)
                    return Error{{},
                                 phrase("\"%1\" is not a specific gravity", typed),
                                 text("write it like 0.5")};
                if (!wood.gravity)
                    wood.gravity.emplace();
                wood.gravity->thousandths = std::llround(*value * 1000);
                return std::nullopt;
            }};
}

EntryColumn<Species> gravityBasisColumn(const QString& title) {
    return {
        title,
        [](const Species& wood, Unit) {
            return wood.gravity
                       ? Columns::bases().at(static_cast<int>(wood.gravity->basis)).toStdString()
                       : std::string();
        },
        [](Species& wood, const std::string& chosen, Unit) -> std::optional<Error> {
            const auto basis = Columns::bases().indexOf(QString::fromStdString(chosen));
            if (!wood.gravity || basis < 0)
                return Error{
                    {}, text("no specific gravity is known of this wood"), text("type it first")};
            wood.gravity->basis = static_cast<GravityBasis>(basis);
            return std::nullopt;
        },
        Columns::bases()};
}

EntryColumn<Species> movementColumn(const QString& title,
                                    std::int64_t MovementCoefficients::*part) {
    return {title,
            [part](const Species& wood, Unit) {
                const auto& known = wood.figures.coefficients;
                return known && (*known).*part > 0
                           ? trimmed(decimal(static_cast<double>((*known).*part) / 1e6, 6))
                           : std::string();
            },
            [part](Species& wood, const std::string& typed, Unit) -> std::optional<Error> {
                if (typed.empty()) {
                    wood.figures.coefficients.reset();
                    return std::nullopt;
                }
                const auto value = numberIn(typed);
                if (!value || *value <= 0 || *value > 0.02)
                    return Error{{},
                                 phrase("\"%1\" is not a change of size per 1 % moisture", typed),
                                 text("write it like 0.00248; of no wood is it more than 0.02")};
                auto& known = wood.figures.coefficients;
                if (!known)
                    known.emplace();
                (*known).*part = std::llround(*value * 1e6);
                // What is not told of the other cut is taken to be the same.
                for (std::int64_t* other : {&known->radial, &known->tangential})
                    if (*other == 0)
                        *other = (*known).*part;
                known->source = {SourceKind::Maker, "the maker's own entry"};
                return std::nullopt;
            }};
}

} // namespace frontwright
