// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>
#include <vector>

namespace bothways::cli {

/// Lines of a descriptor as they come, without waiting for the next longer than asked.
class LineInput {
public:
    explicit LineInput(int descriptor) : m_descriptor(descriptor) {}
    /// The whole lines that are there, after `patience` at the latest. A line longer than 4096
    /// bytes is cut.
    [[nodiscard]] std::vector<std::string> wait(std::chrono::milliseconds patience);
    [[nodiscard]] bool ended() const { return m_ended; }

private:
    int m_descriptor;
    std::string m_rest;
    bool m_ended = false;
};

} // namespace bothways::cli
