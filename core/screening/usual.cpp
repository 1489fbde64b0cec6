// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/over_time.h"
#include "core/screening/context.h"
#include "core/statistics/robust.h"
#include "core/study/parts.h"

#include <algorithm>

namespace bothways::core::rules {
namespace {

/// Configurations are compared case-blind.
std::pair<std::string, std::string> keyOf(const Run& run, std::string_view quantity)
{
    return {inSmallLetters(run.configuration), std::string(quantity)};
}

bool allAbove0(std::span<const double> values)
{
    double lowest = values.front();
    for (const double value : values)
        lowest = value < lowest ? value : lowest;
    return lowest > 0.0;
}

/// Ratios while both turn, and how long each of them stood.
struct Ratios {
    std::vector<double> ratio, weight_s;
};

Ratios ratios(const Channel& generator, const Channel& rotor)
{
    Ratios found;
    const std::vector<double> weights =
        isEven(generator) ? std::vector<double>(generator.size(), 1.0)
                          : weightsOverTime(generator.time_s(), longestGap_s(generator.interval_s));
    Held held(rotor);
    const auto time_s = generator.time_s();
    const auto rpm = generator.value();
    for (std::size_t i = 0; i < generator.size(); ++i) {
        const double turning = held.at(time_s[i]);
        if (rpm[i] > 0.0 && turning > 0.0 && weights[i] > 0.0) {
            found.ratio.push_back(rpm[i] / turning);
            found.weight_s.push_back(weights[i]);
        }
    }
    return found;
}

} // namespace

void UsualValues::addMedian(const Run& run, const Channel& channel)
{
    m_medians[keyOf(run, channel.name)].push_back(medianOverTime(channel));
}

void UsualValues::addRatio(const Run& run, const Channel& generator, const Channel& rotor,
                           std::string_view part)
{
    const std::string quantity = ofPart(kRatio, part);
    const auto above = generator.value();
    const auto below = rotor.value();
    if (generator.sameTimes(rotor) && isEven(generator) && allAbove0(above) && allAbove0(below)) {
        m_medians[keyOf(run, quantity)].push_back(
            medianOf(above.size(), [&](std::size_t i) { return above[i] / below[i]; }));
    } else if (const Ratios found = ratios(generator, rotor); !found.ratio.empty()) {
        m_medians[keyOf(run, quantity)].push_back(weightedMedian(found.ratio, found.weight_s));
    }
}

void UsualValues::add(const Run& run, RunChannels& channels)
{
    std::vector<std::string> parts = channels.partsOf({"output_w", "rotor_rpm", "generator_rpm"});
    parts.insert(parts.begin(), std::string());
    for (const std::string& part : parts) {
        if (const Channel* output = channels.find(ofPart("output_w", part)))
            addMedian(run, *output);
        const Channel* rotor = channels.find(ofPart("rotor_rpm", part));
        const Channel* generator = channels.find(ofPart("generator_rpm", part));
        // Both where there are both: the device speed of another run may be the generator's alone.
        for (const Channel* speed : {rotor, generator})
            if (speed)
                addMedian(run, *speed);
        // One rotor may drive two generators, and two rotors one.
        rotor = rotor || !generator ? rotor : channels.find("rotor_rpm");
        generator = generator || !rotor ? generator : channels.find("generator_rpm");
        if (rotor && generator)
            addRatio(run, *generator, *rotor, part);
    }
}

std::optional<double> UsualValues::of(const Run& run, std::string_view quantity) const
{
    const auto medians = m_medians.find(keyOf(run, quantity));
    if (medians == m_medians.end())
        return std::nullopt;
    return median(medians->second);
}

} // namespace bothways::core::rules
