// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/study/study.h"

#include <cmath>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Recordings made of functions of time, for the tests of screening.
namespace bothways::core::tests {

/// Even noise in [-1, 1] that is a function of time alone, so that a recording at twice the rate
/// has the same values at the same times. Good to 1 ms.
inline double noise(double time_s, unsigned channel)
{
    auto x = static_cast<std::uint64_t>(std::llround(time_s * 1000.0) + 1'000'000) * 1000003 +
             channel * 7919;
    x = (x ^ (x >> 31)) * 0x7fb5d329728ea185;
    x = (x ^ (x >> 27)) * 0x81dadef4bc2dd44d;
    x ^= x >> 33;
    return std::ldexp(static_cast<double>(x >> 11), -52) - 1.0;
}

class TraceBuilder {
public:
    using Function = std::function<double(double time_s)>;
    using Edit = std::function<double(double time_s, double value)>;

    /// Samples at `hz` from `from_s` to `to_s`.
    explicit TraceBuilder(double hz = 10.0, double from_s = -10.0, double to_s = 202.0)
        : m_hz(hz), m_from_s(from_s), m_to_s(to_s)
    {
    }
    TraceBuilder& channel(const std::string& name, const Function& value)
    {
        Samples samples;
        const auto count = static_cast<long>(std::llround((m_to_s - m_from_s) * m_hz));
        for (long i = 0; i <= count; ++i) {
            const double time_s = m_from_s + static_cast<double>(i) / m_hz;
            samples.time_s.push_back(time_s);
            samples.value.push_back(value(time_s));
        }
        m_channels[name] = std::move(samples);
        return *this;
    }
    /// Changes the samples of a channel at from_s <= time <= to_s.
    TraceBuilder& edit(const std::string& name, double from_s, double to_s, const Edit& value)
    {
        Samples& samples = m_channels.at(name);
        for (std::size_t i = 0; i < samples.size(); ++i)
            if (samples.time_s[i] >= from_s - 1e-9 && samples.time_s[i] <= to_s + 1e-9)
                samples.value[i] = value(samples.time_s[i], samples.value[i]);
        return *this;
    }
    TraceBuilder& set(const std::string& name, double from_s, double to_s, double value)
    {
        return edit(name, from_s, to_s, [=](double, double) { return value; });
    }
    /// Takes away the samples of a channel at from_s < time < to_s.
    TraceBuilder& cut(const std::string& name, double from_s, double to_s)
    {
        const Samples& samples = m_channels.at(name);
        Samples kept;
        for (std::size_t i = 0; i < samples.size(); ++i)
            if (samples.time_s[i] <= from_s + 1e-9 || samples.time_s[i] >= to_s - 1e-9) {
                kept.time_s.push_back(samples.time_s[i]);
                kept.value.push_back(samples.value[i]);
            }
        m_channels[name] = std::move(kept);
        return *this;
    }
    TraceBuilder& cutAll(double from_s, double to_s)
    {
        for (const std::string& name : names())
            cut(name, from_s, to_s);
        return *this;
    }
    TraceBuilder& without(const std::string& name)
    {
        m_channels.erase(name);
        return *this;
    }
    TraceBuilder& mark(double at_s, std::string words)
    {
        m_marks.push_back({at_s, std::move(words)});
        return *this;
    }
    [[nodiscard]] std::vector<std::string> names() const
    {
        std::vector<std::string> all;
        for (const auto& [name, samples] : m_channels)
            all.push_back(name);
        return all;
    }
    [[nodiscard]] MemoryTrace build() const
    {
        MemoryTrace trace;
        for (const auto& [name, samples] : m_channels)
            trace.add(name, "", samples);
        for (const auto& mark : m_marks)
            trace.addMark(mark.at_s, mark.words);
        return trace;
    }

private:
    double m_hz, m_from_s, m_to_s;
    std::map<std::string, Samples> m_channels;
    std::vector<RunTrace::TextMark> m_marks;
};

/// A run of 200 s at 90 km/h in which nothing is wrong, with its approach; every known channel.
inline TraceBuilder aHealthyTrace(double hz = 10.0, unsigned seed = 0)
{
    const auto n = [seed](unsigned channel) {
        return [=](double t) { return noise(t, channel + 100 * seed); };
    };
    const auto rotor = [=](double t) { return 2800.0 + 60.0 * std::sin(0.11 * t) + 8.0 * n(1)(t); };
    return TraceBuilder(hz)
        .channel("road_speed_kmh", [=](double t) { return 90.0 + 0.6 * n(2)(t); })
        .channel("distance_m", [=](double t) { return 300.0 + 25.0 * t + 0.01 * n(3)(t); })
        .channel("fuel_rate_l_per_h", [=](double t) { return 7.2 + 0.3 * n(4)(t); })
        .channel("accessory_w", [=](double t) { return 180.0 + 4.0 * n(5)(t); })
        .channel("output_w", [=](double t) { return 600.0 + 25.0 * n(6)(t); })
        .channel("rotor_rpm", rotor)
        .channel("generator_rpm", [=](double t) { return 3.2 * rotor(t) * (1 + 0.002 * n(7)(t)); })
        .channel("setting", [=](double t) { return 18.0 + 0.2 * n(8)(t); })
        .channel("setting_set", [](double) { return 18.0; })
        .channel("vibration_ms2", [=](double t) { return 4.0 + 1.0 * n(9)(t); })
        .channel("wind_ms", [=](double t) { return 2.0 + 0.5 * n(10)(t); })
        .channel("yaw_deg_per_s", [=](double t) { return 0.4 * n(11)(t); })
        .channel("battery_v", [=](double t) { return 13.8 + 0.05 * n(12)(t); });
}

/// Every limit that has no default.
inline Limits allLimitsSet()
{
    return {{"overspeed.rpm", 3200.0},
            {"road_speed.target_kmh", 90.0},
            {"stretch.km", 5.0},
            {"vibration.ms2", 8.0}};
}

/// Recordings by run number, as screen() asks for them.
class Recordings {
public:
    Recordings& add(int run, const TraceBuilder& builder)
    {
        (*m_traces)[run] = builder.build();
        return *this;
    }
    operator TraceProvider() const
    {
        return [traces = m_traces](const Run& run) -> std::unique_ptr<RunTrace> {
            const auto found = traces->find(run.number);
            return found == traces->end() ? nullptr : std::make_unique<MemoryTrace>(found->second);
        };
    }

private:
    std::shared_ptr<std::map<int, MemoryTrace>> m_traces =
        std::make_shared<std::map<int, MemoryTrace>>();
};

} // namespace bothways::core::tests
