#pragma once

#include "core/case/choices.h"
#include "core/limits/limits.h"
#include "core/results/result.h"

#include <optional>
#include <string_view>

namespace frontwright {

// What cannot be, whatever the case looks like. None where the value is possible.
std::optional<Error> impossible(const SideFit&);
std::optional<Error> impossible(const Profile&);
std::optional<Error> impossible(const BoxSpec&);
std::optional<Error> impossible(const MountingSpec&);
std::optional<Error> impossible(const HardwareSpec&);
std::optional<Error> impossible(const Limits&);
/// A name, a title, a note: at most 10 000 bytes in one line.
std::optional<Error> impossibleText(std::string_view what, std::string_view text);

std::optional<Error> notPositive(std::string_view what, Length length);
std::optional<Error> negative(std::string_view what, Length length);

} // namespace frontwright
