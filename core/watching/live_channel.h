// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/channels.h"
#include "core/recording/trace.h"
#include "core/watching/running_median.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace bothways::core {

/// Samples of one channel as they come, and what is known of it since the run began. Times are
/// those of the recording; what is handed out counts from the run's start.
class LiveChannel {
public:
    LiveChannel(std::string name, std::string unit);

    [[nodiscard]] const std::string& name() const { return m_name; }
    [[nodiscard]] const std::string& unit() const { return m_unit; }
    [[nodiscard]] std::optional<double> last_s() const;
    /// Median between samples since the channel is known; 0 before the second.
    [[nodiscard]] double pace_s() const { return m_pace.median(); }

    /// What is no reading, or not later than what came before, is left out.
    void put(std::span<const double> time_s, std::span<const double> value);
    /// Forgets what is older, but for the last sample before.
    void forgetBefore(double time_s);
    void beginRun(double start_s);
    /// Takes what came since into what is known.
    void digest();
    [[nodiscard]] rules::ChannelSoFar soFar() const;

    /// The approach and the start of the run, and what is later than `from_s` of the run, with the
    /// sample before.
    [[nodiscard]] Samples part(double from_s) const;
    [[nodiscard]] Samples whole() const;

private:
    [[nodiscard]] std::size_t firstFrom(double time_s) const;
    void append(Samples& samples, std::vector<double>& times, std::size_t begin,
                std::size_t end) const;
    void keepStart();
    void take(double time_s, double value);

    std::string m_name, m_unit;
    std::vector<double> m_time, m_value;
    RunningMedian m_pace;
    // since the run began:
    double m_start_s = 0.0;
    std::size_t m_next = 0;                 ///< first sample that was not digested
    std::vector<double> m_headTime, m_head; ///< approach and start, once they are over
    RunningMedian m_intervals, m_dwells;
    std::vector<double> m_distinct;
    std::optional<double> m_before_s, m_latest; ///< time and value of the last one digested
    double m_unchangedSince_s = 0.0;
    bool m_constant = true;
    bool m_headKept = false;
};

} // namespace bothways::core
