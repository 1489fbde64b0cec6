// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/rules.h"
#include "core/statistics/robust.h"

#include <cmath>

namespace bothways::core::rules {
namespace {

constexpr double kSeconds = 0.5;

/// Departures of one channel from its median in the run, in robust standard deviations.
void departures(RunContext& context, const Channel& channel)
{
    if (!context.fastEnough(Rule::passingTraffic, channel, kSeconds))
        return;
    const auto time_s = channel.time_s();
    const auto values = channel.value();
    const double centre = median(values);
    const double sigma = kMadToSigma * medianAbsoluteDeviation(values, centre);
    if (!(sigma > 0.0)) {
        context.notChecked(Rule::passingTraffic, WhyNotChecked::noSpread, channel.name);
        return;
    }
    const double sigmas = context.limitWithDefault("passing_traffic.sigmas");
    const double surely = 0.999 * sigmas * sigma; // below, no exact look is needed
    const auto far = [&](std::size_t i) {
        const double departure = std::abs(values[i] - centre);
        return departure > surely && reaches(departure / sigma, sigmas);
    };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, far))) {
        const auto departure = [&](std::size_t i) { return (values[i] - centre) / sigma; };
        context
            .found(Rule::passingTraffic, channel, event, furthestFromZero(event, departure), sigmas,
                   "σ")
            .channels = {channel.name};
    }
}

} // namespace

void passingTraffic(RunContext& context)
{
    const Channel* wind = context.channels.find("wind_ms");
    const Channel* yaw = context.channels.find("yaw_deg_per_s");
    if (!wind && !yaw)
        (void)context.needed(Rule::passingTraffic, "wind_ms");
    if (wind)
        departures(context, *wind);
    if (yaw)
        departures(context, *yaw);
}

} // namespace bothways::core::rules
