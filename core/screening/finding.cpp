// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/finding.h"
#include "core/study/rule.h"

#include <algorithm>
#include <string_view>

namespace bothways::core {

std::vector<LostSensor> lostSensors(const Finding& finding)
{
    std::vector<LostSensor> lost;
    std::string_view rest = finding.detail;
    while (finding.rule == Rule::sensorLost && !rest.empty()) {
        const std::string_view one = rest.substr(0, rest.find(", "));
        rest.remove_prefix(std::min(rest.size(), one.size() + 2));
        const std::size_t colon = one.rfind(':');
        if (colon == std::string_view::npos)
            continue; // words of a mark
        const std::string_view how = one.substr(colon + 1);
        lost.push_back({std::string(one.substr(0, colon)), how == "frozen" ? LostSensor::How::frozen
                                                           : how == "zero" ? LostSensor::How::zero
                                                           : how == "fell" ? LostSensor::How::fell
                                                                           : LostSensor::How::gap});
    }
    return lost;
}

} // namespace bothways::core
