// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <string_view>

namespace bothways::core {

/// A number that is a text already, with its digits as they were given ("8.40", "12.000"), for a
/// place of a sentence: the reader's decimal sign stands in it. What is no such number stays as it
/// is.
[[nodiscard]] Message decimalText(std::string_view number);
/// With as many digits as tell the number from every other.
[[nodiscard]] Message decimalText(double number);

} // namespace bothways::core
