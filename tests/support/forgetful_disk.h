// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

/// A disk under SQLite that fails at the n-th call, or forgets what was not flushed: a shim over
/// SQLite's default VFS, as SQLite is tested itself.
namespace bothways::tests {

/// While it lives, every connection that is opened writes through it. One at a time; no other
/// thread opens connections meanwhile. Calls that are counted: opening, writing, truncating,
/// flushing and deleting.
class ForgetfulDisk {
public:
    enum class Fault {
        full,  ///< this call alone finds no space
        error, ///< this call alone fails
        dead   ///< this call and all after it fail, as when the power goes
    };

    ForgetfulDisk();
    ~ForgetfulDisk();
    ForgetfulDisk(const ForgetfulDisk&) = delete;
    ForgetfulDisk& operator=(const ForgetfulDisk&) = delete;

    /// Counts from here; the `call`th (from 1) fails. 0: none does.
    void failAt(long call, Fault fault);
    [[nodiscard]] long calls() const { return m_calls; }
    [[nodiscard]] bool failed() const { return m_failAt > 0 && m_calls >= m_failAt; }

    /// Puts into `folder` what a disk may hold when the power goes now: of each file what was
    /// flushed, and of what was written since any part in any order, by `seed`.
    void survive(const std::filesystem::path& folder, std::uint32_t seed) const;

    // For the shim.
    struct Pending {
        std::int64_t at = 0; ///< of a write; of a truncation: the size
        std::string bytes;
        bool truncates = false;
    };
    struct File {
        bool onDisk = false; ///< its name is
        std::string flushed;
        std::vector<Pending> pending;
    };
    /// 0, or SQLite's code for what goes wrong with this call.
    [[nodiscard]] int call(int codeOfError);
    std::map<std::string, File> files;

private:
    long m_calls = 0;
    long m_failAt = 0;
    Fault m_fault = Fault::error;
};

} // namespace bothways::tests
