// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/finding.h"
#include "core/study/study.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Looks at the run under way by the rules of screening while it is driven. No clock and no
/// thread: the caller says what time it is. Times are those of the recording, s.
namespace bothways::core {

/// What is known of a run before it ends.
struct RunUnderWay {
    Run run;              ///< number, configuration, setting, direction, start, accessories
    double start_s = 0.0; ///< in the recording's time
    std::optional<double> expected_s; ///< how long it will take
};

enum class AlarmLevel { note, warning, spoiled };

/// What is wrong now.
struct Alarm {
    enum class Kind {
        finding,       ///< `finding` stands
        nearLimit,     ///< 95 % of a limit: `finding` has rule, value, limit
        timerWillDrop, ///< `name` will drop out `in_s` from now, before the run would end
        channelSilent, ///< `name`
        limitMissing,  ///< `name` of the limit; `finding.rule` lacks it
        noChannel      ///< `name` of the channel; `finding.rule` lacks it
    };
    Kind kind = Kind::finding;
    AlarmLevel level = AlarmLevel::note;
    Finding finding;
    std::string name;
    double since_s = 0.0; ///< when it was first said
    double in_s = 0.0;
    /// The same for one trouble as long as it lasts: for acknowledging, and so that it is not said
    /// anew each second.
    std::string key;
};

class Watcher {
public:
    /// @param study  limits, properties, timers, the runs so far
    explicit Watcher(Study study);
    Watcher(Watcher&&) noexcept;
    Watcher& operator=(Watcher&&) noexcept;
    ~Watcher();

    /// The study has changed (a run was written, a limit set). May be called during a run.
    void setStudy(Study study);
    /// @return  place for put(); the same for the same name
    std::size_t channel(std::string_view name, std::string_view unit);
    /// Samples in our units (factor and offset done); times ascend strictly for a channel. Outside
    /// a run the last minute is kept.
    void put(std::size_t channel, std::span<const double> time_s, std::span<const double> value);

    void begin(const RunUnderWay& run);
    /// A mark of the run under way. @param at_s  in the recording's time
    void mark(double at_s, std::string_view word, std::string_view words);
    [[nodiscard]] bool isUnderWay() const;
    /// What is wrong at this moment: before a run as well as during one. Gravest first.
    [[nodiscard]] std::vector<Alarm> look(double now_s);
    /// The run is over: what screen() says of it with all that is recorded. The run's samples are
    /// forgotten but for the last minute.
    [[nodiscard]] Screening end(double at_s);
    /// Thrown away.
    void forget();

private:
    struct Private;
    std::unique_ptr<Private> d;
};

/// Rules that cannot be asked before the run is over, or whose answer may change by what comes
/// after: they are asked in end(). With the reason, for the handbook and the tests.
struct WaitsForTheEnd {
    Rule rule;
    const char* why;
};
[[nodiscard]] std::span<const WaitsForTheEnd> rulesThatWait();

} // namespace bothways::core
