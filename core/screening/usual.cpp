// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/context.h"
#include "core/statistics/robust.h"

#include <algorithm>

namespace bothways::core::rules {
namespace {

/// Configurations are compared case-blind.
std::pair<std::string, std::string> keyOf(const Run& run, std::string_view quantity)
{
    std::string configuration = run.configuration;
    for (char& c : configuration)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return {std::move(configuration), std::string(quantity)};
}

bool allAbove0(std::span<const double> values)
{
    double lowest = values.front();
    for (const double value : values)
        lowest = value < lowest ? value : lowest;
    return lowest > 0.0;
}

/// Ratios while both turn.
std::vector<double> ratios(const Channel& generator, const Channel& rotor)
{
    std::vector<double> ratio;
    ratio.reserve(generator.size());
    Held held(rotor);
    const auto time_s = generator.time_s();
    const auto rpm = generator.value();
    for (std::size_t i = 0; i < generator.size(); ++i) {
        const double turning = held.at(time_s[i]);
        if (rpm[i] > 0.0 && turning > 0.0)
            ratio.push_back(rpm[i] / turning);
    }
    return ratio;
}

} // namespace

void UsualValues::addMedian(const Run& run, std::string_view quantity,
                            std::span<const double> values)
{
    if (!values.empty())
        m_medians[keyOf(run, quantity)].push_back(median(values));
}

void UsualValues::addRatio(const Run& run, const Channel& generator, const Channel& rotor)
{
    const auto above = generator.value();
    const auto below = rotor.value();
    if (generator.sameTimes(rotor) && allAbove0(above) && allAbove0(below))
        m_medians[keyOf(run, kRatio)].push_back(
            medianOf(above.size(), [&](std::size_t i) { return above[i] / below[i]; }));
    else
        addMedian(run, kRatio, ratios(generator, rotor));
}

void UsualValues::add(const Run& run, RunChannels& channels)
{
    if (const Channel* output = channels.find("output_w"))
        addMedian(run, output->name, output->value());
    const Channel* rotor = channels.find("rotor_rpm");
    const Channel* generator = channels.find("generator_rpm");
    // Both where there are both: the device speed of another run may be the generator's alone.
    for (const Channel* speed : {rotor, generator})
        if (speed)
            addMedian(run, speed->name, speed->value());
    if (rotor && generator)
        addRatio(run, *generator, *rotor);
}

std::optional<double> UsualValues::of(const Run& run, std::string_view quantity) const
{
    const auto medians = m_medians.find(keyOf(run, quantity));
    if (medians == m_medians.end())
        return std::nullopt;
    return median(medians->second);
}

} // namespace bothways::core::rules
