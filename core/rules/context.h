// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/finding.h"
#include "core/study.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What every rule of screen() is given, and where it leaves what it found. (Method, section 9.)
namespace bothways::core::rules {

/// Two readings that are equal in decimals may differ by rounding once they are subtracted or
/// scaled (12.3 - 12.1 > 0.2 in binary). Computed values are therefore compared with limits within
/// 1e-9 of their size; samples as they stand are compared exactly.
[[nodiscard]] bool exceeds(double value, double limit); ///< value > limit
[[nodiscard]] bool reaches(double value, double limit); ///< value >= limit

/// One run under screening.
struct RunContext {
    const Study& study;
    std::size_t place; ///< of the run in study.runs
    std::vector<Finding>& findings;
    std::vector<NotChecked>& not_checked;

    [[nodiscard]] const Run& run() const { return study.runs[place]; }
    /// The study's limit, else the default; nothing where it must be set and is not.
    [[nodiscard]] std::optional<double> limit(std::string_view name) const;
    /// A limit that has a default.
    [[nodiscard]] double limitWithDefault(std::string_view name) const;
    /// A limit without default; where it is not set, `rule` is noted as not checked.
    [[nodiscard]] std::optional<double> neededLimit(Rule rule, std::string_view name);
    void notChecked(Rule rule, WhyNotChecked why, std::string_view what);
    /// Adds a finding without span; the caller fills in the rest.
    Finding& found(Rule rule, Grade grade, std::optional<double> value, std::optional<double> limit,
                   std::string_view unit);
};

/// The grade that the method's table gives a rule.
[[nodiscard]] Grade gradeOf(Rule rule);

} // namespace bothways::core::rules
