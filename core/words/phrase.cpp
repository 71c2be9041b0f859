#include "core/words/language.h"

#include <cassert>
#include <ostream>

namespace frontwright {

Phrase::Phrase(Text pattern, std::vector<Phrase> parts)
    : m_pattern(pattern.english),
      m_parts(std::move(parts)) {
    assert(placesOf(m_pattern) == static_cast<int>(m_parts.size()));
}

std::string Phrase::english() const {
    return told(*this, Language());
}

std::ostream& operator<<(std::ostream& out, Text text) {
    return out << text.english;
}

std::ostream& operator<<(std::ostream& out, const Phrase& phrase) {
    return out << phrase.english();
}

Phrase nameFromData(std::string name) {
    return Phrase(Text{name});
}

Phrase joined(Phrase first, Phrase second) {
    if (first.empty() || second.empty())
        return first.empty() ? second : first;
    return phrase("%1 %2", std::move(first), std::move(second));
}

Phrase listed(const std::vector<Phrase>& phrases) {
    Phrase list;
    for (std::size_t i = 0; i < phrases.size(); ++i)
        if (i == 0)
            list = phrases[i];
        else if (i + 1 < phrases.size())
            list = phrase("%1, %2", std::move(list), phrases[i]);
        else
            list = phrase("%1 and %2", std::move(list), phrases[i]);
    return list;
}

} // namespace frontwright
