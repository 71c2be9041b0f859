#pragma once

#include "core/words/decimal_mark.h"
#include "core/words/phrase.h"

#include <functional>

namespace frontwright {

/// A language that phrases are told in.
class Language {
public:
    /// The translation of an English pattern, or the pattern itself where there is none.
    using Translate = std::function<std::string(std::string_view english)>;

    /// English.
    Language() = default;
    /// `code` as in ISO 639-1: "de".
    Language(std::string code, Translate translate, DecimalMark mark)
        : m_code(std::move(code)),
          m_translate(std::move(translate)),
          m_mark(mark) {}

    [[nodiscard]] std::string translated(std::string_view english) const {
        return m_translate ? m_translate(english) : std::string(english);
    }
    [[nodiscard]] DecimalMark decimalMark() const { return m_mark; }
    friend bool operator==(const Language& a, const Language& b) { return a.m_code == b.m_code; }

private:
    std::string m_code = "en";
    Translate m_translate;
    DecimalMark m_mark = DecimalMark::Point;
};

/// The phrase in words of that language. Places may stand in another order there and may repeat; a
/// place that no part has is left out.
std::string told(const Phrase&, const Language&);
std::string told(Text, const Language&);

} // namespace frontwright
