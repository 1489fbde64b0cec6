// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/several.h"
#include "app/cli/input.h"
#include "app/wording/units.h"

#include <functional>
#include <memory>
#include <string>
#include <vector>

/// Several studies that are taken together.
namespace bothways::cli {

using Answered = Result<std::shared_ptr<const app::ResultSet>>;

struct Several {
    app::Several together;
    app::wording::ShownUnit unit = app::wording::ShownUnit::lPer100km; ///< of the first
};

/// Each once: a file given twice is an Error, runs that would count twice are said.
[[nodiscard]] Result<std::vector<Input>> readInputs(const std::vector<std::string>& files,
                                                    const Overrides& overrides,
                                                    const Surroundings& io);

/// Reads all of them, then answers one after the other.
/// @param answer  to what was read
/// @param taken   called with each that was answered
[[nodiscard]] Result<Several> readSeveral(
    const std::vector<std::string>& files, const Overrides& overrides, const Surroundings& io,
    const std::function<Answered(const Input&)>& answer,
    const std::function<void(Input&&, const std::shared_ptr<const app::ResultSet>&)>& taken);

} // namespace bothways::cli
