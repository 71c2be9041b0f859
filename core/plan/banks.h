#pragma once

#include "core/plan/plan.h"

#include <string>
#include <vector>

namespace frontwright {

struct BankPlace {
    std::uint32_t bank = 0;
    std::uint32_t place = 0;
    friend bool operator==(const BankPlace&, const BankPlace&) = default;
};

/// Openings with the same left and right edges form a bank. Banks are numbered left to right, then
/// from the top, then the narrower first; places in a bank from the top. One entry for each
/// opening, in the layout's order.
std::vector<BankPlace> banksOf(const Layout&);

/// 0 = A … 25 = Z, 26 = AA, like the columns of a ledger.
std::string bankLetters(std::uint32_t bank);

} // namespace frontwright
