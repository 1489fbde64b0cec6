// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <string>
#include <string_view>

/// Dates and times as text: ISO 8601, and times of day. No locale, no time zone database.
namespace bothways::core {

/// "2026-05-09T05:40:00", fractions to the microsecond, 'T' or a blank between, seconds optional,
/// "Z" or "+02:00" optional. The message of the Error says what was expected.
[[nodiscard]] Result<Instant> parseDateTime(std::string_view text);
/// "HH:MM[:SS[.f]]" as microseconds since midnight.
[[nodiscard]] Result<std::int64_t> parseTimeOfDay_us(std::string_view text);
/// "YYYY-MM-DD" as microseconds since 1970-01-01.
[[nodiscard]] Result<std::int64_t> parseDate_us(std::string_view text);

/// The shortest text that parseDateTime() gives back the same from.
[[nodiscard]] std::string formatDateTime(const Instant& instant);
/// "YYYY-MM-DD" of the instant's own clock (its offset applied).
[[nodiscard]] std::string formatDate(const Instant& instant);
/// "HH:MM:SS", or "HH:MM" where `withSeconds` is false.
[[nodiscard]] std::string formatTimeOfDay(const Instant& instant, bool withSeconds = true);

} // namespace bothways::core
