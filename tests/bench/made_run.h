// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"

#include <cmath>
#include <functional>
#include <initializer_list>
#include <map>
#include <random>
#include <string>
#include <vector>

/// One healthy run of a made day, before anything is done to it. See made_days.h.
namespace bothways::bench {

inline constexpr double kApproach_s = 10.0;
inline constexpr double kDuration_s = 180.0;
inline constexpr double kTarget_kmh = 90.0;

class Random {
public:
    explicit Random(std::uint64_t seed) : m_engine(seed) {}
    double normal() { return m_normal(m_engine); }
    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_engine);
    }
    bool chance(double share) { return between(0.0, 1.0) < share; }
    template <class T>
    T oneOf(std::initializer_list<T> things)
    {
        return *(things.begin() + static_cast<long>(below(things.size())));
    }
    std::size_t below(std::size_t count)
    {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(m_engine);
    }

private:
    std::mt19937_64 m_engine;
    std::normal_distribution<double> m_normal;
};

struct MadeChannel {
    std::vector<double> value; ///< at the base rate, not yet rounded
    double quantum = 0.01;
    std::size_t every = 1; ///< recorded at each n-th moment
    double lostFrom_s = 1e9, lostTo_s = 1e9;
};

/// One run in the making, at the base rate.
class MadeRun {
public:
    MadeRun(Random& random, double rate_hz, bool device, double speedQuantum)
        : m_random(random), m_rate_hz(rate_hz)
    {
        const auto count =
            static_cast<std::size_t>(std::llround((kApproach_s + kDuration_s + 1.0) * rate_hz)) + 1;
        for (std::size_t i = 0; i < count; ++i)
            m_times.push_back(-kApproach_s + static_cast<double>(i) / rate_hz);
        add("road_speed_kmh", speedQuantum, kTarget_kmh, wander(0.5, 8.0), white(0.15));
        add("accessory_w", 1.0, 180.0, wander(5.0, 2.0));
        add("fuel_rate_l_per_h", 0.01, 7.2, wander(0.4, 3.0));
        add("coolant_c", 0.1, 88.0, wander(0.4, 60.0));
        add("battery_v", 0.01, 13.8, wander(0.03, 5.0));
        add("vibration_ms2", 0.01, 4.0, wander(0.6, 0.5));
        add("yaw_deg_per_s", 0.01, 0.0, wander(0.3, 0.8));
        add("wind_ms", 0.1, 3.0, gusts());
        const auto rpm = wander(40.0, 5.0), noise = white(5.0);
        const auto spread = white(10.0), slip = white(0.001);
        auto &rotor = add("rotor_rpm", 1.0, 0.0), &generator = add("generator_rpm", 1.0, 0.0);
        auto& output = add("output_w", 0.1, 0.0);
        for (std::size_t i = 0; device && i < count; ++i) {
            rotor[i] = 2800.0 + rpm[i] + noise[i];
            generator[i] = 3.2 * rotor[i] * (1.0 + slip[i]);
            output[i] = 600.0 * std::pow((2800.0 + rpm[i]) / 2800.0, 3.0) + spread[i];
        }
        add("setting", 0.05, 18.0, wander(0.1, 2.0));
        add("setting_set", 0.5, 18.0);
    }
    std::vector<double>& of(const std::string& name) { return m_channels.at(name).value; }
    MadeChannel& channel(const std::string& name) { return m_channels.at(name); }
    [[nodiscard]] double rate_hz() const { return m_rate_hz; }

    /// Changes a channel from_s <= time < to_s.
    void change(const std::string& name, double from_s, double to_s,
                const std::function<double(double time_s, double value)>& to)
    {
        std::vector<double>& values = of(name);
        for (std::size_t i = 0; i < m_times.size(); ++i)
            if (m_times[i] >= from_s - 1e-9 && m_times[i] < to_s - 1e-9)
                values[i] = to(m_times[i], values[i]);
    }
    void add_to(const std::string& name, double from_s, double to_s, double amount)
    {
        change(name, from_s, to_s, [=](double, double value) { return value + amount; });
    }
    void scale(const std::string& name, double from_s, double to_s, double factor)
    {
        change(name, from_s, to_s, [=](double, double value) { return value * factor; });
    }
    void endAt(double last_s) { m_last_s = last_s; }

    /// As the logger writes it: rounded, some channels less often, now and then a sample missing.
    core::MemoryTrace recorded(double distanceFactor, double fuelQuantum)
    {
        integrate("distance_m", "road_speed_kmh", distanceFactor / 3.6, 0.1);
        integrate("fuel_used_l", "fuel_rate_l_per_h", 1.0 / 3600.0, fuelQuantum);
        core::MemoryTrace trace;
        for (auto& [name, made] : m_channels) {
            core::Samples samples;
            for (std::size_t i = 0; i < m_times.size() && m_times[i] <= m_last_s + 1e-9; ++i) {
                const bool lost = m_times[i] > made.lostFrom_s && m_times[i] < made.lostTo_s;
                if (lost || i % made.every != 0 || m_random.chance(0.005))
                    continue;
                samples.time_s.push_back(m_times[i]);
                samples.value.push_back(made.quantum * std::round(made.value[i] / made.quantum));
            }
            trace.add(name, "", std::move(samples));
        }
        return trace;
    }

private:
    using Values = std::vector<double>;
    /// First-order noise: standard deviation, and the time after which it has forgotten.
    Values wander(double deviation, double memory_s)
    {
        const double keep = std::exp(-1.0 / (m_rate_hz * memory_s));
        Values values;
        double level = m_random.normal();
        for (std::size_t i = 0; i < m_times.size(); ++i) {
            values.push_back(deviation * level);
            level = keep * level + std::sqrt(1.0 - keep * keep) * m_random.normal();
        }
        return values;
    }
    Values white(double deviation) { return wander(deviation, 1e-3); }
    /// Wind whose roughness comes and goes.
    Values gusts()
    {
        Values fast = wander(0.6, 1.0);
        const Values slow = wander(0.3, 20.0);
        for (std::size_t i = 0; i < fast.size(); ++i)
            fast[i] *= std::exp(slow[i]);
        return fast;
    }
    Values& add(const std::string& name, double quantum, double level, const Values& a = {},
                const Values& b = {})
    {
        MadeChannel& made = m_channels[name];
        made.quantum = quantum;
        for (std::size_t i = 0; i < m_times.size(); ++i)
            made.value.push_back(level + (a.empty() ? 0.0 : a[i]) + (b.empty() ? 0.0 : b[i]));
        return made.value;
    }
    void integrate(const std::string& name, const std::string& rate, double factor, double quantum)
    {
        Values& sum = add(name, quantum, 0.0);
        const Values& rates = of(rate);
        for (std::size_t i = 1; i < sum.size(); ++i)
            sum[i] = sum[i - 1] + factor * 0.5 * (rates[i] + rates[i - 1]) / m_rate_hz;
    }
    Random& m_random;
    double m_rate_hz;
    double m_last_s = 1e9;
    std::vector<double> m_times;
    std::map<std::string, MadeChannel> m_channels;
};

} // namespace bothways::bench
