// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace bothways::core {

/// What kind of bad news an Error is. The numbers are the exit codes of the command line: keep
/// them.
enum class ErrorCode { wrongUse = 2, badInput = 3, studyFile = 4, stopped = 5 };

/// Why there is no value. Bad input, a locked file or a full disk is an Error; a caller's mistake
/// in our own code is an assert; "these runs allow no verdict" is an ordinary answer, not an Error.
struct Error {
    ErrorCode code = ErrorCode::badInput;
    std::string message;            ///< one sentence that says what was expected
    std::string where;              ///< "morning.csv:14: column 'distance_km'", or the study's path
    std::vector<Error> others = {}; ///< further faults of the same input, in order of place
};

/// "WHERE: MESSAGE", one line a fault.
[[nodiscard]] std::string describe(const Error& error);

/// A value, or why there is none. For the borders of core, storage and app.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_state(std::move(value)) {}
    Result(Error error) : m_state(std::move(error)) {}

    explicit operator bool() const { return std::holds_alternative<T>(m_state); }
    const T& value() const
    {
        assert(*this);
        return *std::get_if<T>(&m_state);
    }
    T& value()
    {
        assert(*this);
        return *std::get_if<T>(&m_state);
    }
    T take() &&
    {
        assert(*this);
        return std::move(*std::get_if<T>(&m_state));
    }
    const Error& error() const
    {
        assert(!*this);
        return *std::get_if<Error>(&m_state);
    }

private:
    std::variant<T, Error> m_state;
};

/// Result of something that has no value to give back.
struct Done {};
using Outcome = Result<Done>;

} // namespace bothways::core
