#pragma once

#include "core/plan/arrangement.h"

#include <string>
#include <vector>

namespace frontwright {

/// Openings with the same left and right edges form a bank. Banks are numbered left to right, then
/// from the top, then the narrower first; places in a bank from the top. Reads openingRect.
void assignBanks(std::vector<FrontPlace>&);

/// 0 = A … 25 = Z, 26 = AA, like the columns of a ledger.
std::string bankLetters(std::uint32_t bank);

} // namespace frontwright
