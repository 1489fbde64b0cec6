// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"

#include <string>
#include <string_view>

/// What people call what files call otherwise.
namespace bothways::app::wording {

/// "rotor_rpm@left": "rotor speed (left)". A channel that is not ours keeps its name.
[[nodiscard]] std::string channelName(const Language& in, std::string_view channel);
/// The same without its part.
[[nodiscard]] std::string channelBaseName(const Language& in, std::string_view channel);
/// Of a column of the run sheet: "temperature_c": "temperature"; of a timed accessory's, its name.
[[nodiscard]] std::string columnName(const Language& in, std::string_view column);
/// A name as a headline begins with it.
[[nodiscard]] std::string withCapital(std::string name);

} // namespace bothways::app::wording
