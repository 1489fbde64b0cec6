// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <unistd.h>

#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <utility>

/// Builders for the tests of storage/.
namespace bothways::tests {

/// The value, or the test ends here with the error's words.
template <class T>
T taken(core::Result<T> result)
{
    if (!result)
        throw std::runtime_error(core::describe(result.error()));
    return std::move(result).take();
}

/// A folder of the test's own that goes with it; in memory where there is such a place, for each
/// commit waits for the disk five times.
class TemporaryFolder {
public:
    TemporaryFolder()
    {
        const std::filesystem::path memory = "/dev/shm";
        const bool fast = ::access(memory.c_str(), W_OK) == 0;
        std::string name =
            ((fast ? memory : std::filesystem::temp_directory_path()) / "bothways-XXXXXX").string();
        if (!::mkdtemp(name.data()))
            throw std::runtime_error("no temporary folder");
        m_path = name;
    }
    ~TemporaryFolder()
    {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    std::filesystem::path operator/(const std::string& name) const { return m_path / name; }
    const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

/// aRun().returning().at_min(7): a counted run of the baseline, outward, unless said otherwise.
class RunBuilder {
public:
    RunBuilder()
    {
        m_run.configuration = "A";
        m_run.direction = "out";
        m_run.start.us = kMorning_us;
        m_run.consumption = core::Consumption{8.41, core::ConsumptionUnit::lPer100km, 2, false};
    }
    RunBuilder& number(int number) { return m_run.number = number, *this; }
    RunBuilder& device() { return m_run.configuration = "B", *this; }
    RunBuilder& returning() { return m_run.direction = "return", *this; }
    RunBuilder& at_min(int minutes)
    {
        m_run.start.us = kMorning_us + std::int64_t{60'000'000} * minutes;
        return *this;
    }
    RunBuilder& consuming(double l_per_100km)
    {
        m_run.consumption->value = l_per_100km;
        return *this;
    }
    /// Something in every field.
    RunBuilder& full()
    {
        m_run.number = 9;
        m_run.setting = "18.5";
        m_run.duration_s = 211.25;
        m_run.distance_km = 5.2;
        m_run.speed_kmh = 89.1;
        m_run.consumption = core::Consumption{31.9, core::ConsumptionUnit::mpgUs, 2, true};
        m_run.control = 30.1;
        m_run.discard = core::Discard{"other", "the tyre was low"};
        m_run.marks = {{31.2, "passing_traffic", "lorry; \\ wide"}, {-3, "gust", ""}};
        m_run.accessory_w = 120;
        m_run.accessories = "radio, lights";
        m_run.output_w = 600;
        m_run.rotor_rpm_max = 2810;
        m_run.battery_v_start = 12.6;
        m_run.battery_v_end = 12.5;
        m_run.wind_ms = 1.5;
        m_run.wind_from_deg = 225;
        m_run.temperature_c = 8.4;
        m_run.pressure_hpa = 1013.2;
        m_run.humidity_pct = 81;
        m_run.trace = "r9.csv";
        m_run.notes = " said \"go\";\nthen went ";
        m_run.accessory_on_s = {{"heated_windscreen", -41.5}, {"seat", 3}};
        m_run.extra = {{"Driver", "Ada"}, {"Tyre, left", "2.4\t"}};
        return *this;
    }
    operator core::Run() const { return m_run; }

    static constexpr std::int64_t kMorning_us = 1'778'305'200'000'000; ///< 2026-05-09T05:40:00

private:
    core::Run m_run;
};

inline RunBuilder aRun()
{
    return {};
}

} // namespace bothways::tests
