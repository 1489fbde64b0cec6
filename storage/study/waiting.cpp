// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/waiting.h"

#include <SQLiteCpp/Database.h>
#include <sqlite3.h>

#include <mutex>
#include <thread>
#include <utility>

namespace bothways::storage {
namespace {

using std::chrono::milliseconds;
using std::chrono::steady_clock;

/// How the program's connections wait, all of them.
struct Manner {
    std::mutex mutex;
    WaitingSaid said;
    milliseconds atMost{10'000};
};

Manner& manner()
{
    static Manner manner;
    return manner;
}

int goesOnOf(void* waiting, int time)
{
    return static_cast<Waiting*>(waiting)->goesOn(time) ? 1 : 0;
}

} // namespace

Waiting::Waiting(SQLite::Database& database, std::shared_ptr<const Hold> hold)
    : m_hold(std::move(hold))
{
    sqlite3_busy_handler(database.getHandle(), goesOnOf, this);
}

bool Waiting::goesOn(int time)
{
    // The pause is shorter than what an import leaves between two batches (trace_store.cpp), or the
    // next batch would have the lock again, each time, before we look.
    constexpr milliseconds kPause(2), kSilent(500), kBetween(2000);
    constexpr int kPausesBetweenLooks = 10;
    const auto now = steady_clock::now();
    if (time == 0) {
        m_begun = now;
        m_said = now - kBetween;
        m_other.reset();
    }
    if (time % kPausesBetweenLooks == 0)
        if (auto other = m_hold->other())
            m_other = std::move(other);
    const std::lock_guard lock(manner().mutex);
    if (now - m_begun >= manner().atMost)
        return false;
    if (now - m_begun >= kSilent && now - m_said >= kBetween && manner().said) {
        m_said = now;
        const core::Message name = m_other ? m_other->name : core::Message("another program"_t);
        if (!manner().said(m_other && m_other->reads
                               ? core::message("waiting for {}, which reads the study"_t, name)
                               : core::message("waiting for {}, which writes the study"_t, name)))
            return false;
    }
    std::this_thread::sleep_for(kPause);
    return true;
}

core::Message Waiting::refusal() const
{
    const core::Message name = m_other ? m_other->name : core::Message("another program"_t);
    return m_other && m_other->reads
               ? core::message("is being read by {}; nothing was changed"_t, name)
               : core::message("is being written by {}; nothing was changed"_t, name);
}

void Waiting::setSaid(WaitingSaid said, milliseconds atMost)
{
    const std::lock_guard lock(manner().mutex);
    manner().said = std::move(said);
    manner().atMost = atMost;
}

} // namespace bothways::storage
