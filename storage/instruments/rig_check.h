// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/rig.h"

/// What no rig may hold.
namespace bothways::storage {

/// An Error names the instrument, and what was expected.
[[nodiscard]] core::Outcome checkRig(const Rig& rig);
[[nodiscard]] core::Outcome checkInstrument(const Instrument& instrument);

} // namespace bothways::storage
