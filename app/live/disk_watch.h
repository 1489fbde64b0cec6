// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <deque>
#include <filesystem>
#include <optional>
#include <utility>

namespace bothways::app {

/// How fast a file grows against what is free.
class DiskWatch {
public:
    /// @param bytes  of the recording, now
    void put(std::int64_t bytes, const std::filesystem::path& file);
    /// Minutes until the disk is full at this pace; nothing when that is more than an hour.
    [[nodiscard]] std::optional<double> left_min() const { return m_left_min; }

private:
    using Clock = std::chrono::steady_clock;
    std::deque<std::pair<Clock::time_point, std::int64_t>> m_sizes;
    std::optional<double> m_left_min;
};

} // namespace bothways::app
