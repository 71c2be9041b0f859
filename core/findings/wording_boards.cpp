#include "core/findings/wording.h"

namespace frontwright::wording {

Words ofBoard(const Told& told) {
    if (told.board == nullptr || !told.finding.fault)
        return gone();
    const LengthStyle fine{told.style.unit, 64, told.style.mark};
    const auto words =
        tell(*told.finding.fault, *told.board->spec, told.board->fitted, told.project.limits, fine);
    if (!words)
        return gone();
    return {phrase("%1.", words->sentence),
            phrase("%1. What helps: %2", words->reason, words->remedy), words->source};
}

} // namespace frontwright::wording
