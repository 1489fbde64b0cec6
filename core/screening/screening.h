// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/screening/finding.h"
#include "core/study/limits.h"
#include "core/study/study.h"

#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>

/// The screening rules over a study: run sheet columns, marks and traces alike. (Method,
/// section 9.)
///
/// Where the method leaves a choice, this is the one taken:
/// - Every run is screened, discarded ones too. Only a trace's samples with 0 <= time <= duration
///   count (1 us of grace); without a duration the run lasts as long as its trace. The start [0,
///   5), the 5 s level and the usual values are taken from these samples alone; the approach serves
///   not_cruising, and the output in the second before an over-speed.
/// - A condition on two channels is asked at the samples of the first (device speed, generator,
///   measured setting) against the latest sample of the second, as long as that is no older than a
///   lost sensor; a set point holds until the next. The ratio of drive_slip is taken at the
///   generator's samples.
/// - An event must last its time by itself before it is joined to a neighbour. Joined findings of
///   one rule (wind and yaw, several lost channels, marks) keep the value furthest beyond its limit
///   and the graver grade. Timed accessories are never joined.
/// - `limit` is the parameter, positive, also where `value` is negative; load_lost: half the usual
///   speed in rpm; interrupted: the share of the target in km/h; accessory_timer, same_run_twice
///   and marks have none.
/// - accessory_timer: `to_s` is the run's end; going off exactly at the end is not in the run.
/// - road_speed: where the mean over time is off, that is the finding, for the whole run.
/// - not_cruising: the approach counts from 1 s on; `to_s` is the first sample within after what
///   was off; the value is on the line between the samples around 0 s.
/// - setting_mismatch needs the channel `setting_set`: the sheet's setting may be a mere name.
/// - sensor_lost: gaps count from 0 s and up to the end of the run or of the whole trace. "While
///   road speed moves" is: for 5 s on end it changes, is not 0, and never keeps one value for 5 s
///   or, if longer, three times as long as it usually does. A value frozen for less than three
///   times as long as the channel usually keeps one (coarse counters) is none. A channel
///   that a run's recording names without a single sample, and that other runs have, is lost
///   throughout. A counter of what was used that falls by more than one step of its resolution
///   spoils the run: `value` is the largest fall below what it had reached, `limit` that step, the
///   span goes from the highest sample to the lowest.
/// - stretch takes no distance from a trace that does not cover the run.
/// - Of what is missing, the recording is named first, then the channel, then the limit; for rules
///   that may read the sheet alone, the limit first.
namespace bothways::core {

namespace rules {
struct RunContext;
class UsualValues;
} // namespace rules

/// @param traces    may be empty: then only what needs no trace is checked
/// @param progress  called with the share done, 0 to 1; may be empty
/// @param stop      when asked to stop, what was found so far is returned
[[nodiscard]] Screening screen(const Study& study, const TraceProvider& traces = {},
                               const std::function<void(double)>& progress = {},
                               std::stop_token stop = {});

/// One run of a study, its usual values known: what screen() finds of it, without the look for
/// patterns across the study.
/// @param trace  null: the run has no recording
/// @param known  channels that other runs have
[[nodiscard]] Screening screenOne(const Study& study, std::size_t place, const RunTrace* trace,
                                  const rules::UsualValues& usual,
                                  const std::set<std::string, std::less<>>& known);
/// Asks the rules that a run under way can be asked; findings are not joined. The context's
/// channels must know what is under way.
void screenUnderWay(rules::RunContext& context);

/// A run's discard for what was found: the rule's name is the reason, the figures are the evidence.
[[nodiscard]] Discard discardFor(const Finding& finding);

/// Discards every counted run that a *spoils* finding names: its first such finding is the reason.
/// @return  the numbers of the runs discarded, in order
std::vector<int> applyScreening(Study& study, const Screening& screening);

} // namespace bothways::core
