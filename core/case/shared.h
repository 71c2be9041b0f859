#pragma once

#include <memory>
#include <optional>
#include <utility>

namespace frontwright {

/// A value that may be none, used like a std::optional, and kept once for all copies of it: to copy
/// it, or to compare it with a copy, costs next to nothing. Nobody changes it once it is there.
template<class T>
class Shared {
public:
    Shared() = default;
    Shared(std::nullopt_t) {}
    Shared(T value) : m_value(std::make_shared<const T>(std::move(value))) {}
    Shared(std::optional<T> value) {
        if (value)
            m_value = std::make_shared<const T>(*std::move(value));
    }

    [[nodiscard]] bool has_value() const { return m_value != nullptr; }
    explicit operator bool() const { return has_value(); }
    // Precondition of both: has_value().
    const T& operator*() const { return *m_value; }
    const T* operator->() const { return m_value.get(); }
    void reset() { m_value.reset(); }

    friend bool operator==(const Shared& a, const Shared& b) {
        return a.m_value == b.m_value || (a.m_value && b.m_value && *a.m_value == *b.m_value);
    }

private:
    std::shared_ptr<const T> m_value;
};

} // namespace frontwright
