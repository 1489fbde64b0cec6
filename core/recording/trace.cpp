// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace bothways::core {

void MemoryTrace::add(std::string name, std::string unit, Samples samples)
{
    assert(samples.time_s.size() == samples.value.size());
    ChannelInfo info{std::move(name), std::move(unit)};
    if (samples.size() > 0) {
        const auto [low, high] = std::minmax_element(samples.value.begin(), samples.value.end());
        info.minimum = *low;
        info.maximum = *high;
    }
    m_channels.push_back(std::move(info));
    m_samples.push_back(std::make_shared<const Samples>(std::move(samples)));
}

void MemoryTrace::addMark(double at_s, std::string words)
{
    m_marks.push_back({at_s, std::move(words)});
}

std::shared_ptr<const Samples> MemoryTrace::samples(std::string_view channel) const
{
    for (std::size_t i = 0; i < m_channels.size(); ++i)
        if (m_channels[i].name == channel && m_samples[i]->size() > 0)
            return m_samples[i];
    return nullptr;
}

double MemoryTrace::last_s() const
{
    double last = std::nan("");
    for (const auto& samples : m_samples)
        if (samples->size() > 0 && !(samples->time_s.back() <= last))
            last = samples->time_s.back();
    return last;
}

} // namespace bothways::core
