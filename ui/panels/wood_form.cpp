#include "ui/panels/forms.h"
#include "ui/panels/spec_rows.h"

#include <QCoreApplication>

namespace frontwright {

namespace {

const Stock& stockOf(const Project& project, EditTarget target) {
    return specOf(project, target, &FrontChoices::stock, &FrontDefaults::stock);
}

/// One of the stock's enumerations, in the order of its enumerators.
template<class E>
ChoiceRow stockRow(const QString& label, const QString& name, QStringList options, E Stock::*part) {
    return {label, name, [options](const Work&) { return options; },
            [part](const Work& w, EditTarget t) {
                return static_cast<int>(stockOf(w.project, t).*part);
            },
            [part](const Work&, const Project& p, EditTarget t, int index) {
                Stock stock = stockOf(p, t);
                stock.*part = static_cast<E>(index);
                return setStock(p, t, stock);
            }};
}

} // namespace

PropertyForm* woodForm(Session& session) {
    auto* form = new PropertyForm(session, QCoreApplication::translate("WoodForm", "Wood"));
    form->add(catalogueRow(
        QCoreApplication::translate("WoodForm", "Wood"),
        QCoreApplication::translate("WoodForm", "Choose the wood"), &Catalogue::species,
        [](const Project& p, EditTarget t) { return stockOf(p, t).species; },
        [](const Project& p, EditTarget t, const std::string& id) {
            Stock stock = stockOf(p, t);
            stock.species = id;
            return setStock(p, t, stock);
        }));
    form->add(stockRow(QCoreApplication::translate("WoodForm", "Stock"),
                       QCoreApplication::translate("WoodForm", "Choose solid or stable stock"),
                       {QCoreApplication::translate("WoodForm", "Solid"),
                        QCoreApplication::translate("WoodForm", "Stable (plywood and the like)")},
                       &Stock::build));
    form->add(stockRow(QCoreApplication::translate("WoodForm", "Cut"),
                       QCoreApplication::translate("WoodForm", "Choose the cut"),
                       {QCoreApplication::translate("WoodForm", "Flat-sawn"),
                        QCoreApplication::translate("WoodForm", "Rift"),
                        QCoreApplication::translate("WoodForm", "Quarter-sawn")},
                       &Stock::cut));
    form->add(
        stockRow(QCoreApplication::translate("WoodForm", "Grain"),
                 QCoreApplication::translate("WoodForm", "Turn the grain"),
                 {QCoreApplication::translate("WoodForm", "Along the length: the height moves"),
                  QCoreApplication::translate("WoodForm", "Along the height: the width moves")},
                 &Stock::grain));
    followsCase(*form, &FrontChoices::stock, Choice::Stock);
    return form;
}

} // namespace frontwright
