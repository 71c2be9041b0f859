#pragma once

#include "core/words/phrase.h"

#include <cassert>
#include <optional>
#include <utility>
#include <variant>

namespace frontwright {

/// What went wrong outside the program (typed text, a file, an edit that has no room): where it
/// is, what was found or expected, and what to do. Shown to the maker as one sentence.
struct Error {
    Phrase place;  ///< "line 4, column 12", "case.width", "position 5"; may be empty
    Phrase what;   ///< sentence without its place, no full stop at the end
    Phrase remedy; ///< what to do; may be empty

    /// "place: what; remedy"
    [[nodiscard]] Phrase sentence() const;
    friend bool operator==(const Error&, const Error&) = default;
};

/// Either a value or an Error. Never converts to bool by itself; ask ok().
template<class T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_content(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : m_content(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return m_content.index() == 0; }

    /// Precondition: ok().
    [[nodiscard]] const T& value() const& {
        assert(ok());
        return std::get<0>(m_content);
    }
    [[nodiscard]] T&& value() && {
        assert(ok());
        return std::get<0>(std::move(m_content));
    }
    /// Precondition: !ok().
    [[nodiscard]] const Error& error() const {
        assert(!ok());
        return std::get<1>(m_content);
    }

private:
    std::variant<T, Error> m_content;
};

} // namespace frontwright
