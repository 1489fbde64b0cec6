// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/hold.h"
#include "storage/study/study_file.h"

#include <chrono>
#include <memory>
#include <optional>

namespace SQLite {
class Database;
}

namespace bothways::storage {

/// What a connection does while another program has the lock that it needs: waits, says for whom,
/// and gives up after a time. SQLite asks it.
class Waiting {
public:
    /// @param hold  tells who keeps us waiting
    Waiting(SQLite::Database& database, std::shared_ptr<const Hold> hold);
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;

    /// Of the last time that was waited in vain.
    [[nodiscard]] core::Message refusal() const;

    /// True to wait on. Asked by SQLite, the `time`th time (from 0) for one lock.
    [[nodiscard]] bool goesOn(int time);

    static void setSaid(WaitingSaid said, std::chrono::milliseconds atMost);

private:
    std::shared_ptr<const Hold> m_hold;
    std::optional<Hold::Other> m_other;
    std::chrono::steady_clock::time_point m_begun, m_said;
};

} // namespace bothways::storage
