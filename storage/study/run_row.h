// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string_view>
#include <vector>

/// How a row of table run is laid out in our statements, for who writes and who reads it.
namespace bothways::storage::run_row {

/// The columns that are not numbers of numberColumns().
enum Field {
    number,
    configuration,
    setting,
    direction,
    start,
    consumption,
    consumptionUnit,
    consumptionDecimals,
    consumptionSource,
    status,
    reason,
    evidence,
    pair,
    accessories,
    trace,
    notes,
    fieldCount
};
inline constexpr std::array<std::string_view, fieldCount> kFields = {"run",
                                                                     "configuration",
                                                                     "setting",
                                                                     "direction",
                                                                     "start",
                                                                     "consumption",
                                                                     "consumption_unit",
                                                                     "consumption_decimals",
                                                                     "consumption_source",
                                                                     "status",
                                                                     "reason",
                                                                     "evidence",
                                                                     "pair",
                                                                     "accessories",
                                                                     "trace",
                                                                     "notes"};

/// Every stored column but the id: kFields, then those of numberColumns().
[[nodiscard]] std::vector<std::string_view> storedColumns();

} // namespace bothways::storage::run_row
