// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "storage/instruments/calibration.h"
#include "storage/instruments/rig.h"

#include <string>
#include <utility>
#include <vector>

/// Rigs as words of the command line.
namespace bothways::cli {

/// Each word is a rig of the user's, a file of one, or KIND:ADDRESS; together they are one rig.
[[nodiscard]] Result<storage::Rig> rigOfWords(const std::vector<std::string>& words);
/// KIND:ADDRESS alone; instruments of one kind are told apart by a number.
[[nodiscard]] Result<storage::Rig> rigOfAddresses(const std::vector<std::string>& words);

/// "rpm=rotor_rpm*0.5+3 rpm", or "board/rpm=rotor_rpm" where there are several instruments.
[[nodiscard]] Outcome addRigChannel(storage::Rig& rig, const std::string& text);

/// "SHOWN=TRUE"
[[nodiscard]] Result<storage::CalibrationPoint> calibrationPoint(const std::string& text);

} // namespace bothways::cli
