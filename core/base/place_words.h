// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <functional>
#include <string>

namespace bothways::core {

/// "morning.csv:14: run 3: column 'start'" in a language: that of whoever says its parts.
[[nodiscard]] std::string placeIn(const Place& place,
                                  const std::function<std::string(const Message&)>& say);

} // namespace bothways::core
