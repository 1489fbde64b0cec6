// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>
#include <string_view>

/// How the values of properties are read from text, and written.
namespace bothways::core {

/// A finite number with nothing beside it; one sign.
[[nodiscard]] std::optional<double> propertyNumber(std::string_view text);
/// "6,4" as "6.4": a number as it is typed where the comma is the decimal sign. One comma between
/// digits, and no point; any other text as it is.
[[nodiscard]] std::string withDecimalPoint(std::string_view text);
/// The same number typed with a decimal comma or a decimal point.
[[nodiscard]] std::optional<double> typedNumber(std::string_view text);
/// The shortest text that propertyNumber() gives back the same from, without an exponent.
[[nodiscard]] std::string propertyText(double value);
/// A number that may have its unit behind it, in a property of `unit`: "4 mi" and "6.4 km" are
/// taken for km, "55 mph" and "90 km/h" for km/h. The number alone, in `unit`; any other text as it
/// is.
[[nodiscard]] std::string inUnit(std::string_view text, std::string_view unit);
/// "'x' is not permitted; expected ..."
[[nodiscard]] Error propertyRefusal(std::string_view name, std::string_view value,
                                    const Message& expected);

} // namespace bothways::core
