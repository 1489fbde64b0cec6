// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/findings.h"
#include "app/wording/language.h"
#include "core/effect/answer.h"

#include <array>
#include <string>

/// How sure the answer is, and what other roads say.
namespace bothways::app::wording {

/// All of them, in the order in which they are explained.
inline constexpr std::array kCompanions{
    core::Companion::bracket,  core::Companion::runs,       core::Companion::blocks,
    core::Companion::curved,   core::Companion::correlated, core::Companion::anyLook,
    core::Companion::borrowed, core::Companion::labels,     core::Companion::days};

/// What the companion is, what it finds here, and how far it is to be trusted.
[[nodiscard]] std::string companionSentence(const Language& in, core::Companion companion,
                                            const core::Analysis& analysis);
/// As on a label: "bracketing", "dealing the labels".
[[nodiscard]] std::string companionName(const Language& in, core::Companion companion);
/// As tables name it, and sentences that send the reader there: "bracket", "labels".
[[nodiscard]] std::string companionWord(const Language& in, core::Companion companion);

/// What a study of this size and noise can show, and what it cannot.
[[nodiscard]] std::string detectableSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string leaveOneOutSentence(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string discardsRestoredSentence(const Language& in,
                                                   const core::Analysis& analysis);
/// @param names  of why runs were left out: "over-speed", or "overspeed" as files have it
[[nodiscard]] std::string noteSentence(const Language& in, const core::Note& note,
                                       Names names = Names::forPeople);

} // namespace bothways::app::wording
