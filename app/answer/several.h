// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/result_set.h"
#include "core/answer/pooled.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Several studies, answered together.
namespace bothways::app {

/// One study in a table of several; `effect` is empty where it has no verdict.
struct StudyRow {
    std::string name;
    std::optional<core::StudyEffect> effect;
    core::VerdictClass cls = core::VerdictClass::none;
    std::optional<double> baseline_l_per_100km = {};
    bool electric = false;                  ///< the litres are kWh
    std::string baseline = {}, device = {}; ///< the configurations; empty where there are not two
};

/// An answer, and what people call its study.
struct NamedAnswer {
    std::string name;
    std::shared_ptr<const ResultSet> result;
};

struct Several {
    std::vector<StudyRow> studies;
    std::optional<core::Pooled> pooled;
    /// Of the first study, verdict or none: all of them are asked what it is asked.
    double confidence = 0.95, margin_pct = 1.0;
};

[[nodiscard]] Several together(const std::vector<NamedAnswer>& studies);

} // namespace bothways::app
