// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/sum_of_parts.h"

#include "core/recording/channels.h"
#include "core/statistics/events.h"
#include "core/statistics/robust.h"
#include "core/study/parts.h"

#include <cmath>
#include <vector>

namespace bothways::core {
namespace {

using Parts = std::vector<std::shared_ptr<const Samples>>;

/// How old a sample of a part may be, s, to stand beside one of the first part.
double oldest_s(const Samples& samples)
{
    const SampleTimes& times = samples.time_s;
    if (times.size() < 2)
        return rules::longestGap_s(0.0);
    return rules::longestGap_s(
        medianOf(times.size() - 1, [&](std::size_t i) { return times[i + 1] - times[i]; }));
}

/// @param oldest  how old a sample of each part may be, s
Samples summed(const Parts& parts, const std::vector<double>& oldest)
{
    Samples sum;
    std::vector<double> times;
    std::vector<std::size_t> next(parts.size(), 0);
    const SampleTimes& first = parts.front()->time_s;
    for (std::size_t i = 0; i < first.size(); ++i) {
        const double until = first[i] + kTimeGrace_s;
        double total = parts.front()->value[i];
        bool all = std::isfinite(total);
        for (std::size_t part = 1; part < parts.size(); ++part) {
            const Samples& other = *parts[part];
            while (next[part] < other.size() && other.time_s[next[part]] <= until)
                ++next[part];
            const std::size_t after = next[part];
            all = all && after > 0 &&
                  first[i] - other.time_s[after - 1] <= oldest[part] + kTimeGrace_s &&
                  std::isfinite(other.value[after - 1]);
            total += all ? other.value[after - 1] : 0.0;
        }
        if (!all)
            continue;
        times.push_back(first[i]);
        sum.value.push_back(total);
    }
    sum.time_s = SampleTimes(std::move(times));
    return sum;
}

} // namespace

std::shared_ptr<const Samples> sumOfParts(const RunTrace& trace, std::string_view base)
{
    Parts parts;
    for (const ChannelInfo& info : trace.channels()) {
        const PartedName name = partedName(info.name);
        if (name.part.empty() || name.base != base)
            continue;
        auto samples = trace.samples(info.name);
        if (!samples || samples->size() == 0)
            return nullptr; // a total without one of its parts is none
        parts.push_back(std::move(samples));
    }
    if (parts.empty())
        return nullptr;
    Samples sum = summed(parts, std::vector<double>(parts.size(), 0.0));
    if (2 * sum.size() < parts.front()->size()) {
        std::vector<double> oldest;
        for (const auto& part : parts)
            oldest.push_back(oldest_s(*part));
        sum = summed(parts, oldest);
    }
    return sum.size() > 0 ? std::make_shared<const Samples>(std::move(sum)) : nullptr;
}

} // namespace bothways::core
