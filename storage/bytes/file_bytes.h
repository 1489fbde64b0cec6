// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

/// Files that are read whole, and what a name stands for.
namespace bothways::storage {

/// An open file of the system, closed with the object.
class FileHandle {
public:
    FileHandle() = default;
    explicit FileHandle(int file) : m_file(file) {}
    ~FileHandle();
    FileHandle(FileHandle&& other) noexcept : m_file(other.m_file) { other.m_file = -1; }
    FileHandle& operator=(FileHandle&& other) noexcept;
    FileHandle(const FileHandle&) = delete;
    FileHandle& operator=(const FileHandle&) = delete;
    [[nodiscard]] int get() const { return m_file; }
    explicit operator bool() const { return m_file >= 0; }

private:
    int m_file = -1;
};

/// What standard input is called on the command line, and in messages. Language has it in the
/// reader's words.
inline constexpr const char* kStandardInputWord = "-";
inline constexpr const char* kStandardInput = "standard input";

/// Whether what is read may be a stream: "-", a pipe, a terminal, a named pipe. A window must never
/// wait for one.
enum class Streams { refused, taken };

/// N of "/dev/fd/N", and of the names that mean the same: "/dev/stdout", "/proc/self/fd/1". They
/// are used as they were handed to us: to open them anew would begin at another place.
[[nodiscard]] std::optional<int> handedFile(const std::filesystem::path& file);

/// An Error (badInput) where a directory, a pipe, a socket or a device stands; opening one of these
/// could wait for ever. Nothing, where there is no file or an ordinary one.
[[nodiscard]] core::Outcome checkOrdinary(const std::filesystem::path& file,
                                          core::Text<0> expected);

/// The bytes of a file that is small enough to hold, or of a stream up to its end. An Error
/// (badInput) says what is wrong with it: no such file, a directory, not readable, larger than
/// `most` bytes.
/// @param expected  what it should have been: "a run sheet"_t
[[nodiscard]] core::Result<std::string> readWholeFile(const std::filesystem::path& file,
                                                      std::uintmax_t most, core::Text<0> expected,
                                                      Streams streams = Streams::refused);

/// The first bytes of an ordinary file; fewer where it has not so many, none of anything else.
/// Never waits.
[[nodiscard]] std::string headOf(const std::filesystem::path& file, std::size_t count);

} // namespace bothways::storage
