#pragma once

#include "core/plan/quantity.h"
#include "ui/session/selection.h"

#include <QString>

#include <cstdint>

namespace frontwright {

/// For labels: "Fit of the front".
QString nameOf(InputPlace);

enum class InputPanel : std::uint8_t { Selected, Wood };

/// Where a decision is made.
struct InputField {
    Selection selection; ///< what has to be selected for the field to be there
    QString fold;        ///< the fold's stable name; empty in the panel of the wood
    QString label;       ///< of the field, as it is shown; empty: the fold's first, or the air
    InputPanel panel = InputPanel::Selected;
    friend bool operator==(const InputField&, const InputField&) = default;
};

/// `about` is the number that the decision was found through: of a hole's place the pattern's
/// distance is led to, of a left overlay the left side. What is selected stays so where it has the
/// field; else the number's own part is selected.
InputField inputField(InputPlace, std::optional<Quantity> about, const Plan&, const Selection&);

} // namespace frontwright
