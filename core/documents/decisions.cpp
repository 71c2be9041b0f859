#include "core/documents/decisions.h"

namespace frontwright::documents {

std::string_view nameOfKind(PresetKind kind) {
    switch (kind) {
    case PresetKind::Hardware:
        return "hardware";
    case PresetKind::Profile:
        return "the edge profile";
    case PresetKind::Box:
        return "the box";
    case PresetKind::Mounting:
        break;
    }
    return "the mounting screws";
}

} // namespace frontwright::documents
