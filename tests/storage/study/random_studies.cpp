// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/study/random_studies.h"

#include "core/study/rule.h"
#include "storage/sheet/run_columns.h"
#include "tests/storage/study/study_builders.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bothways::tests {
namespace {

constexpr std::array kPieces = {
    "a", "Z",  " ", "  ", "\"",           "'",  ",",    ";", "\t",   "\n", "\r\n", "\r",
    "#", "\\", "é", "車", "\xEF\xBB\xBF", "-1", "=1+1", "%", "NULL", "0"};

std::string trimmedBlanks(std::string text)
{
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; };
    while (!text.empty() && blank(text.front()))
        text.erase(text.begin());
    while (!text.empty() && blank(text.back()))
        text.pop_back();
    return text;
}

} // namespace

double RandomStudies::number(double low, double high)
{
    const double share = static_cast<double>(m_random()) / 4294967296.0;
    const double value = low + share * (high - low);
    // Half of them as a display shows them, half with every bit that a double has.
    return oneIn(2) ? std::max(low, std::round(value * 100.0) / 100.0) : value;
}

std::optional<double> RandomStudies::maybe(double low, double high)
{
    if (oneIn(2))
        return std::nullopt;
    return number(low, high);
}

std::string RandomStudies::nastyText()
{
    std::string text;
    for (int n = below(6); n > 0; --n)
        text += kPieces[static_cast<std::size_t>(below(static_cast<int>(kPieces.size())))];
    return text;
}

core::Consumption RandomStudies::consumption(core::ConsumptionUnit unit)
{
    core::Consumption given{number(0.5, 40.0), unit, below(4), oneIn(5)};
    const std::string shown = storage::formatNumber(given.value, given.decimals);
    given.decimals = storage::parseNumber(shown)->decimals;
    return given;
}

void RandomStudies::fill(core::Run& run, bool electric)
{
    run.setting = oneIn(2) ? "" : trimmedBlanks(nastyText());
    run.duration_s = maybe(1, 900);
    run.distance_km = maybe(0.5, 20);
    run.speed_kmh = maybe(5, 130);
    using Unit = core::ConsumptionUnit;
    const Unit unit =
        electric
            ? Unit::kwhPer100km
            : std::array{Unit::lPer100km, Unit::mpgUs, Unit::mpgImp,
                         Unit::kmPerL,    Unit::fuelL, Unit::fuelGalUs}[static_cast<std::size_t>(
                  below(6))];
    if (core::needsDistance(unit) && !run.distance_km)
        run.distance_km = number(0.5, 20);
    if (oneIn(4)) {
        const auto rules = core::allRules();
        run.discard = core::Discard{
            std::string(core::ruleName(rules[static_cast<std::size_t>(below(20))])), nastyText()};
        if (oneIn(3))
            run.discard = core::Discard{"other", "because" + nastyText()};
    }
    if (oneIn(8))
        run.trace = "r" + nastyText() + ".csv";
    if (!((run.discard || !run.trace.empty()) && oneIn(2)))
        run.consumption = consumption(unit);
    run.control = maybe(1, 40);
    for (int n = below(8) / 3; n > 0; --n)
        run.marks.push_back(
            {number(-5, 400), oneIn(2) ? "gust" : "passing;traf\\fic", trimmedBlanks(nastyText())});
    run.accessory_w = maybe(-10, 2000);
    run.accessories = nastyText();
    run.output_w = maybe(-50, 3000);
    run.rotor_rpm_max = maybe(0, 5000);
    run.battery_v_start = maybe(10, 15);
    run.battery_v_end = maybe(10, 15);
    run.wind_ms = maybe(0, 20);
    run.wind_from_deg = maybe(0, 360);
    run.temperature_c = maybe(-30, 45);
    run.pressure_hpa = maybe(600, 1100);
    run.humidity_pct = maybe(0, 100);
    run.notes = nastyText();
    for (const char* name : {"fan", "heated_windscreen", "s'itz"})
        if (oneIn(4))
            run.accessory_on_s.emplace(name, number(-600, 600));
    // In the order in which a sheet would have them.
    for (const char* name : {"Driver", "#tag", "a,b", "zwei\nZeilen", "x\"y"})
        if (std::string value = nastyText(); oneIn(2) && !value.empty())
            run.extra.emplace_back(name, std::move(value));
}

core::Study RandomStudies::study(int runs)
{
    core::Study study;
    const bool offsets = oneIn(2);
    const bool electric = oneIn(6);
    const std::string out = oneIn(2) ? "out" : "nord/\"Süd\"";
    core::Run run;
    run.configuration = oneIn(2) ? "A" : "Dach, leer";
    run.start.us = RunBuilder::kMorning_us + below(1'000'000);
    for (int i = 0; i < runs; ++i) {
        core::Run next;
        next.configuration = run.configuration;
        if (oneIn(5))
            next.configuration = run.configuration == "B" ? "A," : "B";
        next.configuration = study.runs.empty()          ? run.configuration
                             : next.configuration == "B" ? "B"
                                                         : study.runs[0].configuration;
        next.direction = oneIn(2) ? out : "return";
        next.start.us = run.start.us + std::int64_t{1000} * below(900'000) +
                        (oneIn(20) ? std::int64_t{8} * 3'600'000'000 : 0);
        if (offsets)
            next.start.utc_offset_min = oneIn(2) ? 120 : 0;
        next.number = 2 * i + 1 + below(2);
        fill(next, electric);
        run = next;
        study.runs.push_back(std::move(next));
    }
    // Ties between neighbours that may be tied.
    for (std::size_t i = 1; i < study.runs.size(); ++i) {
        core::Run& one = study.runs[i - 1];
        core::Run& two = study.runs[i];
        if (oneIn(4) && one.pair_mark.empty() && one.configuration == two.configuration &&
            one.direction != two.direction &&
            two.start.us - one.start.us < std::int64_t{6} * 3'600'000'000)
            one.pair_mark = two.pair_mark = "pair " + std::to_string(i) + (oneIn(2) ? "\"" : "");
    }
    return study;
}

core::Run RandomStudies::run(const core::Study& study)
{
    core::Run run;
    bool electric = false;
    if (study.runs.empty()) {
        run = aRun();
    } else {
        const core::Run& like =
            study.runs[static_cast<std::size_t>(below(static_cast<int>(study.runs.size())))];
        run.configuration = like.configuration;
        run.direction = like.direction;
        run.start = study.runs.back().start;
        run.start.us += std::int64_t{1000} * below(900'000);
        for (const core::Run& other : study.runs)
            electric = electric || (other.consumption &&
                                    other.consumption->unit == core::ConsumptionUnit::kwhPer100km);
    }
    fill(run, electric);
    return run;
}

} // namespace bothways::tests
