// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <stop_token>
#include <thread>
#include <utility>

namespace bothways::storage {

/// The thread of a reader that waits by itself, and its pauses, which a stop ends at once. It ends
/// with this object: let it be the last member, as the work uses all others.
class ReaderThread {
public:
    using Work = std::function<void(const std::stop_token& token)>;

    void begin(Work work) { m_thread = std::jthread(std::move(work)); }
    /// Does not wait for the work to end; the destructor does.
    void stop() { m_thread.request_stop(); }
    /// For the work itself. False: it was stopped.
    [[nodiscard]] bool pause(std::chrono::duration<double> length, const std::stop_token& token)
    {
        std::unique_lock lock(m_mutex);
        m_wake.wait_for(lock, token, length, [] { return false; });
        return !token.stop_requested();
    }

private:
    std::mutex m_mutex;
    std::condition_variable_any m_wake; ///< by a stop alone
    std::jthread m_thread;
};

} // namespace bothways::storage
