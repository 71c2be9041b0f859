#pragma once

#include <concepts>
#include <memory>
#include <optional>
#include <utility>

namespace frontwright {

/// A value that is seldom there, used like a std::optional. It lies elsewhere, so that where there
/// is none only a pointer is stored: most openings decide nothing for themselves, and a case of
/// thousands of them stays small. Copies are deep: a value like any other.
template<class T>
class Rare {
public:
    Rare() = default;
    Rare(std::nullopt_t) {}
    template<std::convertible_to<T> U>
    Rare(U&& value) : m_value(std::make_unique<T>(std::forward<U>(value))) {}
    Rare(const Rare& other) : m_value(copyOf(other)) {}
    Rare(Rare&&) noexcept = default;
    Rare& operator=(const Rare& other) {
        if (this != &other)
            m_value = copyOf(other);
        return *this;
    }
    Rare& operator=(Rare&&) noexcept = default;
    ~Rare() = default;

    [[nodiscard]] bool has_value() const { return m_value != nullptr; }
    explicit operator bool() const { return has_value(); }
    // Precondition of all four: has_value().
    T& operator*() { return *m_value; }
    const T& operator*() const { return *m_value; }
    T* operator->() { return m_value.get(); }
    const T* operator->() const { return m_value.get(); }
    [[nodiscard]] T value_or(const T& otherwise) const { return m_value ? *m_value : otherwise; }
    T& emplace() { return *(m_value = std::make_unique<T>()); }
    void reset() { m_value.reset(); }

    friend bool operator==(const Rare& a, const Rare& b) {
        return a.m_value && b.m_value ? *a.m_value == *b.m_value : !a.m_value && !b.m_value;
    }

private:
    static std::unique_ptr<T> copyOf(const Rare& other) {
        return other.m_value ? std::make_unique<T>(*other.m_value) : nullptr;
    }
    std::unique_ptr<T> m_value;
};

} // namespace frontwright
