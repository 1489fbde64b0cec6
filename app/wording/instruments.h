// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "storage/instruments/rig_reader.h"

#include <string>

/// Instruments and what has become of them, in words.
namespace bothways::app::wording {

/// "reading", "silent", ...
[[nodiscard]] std::string instrumentState(const Language& in, storage::InstrumentState::Is is);
/// "board: reading", "gps: silent for 0:12", "meter: not open, …": as of now.
/// @param now_s  by the clock of the recording
[[nodiscard]] std::string instrumentNow(const Language& in, const std::string& name,
                                        const storage::InstrumentState& state, double now_s);
/// "board: reading, 1,200 readings; 3 lines could not be read; what comes is no text"
[[nodiscard]] std::string instrumentSentence(const Language& in, const std::string& name,
                                             const storage::InstrumentState& state);
/// "rpm * 0.5 + 3" as a channel's value comes about.
[[nodiscard]] std::string conversionWords(const Language& in, const storage::RigChannel& channel);

/// What begins and ends the runs of a recording while it is made: "by hand", ...
[[nodiscard]] std::string runsByWords(const Language& in, core::RunsBy::Way way);

} // namespace bothways::app::wording
