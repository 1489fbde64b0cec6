// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

/// What a data logger recorded during one run, as the screening rules read it.
namespace bothways::core {

/// Samples of one channel. Times ascend strictly; an empty cell of the recording is no sample.
struct Samples {
    std::vector<double> time_s; ///< from the run's start; negative: the approach
    std::vector<double> value;
    [[nodiscard]] std::size_t size() const { return value.size(); }
};

struct ChannelInfo {
    std::string name; ///< "road_speed_kmh", or the logger's own
    std::string unit;
    double minimum = -std::numeric_limits<double>::infinity(); ///< bounds, not always attained
    double maximum = std::numeric_limits<double>::infinity();
};

/// One run's window on its recording: the approach, the run, and what follows. Channels are read
/// when asked for, so that a rule whose limit a channel's bounds never reach costs nothing.
class RunTrace {
public:
    virtual ~RunTrace() = default;
    [[nodiscard]] virtual const std::vector<ChannelInfo>& channels() const = 0;
    /// Null where the recording has no such channel, or no sample of it.
    [[nodiscard]] virtual std::shared_ptr<const Samples>
    samples(std::string_view channel) const = 0;
    /// Marks in the recording itself: seconds and words.
    struct TextMark {
        double at_s;
        std::string words;
    };
    [[nodiscard]] virtual const std::vector<TextMark>& marks() const = 0;
    /// Time of the last sample of any channel, s; NaN when there are none.
    [[nodiscard]] virtual double last_s() const = 0;
};

/// A RunTrace that holds everything in memory: for small files and tests.
class MemoryTrace final : public RunTrace {
public:
    void add(std::string name, std::string unit, Samples samples);
    void addMark(double at_s, std::string words);
    const std::vector<ChannelInfo>& channels() const override { return m_channels; }
    std::shared_ptr<const Samples> samples(std::string_view channel) const override;
    const std::vector<TextMark>& marks() const override { return m_marks; }
    double last_s() const override;

private:
    std::vector<ChannelInfo> m_channels;
    std::vector<std::shared_ptr<const Samples>> m_samples;
    std::vector<TextMark> m_marks;
};

} // namespace bothways::core
