// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
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
/// thread: the caller says what time it is. Times are those of the recording, s; those inside a
/// Finding count from the run's start.
///
/// There is one set of rules. Each look gives them the run so far, of which only the latest part is
/// read again (twice the longest time that a rule asks for, and 2 s), so that an hour costs no more
/// a second than a minute; what they found before stands, and grows. What hangs on the whole run so
/// far (the pace of a channel, how long it keeps a value, the usual values) is carried along.
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
        timerWillDrop, ///< `name` will drop out `in_s` from now, before the run would end; before a
                       ///< start it may be off already (0 or less)
        channelSilent, ///< `name`: no sample for max(1 s, 3 x its pace), or none at all
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

/// What lacks for good, as long as nobody sets a limit or adds an instrument: to be said once.
[[nodiscard]] bool isLack(const Alarm& alarm);

class Watcher {
public:
    /// @param study  limits, properties, timers, the runs so far
    explicit Watcher(Study study);
    /// The usual values of earlier runs, from their recordings; reads each once, so it takes as
    /// long as screening them. Runs that this watcher saw to their end are known without. May throw
    /// what `earlier` throws.
    void learn(const TraceProvider& earlier);
    /// Who records the samples himself may hand out the run that has ended: end() then reads it
    /// from there, and of a run no more is kept in memory than the looks need. Without it all
    /// samples of the run under way are kept.
    void recordedBy(TraceProvider recorded);
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

    /// What will be driven next, so that its timers are foreseen; Run::accessory_on_s counts from
    /// its `start_s`. Forgotten by begin().
    void next(const RunUnderWay& run);
    /// The run that ended last, with the same start, goes on: what was found of it stands again.
    void begin(const RunUnderWay& run);
    /// A mark of the run under way. @param at_s  in the recording's time
    void mark(double at_s, std::string_view word, std::string_view words);
    [[nodiscard]] bool isUnderWay() const;
    /// What is wrong at this moment: before a run as well as during one. Gravest first, and the
    /// latest first of the same level. Findings stand until the run is over. Meant to be called
    /// once a second, with all samples up to now_s put before.
    [[nodiscard]] std::vector<Alarm> look(double now_s);
    /// The run is over: what screen() says of it with all that is recorded (without patterns across
    /// the study). The run's samples are forgotten but for the last minute.
    [[nodiscard]] Screening end(double at_s);
    /// Thrown away.
    void forget();

private:
    struct Private;
    std::unique_ptr<Private> d;
};

/// 95 % of the limit of over-speed is a warning.
inline constexpr double kNearLimit = 0.95;

} // namespace bothways::core
