// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>
#include <string_view>

/// How the values of properties are read from text, and written.
namespace bothways::core {

[[nodiscard]] std::string_view withoutBlanks(std::string_view text);
/// A finite number with nothing beside it; one sign.
[[nodiscard]] std::optional<double> propertyNumber(std::string_view text);
/// The shortest text that propertyNumber() gives back the same from, without an exponent.
[[nodiscard]] std::string propertyText(double value);
/// "'x' is not permitted; expected ..."
[[nodiscard]] Error propertyRefusal(std::string_view name, std::string_view value,
                                    const Message& expected);

} // namespace bothways::core
