// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/now.h"

#include "core/study/units.h"

#include <ctime>

namespace bothways::cli {

core::Instant nowBy(const core::Study& study)
{
    const std::time_t seconds = std::time(nullptr);
    std::tm local{};
    if (localtime_r(&seconds, &local) == nullptr)
        local.tm_gmtoff = 0;
    core::Instant instant{static_cast<std::int64_t>(seconds) * core::kSecond_us, std::nullopt};
    if (!study.runs.empty() && study.runs.back().start.utc_offset_min)
        instant.utc_offset_min = static_cast<int>(local.tm_gmtoff / 60);
    else
        instant.us += std::int64_t{local.tm_gmtoff} * core::kSecond_us;
    return instant;
}

} // namespace bothways::cli
