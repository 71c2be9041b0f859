#pragma once

#include "ui/language/data_names.h"
#include "ui/panels/forms.h"

namespace frontwright {

// Rows that show and change one measure of a spec: `get` gives the spec that holds, `set` makes the
// whole spec the target's own.

template<class Spec, class Get, class Set>
PropertyForm::LengthRow specRow(const QString& label, const QString& name,
                                WrittenLength Spec::*part, Get get, Set set) {
    return {label, name,
            [get, part](const Project& p, EditTarget t) {
                return std::optional<Length>(get(p, t).*part);
            },
            [get, set, part](const Project& p, EditTarget t, WrittenLength v) {
                Spec spec = get(p, t);
                spec.*part = v;
                return set(p, t, spec);
            }};
}

/// A measure that may be left open; `whenEmpty` says what holds then.
template<class Spec, class Get, class Set>
PropertyForm::LengthRow specRow(const QString& label, const QString& name,
                                std::optional<WrittenLength> Spec::*part, const QString& whenEmpty,
                                Get get, Set set) {
    return {label,
            name,
            [get, part](const Project& p, EditTarget t) -> std::optional<Length> {
                const auto& value = get(p, t).*part;
                return value ? std::optional<Length>(*value) : std::nullopt;
            },
            [get, set, part](const Project& p, EditTarget t, WrittenLength v) {
                Spec spec = get(p, t);
                spec.*part = v;
                return set(p, t, spec);
            },
            [get, set, part](const Project& p, EditTarget t) {
                Spec spec = get(p, t);
                (spec.*part).reset();
                return set(p, t, spec);
            },
            whenEmpty};
}

/// Names and ids of a catalogue's entries as a choice; before them `none`, which stands for an
/// empty id, where it is given.
template<class Entry, class GetId, class SetId>
PropertyForm::ChoiceRow catalogueRow(const QString& label, const QString& name,
                                     std::vector<Entry> Catalogue::*entries, GetId getId,
                                     SetId setId, const QString& none = {}) {
    const int first = none.isEmpty() ? 0 : 1;
    return {label, name,
            [entries, none](const Work& w) {
                QStringList names;
                if (!none.isEmpty())
                    names << none;
                for (const Entry& entry : (*w.catalogue).*entries)
                    names << toldName(entry.name);
                return names;
            },
            [entries, getId, first](const Work& w, EditTarget t) {
                const auto& all = (*w.catalogue).*entries;
                const std::string id = getId(w.project, t);
                for (std::size_t i = 0; i < all.size(); ++i)
                    if (all[i].id == id)
                        return static_cast<int>(i) + first;
                return first == 1 && id.empty() ? 0 : -1;
            },
            [entries, setId, first](const Work& w, const Project& p, EditTarget t, int index) {
                if (index < first)
                    return setId(p, t, std::string());
                const auto at = static_cast<std::size_t>(index - first);
                return setId(p, t, ((*w.catalogue).*entries).at(at).id);
            }};
}

} // namespace frontwright
