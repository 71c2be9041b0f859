#include "core/documents/decisions.h"

namespace frontwright::documents {

Phrase presetMissing(PresetKind kind, std::string name) {
    switch (kind) {
    case PresetKind::Hardware:
        return phrase("there is no preset \"%1\" for hardware", std::move(name));
    case PresetKind::Profile:
        return phrase("there is no preset \"%1\" for the edge profile", std::move(name));
    case PresetKind::Box:
        return phrase("there is no preset \"%1\" for the box", std::move(name));
    case PresetKind::Mounting:
        break;
    }
    return phrase("there is no preset \"%1\" for the mounting screws", std::move(name));
}

} // namespace frontwright::documents
