#pragma once

#include "core/words/language.h"

#include <set>
#include <string>
#include <vector>

namespace frontwright::testing {

/// A language that has no word for anything the program says: of each pattern only its places and
/// its signs are left.
inline Language mute() {
    return {"mute",
            [](std::string_view pattern) {
                std::string left;
                for (const char c : pattern)
                    left += (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ? ' ' : c;
                return left;
            },
            DecimalMark::Point};
}

/// Words that stay in the mute language, so that no other language could tell them: glued or
/// forgotten texts. Units, front labels (A1) and what is `alike` in every language are none.
inline std::vector<std::string> untold(const Phrase& phrase,
                                       const std::set<std::string>& alike = {}) {
    static const std::set<std::string> units = {"in", "ft", "mm", "cm", "m", "lb", "lbf",
                                                "kg", "dm", "g",  "N",  "C", "F",  "RH"};
    std::vector<std::string> words;
    std::string word;
    const auto end = [&] {
        if (!word.empty() && units.count(word) == 0 && alike.count(word) == 0)
            words.push_back(word);
        word.clear();
    };
    for (const char c : told(phrase, mute()) + ' ') {
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z')) {
            word += c;
            continue;
        }
        if (c >= '0' && c <= '9' && word.size() <= 2) // as in A1
            word.clear();
        end();
    }
    return words;
}

} // namespace frontwright::testing
