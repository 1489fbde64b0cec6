// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>

namespace bothways::core {

/// While one lives, something is being done that a person will be told is done: a program that was
/// asked to stop waits for it.
class Unstoppable {
public:
    Unstoppable() { ++count(); }
    ~Unstoppable() { --count(); }
    Unstoppable(const Unstoppable&) = delete;
    Unstoppable& operator=(const Unstoppable&) = delete;

    /// How many there are now, in all threads.
    [[nodiscard]] static int any() { return count(); }

private:
    static std::atomic<int>& count()
    {
        static std::atomic<int> living = 0;
        return living;
    }
};

} // namespace bothways::core
