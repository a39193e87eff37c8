// SPDX-License-Identifier: Apache-2.0
// What a function returns when the world may say no: a value, or an error a person can act on.
#pragma once

#include <string>
#include <utility>
#include <variant>

#include "base/contract.hpp"

namespace snugwalk {

/// Why something failed; each code has one exit code on the command line (see `exitCode`).
enum class Errc {
    Usage,        ///< the request itself is malformed
    InvalidInput, ///< bytes or text that do not mean anything here
    OutOfRange,   ///< understood, but beyond what can be true
    Unsupported,  ///< understood, but not something this version does
    NotFound,
    Conflict, ///< another writer, or a state that forbids the act
    Io,       ///< the disk or the system refused
    Corrupt,  ///< stored bytes are not what was written
    Network
};

/// English, one clause each, for the command line and the log; screens translate the code.
struct Error {
    Errc code = Errc::InvalidInput;
    std::string what;  ///< what is wrong
    std::string where; ///< file, line, field or point, may be empty
    std::string act;   ///< what to do now, may be empty
};

template <typename T>
class [[nodiscard]] Result {
public:
    // NOLINTBEGIN(google-explicit-constructor): `return value;` and `return Error{...};` are the point
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : m_state(std::in_place_index<1>, std::move(error)) {}
    // NOLINTEND(google-explicit-constructor)

    [[nodiscard]] bool has_value() const { return m_state.index() == 0; }
    explicit operator bool() const { return has_value(); }

    /// Aborts in every build when there is an error instead.
    [[nodiscard]] const T &value() const &
    {
        SNUG_ASSERT(has_value());
        return *std::get_if<0>(&m_state);
    }
    [[nodiscard]] T &value() &
    {
        SNUG_ASSERT(has_value());
        return *std::get_if<0>(&m_state);
    }
    /// By value, so that `for (x : f().value())` never reads what is gone.
    [[nodiscard]] T value() &&
    {
        SNUG_ASSERT(has_value());
        return std::move(*std::get_if<0>(&m_state));
    }
    const T &operator*() const & { return value(); }
    T &operator*() & { return value(); }
    const T *operator->() const { return &value(); }
    T *operator->() { return &value(); }

    [[nodiscard]] const Error &error() const
    {
        SNUG_ASSERT(!has_value());
        return *std::get_if<1>(&m_state);
    }

private:
    std::variant<T, Error> m_state;
};

using Status = Result<std::monostate>;

/// The success of a `Status`.
[[nodiscard]] inline Status done() { return std::monostate{}; }

/// Exit code of the command line: 2 usage, 3 input, 4 not found, 5 storage, 6 conflict, 7 network.
[[nodiscard]] int exitCode(Errc code);

/// Stable lower-case name used in JSON errors, for instance `out_of_range`.
[[nodiscard]] const char *codeName(Errc code);

} // namespace snugwalk

/// Leaves the enclosing function with the error of `expression`, if it has one.
#define SNUG_TRY(expression)                                                                                 \
    do {                                                                                                     \
        auto snugTried = (expression);                                                                       \
        if (!snugTried)                                                                                      \
            return snugTried.error();                                                                        \
    } while (false)
