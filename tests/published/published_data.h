// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

/// The data files beside these tests; tests/published/data/SOURCES.md says where each comes from.
namespace bothways::published {

/// Columns of a CSV file, by name. Throws with the file's name when it cannot be read.
using Table = std::map<std::string, std::vector<std::string>>;
Table readTable(const std::string& file);

/// One column as numbers.
std::vector<double> readColumn(const std::string& file, const std::string& column);
std::vector<double> asNumbers(const std::vector<std::string>& texts);

/// NIST's certified values of a data set, by quantity; "infinite" is left out.
std::map<std::string, double> certified(const std::string& dataset);

/// Log relative error: the number of digits that agree, -log10(|x - c|/|c|), at most 15
/// (-log10|x| where c is 0).
double agreeingDigits(double value, double certifiedValue);

} // namespace bothways::published
