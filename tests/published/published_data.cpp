// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "published_data.h"

#include <fast_float/fast_float.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <stdexcept>
#include <string_view>

namespace bothways::published {
namespace {

std::vector<std::string> cells(std::string line)
{
    if (!line.empty() && line.back() == '\r')
        line.pop_back();
    std::vector<std::string> result(1);
    for (const char c : line) {
        if (c == ',')
            result.emplace_back();
        else
            result.back() += c;
    }
    return result;
}

bool isNumber(std::string_view text, double& value)
{
    const char* end = text.data() + text.size();
    const auto [rest, problem] = fast_float::from_chars(text.data(), end, value);
    return problem == std::errc() && rest == end && std::isfinite(value);
}

} // namespace

Table readTable(const std::string& file)
{
    std::ifstream stream(std::string(BOTHWAYS_SOURCE_DIR) + "/tests/published/data/" + file);
    std::string line;
    if (!std::getline(stream, line))
        throw std::runtime_error("cannot read " + file);
    const std::vector<std::string> names = cells(line);
    Table columns;
    while (std::getline(stream, line)) {
        const std::vector<std::string> row = cells(line);
        for (std::size_t i = 0; i < names.size(); ++i)
            columns[names[i]].push_back(row.at(i));
    }
    return columns;
}

std::vector<double> asNumbers(const std::vector<std::string>& texts)
{
    std::vector<double> numbers(texts.size());
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (!isNumber(texts[i], numbers[i]))
            throw std::runtime_error("'" + texts[i] + "' is not a number");
    return numbers;
}

std::vector<double> readColumn(const std::string& file, const std::string& column)
{
    return asNumbers(readTable(file).at(column));
}

std::map<std::string, double> certified(const std::string& dataset)
{
    const Table all = readTable("nist_strd/certified.csv");
    std::map<std::string, double> values;
    for (std::size_t i = 0; i < all.at("dataset").size(); ++i) {
        double value = 0.0;
        if (all.at("dataset")[i] == dataset && isNumber(all.at("value")[i], value))
            values[all.at("quantity")[i]] = value;
    }
    return values;
}

double agreeingDigits(double value, double certifiedValue)
{
    const double error = certifiedValue == 0.0
                             ? std::abs(value)
                             : std::abs(value - certifiedValue) / std::abs(certifiedValue);
    return error == 0.0 ? 15.0 : std::clamp(-std::log10(error), 0.0, 15.0);
}

} // namespace bothways::published
