// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "core/study/study.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// The whole answer about a study, as values; analyse() in core/answer/analyse.h gives it. Field
/// names are the keys of the JSON form "bothways.analysis/1" wherever a key has one field. Logs are
/// differences of natural logs; *_pct are 100 (exp(log) - 1) and are made where they are shown.
/// Negative: B used less.
namespace bothways::core {

/// What is known of a pair's noise from elsewhere: s on the log scale.
struct BorrowedNoise {
    double s = 0.0, df = 0.0;
    friend bool operator==(const BorrowedNoise&, const BorrowedNoise&) = default;
};

/// What the history knows of the plan that is tied to a study. A plan keeps its promise only where
/// it stood before the runs, and still stands after a look at the verdict.
struct PlanRecord {
    std::vector<PlannedStudy> looked_at = {}; ///< those that stood at a look
    bool after_runs = false;                  ///< tied or changed when there were runs
    bool after_look = false;                  ///< tied or changed after a look
};

struct AnalysisOptions {
    double margin_pct = 1.0;   ///< in (0, 100): the smallest effect that the user would care about
    double confidence = 0.95;  ///< in (0.5, 1)
    double max_gap_min = 30.0; ///< widest gap inside a pair
    std::string baseline = {}; ///< name of configuration A; empty: baselineName()
    std::uint64_t seed = 20260314; ///< of the random deals; same seed, same answer everywhere
    std::optional<double> claim_pct = {};    ///< above -100 and not 0; negative: less
    std::optional<BorrowedNoise> noise = {}; ///< both numbers above 0
    std::vector<int> looked_at_pairs = {};   ///< of each look at the verdict so far, its pairs
    PlanRecord plan_record = {};
    /// The options that the study's own properties ask for.
    [[nodiscard]] static AnalysisOptions of(const StudyProperties& properties);
};

enum class Design { closed, open };
enum class VerdictClass { less, more, equivalent, undecided, none };
enum class NoVerdict { noRuns, oneConfiguration, tooFewPairs, noTimeSpread, noVariation };
/// In the order in which they are said.
enum class Qualifier {
    openDesign,
    fragile,
    needsIndependence,
    sensitive,
    assumptions,
    smallerThanMargin,
    looked,
    interim,
    planLate
};
enum class CheckState { holds, note, fails, notComputed };
enum class Companion { bracket, runs, blocks, curved, labels, correlated, anyLook, borrowed, days };
enum class ClaimState { borneOut, refuted, open };

/// Names in JSON: "less", "no_runs", "open_design", "not_computed", "bracket", ...
[[nodiscard]] std::string_view name(Design value);
[[nodiscard]] std::string_view name(VerdictClass value);
[[nodiscard]] std::string_view name(NoVerdict value);
[[nodiscard]] std::string_view name(Qualifier value);
[[nodiscard]] std::string_view name(CheckState value);
[[nodiscard]] std::string_view name(Companion value);
[[nodiscard]] std::string_view name(ClaimState value);

/// Consecutive runs in one configuration between two switches (or two days).
struct Block {
    int block = 0; ///< from 1
    std::string configuration;
    bool device = false; ///< configuration B
    int day = 0;         ///< from 0
    int runs = 0;        ///< counted
    int pairs = 0;
};

/// One out and one return run of a block, both counted.
struct Pair {
    int number = 0;                              ///< from 1, by pair time
    std::size_t out_index = 0, return_index = 0; ///< places in Study::runs
    int out_run = 0, return_run = 0;             ///< the runs' numbers
    int block = 0;
    int day = 0;
    std::string configuration;
    bool device = false;
    double time_h = 0.0;      ///< mean of the two mid-times, h since the start of the first run
    double l_per_100km = 0.0; ///< total fuel over total distance
    double log = 0.0; ///< its log; with a control vehicle the log of the ratio to the control's
    bool mixed_setting = false;
    bool fixed = false; ///< tied by hand
};

/// An effect with its interval at the asked confidence.
struct Interval {
    double effect_log = 0.0, low_log = 0.0, high_log = 0.0;
    double df = 0.0;
    double p = 1.0;
    VerdictClass cls = VerdictClass::undecided;
};

/// Method, section 4.
struct Headline {
    double effect_log = 0.0, se_log = 0.0;
    double df = 0.0, t = 0.0, p = 1.0;
    double s = 0.0; ///< residual standard deviation of a pair, log
    double confidence = 0.95;
    double low_log = 0.0, high_log = 0.0;
    double low_equivalence_log = 0.0, high_equivalence_log = 0.0; ///< at confidence 1 - 2 alpha
    std::optional<double> drift_log_per_h;                        ///< one day, closed design
    double baseline_l_per_100km = 0.0, difference_l_per_100km = 0.0;
    double sqrt_v = 0.0;                   ///< se = s sqrt(v)
    std::vector<double> fitted, residuals; ///< a pair each, in pair order
    std::vector<double> leverage;          ///< diagonal of the hat matrix
};

/// What the interval says of a claim. (Method, section 6.)
struct ClaimAnswer {
    double pct = 0.0;
    ClaimState state = ClaimState::open;
    double p = 1.0; ///< two-sided, of the claimed size
};

struct Verdict {
    VerdictClass cls = VerdictClass::none;
    std::optional<NoVerdict> reason; ///< only with `none`
    std::vector<Qualifier> qualifiers;
    std::vector<Companion> fragile_by;
    double margin_pct = 1.0;
    std::optional<int> more_pairs_per_block; ///< 0: the design at hand could show the margin
    std::optional<ClaimAnswer> claim;        ///< empty without a claim or a verdict
    int looks = 0;                           ///< earlier ones, at fewer pairs than now
};

struct LabelsTest {
    double p = 1.0;
    long long deals = 0;
    bool exact = false;
};

struct CorrelatedInterval : Interval {
    std::optional<double> rho;
};

struct SettingEffect {
    std::string setting;
    int pairs = 0;
    double effect_log = 0.0, low_log = 0.0, high_log = 0.0;
    double low_bonferroni_log = 0.0, high_bonferroni_log = 0.0;
};

struct BorrowedInterval : Interval {
    double s = 0.0;                     ///< of this study and the sources together, log
    double from_s = 0.0, from_df = 0.0; ///< of the sources
    double ratio_p = 1.0;               ///< two-sided, of this study's s beside theirs
};

/// What one day says alone.
struct DayEffect {
    int day = 0; ///< from 1
    int pairs = 0;
    double effect_log = 0.0, low_log = 0.0, high_log = 0.0;
};

/// Method, section 5. Empty: not to be had from these runs.
struct Companions {
    std::optional<Interval> bracket, runs, blocks, curved, any_look;
    std::optional<CorrelatedInterval> correlated;
    std::optional<BorrowedInterval> borrowed;
    std::optional<LabelsTest> labels;
    std::vector<DayEffect> days; ///< empty, or two and more
    std::vector<SettingEffect> settings;
};

/// Method, sections 7 and 10. `statistic`, `p` empty: not computed.
struct Check {
    std::optional<double> statistic, p;
    CheckState state = CheckState::notComputed;
};
struct OutlierCheck : Check {
    std::optional<int> pair;
};
struct OrderCheck : Check {
    std::optional<double> lag1;
};
struct BaselineCheck {
    std::optional<double> effect_log, low_log, high_log, df, p;
    CheckState state = CheckState::notComputed;
};
struct DirectionCheck : Check {
    std::optional<double> slope_per_h, df;
};
/// Whether the device works differently one way.
struct WaysCheck : Check {
    std::optional<double> effect_log, df;
};
/// Whether the first pair of a block differs from the others.
struct SettlingCheck : Check {
    std::optional<double> effect_log, df;
};
/// Whether the days agree on the effect.
struct DaysCheck : Check {
    std::optional<double> df1, df2;
};
struct ResolutionCheck {
    std::optional<double> step_pct; ///< the display's step as a per cent of consumption
    std::optional<double>
        rounding_pct; ///< standard deviation that rounding adds to a pair, per cent
    CheckState state = CheckState::notComputed;
};
struct AirCheck {
    std::optional<double> density_pct, wind_pct; ///< worth in consumption, B against A
    bool outside_range = false;                  ///< of the density formula
    CheckState state = CheckState::notComputed;
};
struct Checks {
    Check normal, curve, spread;
    OutlierCheck outlier;
    OrderCheck order;
    BaselineCheck baseline;
    DirectionCheck direction;
    WaysCheck ways;
    SettlingCheck settling;
    DaysCheck days;
    ResolutionCheck resolution;
    AirCheck air;
};

/// Method, section 8.
struct Detectable {
    double power = 0.80;
    double log = 0.0;
};
struct LeaveOneOutTurn {
    int pair = 0;
    std::optional<double> effect_log; ///< empty: that turn leaves no verdict
    VerdictClass cls = VerdictClass::none;
};
struct LeaveOneOut {
    std::optional<double> min_effect_log, max_effect_log;
    bool changes_class = false; ///< by a turn that has a verdict
    int without_verdict = 0;    ///< turns that leave none
    std::vector<LeaveOneOutTurn> turns;
};
struct RestoredTurn {
    int run = 0;
    std::optional<double> effect_log; ///< empty: cannot be put back, or no verdict with it
    VerdictClass cls = VerdictClass::none;
    bool possible = true; ///< false: the run has no consumption
};
struct RestoredAll {
    std::optional<double> effect_log, low_log, high_log;
    VerdictClass cls = VerdictClass::none;
};
struct DiscardsRestored {
    std::optional<RestoredAll> all; ///< empty: nothing was discarded, or nothing can be put back
    std::vector<RestoredTurn> each;
    int up = 0, down = 0;
};

/// Facts worth a line beside the answer. `text` carries the names that the sentence needs.
enum class NoteKind {
    discardedByScreening, ///< `left_out` lists the runs
    controlUsed,
    controlIncomplete,
    pairMarkIgnored,
    mixedUnits,
    dateAssumed,
    sheetDialect,
    densityOutsideRange,
    consumptionFromTrace, ///< `text` lists the runs
    consumptionLacking,   ///< counted, and neither typed nor recorded; `text` lists the runs
    pairingNotExact       ///< too many runs within reach of one another; `text` is the block
};
struct LeftOut {
    int run = 0;
    std::string reason; ///< as in Discard
};
struct Note {
    NoteKind kind;
    Message text = {};
    std::vector<LeftOut> left_out = {};
};

struct Analysis {
    AnalysisOptions options;
    std::string baseline, device; ///< names of A and B; empty where there is none
    int runs = 0, counted = 0, discarded = 0;
    std::vector<int> unpaired; ///< numbers of counted runs without a partner, in order of start
    std::optional<Design> design;
    int days = 0;
    bool electric = false; ///< the litre keys hold kWh
    std::vector<Block> blocks;
    std::vector<Pair> pairs;
    std::optional<Headline> headline;
    Verdict verdict;
    Companions companions;
    Checks checks;
    std::optional<Detectable> detectable;
    std::optional<LeaveOneOut> leave_one_out;
    DiscardsRestored discards_restored;
    std::vector<Note> notes;
};

} // namespace bothways::core
