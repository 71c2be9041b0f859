#include "ui/files/built_in_catalogue.h"

#include "core/documents/document.h"

#include <QFile>
#include <QtGlobal>

#include <iterator>

// A static library's resources have to be asked for, outside any namespace.
static void loadResources() {
    Q_INIT_RESOURCE(resources);
}

namespace frontwright {

namespace {

template<class Entry>
void append(std::vector<Entry>& to, std::vector<Entry>& from) {
    to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

} // namespace

Catalogue builtInCatalogue() {
    loadResources();
    Catalogue all;
    for (const char* name :
         {"wood_screws", "bolts", "hardware", "fittings", "runners", "species", "air"}) {
        const QString path = QStringLiteral(":/catalogue/%1.json").arg(QLatin1String(name));
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            qFatal("The program's own catalogue is missing: %s", qPrintable(path));
        const QByteArray bytes = file.readAll();
        auto part = readCatalogue({bytes.constData(), static_cast<std::size_t>(bytes.size())},
                                  path.toStdString());
        if (!part.ok())
            qFatal("%s", part.error().sentence().english().c_str());
        Catalogue read = std::move(part).value();
        append(all.woodScrews, read.woodScrews);
        append(all.bolts, read.bolts);
        append(all.hardware, read.hardware);
        append(all.fittings, read.fittings);
        append(all.runners, read.runners);
        append(all.species, read.species);
        append(all.airs, read.airs);
    }
    return all;
}

} // namespace frontwright
