// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/clock.h"
#include "core/study/study.h"

#include <fast_float/fast_float.h>

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

/// A reader of plain run sheets for the tests of core, which must not lean on storage's: commas, no
/// quotes, points; times of day are of 2026-05-09.
namespace bothways::tests {

class PlainSheet {
public:
    static core::Study read(const std::string& file)
    {
        std::ifstream in(file);
        if (!in)
            throw std::runtime_error("cannot read " + file);
        PlainSheet sheet;
        std::string line;
        std::getline(in, line);
        sheet.m_names = split(line);
        while (std::getline(in, line))
            sheet.add(split(line));
        core::sortByStart(sheet.m_study);
        return sheet.m_study;
    }

private:
    static std::vector<std::string> split(const std::string& line)
    {
        std::vector<std::string> cells;
        std::stringstream stream(line);
        for (std::string cell; std::getline(stream, cell, ',');)
            cells.push_back(cell);
        return cells;
    }

    static std::optional<double> number(const std::string& text)
    {
        double value = 0.0;
        const auto [rest, problem] =
            fast_float::from_chars(text.data(), text.data() + text.size(), value);
        return problem == std::errc() ? std::optional(value) : std::nullopt;
    }

    static core::Instant start(const std::string& text)
    {
        const std::string whole = text.find('T') == std::string::npos ? "2026-05-09T" + text : text;
        return core::parseDateTime(whole).value();
    }

    static int decimals(const std::string& text)
    {
        const std::size_t point = text.find('.');
        return point == std::string::npos ? 0 : static_cast<int>(text.size() - point) - 1;
    }

    void add(const std::vector<std::string>& cells)
    {
        std::map<std::string, std::string> cell;
        for (std::size_t k = 0; k < cells.size() && k < m_names.size(); ++k)
            cell[m_names[k]] = cells[k];
        core::Run run;
        run.number = cell["run"].empty() ? static_cast<int>(m_study.runs.size()) + 1
                                         : static_cast<int>(*number(cell["run"]));
        run.configuration = cell["configuration"];
        run.direction = cell["direction"];
        run.setting = cell["setting"];
        run.start = start(cell["start"]);
        run.duration_s = number(cell["duration_s"]);
        run.distance_km = number(cell["distance_km"]);
        run.speed_kmh = number(cell["speed_kmh"]);
        run.control = number(cell["control"]);
        run.pair_mark = cell["pair"];
        for (const core::ConsumptionUnit unit : core::kConsumptionUnits)
            if (const auto value = number(cell[std::string(core::unitName(unit))]))
                run.consumption = core::Consumption{
                    *value, unit, decimals(cell[std::string(core::unitName(unit))]), false};
        if (cell["status"] == "discarded")
            run.discard = core::Discard{cell["reason"], cell["evidence"]};
        m_study.runs.push_back(std::move(run));
    }

    std::vector<std::string> m_names;
    core::Study m_study;
};

} // namespace bothways::tests
