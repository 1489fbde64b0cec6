// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/questions.h"

#include "core/effect/prepared_study.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>

namespace bothways::app {
namespace {

constexpr double kNearLog = 0.14; // 15 %
constexpr double kAnyLog = 0.26;  // 30 %
constexpr double kFitsLog = 0.10; // another reading is proposed when it lands this close
constexpr double kDistanceLog = 0.05;
constexpr double kTemperatureStep_c = 12.0;

struct Questions {
    Q_DECLARE_TR_FUNCTIONS(Questions)
};

bool isSame(const core::Run& a, const core::Run& b)
{
    return a.id == b.id && (a.id != core::RunId{} || a.number == b.number);
}

/// The exact median: the mean of the middle two.
std::optional<double> median(std::vector<double> values)
{
    if (values.empty())
        return std::nullopt;
    std::sort(values.begin(), values.end());
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : 0.5 * (values[middle - 1] + values[middle]);
}

struct Usual {
    double l_per_100km;
    bool alike; ///< from runs of the same configuration and direction
};

std::optional<Usual> usualConsumption(const core::Study& study, const core::Run& run)
{
    std::vector<double> alike, others;
    for (const core::Run& other : study.runs) {
        const auto c = core::lPer100km(other);
        if (isSame(other, run) || !other.counted() || !c)
            continue;
        others.push_back(*c);
        if (core::sameWord(other.configuration, run.configuration) &&
            core::sameWord(other.direction, run.direction))
            alike.push_back(*c);
    }
    if (alike.size() >= 2)
        return Usual{*median(alike), true};
    const auto middle = median(others);
    return middle ? std::optional(Usual{*middle, false}) : std::nullopt;
}

/// What would fit: the same digits in another unit, or with the decimal sign elsewhere.
QString otherReading(const core::Run& run, double usual, const UnitsShown& units)
{
    const auto fits = [&](const core::Consumption& reading) {
        core::Run other = run;
        other.consumption = reading;
        const auto c = core::lPer100km(other);
        return c && *c > 0.0 && std::abs(std::log(*c / usual)) < kFitsLog;
    };
    for (const double factor : {0.1, 0.01, 10.0, 100.0}) {
        core::Consumption reading = *run.consumption;
        reading.value *= factor;
        if (fits(reading))
            return Questions::tr("Did you mean %1?").arg(units.fieldText(reading.value));
    }
    for (const core::ConsumptionUnit unit : core::kConsumptionUnits) {
        core::Consumption reading = *run.consumption;
        reading.unit = unit;
        if (unit != run.consumption->unit && unit != core::ConsumptionUnit::kwhPer100km &&
            fits(reading))
            return Questions::tr("In %1 it would fit.").arg(units.unitText(unit));
    }
    return {};
}

void askAboutConsumption(const core::Study& study, const core::Run& run, const UnitsShown& units,
                         std::vector<Question>& questions)
{
    const auto c = core::lPer100km(run);
    const auto usual = usualConsumption(study, run);
    if (!c || !(*c > 0.0) || !usual)
        return;
    const double log = std::log(*c / usual->l_per_100km);
    if (std::abs(log) <= (usual->alike ? kNearLog : kAnyLog))
        return;
    const QString usualText = units.consumptionWithUnit(usual->l_per_100km);
    const QString percent = units.number(std::abs(core::pctFromLog(log)), 0);
    QString sentence;
    if (log > 0.0)
        sentence =
            usual->alike
                ? Questions::tr("%1 % more fuel than the runs like it (%2).")
                      .arg(percent, usualText)
                : Questions::tr("%1 % more fuel than the other runs (%2).").arg(percent, usualText);
    else
        sentence =
            usual->alike
                ? Questions::tr("%1 % less fuel than the runs like it (%2).")
                      .arg(percent, usualText)
                : Questions::tr("%1 % less fuel than the other runs (%2).").arg(percent, usualText);
    const QString other = otherReading(run, usual->l_per_100km, units);
    questions.push_back(
        {Question::About::consumption, other.isEmpty() ? sentence : sentence + u' ' + other});
}

const core::Run* runBefore(const core::Study& study, const core::Run& run)
{
    const core::Run* before = nullptr;
    for (const core::Run& other : study.runs)
        if (!isSame(other, run) && other.start.us <= run.start.us)
            before = &other;
    return before;
}

void askAboutPlace(const core::Study& study, const core::Run& run, std::vector<Question>& questions)
{
    const core::Run* before = runBefore(study, run);
    const core::Run* last = study.runs.empty() ? nullptr : &study.runs.back();
    const bool isNew = run.id == core::RunId{};
    if (isNew && last && run.start.us < last->start.us)
        questions.push_back(
            {Question::About::start,
             Questions::tr("This start is before that of run %1; the run will be sorted in there.")
                 .arg(last->number)});
    else if (isNew && last && run.start.us - last->start.us > core::kNewDay_us)
        questions.push_back(
            {Question::About::start,
             Questions::tr("More than 6 hours after run %1: a new day begins.").arg(last->number)});
    if (!before)
        return;
    const auto length_s = core::duration_s(*before);
    if (length_s && before->start.us + std::llround(*length_s * 1e6) > run.start.us)
        questions.push_back(
            {Question::About::start,
             Questions::tr("Run %1 was still being driven then.").arg(before->number)});
    if (isNew && core::sameWord(before->direction, run.direction) &&
        core::sameWord(before->configuration, run.configuration))
        questions.push_back(
            {Question::About::direction,
             Questions::tr("Run %1 went the same way. Is the run between them missing?")
                 .arg(before->number)});
}

void askAboutDistance(const core::Study& study, const core::Run& run, const UnitsShown& units,
                      std::vector<Question>& questions)
{
    if (!run.distance_km || !(*run.distance_km > 0.0))
        return;
    std::vector<double> others;
    for (const core::Run& other : study.runs)
        if (!isSame(other, run) && other.distance_km)
            others.push_back(*other.distance_km);
    const auto usual = median(others);
    if (usual && std::abs(std::log(*run.distance_km / *usual)) > kDistanceLog)
        questions.push_back(
            {Question::About::distance,
             Questions::tr("The other runs are %1 long.").arg(units.distanceWithUnit(*usual))});
    if (!run.duration_s || !run.speed_kmh || !(*run.duration_s > 0.0) || !(*run.speed_kmh > 0.0))
        return;
    const double implied_kmh = *run.distance_km / *run.duration_s * 3600.0;
    if (std::abs(std::log(implied_kmh / *run.speed_kmh)) > kDistanceLog)
        questions.push_back({Question::About::speed, Questions::tr("Distance and duration make %1.")
                                                         .arg(units.speedWithUnit(implied_kmh))});
}

void askAboutTemperature(const core::Study& study, const core::Run& run, const UnitsShown& units,
                         std::vector<Question>& questions)
{
    const core::Run* before = runBefore(study, run);
    if (!run.temperature_c || !before || !before->temperature_c)
        return;
    if (std::abs(*run.temperature_c - *before->temperature_c) > kTemperatureStep_c)
        questions.push_back({Question::About::temperature,
                             Questions::tr("Run %1 had %2.")
                                 .arg(QString::number(before->number),
                                      units.temperatureWithUnit(*before->temperature_c))});
}

} // namespace

std::vector<Question> questionsAbout(const core::Study& study, const core::Run& run,
                                     const UnitsShown& units)
{
    std::vector<Question> questions;
    askAboutConsumption(study, run, units, questions);
    askAboutPlace(study, run, questions);
    askAboutDistance(study, run, units, questions);
    askAboutTemperature(study, run, units, questions);
    return questions;
}

} // namespace bothways::app
