// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <memory>
#include <optional>

namespace bothways::storage {

/// A study's file under our hand, beside SQLite's connections to it: who writes has a lock on the
/// file itself, so that everybody who sees the file sees the lock, whatever user, session or mount,
/// and it ends with the process, however that ends.
///
/// The lock is an open file description lock (fcntl(2)) on one byte far beyond the end and beyond
/// the bytes that SQLite locks. It serves to refuse early, to name the holder, and to prove that
/// the owner of unfinished data is gone. What keeps the file whole is SQLite's own locking.
///
/// SQLite's locks are the process's own: the kernel drops them when any descriptor of the file is
/// closed. So ours is closed when the process's last connection to the file is gone, not before.
class Hold {
public:
    /// Opens what must be a plain file that begins like a study; waits half a second at most for
    /// another writer to end. An Error (studyFile) says what is wrong, or names the holder.
    static core::Result<std::shared_ptr<Hold>> take(const std::filesystem::path& file,
                                                    bool writing);
    ~Hold();
    Hold(const Hold&) = delete;
    Hold& operator=(const Hold&) = delete;

    /// True when we have the lock: nobody else writes, and none of whom we know did not end. False
    /// for a reader, and on a file system without such locks.
    [[nodiscard]] bool isProof() const { return m_locked; }

    /// Who keeps SQLite from its lock now.
    struct Other {
        bool reads = false; ///< a reader; else a writer
        core::Message name;
    };
    [[nodiscard]] std::optional<Other> other() const;

    /// True when this process has the file open: then nobody opens and closes it for a look.
    [[nodiscard]] static bool isOpenHere(const std::filesystem::path& file);

private:
    Hold(int descriptor, bool locked);
    int m_descriptor;
    bool m_locked;
};

} // namespace bothways::storage
