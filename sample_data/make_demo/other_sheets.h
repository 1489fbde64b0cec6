// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

/// Two more invented run sheets, without a generator.
namespace bothways::demo {

/// A roof box off, on, off; times of day, US miles a gallon, miles.
[[nodiscard]] std::string roofBoxSheet();
/// Tyres at 2.2 and 2.7 bar; semicolons and decimal commas.
[[nodiscard]] std::string tyrePressureSheet();

} // namespace bothways::demo
