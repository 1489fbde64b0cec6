// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

namespace bothways::core {

/// Names that setProperty() knows; the limits among them. ("accessory_timer." wants a name more.)
[[nodiscard]] std::vector<std::string_view> propertyNames();

} // namespace bothways::core
