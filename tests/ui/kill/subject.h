#pragma once

#include <chrono>

namespace frontwright::testing {

// The program that is killed, and what it and its killer agree on.

/// A minute and its ten seconds, made short.
inline constexpr std::chrono::milliseconds subjectIdle{4};
inline constexpr std::chrono::milliseconds subjectMost{12};

/// How the subject ends where it is not killed.
inline constexpr int subjectNotOpened = 3;
inline constexpr int subjectNotOwner = 4;
inline constexpr int subjectNotSaved = 5;

// Lines of its log, each written at once: a letter, an edit's number, the steady clock's ms.
inline constexpr char logOpened = 'o';
inline constexpr char logTurn = 't';   ///< before events are processed
inline constexpr char logEdit = 'e';   ///< made
inline constexpr char logSaving = 's'; ///< about to be saved
inline constexpr char logSaved = 'S';

} // namespace frontwright::testing
