// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_fields.h"

#include "core/study/clock.h"
#include "storage/sheet/run_columns.h"

#include <QRegularExpression>

#include <array>
#include <cmath>

namespace bothways::app {
namespace {

using core::Run;
using Number = std::optional<double> Run::*;
using Text = std::string Run::*;

struct RunFields {
    Q_DECLARE_TR_FUNCTIONS(RunFields)
};

enum class Kind {
    number,
    start,
    text,
    consumption,
    plain,
    km,
    kmh,
    ms,
    celsius,
    duration,
    marks,
    timers
};

struct FieldInfo {
    RunField field;
    const char* name;
    Kind kind;
    Number number = nullptr;
    Text text = nullptr;
    const char* unit = "";
};

constexpr FieldInfo kFields[] = {
    {RunField::number, "run", Kind::number},
    {RunField::start, "start", Kind::start},
    {RunField::configuration, "configuration", Kind::text, nullptr, &Run::configuration},
    {RunField::setting, "setting", Kind::text, nullptr, &Run::setting},
    {RunField::direction, "direction", Kind::text, nullptr, &Run::direction},
    {RunField::batteryStart, "battery_v_start", Kind::plain, &Run::battery_v_start, nullptr, "V"},
    {RunField::temperature, "temperature_c", Kind::celsius, &Run::temperature_c},
    {RunField::pressure, "pressure_hpa", Kind::plain, &Run::pressure_hpa, nullptr, "hPa"},
    {RunField::humidity, "humidity_pct", Kind::plain, &Run::humidity_pct, nullptr, "%"},
    {RunField::wind, "wind_ms", Kind::ms, &Run::wind_ms},
    {RunField::windFrom, "wind_from_deg", Kind::plain, &Run::wind_from_deg, nullptr, "°"},
    {RunField::accessories, "accessories", Kind::text, nullptr, &Run::accessories},
    {RunField::accessoryOn, "accessory_on_s", Kind::timers},
    {RunField::accessoryLoad, "accessory_w", Kind::plain, &Run::accessory_w, nullptr, "W"},
    {RunField::marks, "marks", Kind::marks},
    {RunField::consumption, "consumption", Kind::consumption},
    {RunField::control, "control", Kind::plain, &Run::control},
    {RunField::distance, "distance_km", Kind::km, &Run::distance_km},
    {RunField::duration, "duration_s", Kind::duration, &Run::duration_s},
    {RunField::speed, "speed_kmh", Kind::kmh, &Run::speed_kmh},
    {RunField::output, "output_w", Kind::plain, &Run::output_w, nullptr, "W"},
    {RunField::rotor, "rotor_rpm_max", Kind::plain, &Run::rotor_rpm_max, nullptr, "rpm"},
    {RunField::batteryEnd, "battery_v_end", Kind::plain, &Run::battery_v_end, nullptr, "V"},
    {RunField::notes, "notes", Kind::text, nullptr, &Run::notes},
};

const FieldInfo& info(RunField field)
{
    return kFields[static_cast<std::size_t>(field)];
}

constexpr std::int64_t kDay_us = std::int64_t{86'400} * 1'000'000;

std::int64_t localClock_us(const core::Instant& instant)
{
    return instant.us + std::int64_t{instant.utc_offset_min.value_or(0)} * 60'000'000;
}

std::int64_t midnight_us(const core::Instant& instant)
{
    const std::int64_t local = localClock_us(instant);
    const std::int64_t day = local >= 0 ? local / kDay_us : (local - kDay_us + 1) / kDay_us;
    return day * kDay_us;
}

QString durationText(double seconds, const UnitsShown& units)
{
    const auto minutes = static_cast<long long>(seconds / 60.0);
    const double rest = seconds - 60.0 * static_cast<double>(minutes);
    const QString secondsText = units.fieldText(rest, 3);
    return QString("%1:%2").arg(minutes).arg(rest < 10.0 ? u'0' + secondsText : secondsText);
}

/// "3:05" or "185".
std::optional<double> parseDuration_s(const QString& text)
{
    const auto colon = text.indexOf(u':');
    if (colon < 0) {
        const auto typed = UnitsShown::parseNumber(text);
        return typed ? std::optional(typed->value) : std::nullopt;
    }
    const auto minutes = UnitsShown::parseNumber(text.left(colon));
    const auto seconds = UnitsShown::parseNumber(text.mid(colon + 1));
    if (!minutes || !seconds || minutes->decimals > 0 || seconds->value >= 60.0)
        return std::nullopt;
    return minutes->value * 60.0 + seconds->value;
}

QString timersText(const Run& run, const UnitsShown& units)
{
    QStringList parts;
    for (const auto& [name, on_s] : run.accessory_on_s)
        parts += QString("%1 %2").arg(QString::fromStdString(name), units.fieldText(on_s, 1));
    return parts.join("; ");
}

/// "heated_windscreen -120; fan 30": a name and the seconds from the run's start.
bool parseTimers(const QString& text, std::map<std::string, double>& timers)
{
    std::map<std::string, double> read;
    for (const QString& part : text.split(u';', Qt::SkipEmptyParts)) {
        const QString trimmed = part.trimmed();
        const auto blank = trimmed.lastIndexOf(u' ');
        const auto on = UnitsShown::parseNumber(trimmed.mid(blank + 1));
        const std::string name =
            storage::canonicalColumn(trimmed.left(std::max<qsizetype>(blank, 0)).toStdString());
        if (blank < 0 || !on || name.empty())
            return false;
        read[name] = on->value;
    }
    timers = std::move(read);
    return true;
}

std::optional<double> parseNumberOf(Kind kind, const QString& text, const UnitsShown& units)
{
    switch (kind) {
    case Kind::km: return units.parseDistance_km(text);
    case Kind::kmh: return units.parseSpeed_kmh(text);
    case Kind::ms: return units.parseWind_ms(text);
    case Kind::celsius: return units.parseTemperature_c(text);
    case Kind::duration: return parseDuration_s(text);
    default: {
        const auto typed = UnitsShown::parseNumber(text);
        return typed ? std::optional(typed->value) : std::nullopt;
    }
    }
}

QString numberText(Kind kind, double value, const UnitsShown& units)
{
    const auto shortened = [&](double shown) { return units.fieldText(shown, 3); };
    switch (kind) {
    case Kind::km:
    case Kind::kmh:
        return shortened(units.distance == DistanceUnit::miles ? value / core::kKmPerMile : value);
    case Kind::ms:
        return shortened(units.distance == DistanceUnit::miles ? value * 3.6 / core::kKmPerMile
                                                               : value);
    case Kind::celsius:
        return shortened(units.temperature == TemperatureUnit::fahrenheit ? value * 1.8 + 32.0
                                                                          : value);
    case Kind::duration: return durationText(value, units);
    default: return shortened(value);
    }
}

QString writeStart(const QString& text, Run& run)
{
    if (const auto clock = parseClock_us(text)) {
        const std::int64_t offset = localClock_us(run.start) - run.start.us;
        run.start.us = midnight_us(run.start) + *clock - offset;
        return {};
    }
    const auto whole = core::parseDateTime(UnitsShown::dateOfFiles(text));
    if (!whole)
        return RunFields::tr("Expected a time such as 6:40 or 06:40:15, or a date and time such as "
                             "2026-05-09 06:40.");
    core::Instant start = whole.value();
    if (!start.utc_offset_min && run.start.utc_offset_min) { // typed by the run's own clock
        start.utc_offset_min = run.start.utc_offset_min;
        start.us -= std::int64_t{*start.utc_offset_min} * 60'000'000;
    }
    run.start = start;
    return {};
}

QString writeRunNumber(const QString& text, Run& run)
{
    const auto typed = UnitsShown::parseNumber(text);
    if (!typed || typed->decimals > 0 || typed->value < 1 ||
        typed->value > storage::kLargestRunNumber)
        return RunFields::tr("Expected a whole number from 1.");
    run.number = static_cast<int>(typed->value);
    return {};
}

QString writeConsumption(const QString& text, core::ConsumptionUnit unit, Run& run)
{
    if (text.isEmpty()) {
        run.consumption.reset();
        return {};
    }
    const auto typed = UnitsShown::parseConsumption(text, unit);
    if (!typed || !(typed->value > 0.0))
        return RunFields::tr("Expected a number above 0, such as 8.41.");
    run.consumption = *typed;
    return {};
}

} // namespace

std::span<const RunField> allRunFields()
{
    static const auto fields = [] {
        std::array<RunField, std::size(kFields)> all{};
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i] = kFields[i].field;
        return all;
    }();
    return fields;
}

QString fieldName(RunField field)
{
    return QString::fromLatin1(info(field).name);
}

QString fieldTitle(RunField field)
{
    switch (field) {
    case RunField::number: return RunFields::tr("Run");
    case RunField::start: return RunFields::tr("Start");
    case RunField::configuration: return RunFields::tr("Configuration");
    case RunField::setting: return RunFields::tr("Setting");
    case RunField::direction: return RunFields::tr("Direction");
    case RunField::batteryStart: return RunFields::tr("Battery at start");
    case RunField::temperature: return RunFields::tr("Temperature");
    case RunField::pressure: return RunFields::tr("Air pressure");
    case RunField::humidity: return RunFields::tr("Humidity");
    case RunField::wind: return RunFields::tr("Wind");
    case RunField::windFrom: return RunFields::tr("Wind from");
    case RunField::accessories: return RunFields::tr("Accessories on");
    case RunField::accessoryOn: return RunFields::tr("On since");
    case RunField::accessoryLoad: return RunFields::tr("Accessory load");
    case RunField::marks: return RunFields::tr("Marks");
    case RunField::consumption: return RunFields::tr("Consumption");
    case RunField::control: return RunFields::tr("Control vehicle");
    case RunField::distance: return RunFields::tr("Distance");
    case RunField::duration: return RunFields::tr("Duration");
    case RunField::speed: return RunFields::tr("Speed");
    case RunField::output: return RunFields::tr("Output");
    case RunField::rotor: return RunFields::tr("Highest rotor speed");
    case RunField::batteryEnd: return RunFields::tr("Battery at end");
    case RunField::notes: return RunFields::tr("Notes");
    }
    return {};
}

QString fieldUnit(RunField field, const UnitsShown& units)
{
    switch (info(field).kind) {
    case Kind::km: return units.distanceUnit();
    case Kind::kmh: return units.speedUnit();
    case Kind::ms: return units.windUnit();
    case Kind::celsius: return units.temperatureUnit();
    case Kind::duration: return RunFields::tr("min:s");
    case Kind::consumption: return units.consumptionUnit();
    case Kind::timers: return RunFields::tr("s from start");
    default: return units.signShown(info(field).unit);
    }
}

QString fieldHelp(RunField field)
{
    switch (field) {
    case RunField::start:
        return RunFields::tr("When the run began: 6:40, 0640, 06:40:15, or 2026-05-09 06:40.");
    case RunField::configuration:
        return RunFields::tr("What was fitted: two names in a study, A and B for instance.");
    case RunField::setting:
        return RunFields::tr(
            "What was varied on the device, the blade pitch for instance. May stay "
            "empty.");
    case RunField::direction: return RunFields::tr("Which way: two names in a study.");
    case RunField::accessoryOn:
        return RunFields::tr(
            "Timed accessories and when they were switched on, in seconds from the "
            "run's start, before it with a minus: heated_windscreen −120.");
    case RunField::marks:
        return RunFields::tr("Seconds into the run and words, several with semicolons: 31 "
                             "passing_traffic lorry; 80 gust. First words that mean something: "
                             "passing_traffic, adjusted.");
    case RunField::duration: return RunFields::tr("Minutes and seconds, or seconds: 3:05 or 185.");
    case RunField::control:
        return RunFields::tr("Consumption of a second vehicle driven in step, in the same unit.");
    case RunField::pressure: return RunFields::tr("At the place, not reduced to sea level.");
    case RunField::windFrom: return RunFields::tr("Where the wind comes from: 0 north, 90 east.");
    default: return fieldTitle(field);
    }
}

QString fieldText(RunField field, const core::Run& run, const UnitsShown& units)
{
    const FieldInfo& f = info(field);
    switch (f.kind) {
    case Kind::number: return run.number > 0 ? QString::number(run.number) : QString();
    case Kind::start:
        return QString::fromStdString(
            core::formatTimeOfDay(run.start, localClock_us(run.start) % 60'000'000 != 0));
    case Kind::text: return QString::fromStdString(run.*f.text);
    case Kind::consumption: return units.consumptionText(run);
    case Kind::marks: return QString::fromStdString(storage::formatMarks(run.marks));
    case Kind::timers: return timersText(run, units);
    default: {
        const std::optional<double>& value = run.*f.number;
        return value ? numberText(f.kind, *value, units) : QString();
    }
    }
}

QString writeField(RunField field, const QString& typed, const UnitsShown& units,
                   core::ConsumptionUnit consumptionUnit, core::Run& run)
{
    const FieldInfo& f = info(field);
    const QString text = typed.trimmed();
    switch (f.kind) {
    case Kind::number: return writeRunNumber(text, run);
    case Kind::start: return writeStart(text, run);
    case Kind::text: run.*f.text = typed.toStdString(); return {};
    case Kind::consumption: return writeConsumption(text, consumptionUnit, run);
    case Kind::marks: {
        auto marks = storage::parseMarks(text.toStdString());
        if (!marks)
            return RunFields::tr("Expected seconds and words, such as 31 passing_traffic lorry; 80 "
                                 "gust.");
        run.marks = std::move(*marks);
        return {};
    }
    case Kind::timers:
        if (!parseTimers(text, run.accessory_on_s))
            return RunFields::tr("Expected a name and seconds, such as heated_windscreen −120.");
        return {};
    default: break;
    }
    if (text.isEmpty()) {
        run.*f.number = std::nullopt;
        return {};
    }
    const auto value = parseNumberOf(f.kind, text, units);
    if (!value)
        return f.kind == Kind::duration
                   ? RunFields::tr("Expected minutes and seconds, such as 3:05.")
                   : RunFields::tr("Expected a number.");
    run.*f.number = value;
    return {};
}

std::optional<std::int64_t> parseClock_us(const QString& text)
{
    static const QRegularExpression kShort(R"(^(\d{1,2}):?(\d{2})(:?(\d{2}([.,]\d{1,6})?))?$)");
    const auto match = kShort.match(text.trimmed());
    if (!match.hasMatch())
        return std::nullopt;
    const QString whole = QString("%1:%2:%3")
                              .arg(match.captured(1).rightJustified(2, u'0'), match.captured(2),
                                   match.captured(4).isEmpty() ? "00" : match.captured(4));
    const auto clock = core::parseTimeOfDay_us(QString(whole).replace(u',', u'.').toStdString());
    return clock ? std::optional(clock.value()) : std::nullopt;
}

} // namespace bothways::app
