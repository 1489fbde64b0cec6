// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/spreadsheet/table.h"

#include <string_view>

/// Numbers, dates and times as the two standards of workbooks store them, made cells.
namespace bothways::storage {

/// What a number format makes of a number (ISO/IEC 29500-1, 18.8.30 and 18.8.31).
enum class NumberShape { number, percentage, date, time, elapsed, dateTime };
/// Of the formats that need no code in the file.
[[nodiscard]] NumberShape shapeOfBuiltIn(int format);
/// Of a code such as "dd.mm.yyyy hh:mm", "[h]:mm:ss", "0.0 %"; its first section.
[[nodiscard]] NumberShape shapeOfCode(std::string_view code);

/// A stored number: the shortest text that is the same double ("8.1199999999999992" is 8.12), or
/// the date and time that it counts (ISO/IEC 29500-1, 18.17.4: days from 1899-12-30 with a day
/// that never was, serial 60; or from 1904-01-01), to the millisecond.
[[nodiscard]] Cell cellOfNumber(std::string_view text, NumberShape shape, bool from1904);

/// "2026-05-09", "2026-05-09T05:40:00.500000000" (ISO/IEC 26300-3, 19.369; ISO/IEC 29500-1, cells
/// of type d): a date, or date and time.
[[nodiscard]] Cell cellOfDate(std::string_view text);
/// "PT05H40M00S" (ISO/IEC 26300-3, 19.386; XML Schema duration): a time.
[[nodiscard]] Cell cellOfDuration(std::string_view text);

} // namespace bothways::storage
