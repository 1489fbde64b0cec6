// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/questions.h"

#include "core/effect/prepared_study.h"
#include "core/recording/trace_consumption.h"
#include "core/screening/odd_runs.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <set>

namespace bothways::app {
namespace {

constexpr double kNearLog = 0.14; // 15 %
constexpr double kAnyLog = 0.26;  // 30 %
constexpr double kFitsLog = 0.10; // another unit is proposed when it lands this close
// Litres per 100 km. Common practice, no source: a moped uses 2, a laden lorry uphill 80.
constexpr double kLeast_l = 0.5, kMost_l = 150.0;
constexpr double kLeastOrdinary_l = 2.0, kMostOrdinary_l = 40.0;
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
    bool alike;   ///< from runs of the same configuration and direction
    int only = 0; ///< number of the run, where there is but one
};

/// Runs whose own number is so far off that nothing is held against it.
std::set<int> oddOnes(const core::Study& study)
{
    std::set<int> numbers;
    if (std::ranges::count_if(
            study.runs, [](const core::Run& run) { return run.counted() && run.consumption; }) < 3)
        return numbers; // of two nobody knows which
    for (const core::OddRun& odd : core::oddRuns(study))
        if (odd.what == core::OddRun::What::consumption)
            numbers.insert(odd.run);
    return numbers;
}

std::optional<Usual> usualConsumption(const core::Study& study, const core::Run& run)
{
    const std::set<int> odd = oddOnes(study);
    std::vector<double> alike, others;
    int last = 0;
    for (const core::Run& other : study.runs) {
        const auto c = core::lPer100km(other);
        if (isSame(other, run) || !other.counted() || !c || odd.contains(other.number))
            continue;
        last = other.number;
        others.push_back(*c);
        if (core::sameWord(other.configuration, run.configuration) &&
            core::sameWord(other.direction, run.direction))
            alike.push_back(*c);
    }
    if (alike.size() >= 2)
        return Usual{*median(alike), true};
    const auto middle = median(others);
    return middle ? std::optional(Usual{*middle, false, others.size() == 1 ? last : 0})
                  : std::nullopt;
}

/// What would fit: the same digits with the decimal sign elsewhere, or in another unit.
/// Another place of the sign is ten times off, so that it need not fit as well as another unit.
template <class Shifted, class Fits>
std::optional<core::Consumption> otherReading(const core::Run& run, const Shifted& fitsShifted,
                                              const Fits& fitsConverted)
{
    const auto holds = [&](const core::Consumption& reading, const auto& fits) {
        core::Run other = run;
        other.consumption = reading;
        const auto c = core::lPer100km(other);
        return c && *c > 0.0 && fits(*c);
    };
    for (const int shift : {-1, -2, 1, 2}) {
        core::Consumption reading = *run.consumption;
        reading.value *= std::pow(10.0, shift);
        reading.decimals = std::max(reading.decimals - shift, 0);
        const auto digits = [&] {
            return std::llround(reading.value * std::pow(10.0, reading.decimals));
        };
        while (reading.decimals > 2 && digits() % 10 == 0)
            --reading.decimals;
        // As it would have been typed.
        reading.value = static_cast<double>(digits()) / std::pow(10.0, reading.decimals);
        if (holds(reading, fitsShifted))
            return reading;
    }
    for (const core::ConsumptionUnit unit : core::kConsumptionUnits) {
        core::Consumption reading = *run.consumption;
        reading.unit = unit;
        if (unit != run.consumption->unit && unit != core::ConsumptionUnit::kwhPer100km &&
            run.consumption->unit != core::ConsumptionUnit::kwhPer100km &&
            holds(reading, fitsConverted))
            return reading;
    }
    return std::nullopt;
}

QString offerOf(const core::Run& run, const core::Consumption& likely, const UnitsShown& units)
{
    return likely.unit == run.consumption->unit
               ? Questions::tr("Did you mean %1?").arg(shortly(likely, likely.unit, units))
               : Questions::tr("In %1 it would fit.").arg(units.unitText(likely.unit));
}

QString farOff(double log, const Usual& usual, const UnitsShown& units)
{
    const QString usualText = units.consumptionWithUnit(usual.l_per_100km);
    const QString percent = units.number(std::abs(core::pctFromLog(log)), 0);
    if (usual.only > 0)
        return log > 0.0 ? Questions::tr("%1 % more fuel than run %3 (%2).")
                               .arg(percent, usualText)
                               .arg(usual.only)
                         : Questions::tr("%1 % less fuel than run %3 (%2).")
                               .arg(percent, usualText)
                               .arg(usual.only);
    if (log > 0.0)
        return usual.alike ? Questions::tr("%1 % more fuel than the runs like it (%2).")
                                 .arg(percent, usualText)
                           : Questions::tr("%1 % more fuel than the other runs (%2).")
                                 .arg(percent, usualText);
    return usual.alike
               ? Questions::tr("%1 % less fuel than the runs like it (%2).").arg(percent, usualText)
               : Questions::tr("%1 % less fuel than the other runs (%2).").arg(percent, usualText);
}

bool isOrdinary(double l_per_100km)
{
    return l_per_100km >= kLeastOrdinary_l && l_per_100km <= kMostOrdinary_l;
}

/// A first run has nothing to be held against but what a vehicle can use at all.
std::optional<Question> aboutTheFirst(const core::Run& run, double c, const UnitsShown& units,
                                      Sight sight)
{
    if (c <= kMost_l && c >= kLeast_l)
        return std::nullopt;
    Question question{Question::About::consumption,
                      c > kMost_l ? Questions::tr("No road vehicle uses that much.")
                                  : Questions::tr("No road vehicle uses so little.")};
    question.likely = otherReading(run, isOrdinary, [](double) { return false; });
    if (question.likely && sight != Sight::hidden)
        question.sentence += u' ' + offerOf(run, *question.likely, units);
    return question;
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

std::optional<Question> consumptionQuestion(const core::Study& study, const core::Run& run,
                                            const UnitsShown& units, Sight sight)
{
    const auto c = core::lPer100km(run);
    if (!c || !(*c > 0.0))
        return std::nullopt;
    const auto usual = usualConsumption(study, run);
    if (!usual)
        return aboutTheFirst(run, *c, units, sight);
    const double log = std::log(*c / usual->l_per_100km);
    const double calm = sight != Sight::open ? std::log(core::kOddConsumptionRatio)
                        : usual->alike       ? kNearLog
                                             : kAnyLog;
    if (std::abs(log) <= calm)
        return std::nullopt;
    Question question{Question::About::consumption,
                      sight == Sight::open
                          ? farOff(log, *usual, units)
                          : Questions::tr("Far from the other runs: is it the right number, in "
                                          "the right unit?")};
    const auto within = [&](double most) {
        return [most, usual = usual->l_per_100km](double reading) {
            return std::abs(std::log(reading / usual)) < most;
        };
    };
    // One other run that is out of the ordinary may be the wrong one of the two.
    if (usual->only == 0 || isOrdinary(usual->l_per_100km) || !isOrdinary(*c))
        question.likely =
            otherReading(run, within(usual->alike ? kNearLog : kAnyLog), within(kFitsLog));
    if (question.likely && sight != Sight::hidden)
        question.sentence += u' ' + offerOf(run, *question.likely, units);
    return question;
}

QString asGiven(const core::Consumption& consumption, const UnitsShown& units)
{
    return QString("%1 %2").arg(units.number(consumption.value, core::shownDecimals(consumption)),
                                units.unitText(consumption.unit));
}

QString shortly(const core::Consumption& consumption, core::ConsumptionUnit than,
                const UnitsShown& units)
{
    return consumption.unit == than
               ? units.number(consumption.value, core::shownDecimals(consumption))
               : asGiven(consumption, units);
}

std::vector<Question> questionsAbout(const core::Study& study, const core::Run& run,
                                     const UnitsShown& units, Sight sight)
{
    std::vector<Question> questions;
    if (auto question = consumptionQuestion(study, run, units, sight))
        questions.push_back(*std::move(question));
    askAboutPlace(study, run, questions);
    askAboutDistance(study, run, units, questions);
    askAboutTemperature(study, run, units, questions);
    return questions;
}

} // namespace bothways::app
