// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <cmath>
#include <cstdint>
#include <optional>
#include <string>

/// Builders for tests: a day of driving in a few readable lines.
namespace bothways::tests {

/// One run; what is not said is a counted run of 240 s over 5 km at 8 L/100 km.
class DrivenRun {
public:
    DrivenRun& a() { return configuration("A"); }
    DrivenRun& b() { return configuration("B"); }
    DrivenRun& out() { return direction("out"); }
    DrivenRun& back() { return direction("return"); }
    DrivenRun& configuration(std::string name)
    {
        m_run.configuration = std::move(name);
        return *this;
    }
    DrivenRun& direction(std::string name)
    {
        m_run.direction = std::move(name);
        return *this;
    }
    DrivenRun& at_min(double minutes)
    {
        m_run.start.us = static_cast<std::int64_t>(minutes * 60e6 + (minutes < 0 ? -0.5 : 0.5));
        return *this;
    }
    DrivenRun& lasting_s(std::optional<double> seconds)
    {
        m_run.duration_s = seconds;
        return *this;
    }
    DrivenRun& over_km(std::optional<double> km)
    {
        m_run.distance_km = km;
        return *this;
    }
    DrivenRun& speed_kmh(double kmh)
    {
        m_run.speed_kmh = kmh;
        return *this;
    }
    DrivenRun& using_l(double l_per_100km)
    {
        return using_unit(l_per_100km, core::ConsumptionUnit::lPer100km);
    }
    DrivenRun& using_unit(double value, core::ConsumptionUnit unit)
    {
        m_run.consumption = core::Consumption{value, unit, 2, false};
        return *this;
    }
    DrivenRun& without_consumption()
    {
        m_run.consumption.reset();
        return *this;
    }
    DrivenRun& control(double value)
    {
        m_run.control = value;
        return *this;
    }
    DrivenRun& setting(std::string text)
    {
        m_run.setting = std::move(text);
        return *this;
    }
    DrivenRun& tied(std::string mark)
    {
        m_run.pair_mark = std::move(mark);
        return *this;
    }
    DrivenRun& discarded(std::string reason = "other")
    {
        m_run.discard = core::Discard{std::move(reason), "seen from the car"};
        return *this;
    }
    operator core::Run() const { return m_run; }

private:
    core::Run m_run = [] {
        core::Run run;
        run.configuration = "A";
        run.direction = "out";
        run.duration_s = 240.0;
        run.distance_km = 5.0;
        run.consumption = core::Consumption{8.0, core::ConsumptionUnit::lPer100km, 2, false};
        return run;
    }();
};

inline DrivenRun aDrivenRun()
{
    return {};
}

/// Numbers the runs 1, 2, 3... as they come, and keeps them in order of start.
class StudyBuilder {
public:
    StudyBuilder& add(core::Run run)
    {
        run.number = static_cast<int>(m_study.runs.size()) + 1;
        m_study.runs.push_back(std::move(run));
        return *this;
    }
    /// An out and a return run, seven minutes apart, around `at_min`.
    StudyBuilder& addPair(const std::string& configuration, double at_min, double l_out,
                          double l_back)
    {
        add(aDrivenRun().configuration(configuration).out().at_min(at_min - 3.5).using_l(l_out));
        return add(
            aDrivenRun().configuration(configuration).back().at_min(at_min + 3.5).using_l(l_back));
    }
    [[nodiscard]] core::Study build() const
    {
        core::Study study = m_study;
        core::sortByStart(study);
        return study;
    }
    operator core::Study() const { return build(); }

private:
    core::Study m_study;
};

/// Blocks named by the letters of `sequence`, `pairs` pairs a block 15 min apart, 20 min a switch;
/// the pairs' consumption is 10 L/100 km times exp(noise) where noise is
/// scatter * (a fixed, irregular number in [-1, 1]), times exp(effect_log) for B.
[[nodiscard]] inline core::Study aDay(const std::string& sequence, int pairs,
                                      double effect_log = 0.0, double scatter = 0.01,
                                      std::uint64_t seed = 1)
{
    StudyBuilder builder;
    double minute = 10.0;
    std::uint64_t state = seed * 0x9E3779B97F4A7C15ULL + 1;
    const auto irregular = [&] {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<double>(state >> 11U) / 4503599627370496.0 - 1.0;
    };
    char before = 0;
    for (const char letter : sequence) {
        if (before != 0 && letter != before)
            minute += 20.0;
        before = letter;
        for (int k = 0; k < pairs; ++k, minute += 15.0) {
            const double level = 10.0 * std::exp(letter == 'B' ? effect_log : 0.0);
            const double out = level * std::exp(scatter * irregular());
            const double back = level * std::exp(scatter * irregular());
            builder.addPair(std::string(1, letter), minute, out, back);
        }
    }
    return builder.build();
}

} // namespace bothways::tests
