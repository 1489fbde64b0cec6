// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/rule.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What screening says about a run. (Method, section 9.)
namespace bothways::core {

/// A sensor that did not say what it should have said.
struct LostSensor {
    enum class How {
        gap,    ///< no samples
        frozen, ///< the same value while the vehicle's speed moved
        zero,   ///< a device at rest that gives power
        fell    ///< a counter of what was used that counts back or was reset
    };
    std::string channel;
    How how = How::gap;
    friend bool operator==(const LostSensor&, const LostSensor&) = default;
};

struct Finding {
    Rule rule = Rule::accessoryChange;
    int run = 0;                        ///< the run's number
    std::optional<double> from_s, to_s; ///< s of the run; none for a finding from the sheet alone
    std::optional<double> value, limit; ///< both in `unit`
    std::string unit;
    Grade grade = Grade::note;
    std::vector<LostSensor> lost = {};        ///< of sensor_lost, as they were found
    std::vector<std::string> channels = {};   ///< that showed passing traffic
    std::string accessory = {};               ///< that its timer switched off
    bool of_mean = false;                     ///< of road_speed: the run's mean is off
    std::vector<std::string> words = {};      ///< of marks by hand
    std::optional<double> length_s, output_w; ///< for the sentence of overspeed
    std::string part = {};                    ///< of the device: "left"; empty: none
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// What else a finding is about, as files and keys have it: "wind_ms:gap, output_w:frozen",
/// "windscreen", "mean", the words of marks; several parted by ", ".
[[nodiscard]] std::string detailOf(const Finding& finding);

/// Why a rule said nothing about a run: never to be read as "passed".
enum class WhyNotChecked {
    noTrace,           ///< the run has no recording
    noChannel,         ///< the recording has no sample of channel `what` in this run
    noLimit,           ///< limit `what` has no default and is not set
    notNoted,          ///< column (or study property) `what` is empty
    recordedTooSlowly, ///< channel `what` has fewer samples than the rule's time needs
    noSpread,          ///< channel `what` does not vary: its robust deviation is 0
    noSetTime          ///< the switch-on time of a timed accessory is not noted: column `what`
};

struct NotChecked {
    int run = 0;
    Rule rule = Rule::accessoryChange;
    WhyNotChecked why = WhyNotChecked::noTrace;
    std::string what;      ///< the channel, limit or column that is missing
    std::string part = {}; ///< of the device; empty: none
    friend bool operator==(const NotChecked&, const NotChecked&) = default;
};

/// Where over-speeds gather over the whole study. (Method, section 9, "Pattern".)
struct OverspeedPattern {
    double first_output_w = 0.0;
    int reached = 0;
    int oversped = 0;
    double share = 0.0, low = 0.0, high = 0.0; ///< Clopper-Pearson at the study's confidence
    std::string part = {};                     ///< of the device; empty: its total output
    friend bool operator==(const OverspeedPattern&, const OverspeedPattern&) = default;
};

/// What the device gave and how fast it turned, at road speed. (Method, section 9, "Output and
/// speed of the device".)
struct DeviceFigures {
    std::optional<double> mean_output_w, highest_output_w;
    std::optional<double> mean_rotor_rpm, highest_rotor_rpm;
    friend bool operator==(const DeviceFigures&, const DeviceFigures&) = default;
};
/// The same over the counted runs of a configuration with one setting.
struct SettingFigures {
    std::string configuration, setting; ///< as first written in the study
    std::string part;                   ///< of the device; empty: all of it
    int runs = 0;                       ///< that say something
    DeviceFigures figures;              ///< mean of the runs' means, highest of all
    friend bool operator==(const SettingFigures&, const SettingFigures&) = default;
};

struct Screening {
    std::vector<Finding> findings; ///< in order of run, from_s, rule
    std::vector<NotChecked> not_checked;
    std::optional<OverspeedPattern> pattern; ///< of the total output
    /// By configuration and setting in order of appearance; of each first the whole, then its
    /// parts.
    std::vector<SettingFigures> device;
    std::vector<OverspeedPattern> part_patterns; ///< of each part's own output, by its name
};

} // namespace bothways::core
