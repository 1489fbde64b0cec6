// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/effect/answer.h"

#include <array>
#include <string>
#include <vector>

/// The checks: one sentence each, that says what it means for this study and what to do.
namespace bothways::app::wording {

/// Those of method, sections 7 and 10, in the order in which they are shown.
enum class CheckKind {
    normal,
    outlier,
    order,
    curve,
    spread,
    baseline,
    direction,
    ways,
    settling,
    days,
    resolution,
    air
};
inline constexpr std::array kCheckKinds{
    CheckKind::normal,   CheckKind::outlier,  CheckKind::order,      CheckKind::curve,
    CheckKind::spread,   CheckKind::baseline, CheckKind::direction,  CheckKind::ways,
    CheckKind::settling, CheckKind::days,     CheckKind::resolution, CheckKind::air};
[[nodiscard]] core::CheckState stateOf(const core::Checks& checks, CheckKind kind);

[[nodiscard]] std::string checkSentence(const Language& in, CheckKind kind,
                                        const core::Analysis& analysis);
[[nodiscard]] std::string normalSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string outlierSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string orderSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string curveSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string spreadSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string baselineSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string directionSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string waysSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string settlingSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string daysCheckSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string resolutionSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string airSentence(const Language& in, const core::Analysis& analysis);

/// As on a label, and true where the check holds: "ordinary scatter", "no outlying pair".
[[nodiscard]] std::string checkName(const Language& in, CheckKind kind);
/// As tables name it: "normal", "outlier".
[[nodiscard]] std::string checkWord(const Language& in, CheckKind kind);
/// "holds", "note", "not met", "not computed".
[[nodiscard]] std::string stateWords(const Language& in, core::CheckState state);

/// A check as tables name it, what it came to, and its sentence.
struct CheckWords {
    std::string check;
    core::CheckState state;
    std::string sentence;
};
/// All of them, in order.
[[nodiscard]] std::vector<CheckWords> checkWords(const Language& in,
                                                 const core::Analysis& analysis);
/// How much the checks can see with so few pairs; empty where there are many.
[[nodiscard]] std::string checksPowerSentence(const Language& in, const core::Analysis& analysis);

} // namespace bothways::app::wording
