// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/context.h"
#include "core/watching/live_channel.h"
#include "core/watching/own_usual.h"
#include "core/watching/standing.h"
#include "core/watching/watcher.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace bothways::core {

inline constexpr double kKept_s = 60.0;  ///< of what came outside a run
inline constexpr double kRecent_s = 2.0; ///< what ended no longer ago goes on

struct Watcher::Private {
    Study study;
    std::vector<LiveChannel> channels;
    std::vector<std::optional<double>> known_since_s; ///< of each channel: its first look
    std::map<std::string, std::size_t, std::less<>> places;
    TraceProvider recorded;
    rules::UsualValues usual;
    std::set<std::string, std::less<>> had; ///< channels that runs had

    std::optional<RunUnderWay> run, upcoming;
    Study with; ///< the study with the run under way in its place
    std::size_t place = 0;
    double looked_s = 0.0; ///< of the run
    StandingFindings standing;
    OwnUsual own;
    std::vector<Finding> near;
    /// What was known of the run that ended last: its end may be taken back.
    struct Ended {
        int number = 0;
        double start_s = 0.0, looked_s = 0.0;
        std::size_t channels = 0; ///< so many had begun it
        StandingFindings standing;
        OwnUsual own;
        rules::UsualValues usual; ///< without the run itself
    };
    std::optional<Ended> ended;
    std::map<std::string, double, std::less<>> since_s;

    // watcher.cpp
    void placeRun();
    MemoryTrace traceFrom(double from_s) const;
    void lookAtRun(double now_s);
    void learnFrom(const Run& of, rules::RunChannels& its);
    void forgetOld(double now_s);
    void runIsOver();
    [[nodiscard]] bool goesOn(const RunUnderWay& begun) const;
    // watcher_alarms.cpp
    void addFindings(std::vector<Alarm>& alarms) const;
    void addMissing(double now_s, std::vector<Alarm>& alarms) const;
    void addTimers(double now_s, std::vector<Alarm>& alarms) const;
    void addSilent(double now_s, std::vector<Alarm>& alarms);
    void putInOrder(double now_s, std::vector<Alarm>& alarms);
};

} // namespace bothways::core
