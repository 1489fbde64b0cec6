// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/noise.h"
#include "app/cli/input.h"

#include <string>
#include <vector>

/// The noise of a pair as other studies found it.
namespace bothways::cli {

/// Of each study that was read. One without a verdict is bad input.
/// @param mayBeTyped  whether the verb has --noise
[[nodiscard]] Result<std::vector<app::NoiseOfStudy>> noisesOf(const std::vector<Input>& inputs,
                                                              bool mayBeTyped);

/// --noise-from FILE, once for each: the noise of those studies goes to the one that is asked
/// about, for this call.
void addNoiseFrom(const Language& in, CLI::App& app, std::vector<std::string>& files);
[[nodiscard]] Result<Input> readWithNoiseFrom(const std::vector<std::string>& files,
                                              const std::string& asked, const Overrides& overrides,
                                              const Surroundings& io);

} // namespace bothways::cli
