#pragma once

#include "app/command_line.h"

namespace frontwright {

// Exit codes of all commands.
inline constexpr int exitWell = 0;
inline constexpr int exitHeed = 1;     ///< check: something spoils a part or will not work
inline constexpr int exitUnusable = 2; ///< the file or the command line can't be used

// Each reads the file, computes everything in memory, then writes. What can't be done is told on
// stderr in one sentence, and nothing is written.
int run(const CheckCommand&);
int run(const PlanCommand&);
/// Precondition: a QGuiApplication exists.
int run(const TemplatesCommand&);
/// Precondition: a QApplication exists.
int run(const PictureCommand&);

int run(const RulesCommand&);

/// Prints the sentence and gives exitUnusable.
int failedWith(const Error&);

} // namespace frontwright
