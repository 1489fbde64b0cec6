// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/units.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// The plain types of a study: what was driven, how it was logged, what is known about it.
/// Nothing here computes; `runs` are always held in order of start.
namespace bothways::core {

/// Identity of a run in its study file; 0 while the run has none. (long long: see DEVELOPERS.md.)
enum class RunId : long long {};
enum class RecordingId : long long {};

/// A moment, to the microsecond. With an offset, `us` counts from 1970-01-01T00:00:00Z; without one
/// it counts from 1970-01-01T00:00:00 of the local clock. A study has offsets everywhere or
/// nowhere.
struct Instant {
    std::int64_t us = 0;
    std::optional<int> utc_offset_min;
    friend bool operator==(const Instant&, const Instant&) = default;
};

struct Consumption {
    double value = 0.0; ///< as given, in `unit`, > 0
    ConsumptionUnit unit = ConsumptionUnit::lPer100km;
    int decimals = 0;        ///< digits after the point as given: what the display could show
    bool from_trace = false; ///< taken from the recording, not typed
    friend bool operator==(const Consumption&, const Consumption&) = default;
};

/// A mark made by hand during a run. It counts for a rule when `word` is the rule's name.
struct Mark {
    double at_s = 0.0; ///< from the run's start
    std::string word;
    std::string words; ///< the rest of what was noted
    friend bool operator==(const Mark&, const Mark&) = default;
};

struct Discard {
    std::string reason;   ///< a rule's name, or "other"
    std::string evidence; ///< words; never empty when the reason is "other"
    friend bool operator==(const Discard&, const Discard&) = default;
};

/// One pass over the stretch in one direction. Optional fields are what was not noted.
struct Run {
    RunId id{};
    int number = 0;            ///< the user's number; no two alike in a study
    std::string configuration; ///< as first written in the study
    std::string setting;   ///< what was varied on the device; empty: none noted. See sameSetting().
    std::string direction; ///< as first written in the study
    Instant start;
    std::optional<double> duration_s;       ///< > 0
    std::optional<double> distance_km;      ///< > 0
    std::optional<double> speed_kmh;        ///< > 0
    std::optional<Consumption> consumption; ///< a counted run has one
    /// Second vehicle, in the unit of `consumption`; in L/100 km (kWh/100 km) where there is none.
    std::optional<double> control;
    std::optional<Discard> discard; ///< the run does not count
    std::string pair_mark;          ///< ties two runs; empty: none
    std::vector<Mark> marks;
    std::optional<double> accessory_w;
    std::string accessories;
    std::optional<double> output_w;
    std::optional<double> rotor_rpm_max;
    std::optional<double> battery_v_start;
    std::optional<double> battery_v_end;
    std::optional<double> wind_ms;
    std::optional<double> wind_from_deg;
    std::optional<double> temperature_c;
    std::optional<double> pressure_hpa;
    std::optional<double> humidity_pct;
    std::string trace; ///< file name of the run's own recording, relative to the sheet
    std::string notes;
    std::map<std::string, double>
        accessory_on_s; ///< timed accessory's name -> switch-on, s from start
    std::vector<std::pair<std::string, std::string>> extra; ///< columns of no meaning to us, kept

    [[nodiscard]] bool counted() const { return !discard.has_value(); }
    friend bool operator==(const Run&, const Run&) = default;
};

/// An accessory that switches itself off.
struct TimedAccessory {
    std::string name;
    double watts = 0.0;
    double minutes = 0.0;
    friend bool operator==(const TimedAccessory&, const TimedAccessory&) = default;
};

/// What was decided before the first run (method, section 8).
struct PlannedStudy {
    std::string sequence; ///< "ABA", "ABBA", ...
    int pairs_per_block = 0;
    double margin_pct = 1.0;
    double confidence = 0.95;
    friend bool operator==(const PlannedStudy&, const PlannedStudy&) = default;
};

/// What is known of a pair's noise from elsewhere, as it is typed.
struct KnownNoise {
    double pct = 0.0; ///< residual standard deviation of a pair, 100 times the log
    double df = 0.0;  ///< degrees of freedom behind it
    friend bool operator==(const KnownNoise&, const KnownNoise&) = default;
};

enum class Fuel { petrol, e10, diesel, electric };

/// Limits of the screening rules: "overspeed.rpm" -> 3200. Absent: the rule's default, or none.
using Limits = std::map<std::string, double, std::less<>>;

struct StudyProperties {
    std::string name;
    std::string date;     ///< YYYY-MM-DD; for runs given by time of day
    std::string baseline; ///< configuration A; empty: "A", else that of the first run
    double margin_pct = 1.0;
    double confidence = 0.95;
    double max_gap_min = 30.0;
    double aero_share = 0.6; ///< of consumption at road speed
    Fuel fuel = Fuel::petrol;
    std::optional<double> stretch_bearing_deg;
    std::optional<Instant> cold_start;
    Limits limits; ///< stretch.km and road_speed.target_kmh live here too
    std::vector<TimedAccessory> timed_accessories;
    std::optional<PlannedStudy> plan;
    std::optional<double> claim_pct; ///< what someone says that the device saves; negative: less
    std::optional<KnownNoise> noise; ///< of this vehicle, from earlier days
    std::string noise_from;          ///< whence it is known, in words
    std::string walk_round;          ///< what is looked at before a block; see walkLines()
    std::string notes;
    friend bool operator==(const StudyProperties&, const StudyProperties&) = default;
};

/// More than this between the starts of successive runs begins a new day.
inline constexpr std::int64_t kNewDay_us = std::int64_t{6} * 3600 * 1'000'000;

struct Study {
    StudyProperties properties;
    std::vector<Run> runs; ///< in order of start; of equal starts, as entered
    friend bool operator==(const Study&, const Study&) = default;
};

/// The configurations in order of first appearance (at most two in a valid study).
[[nodiscard]] std::vector<std::string> configurations(const Study& study);
/// The directions in order of first appearance; the first is *out*.
[[nodiscard]] std::vector<std::string> directions(const Study& study);
/// Name of configuration A: `asked`, else the study's, else "A" where a run has it, else the first
/// run's. Case-blind. Empty when there are no runs and nothing was asked.
[[nodiscard]] std::string baselineName(const Study& study, std::string_view asked = {});

/// Settings compare as numbers where both are numbers (20 = 20.0), else case-blind as text.
[[nodiscard]] bool sameSetting(std::string_view a, std::string_view b);
/// Case-blind comparison for ASCII letters; others byte by byte.
[[nodiscard]] bool sameWord(std::string_view a, std::string_view b);
/// Whether a run of that configuration and start would begin a block: so does the first of all,
/// one after a switch, and one on a new day. `before`: the run before it; null: none.
[[nodiscard]] bool beginsBlock(const Run* before, std::string_view configuration, Instant start);
/// With small ASCII letters: alike for words that sameWord() calls the same.
[[nodiscard]] std::string inSmallLetters(std::string_view word);

/// Consumption of a run in L/100 km (kWh/100 km); nothing where it has none or lacks the distance
/// it needs.
[[nodiscard]] std::optional<double> lPer100km(const Run& run);
/// Control vehicle's, in the same unit as the run's own.
[[nodiscard]] std::optional<double> controlLPer100km(const Run& run);

/// Start + duration/2; without a duration distance/speed gives it; without both, start. (Method,
/// section 1.)
[[nodiscard]] std::int64_t midTime_us(const Run& run);
/// Duration given, or distance/speed.
[[nodiscard]] std::optional<double> duration_s(const Run& run);

/// Sorts by start; of equal starts the order stays.
void sortByStart(Study& study);

} // namespace bothways::core
