#pragma once

#include <string>

namespace frontwright {

/// "a = ≈ b" becomes "a ≈ b": an approximate result is not equal. told() does it to every phrase.
std::string withApproximateResults(std::string figures);

} // namespace frontwright
