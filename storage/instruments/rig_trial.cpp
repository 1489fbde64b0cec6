// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/rig_trial.h"

#include <algorithm>

namespace bothways::storage {

core::Result<RigTrial> RigTrial::start(const Rig& rig)
{
    auto reader = RigReader::start(rig);
    if (!reader)
        return reader.error();
    return RigTrial(std::move(reader).take());
}

void RigTrial::look()
{
    m_readings.clear();
    m_reader.take(m_readings);
    for (const Reading& reading : m_readings) {
        if (reading.channel >= m_seen.size())
            m_seen.resize(reading.channel + 1);
        Seen& seen = m_seen[reading.channel];
        if (seen.readings++ == 0)
            seen.first_s = reading.time_s;
        seen.last_s = reading.time_s;
        seen.value = reading.value();
    }
}

std::vector<TriedChannel> RigTrial::channels() const
{
    const double now_s = m_reader.clock_s();
    std::vector<TriedChannel> tried;
    for (const ReadChannel& read : m_reader.channels()) {
        TriedChannel one;
        one.read = read;
        const std::size_t place = tried.size();
        if (place < m_seen.size() && m_seen[place].readings > 0) {
            const Seen& seen = m_seen[place];
            one.value = seen.value * read.channel.factor + read.channel.offset;
            one.age_s = std::max(0.0, now_s - seen.last_s);
            one.readings = seen.readings;
            if (seen.last_s > seen.first_s)
                one.rate_hz = static_cast<double>(seen.readings - 1) / (seen.last_s - seen.first_s);
        }
        tried.push_back(std::move(one));
    }
    return tried;
}

} // namespace bothways::storage
