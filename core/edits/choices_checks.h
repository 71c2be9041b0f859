#pragma once

#include "core/boards/board_spec.h"
#include "core/case/choices.h"
#include "core/case/divisions.h"
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
std::optional<Error> impossible(const BoardSpec&);
/// Width of a member between openings. Without a face frame 0 is possible: no shelf between
/// drawers.
std::optional<Error> impossibleMember(Construction, Length width);
/// A name, a title, a note: at most 10 000 bytes in one line.
std::optional<Error> impossibleText(Text what, std::string_view typed);

std::optional<Error> notPositive(Text what, Length length);
std::optional<Error> negative(Text what, Length length);

} // namespace frontwright
