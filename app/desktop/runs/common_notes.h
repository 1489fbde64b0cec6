// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/runs/run_tags.h"
#include "core/study/study.h"

#include <map>
#include <string>

namespace bothways::app {

/// What is noted alike of all runs, or of most of them: it stands once above the list, and a run
/// says only where it differs.
///
/// Looked at are the load of the accessories, the accessories in words, and each accessory that
/// drops out by a timer. Weather is never alike, and stays with its run. Most are more than half of
/// three or more runs: fewer have nothing in common.
class CommonNotes {
public:
    CommonNotes() = default;
    CommonNotes(const core::Study& study, const UnitsShown& units);

    /// "In every run: load 900 W, windscreen on."; empty where nothing is alike.
    [[nodiscard]] QString words() const;
    /// What a run has to say beside that.
    [[nodiscard]] RunTags tagsOf(const core::Run& run) const;
    friend bool operator==(const CommonNotes&, const CommonNotes&) = default;

private:
    std::map<std::string, QString> m_common; ///< what is spoken of -> what is said of it
    bool m_everywhere = true;
    std::vector<core::TimedAccessory> m_timed;
    UnitsShown m_units;
};

} // namespace bothways::app
