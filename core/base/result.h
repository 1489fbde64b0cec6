// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <cassert>
#include <cstdint>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace bothways::core {

/// What kind of bad news an Error is. The numbers are the exit codes of the command line: keep
/// them.
enum class ErrorCode { wrongUse = 2, badInput = 3, studyFile = 4, stopped = 5 };

/// Where in what was given. Rendered as "morning.csv:14: run 3: column 'start'", what is empty left
/// out.
struct Place {
    Place() = default;
    Place(std::string name) : file(std::move(name)) {}
    Place(const char* name) : file(name) {}

    std::string file;               ///< or an option, a property, a verb
    std::int64_t line = 0;          ///< from 1
    int run = 0;                    ///< its number
    bool new_run = false;           ///< `run` is not in the study yet
    std::string column;             ///< by name
    std::int64_t column_number = 0; ///< from 1, of one without a name
    [[nodiscard]] std::string english() const;
    [[nodiscard]] bool empty() const
    {
        return file.empty() && line == 0 && run == 0 && column.empty() && column_number == 0;
    }
};

/// Why there is no value. Bad input, a locked file or a full disk is an Error; a caller's mistake
/// in our own code is an assert; "these runs allow no verdict" is an ordinary answer, not an Error.
struct Error {
    ErrorCode code = ErrorCode::badInput;
    Message message; ///< one sentence that says what was expected
    Place where;
    std::vector<Error> others = {}; ///< further faults of the same input, in order of place
};

/// "WHERE: MESSAGE" in English, one line a fault. For tests; people are told in their language by
/// Language::describe() of app/wording.
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
