#include "ui/window/fitting_columns.h"

#include "core/words/phrase.h"

namespace frontwright {

namespace {

struct Columns {
    Q_DECLARE_TR_FUNCTIONS(frontwright::FittingColumns)
public:
    /// In the order of FittingKind.
    static QStringList kinds() {
        return {tr("cup pull"), tr("edge pull"), tr("ring pull"), tr("label holder"), tr("lock")};
    }
    /// In the order of FrontFace.
    static QStringList faces() { return {tr("show face"), tr("back"), tr("top edge")}; }
};

template<class Kind>
EntryColumn<FittingForm> choiceColumn(const QString& title, const QStringList& names,
                                      Kind FittingForm::*part) {
    return {
        title,
        [names, part](const FittingForm& form, Unit) {
            return names.at(static_cast<int>(form.*part)).toStdString();
        },
        [names, part](FittingForm& form, const std::string& chosen, Unit) -> std::optional<Error> {
            if (const auto i = names.indexOf(QString::fromStdString(chosen)); i >= 0)
                form.*part = static_cast<Kind>(i);
            return std::nullopt;
        },
        names};
}

std::string joined(std::initializer_list<std::string> values) {
    std::string text;
    for (const std::string& value : values)
        text += (text.empty() ? "" : " | ") + value;
    return text;
}

template<class Part, class Say>
std::string listOf(const std::vector<Part>& parts, Say say) {
    std::string text;
    for (const Part& part : parts)
        text += (text.empty() ? "" : "; ") + say(part);
    return text;
}

/// One part as it was typed: perhaps a face, then lengths.
struct TypedPart {
    std::optional<FrontFace> face;
    std::vector<Length> lengths;
};

Error unreadable(const QString& part, Text how) {
    return {{}, phrase("\"%1\" cannot be read", part.trimmed().toStdString()), how};
}

Result<std::vector<TypedPart>> partsIn(const std::string& typed, Unit unit) {
    std::vector<TypedPart> parts;
    for (const QString& one : QString::fromStdString(typed).split(u';', Qt::SkipEmptyParts)) {
        TypedPart& part = parts.emplace_back();
        for (const QString& value : one.split(u'|')) {
            if (const auto face = Columns::faces().indexOf(value.trimmed()); face >= 0) {
                part.face = static_cast<FrontFace>(face);
                continue;
            }
            const auto length = parseLength(value.trimmed().toStdString(), unit);
            if (!length.ok())
                return length.error();
            part.lengths.push_back(length.value().length.length);
        }
    }
    return parts;
}

/// Hands each part to `make`; an error where it has not from `least` to `most` lengths.
template<class Make>
std::optional<Error> readParts(const std::string& typed, Unit unit, std::size_t least,
                               std::size_t most, Text how, Make make) {
    const auto parts = partsIn(typed, unit);
    if (!parts.ok())
        return parts.error();
    for (const TypedPart& part : parts.value())
        if (part.lengths.size() < least || part.lengths.size() > most)
            return unreadable(QString::fromStdString(typed), how);
    for (const TypedPart& part : parts.value())
        make(part);
    return std::nullopt;
}

std::string nameOf(FrontFace face) {
    return Columns::faces().at(static_cast<int>(face)).toStdString();
}

} // namespace

EntryColumn<FittingForm> fittingKindColumn(const QString& title) {
    return choiceColumn(title, Columns::kinds(), &FittingForm::kind);
}

EntryColumn<FittingForm> bearsOnColumn(const QString& title) {
    return choiceColumn(title, Columns::faces(), &FittingForm::bearsOn);
}

EntryColumn<FittingForm> screwPlacesColumn(const QString& title) {
    return {title,
            [](const FittingForm& form, Unit unit) {
                return listOf(form.screws, [unit](const FrontPoint& p) {
                    return joined({exact(p.x, unit), exact(p.y, unit)});
                });
            },
            [](FittingForm& form, const std::string& typed, Unit unit) {
                std::vector<FrontPoint> screws;
                const auto error =
                    readParts(typed, unit, 2, 2, text("write each like -30 mm | 0 mm"),
                              [&](const TypedPart& part) {
                                  screws.push_back({part.lengths[0], part.lengths[1]});
                              });
                if (!error)
                    form.screws = screws;
                return error;
            }};
}

EntryColumn<FittingForm> boresColumn(const QString& title) {
    return {title,
            [](const FittingForm& form, Unit unit) {
                return listOf(form.bores, [unit](const FittingBore& bore) {
                    return joined({nameOf(bore.from), exact(bore.at.x, unit),
                                   exact(bore.at.y, unit), exact(bore.diameter, unit)}) +
                           (bore.depth ? " | " + exact(*bore.depth, unit) : std::string());
                });
            },
            [](FittingForm& form, const std::string& typed, Unit unit) {
                std::vector<FittingBore> bores;
                const auto error = readParts(
                    typed, unit, 3, 4, text("write each like show face | 0 mm | 0 mm | 8 mm"),
                    [&](const TypedPart& part) {
                        bores.push_back({{part.lengths[0], part.lengths[1]},
                                         part.lengths[2],
                                         part.lengths.size() > 3 ? std::optional(part.lengths[3])
                                                                 : std::nullopt,
                                         part.face.value_or(FrontFace::Show)});
                    });
                if (!error)
                    form.bores = bores;
                return error;
            }};
}

EntryColumn<FittingForm> mortisesColumn(const QString& title) {
    return {title,
            [](const FittingForm& form, Unit unit) {
                return listOf(form.mortises, [unit](const FittingMortise& cut) {
                    return joined({nameOf(cut.from), exact(cut.place.left, unit),
                                   exact(cut.place.bottom, unit), exact(cut.place.right, unit),
                                   exact(cut.place.top, unit), exact(cut.depth, unit)});
                });
            },
            [](FittingForm& form, const std::string& typed, Unit unit) {
                std::vector<FittingMortise> mortises;
                const auto error = readParts(
                    typed, unit, 5, 5,
                    text("write each like back | -25 mm | -20 mm | 25 mm | 20 mm | 2 mm"),
                    [&](const TypedPart& part) {
                        const auto& l = part.lengths;
                        mortises.push_back(
                            {part.face.value_or(FrontFace::Back), {l[0], l[1], l[2], l[3]}, l[4]});
                    });
                if (!error)
                    form.mortises = mortises;
                return error;
            }};
}

EntryColumn<FittingForm> belowTopColumn(const QString& title) {
    return {title,
            [](const FittingForm& form, Unit unit) {
                return form.belowTop ? exact(*form.belowTop, unit) : std::string();
            },
            [](FittingForm& form, const std::string& typed, Unit unit) -> std::optional<Error> {
                form.belowTop.reset();
                if (typed.empty())
                    return std::nullopt;
                const auto length = parseLength(typed, unit);
                if (!length.ok())
                    return length.error();
                form.belowTop = length.value().length.length;
                return std::nullopt;
            }};
}

} // namespace frontwright
