// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/finding.h"

#include <string_view>

namespace bothways::core {
namespace {

std::string_view nameOf(LostSensor::How how)
{
    switch (how) {
    case LostSensor::How::gap: return "gap";
    case LostSensor::How::frozen: return "frozen";
    case LostSensor::How::zero: return "zero";
    case LostSensor::How::fell: return "fell";
    }
    return {};
}

} // namespace

std::string detailOf(const Finding& finding)
{
    std::string all;
    const auto add = [&all](std::string_view one) {
        if (!one.empty())
            all.append(all.empty() ? "" : ", ").append(one);
    };
    for (const LostSensor& lost : finding.lost)
        add(std::string(lost.channel).append(":").append(nameOf(lost.how)));
    for (const std::string& channel : finding.channels)
        add(channel);
    add(finding.accessory);
    if (finding.of_mean)
        add("mean");
    for (const std::string& words : finding.words)
        add(words);
    return all;
}

} // namespace bothways::core
