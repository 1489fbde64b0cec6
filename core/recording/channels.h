// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/statistics/events.h"

#include <cmath>
#include <cstddef>
#include <deque>
#include <initializer_list>
#include <limits>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// A run's recording as the rules read it: each channel cut to the run, once. (Method, section 9,
/// "Common to all".)
namespace bothways::core::rules {

/// Gaps longer than this are a lost sensor: max(1 s, 3 x the channel's median interval).
[[nodiscard]] double longestGap_s(double interval_s);

/// Distinct values of a channel that ought to move.
inline constexpr std::size_t kLively = 20;

/// Distance of the moments at which a recording is looked at first for standing still.
inline constexpr double kMoments_s = 2.49;

/// Samples of one channel: all of them, and those of the run, 0 <= time <= end. Samples that are
/// no number below 1e100 are left out, as empty cells are.
struct Channel {
    std::string name; ///< with its part: "rotor_rpm@left"
    std::shared_ptr<const Samples> owner;
    std::size_t begin = 0, end = 0; ///< of the run in owner; before `begin` lies the approach
    double interval_s = 0.0;        ///< median between samples of the run; infinite under two

    [[nodiscard]] std::size_t size() const { return end - begin; }
    [[nodiscard]] std::span<const double> time_s() const
    {
        return std::span(owner->time_s.data(), owner->time_s.size()).subspan(begin, size());
    }
    [[nodiscard]] std::span<const double> value() const
    {
        return std::span(owner->value).subspan(begin, size());
    }
    /// Times of samples within rounding of 0 s are shown as 0.
    [[nodiscard]] double at_s(std::size_t i) const;
    /// Values at from_s <= time < to_s, in the approach and after the end too.
    [[nodiscard]] std::span<const double> between(double from_s, double to_s) const;
    /// Both were recorded row by row: sample i of one is of the same moment as sample i of the
    /// other.
    [[nodiscard]] bool sameTimes(const Channel& other) const
    {
        return owner->time_s.data() == other.owner->time_s.data() && begin == other.begin &&
               end == other.end;
    }
    [[nodiscard]] bool tooSlowFor(double seconds) const
    {
        return interval_s > seconds + kTimeGrace_s;
    }
};

/// What is known of a channel from all of a run so far, where only its latest samples are at hand.
struct ChannelSoFar {
    double interval_s = std::numeric_limits<double>::infinity(); ///< median between samples
    double dwell_s = 0.0;           ///< median time for which it keeps a value
    bool lively = false;            ///< has had as many values as one that ought to move
    bool constant = true;           ///< has had one value alone
    double unchanged_since_s = 0.0; ///< first sample of the value that it has now
};

/// A run under way: its duration is what has been driven of it, and its end may still come to
/// stand otherwise. Of the recording only the start, its approach, and what came lately is there.
struct UnderWay {
    double from_s = 0.0; ///< what lies before was looked at earlier; 0: all is there
    std::map<std::string, ChannelSoFar, std::less<>> so_far;
};

/// The first seconds of a run, over which a thing is taken to be as it was meant.
inline constexpr double kStart_s = 5.0;
/// Median of the samples in the start, [0, 5) s; nothing without one.
[[nodiscard]] std::optional<double> medianAtStart(const Channel& channel);

/// at(i) of the event that lies furthest from 0, with its sign. Asked once a sample, in order.
template <class At>
[[nodiscard]] double furthestFromZero(const Stretch& event, At at)
{
    double furthest = 0.0;
    for (std::size_t i = event.first; i <= event.last; ++i)
        if (const double value = at(i); std::abs(value) > std::abs(furthest))
            furthest = value;
    return furthest;
}

/// What a second channel last said: the value of its latest sample at or before a time. Times must
/// be asked in ascending order.
class Held {
public:
    enum class Age { limited, unlimited };
    /// With Age::limited a sample older than longestGap_s() says nothing (NaN); a set point stays
    /// what it is until the next.
    explicit Held(const Channel& channel, Age age = Age::limited);
    [[nodiscard]] double at(double time_s)
    {
        const double until = time_s + kTimeGrace_s;
        while (m_next < m_count && m_time[m_next] <= until)
            ++m_next;
        if (m_next == 0 || until - m_time[m_next - 1] > m_oldest_s)
            return std::numeric_limits<double>::quiet_NaN();
        return m_value[m_next - 1];
    }

private:
    const double* m_time;
    const double* m_value;
    std::size_t m_count;
    std::size_t m_next = 0;
    double m_oldest_s;
};

class RunChannels {
public:
    /// @param trace       null: the run has no recording
    /// @param duration_s  of the run; nothing: it lasts as long as its recording
    /// @param underWay    null: the run is over. Must outlive this.
    RunChannels(const RunTrace* trace, std::optional<double> duration_s,
                const UnderWay* underWay = nullptr);

    [[nodiscard]] bool hasTrace() const { return m_trace != nullptr; }
    [[nodiscard]] const RunTrace& trace() const { return *m_trace; }
    /// Null where the run is over.
    [[nodiscard]] const UnderWay* underWay() const { return m_underWay; }
    /// Null where the run is over or the channel is new.
    [[nodiscard]] const ChannelSoFar* soFar(const Channel& channel) const;
    /// Null where the channel has no sample in the run. Kept until release(). "output_w" is the sum
    /// of its parts where no total is recorded.
    [[nodiscard]] const Channel* find(std::string_view name);
    /// Parts of any of these that the recording names, in its order.
    [[nodiscard]] std::vector<std::string>
    partsOf(std::initializer_list<std::string_view> bases) const;
    /// The recording names this channel, of no part.
    [[nodiscard]] bool names(std::string_view channel) const;
    /// "rotor_rpm", without it "generator_rpm"; null without both. The generator's speed is the
    /// device's only where no rotor's is recorded, of whatever part.
    [[nodiscard]] const Channel* deviceSpeed(std::string_view part = {});
    /// Forgets a channel's samples: pointers to it end.
    void release(std::string_view name);
    /// Neighbouring samples of the run further apart than longestGap_s(): index of the first.
    [[nodiscard]] const std::vector<std::size_t>& gapsOf(const Channel& channel);
    /// The latest sample of the run at moments kMoments_s apart, from the first sample to the last.
    [[nodiscard]] const std::vector<std::size_t>& momentsOf(const Channel& channel);

    [[nodiscard]] double last_s() const { return m_last_s; } ///< last sample of all, at least 0
    /// Where the rules stop looking: the run's end or the last sample, whichever is first.
    [[nodiscard]] double end_s() const;
    /// The run's end; without a duration the last sample.
    [[nodiscard]] double runEnd_s() const;

private:
    /// What the times alone say, kept for all channels that share them.
    struct Pace {
        SampleTimes times;
        std::size_t begin, end;
        double interval_s;
        std::vector<std::size_t> gaps, moments;
    };
    [[nodiscard]] std::shared_ptr<const Samples> read(std::string_view name);
    Channel cut(std::string name, std::shared_ptr<const Samples> samples);
    const Pace& paceOf(const Channel& channel);

    const RunTrace* m_trace;
    std::optional<double> m_duration_s;
    const UnderWay* m_underWay;
    double m_last_s = 0.0;
    std::map<std::string, std::unique_ptr<Channel>, std::less<>> m_channels;
    std::deque<Pace> m_paces;
};

} // namespace bothways::core::rules
