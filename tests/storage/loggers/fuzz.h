// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

/// Changes files at random and lets all readers at them. What a reader makes of a file must hold
/// together: an Error with words, or a recording whose times ascend and whose numbers are finite,
/// and that is the same by way of a study file as straight from the file. Same seed, same turns.
namespace bothways::tests {

class Fuzz {
public:
    /// @param corpus  with the folders csv, gpx, nmea and sheet
    Fuzz(const std::filesystem::path& corpus, std::uint64_t seed);
    ~Fuzz();
    /// One turn. @return  what did not hold together; empty: nothing. The file is then kept in
    /// lastFile().
    std::string turn();
    /// The corpus as it is, one turn a file.
    std::string plainTurns();
    [[nodiscard]] const std::string& lastFile() const;
    /// How many turns ended with something read, so that a corpus that nobody reads is noticed.
    [[nodiscard]] int readable() const;

private:
    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace bothways::tests
