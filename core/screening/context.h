// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/channels.h"
#include "core/screening/finding.h"
#include "core/study/rule.h"
#include "core/study/study.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What every rule of screen() is given, and where it leaves what it found. (Method, section 9.)
namespace bothways::core::rules {

/// Two readings that are equal in decimals may differ by rounding once they are subtracted or
/// scaled (12.3 - 12.1 > 0.2 in binary). Computed values are therefore compared with limits within
/// 1e-9 of their size; samples as they stand are compared exactly.
[[nodiscard]] inline double roundingOf(double value, double limit)
{
    return 1e-9 * std::max(std::abs(value), std::abs(limit));
}
[[nodiscard]] inline bool exceeds(double value, double limit) ///< value > limit
{
    return value > limit + roundingOf(value, limit);
}
[[nodiscard]] inline bool reaches(double value, double limit) ///< value >= limit
{
    return value >= limit - roundingOf(value, limit);
}

/// The usual value of a quantity in a configuration: the median of the medians of all its runs,
/// discarded ones too, so that a fault as long as a run is still seen.
class UsualValues {
public:
    /// Adds the medians of a run that has a recording.
    void add(const Run& run, RunChannels& channels);
    /// @param quantity  "output_w", "rotor_rpm", "generator_rpm" or kRatio, and each with a part
    [[nodiscard]] std::optional<double> of(const Run& run, std::string_view quantity) const;
    /// Generator speed over rotor speed while both turn.
    static constexpr std::string_view kRatio = "generator_rpm/rotor_rpm";

private:
    void addMedian(const Run& run, const Channel& channel);
    void addRatio(const Run& run, const Channel& generator, const Channel& rotor,
                  std::string_view part);
    std::map<std::pair<std::string, std::string>, std::vector<double>> m_medians;
};

/// What one run leaves for the look across the study after all.
struct Leftover {
    /// Largest 1 s mean of a part's output; under "": of the total.
    std::map<std::string, double, std::less<>> highest_output_w;
    /// Least total output just before an over-speed of a part.
    std::optional<double> total_before_w;
    std::map<std::string, DeviceFigures, std::less<>> figures; ///< by part; under "": the whole
    std::vector<std::string> channels;                         ///< with samples in the run
    std::vector<std::string> empty; ///< named by the recording, without a sample in the run
    double end_s = 0.0;
};

/// One run under screening.
struct RunContext {
    const Study& study;
    std::size_t place; ///< of the run in study.runs
    RunChannels& channels;
    const UsualValues& usual;
    std::vector<Finding>& findings;
    std::vector<NotChecked>& not_checked;
    Leftover& leftover;
    std::string part = {}; ///< of the device, that is asked about; empty: none

    [[nodiscard]] const Run& run() const { return study.runs[place]; }
    /// The study's limit, of the part first, else the default; nothing where it must be set and is
    /// not.
    [[nodiscard]] std::optional<double> limit(std::string_view name) const;
    /// A limit that has a default.
    [[nodiscard]] double limitWithDefault(std::string_view name) const;
    /// A limit without default; where it is not set, `rule` is noted as not checked.
    [[nodiscard]] std::optional<double> neededLimit(Rule rule, std::string_view name);
    void notChecked(Rule rule, WhyNotChecked why, std::string_view what);
    /// Neither the sheet's column nor, where there is a recording, its channel says it.
    void notNoted(Rule rule, std::string_view column, std::string_view channel);
    /// A channel of the part; where it has none of its own, the one recorded for the whole device.
    [[nodiscard]] const Channel* find(std::string_view channel);
    /// The same; where it has no sample, `rule` is noted as not checked.
    [[nodiscard]] const Channel* needed(Rule rule, std::string_view channel);
    /// False, and noted, where `rule` needs more samples than one in `seconds` on average.
    [[nodiscard]] bool fastEnough(Rule rule, const Channel& channel, double seconds);
    /// A median over the start may still change: the run has only just begun.
    [[nodiscard]] bool startIsUnderWay() const
    {
        return channels.underWay() && channels.runEnd_s() < kStart_s + kTimeGrace_s;
    }
    /// Adds a finding without span; the caller fills in the rest.
    Finding& found(Rule rule, Grade grade, std::optional<double> value, std::optional<double> limit,
                   std::string_view unit);
    /// The same, from the first to the last sample of an event.
    Finding& found(Rule rule, const Channel& channel, const Stretch& event, double value,
                   double limit, std::string_view unit);
};

/// Asks about each part that one of `leading` is recorded for, and about the device as a whole
/// where one of them is recorded without a part, or none at all.
template <class Ask>
void eachPart(RunContext& context, std::initializer_list<std::string_view> leading, Ask ask)
{
    const std::vector<std::string> parts = context.channels.partsOf(leading);
    if (parts.empty()) {
        ask();
        return;
    }
    if (std::any_of(leading.begin(), leading.end(),
                    [&](std::string_view channel) { return context.channels.names(channel); })) {
        const std::size_t before = context.not_checked.size();
        ask();
        // What only the parts have is not missing.
        context.not_checked.erase(
            std::remove_if(
                context.not_checked.begin() + static_cast<std::ptrdiff_t>(before),
                context.not_checked.end(),
                [](const NotChecked& skipped) { return skipped.why == WhyNotChecked::noChannel; }),
            context.not_checked.end());
    }
    for (const std::string& part : parts) {
        context.part = part;
        ask();
    }
    context.part.clear();
}

/// The grade that the method's table gives a rule.
[[nodiscard]] Grade gradeOf(Rule rule);

} // namespace bothways::core::rules
