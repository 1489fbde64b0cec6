// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "storage/instruments/rig_trial.h"
#include "storage/instruments/rigs.h"

#include <string>
#include <vector>

/// Rigs and what was seen of them, for people and for programs.
namespace bothways::app {

struct TriedRig {
    storage::Rig rig;
    double seconds = 0.0;
    std::vector<storage::TriedChannel> channels;
    std::vector<storage::InstrumentState> states; ///< in order of the rig's instruments
};
[[nodiscard]] std::string triedRigText(const Language& in, const TriedRig& tried);
[[nodiscard]] std::string triedRigJson(const TriedRig& tried);

/// The instruments with their channels.
[[nodiscard]] std::string rigDescription(const Language& in, const storage::Rig& rig);
[[nodiscard]] std::string serialPortsText(const Language& in,
                                          const std::vector<storage::SerialPortName>& ports);
[[nodiscard]] std::string serialPortsJson(const std::vector<storage::SerialPortName>& ports);
[[nodiscard]] std::string rigNamesJson(const std::vector<std::string>& names);

} // namespace bothways::app
