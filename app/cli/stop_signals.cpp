// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/stop_signals.h"

#include "core/base/result.h"
#include "core/base/unstoppable.h"

#include <cerrno>
#include <ctime>

#include <pthread.h>
#include <unistd.h>

namespace bothways::cli {
namespace {

/// What is done and said after it still fits into the second that a person is promised.
constexpr long kPatience_ns = 700'000'000;

bool isIgnored(int signal)
{
    struct sigaction now {};
    return sigaction(signal, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

[[noreturn]] void endHere()
{
    _exit(static_cast<int>(core::ErrorCode::stopped));
}

} // namespace

StopSignals::StopSignals(std::function<void()> lastWords) : m_lastWords(std::move(lastWords))
{
    sigemptyset(&m_signals);
    for (const int signal : {SIGINT, SIGTERM})
        if (!isIgnored(signal))
            sigaddset(&m_signals, signal);
    sigaddset(&m_signals, SIGUSR2); // ours alone: the work is done
    pthread_sigmask(SIG_BLOCK, &m_signals, nullptr);
}

void StopSignals::begin()
{
    if (!m_watcher.joinable())
        m_watcher = std::thread([this] { watch(); });
}

StopSignals::~StopSignals()
{
    if (!m_watcher.joinable())
        return;
    m_done = true;
    pthread_kill(m_watcher.native_handle(), SIGUSR2);
    m_watcher.join();
}

void StopSignals::watch()
{
    int signal = 0;
    do {
        if (sigwait(&m_signals, &signal) != 0)
            return;
    } while (signal == SIGUSR2 && !m_done);
    if (m_done)
        return;
    m_stop.request_stop();
    endUnlessDone();
}

void StopSignals::endUnlessDone()
{
    for (bool second = false; !second; second = core::Unstoppable::any() == 0) {
        const timespec patience{0, kPatience_ns};
        const int signal = sigtimedwait(&m_signals, nullptr, &patience);
        if (m_done)
            return;
        if (signal == SIGINT || signal == SIGTERM)
            endHere(); // asked twice
    }
    m_lastWords();
    endHere();
}

} // namespace bothways::cli
