// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <functional>
#include <stdexcept>

namespace bothways::tests {

/// Another program: starts, says when it is ready, and goes on until it is killed.
class OtherProgram {
public:
    explicit OtherProgram(const std::function<void(const std::function<void()>&)>& work)
    {
        int ends[2] = {};
        if (::pipe(ends) != 0)
            throw std::runtime_error("no pipe");
        m_child = ::fork();
        if (m_child == 0) {
            work([&] {
                if (::write(ends[1], "!", 1) != 1)
                    _exit(1);
            });
            while (true)
                ::pause();
        }
        char ready = 0;
        if (::read(ends[0], &ready, 1) != 1)
            ready = 0;
        ::close(ends[0]);
        ::close(ends[1]);
    }
    ~OtherProgram() { kill(); }
    OtherProgram(const OtherProgram&) = delete;
    OtherProgram& operator=(const OtherProgram&) = delete;
    void kill()
    {
        if (m_child > 0) {
            ::kill(m_child, SIGKILL);
            ::waitpid(m_child, nullptr, 0);
        }
        m_child = 0;
    }
    [[nodiscard]] pid_t id() const { return m_child; }

private:
    pid_t m_child = 0;
};

} // namespace bothways::tests
