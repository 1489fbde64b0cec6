// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/disk_watch.h"

namespace bothways::app {
namespace {

constexpr double kDiskSoon_min = 60.0;
constexpr auto kDiskOver = std::chrono::seconds(30);

} // namespace

void DiskWatch::put(std::int64_t bytes, const std::filesystem::path& file)
{
    const auto now = Clock::now();
    m_sizes.emplace_back(now, bytes);
    while (m_sizes.size() > 2 && now - m_sizes.front().first > kDiskOver)
        m_sizes.pop_front();
    std::error_code problem;
    const auto space = std::filesystem::space(file, problem);
    m_left_min.reset();
    const double seconds = std::chrono::duration<double>(now - m_sizes.front().first).count();
    const auto grown = static_cast<double>(bytes - m_sizes.front().second);
    if (problem || seconds < 1.0 || grown <= 0.0)
        return;
    const double left = static_cast<double>(space.available) / (grown / seconds) / 60.0;
    if (left < kDiskSoon_min)
        m_left_min = left;
}

} // namespace bothways::app
