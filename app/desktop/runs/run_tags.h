// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "core/study/study.h"

#include <QMetaType>
#include <QString>

#include <vector>

namespace bothways::app {

/// Something beside the device that may have moved a run's consumption, short enough for a label.
struct RunTag {
    enum class Kind { accessory, temperature, wind, battery, traffic, adjusted, mark };
    Kind kind = Kind::mark;
    QString text;             ///< "12.5 °C"
    QString tooltip;          ///< the same as a sentence
    std::string subject = {}; ///< what it speaks of, where runs may be alike in it; else empty
    bool loud = false;        ///< it may have spoiled the run
    friend bool operator==(const RunTag&, const RunTag&) = default;
};
using RunTags = std::vector<RunTag>;

/// @param timed  accessories that drop out by themselves: one that does so within the run is loud
[[nodiscard]] RunTags tagsOf(const core::Run& run, const UnitsShown& units,
                             const std::vector<core::TimedAccessory>& timed = {});

/// Marks that one key sets and takes away: words of the rules that they count for.
inline constexpr std::string_view kTrafficMark = "passing_traffic";
inline constexpr std::string_view kAdjustedMark = "adjusted";
[[nodiscard]] bool hasMark(const core::Run& run, std::string_view word);
/// Adds the mark at 0 s, or takes every mark of that word away.
void setMark(core::Run& run, std::string_view word, bool there);

} // namespace bothways::app

Q_DECLARE_METATYPE(bothways::app::RunTags)
