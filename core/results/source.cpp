#include "core/results/source.h"

namespace frontwright {

Source sourceNamed(SourceKind kind, Text title) {
    return {kind, std::string(title.english)};
}

Source commonPractice() {
    return sourceNamed(SourceKind::CommonPractice, text("common practice, no source"));
}

Source makersDecision() {
    return sourceNamed(SourceKind::Maker, text("as the maker decided"));
}

} // namespace frontwright
