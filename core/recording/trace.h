// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <initializer_list>
#include <limits>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// What a data logger recorded during one run, as the screening rules read it.
namespace bothways::core {

/// Times of samples, s. Copies share one array, so channels that were recorded row by row hold it
/// once, and whoever reads them can tell (data() is the same) and look at the times once.
class SampleTimes {
public:
    SampleTimes() = default;
    SampleTimes(std::vector<double> times)
        : m_times(std::make_shared<std::vector<double>>(std::move(times)))
    {
    }
    SampleTimes(std::initializer_list<double> times) : SampleTimes(std::vector<double>(times)) {}
    [[nodiscard]] std::size_t size() const { return m_times ? m_times->size() : 0; }
    [[nodiscard]] bool empty() const { return size() == 0; }
    [[nodiscard]] const double* data() const { return m_times ? m_times->data() : nullptr; }
    [[nodiscard]] const double* begin() const { return data(); }
    [[nodiscard]] const double* end() const { return data() + size(); }
    [[nodiscard]] double operator[](std::size_t i) const { return (*m_times)[i]; }
    [[nodiscard]] double front() const { return m_times->front(); }
    [[nodiscard]] double back() const { return m_times->back(); }
    /// Building sample by sample; never changes what a copy sees.
    void push_back(double time_s) { own().push_back(time_s); }
    void reserve(std::size_t size) { own().reserve(size); }

private:
    std::vector<double>& own()
    {
        if (!m_times)
            m_times = std::make_shared<std::vector<double>>();
        else if (m_times.use_count() > 1)
            m_times = std::make_shared<std::vector<double>>(*m_times);
        return *m_times;
    }
    std::shared_ptr<std::vector<double>> m_times;
};

/// Samples of one channel. Times ascend strictly; an empty cell of the recording is no sample.
struct Samples {
    SampleTimes time_s; ///< from the run's start; negative: the approach
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
/// when asked for, so that a rule whose limit a channel's bounds never reach costs nothing. What is
/// there and cannot be read is thrown (UnreadableRecording), never left out.
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

struct Run;
/// Gives the recording of a run; null where it has none. Called once a run and pass, in order.
/// Throws UnreadableRecording where it has one that cannot be read.
using TraceProvider = std::function<std::unique_ptr<RunTrace>(const Run&)>;

} // namespace bothways::core
