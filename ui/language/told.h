#pragma once

#include "core/words/language.h"

#include <QString>

namespace frontwright {

/// The language that the window speaks, with the decimal mark of the desktop's country.
Language spokenLanguage();

/// What core says, in that language.
QString told(const Phrase&);
QString told(Text);

} // namespace frontwright
