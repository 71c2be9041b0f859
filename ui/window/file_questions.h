#pragma once

#include "ui/window/case_file.h"

class QWidget;

namespace frontwright {

// What the maker is asked where files are concerned. Each waits for the answer.

enum class HeldAnswer : std::uint8_t { Cancel, Copy, ReadOnly };
/// Somebody else has the file open.
HeldAnswer askHeld(const QString& path, const LockHolder& holder, QWidget& window);

enum class OutsideAnswer : std::uint8_t { Cancel, SaveAs, Replace };
/// The file changed since it was opened here.
OutsideAnswer askChangedOutside(const CaseFile& file, QWidget& window);

enum class LeaveAnswer : std::uint8_t { Cancel, Save, Discard };
LeaveAnswer askUnsaved(const CaseFile& file, QWidget& window);

/// A file of the recent ones is gone: true where it is to be taken off the list.
bool askToForget(const QString& path, QWidget& window);

void reportError(const QString& title, const Error& error, QWidget& window);

} // namespace frontwright
