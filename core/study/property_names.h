// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace bothways::core {

/// Of a study itself, in the order in which they are told.
[[nodiscard]] std::span<const std::string_view> ownPropertyNames();
/// Names that setProperty() knows; the limits among them. ("accessory_timer." wants a name more.)
[[nodiscard]] std::vector<std::string_view> propertyNames();

} // namespace bothways::core
