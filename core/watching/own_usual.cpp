// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/own_usual.h"

#include "core/recording/channels.h"
#include "core/study/parts.h"

namespace bothways::core {
namespace {

constexpr double kTooEarly_s = 30.0;
constexpr std::size_t kMost = 4000; ///< of a channel

bool isDevice(const std::string& channel)
{
    const std::string_view base = partedName(channel).base;
    return base == "output_w" || base == "rotor_rpm" || base == "generator_rpm";
}

} // namespace

void OwnUsual::add(const std::string& channel, const Samples& samples, double from_s)
{
    if (!isDevice(channel))
        return;
    Thinned& kept = m_channels[channel];
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double time_s = samples.time_s[i];
        // On a common raster, so that channels recorded row by row keep the same rows.
        const bool same = !kept.time_s.empty() && std::floor(time_s / kept.apart_s) <=
                                                      std::floor(kept.time_s.back() / kept.apart_s);
        if (time_s < 0.0 || time_s < from_s || same)
            continue;
        kept.time_s.push_back(time_s);
        kept.value.push_back(samples.value[i]);
    }
    if (kept.time_s.size() < kMost)
        return;
    kept.apart_s *= 2.0;
    Thinned fewer;
    fewer.apart_s = kept.apart_s;
    for (std::size_t i = 0; i < kept.time_s.size(); i += 2) {
        fewer.time_s.push_back(kept.time_s[i]);
        fewer.value.push_back(kept.value[i]);
    }
    kept = std::move(fewer);
}

void OwnUsual::join(const Run& run, double now_s, rules::UsualValues& usual) const
{
    if (now_s < kTooEarly_s || m_channels.empty())
        return;
    MemoryTrace trace;
    for (const auto& [name, kept] : m_channels)
        trace.add(name, "", Samples{SampleTimes(kept.time_s), kept.value});
    rules::RunChannels channels(&trace, now_s);
    usual.add(run, channels);
}

} // namespace bothways::core
