// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample_data/make_demo/generator_day.h"
#include "tests/storage/study/study_builders.h"
#include "tests/support/read_sheet.h"

#include <filesystem>

namespace bothways::tests {

inline std::filesystem::path generatorSheet()
{
    return std::filesystem::path(BOTHWAYS_SOURCE_DIR) / "sample_data" / "levee_generator.csv";
}

/// The demo day of the generator, with the limits that its recordings are screened by.
inline core::Study generatorDay()
{
    core::Study study = taken(readRunSheet(generatorSheet())).study;
    study.properties.limits = {{"accessory_change.declared_w", demo::kLoad_w},
                               {"overspeed.rpm", demo::kRotorLimit_rpm},
                               {"road_speed.target_kmh", demo::kTarget_kmh},
                               {"stretch.km", demo::kStretch_km}};
    study.properties.timed_accessories = {
        {"windscreen", demo::kWindscreen_w, demo::kWindscreen_min}};
    return study;
}

} // namespace bothways::tests
