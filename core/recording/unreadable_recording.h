// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <exception>
#include <new>
#include <type_traits>
#include <utility>

namespace bothways::core {

/// Thrown by a RunTrace or a TraceProvider where a recording is there but cannot be read, and where
/// its reading was to stop: no rule can go on, and none may take it for "not recorded". Whoever
/// hands traces to the rules catches it with readingRecordings().
class UnreadableRecording final : public std::exception {
public:
    explicit UnreadableRecording(Error error) : m_error(std::move(error)) {}
    [[nodiscard]] const Error& error() const { return m_error; }
    [[nodiscard]] const char* what() const noexcept override
    {
        return "a recording cannot be read";
    }

private:
    Error m_error;
};

/// A sentence for std::bad_alloc.
[[nodiscard]] inline Error outOfMemory()
{
    return Error{ErrorCode::studyFile, "there is not enough memory for this"_t, {}};
}

/// What `work` gives, or the Error of the recording that it could not read.
template <class Work>
[[nodiscard]] auto readingRecordings(Work&& work) -> Result<std::invoke_result_t<Work>>
{
    try {
        return std::forward<Work>(work)();
    } catch (const UnreadableRecording& recording) {
        return recording.error();
    } catch (const std::bad_alloc&) {
        return outOfMemory();
    }
}

} // namespace bothways::core
