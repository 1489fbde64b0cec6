// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <csignal>
#include <functional>
#include <stop_token>
#include <thread>

namespace bothways::cli {

/// While it lives, SIGINT (Ctrl-C) and SIGTERM are requests to stop: long work asks token() and
/// ends with nothing changed. A thread of its own waits for them, so no handler interrupts
/// anything. Work that has not ended by itself within kPatience is left where it is and the program
/// ends with the exit code of a stop: a change is whole or not made wherever a program ends. Only a
/// change that is being committed is waited for, so that it is acknowledged. A second signal ends
/// at once. A signal that was ignored when the program began stays ignored.
///
/// Made before any other thread is, as they take over which signals are blocked. Until begin() they
/// wait: to print the help no thread is needed.
class StopSignals {
public:
    /// @param lastWords  said before the program ends without the work's consent; on another thread
    explicit StopSignals(std::function<void()> lastWords);
    ~StopSignals();
    StopSignals(const StopSignals&) = delete;
    StopSignals& operator=(const StopSignals&) = delete;

    [[nodiscard]] std::stop_token token() const { return m_stop.get_token(); }
    /// Work begins: signals are listened to from now on.
    void begin();

private:
    void watch();
    void endUnlessDone();

    std::function<void()> m_lastWords;
    std::stop_source m_stop;
    std::atomic<bool> m_done = false;
    sigset_t m_signals{};
    std::thread m_watcher;
};

} // namespace bothways::cli
