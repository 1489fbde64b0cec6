// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <span>
#include <string_view>

namespace bothways::core {

/// The word that `typed` is spelled nearly like: one or two letters added, left out, swapped or
/// mistaken, and no more than a third of them. Of several the nearest, of those the first. Empty:
/// none.
[[nodiscard]] std::string_view nearestWord(std::string_view typed,
                                           std::span<const std::string_view> known);

/// The message, with "; did you mean 'x'?"; as it is where `nearest` is empty.
[[nodiscard]] Message didYouMean(Message message, std::string_view nearest);

} // namespace bothways::core
