// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/units_shown.h"

#include "app/desktop/look/said.h"
#include "app/wording/units.h"
#include "core/recording/trace_consumption.h"

#include <QRegularExpression>

#include <cmath>

namespace bothways::app {
namespace {

using core::ConsumptionUnit;

constexpr QChar kMinus(0x2212);
constexpr QChar kNothing(0x2013);
constexpr double kMphPerMs = 3.6 / core::kKmPerMile;

int usualDecimals(ConsumptionUnit unit)
{
    return unit == ConsumptionUnit::fuelL || unit == ConsumptionUnit::fuelGalUs ? 3 : 2;
}

double scaled(double value, DistanceUnit unit)
{
    return unit == DistanceUnit::miles ? value / core::kKmPerMile : value;
}

std::optional<double> unscaled(const QString& text, double factor)
{
    const auto typed = UnitsShown::parseNumber(text);
    return typed ? std::optional(typed->value * factor) : std::nullopt;
}

/// The digits of every script become 0-9, the decimal sign a point; blanks go. Nothing where a
/// character has no place in a number.
std::optional<QString> plainNumber(const QString& text)
{
    QString plain;
    for (const QChar c : text.trimmed()) {
        if (c.isDigit())
            plain += QChar(u'0' + c.digitValue());
        else if (c == u'.' || c == u',' || c == QChar(0x066B))
            plain += u'.';
        else if (c == u'-' || c == kMinus)
            plain += u'-';
        else if (c == u'+')
            plain += u'+';
        else if (!c.isSpace())
            return std::nullopt;
    }
    return plain;
}

} // namespace

ConsumptionUnit UnitsShown::consumptionInForce() const
{
    return electric ? ConsumptionUnit::kwhPer100km : consumption;
}

bool UnitsShown::moreIsBetter() const
{
    const ConsumptionUnit unit = consumptionInForce();
    return unit == ConsumptionUnit::mpgUs || unit == ConsumptionUnit::mpgImp ||
           unit == ConsumptionUnit::kmPerL;
}

QString UnitsShown::number(double value, int decimals) const
{
    if (!std::isfinite(value))
        return kNothing;
    const double step = std::pow(10.0, -decimals);
    if (std::abs(value) < step / 2)
        value = 0.0; // never "-0.0"
    QString text = locale.toString(std::abs(value), 'f', decimals);
    return value < 0 ? kMinus + text : text;
}

QString UnitsShown::signedNumber(double value, int decimals) const
{
    const QString text = number(value, decimals);
    const bool positive = std::isfinite(value) && value >= std::pow(10.0, -decimals) / 2;
    return positive ? u'+' + text : text;
}

QString UnitsShown::percentFromLog(double log, int decimals) const
{
    //: a per cent change with its sign; a no-break space before the sign
    return tr("%1\u00a0%").arg(signedNumber(core::pctFromLog(log), decimals));
}

QString UnitsShown::consumptionText(double l_per_100km, int decimals) const
{
    if (!(l_per_100km > 0.0))
        return kNothing;
    const ConsumptionUnit unit = consumptionInForce();
    return number(core::fromLPer100km(l_per_100km, unit),
                  decimals < 0 ? usualDecimals(unit) : decimals);
}

QString UnitsShown::consumptionWithUnit(double l_per_100km, int decimals) const
{
    //: a number and its unit
    return tr("%1\u00a0%2").arg(consumptionText(l_per_100km, decimals), consumptionUnit());
}

QString UnitsShown::consumptionText(const core::Run& run) const
{
    if (!run.consumption)
        return {};
    if (run.consumption->unit == consumptionInForce())
        return number(run.consumption->value, core::shownDecimals(*run.consumption));
    const auto converted = core::lPer100km(run);
    return converted ? consumptionText(*converted) : QString(kNothing);
}

QString UnitsShown::distanceText(double km, int decimals) const
{
    return number(scaled(km, distance), decimals);
}

QString UnitsShown::distanceWithUnit(double km, int decimals) const
{
    return tr("%1\u00a0%2").arg(distanceText(km, decimals), distanceUnit());
}

QString UnitsShown::speedText(double kmh, int decimals) const
{
    return number(scaled(kmh, distance), decimals);
}

QString UnitsShown::speedWithUnit(double kmh, int decimals) const
{
    return tr("%1\u00a0%2").arg(speedText(kmh, decimals), speedUnit());
}

QString UnitsShown::windText(double ms, int decimals) const
{
    return number(distance == DistanceUnit::miles ? ms * kMphPerMs : ms, decimals);
}

QString UnitsShown::windWithUnit(double ms, int decimals) const
{
    return tr("%1\u00a0%2").arg(windText(ms, decimals), windUnit());
}

QString UnitsShown::temperatureText(double celsius, int decimals) const
{
    return number(temperature == TemperatureUnit::fahrenheit ? celsius * 1.8 + 32.0 : celsius,
                  decimals);
}

QString UnitsShown::temperatureWithUnit(double celsius, int decimals) const
{
    return tr("%1\u00a0%2").arg(temperatureText(celsius, decimals), temperatureUnit());
}

QString UnitsShown::consumptionUnit() const
{
    return unitText(consumptionInForce());
}

QString UnitsShown::distanceUnit() const
{
    return distance == DistanceUnit::miles ? tr("mi") : tr("km");
}

QString UnitsShown::speedUnit() const
{
    return distance == DistanceUnit::miles ? tr("mph") : tr("km/h");
}

QString UnitsShown::windUnit() const
{
    return distance == DistanceUnit::miles ? tr("mph") : tr("m/s");
}

QString UnitsShown::temperatureUnit() const
{
    return temperature == TemperatureUnit::fahrenheit ? tr("°F") : tr("°C");
}

QString UnitsShown::signShown(std::string_view sign) const
{
    return shown(wording::signText(language, sign));
}

QString UnitsShown::unitText(ConsumptionUnit unit) const
{
    return shown(wording::unitText(language, unit));
}

std::optional<TypedNumber> UnitsShown::parseNumber(const QString& text)
{
    const auto plain = plainNumber(text);
    if (!plain || plain->isEmpty() || plain->count(u'.') > 1)
        return std::nullopt;
    bool ok = false;
    const double value = QLocale::c().toDouble(*plain, &ok);
    if (!ok || !std::isfinite(value))
        return std::nullopt;
    const auto point = plain->indexOf(u'.');
    return TypedNumber{value, point < 0 ? 0 : static_cast<int>(plain->size() - point - 1)};
}

std::optional<double> UnitsShown::parseDistance_km(const QString& text) const
{
    return unscaled(text, distance == DistanceUnit::miles ? core::kKmPerMile : 1.0);
}

std::optional<double> UnitsShown::parseSpeed_kmh(const QString& text) const
{
    return unscaled(text, distance == DistanceUnit::miles ? core::kKmPerMile : 1.0);
}

std::optional<double> UnitsShown::parseWind_ms(const QString& text) const
{
    return unscaled(text, distance == DistanceUnit::miles ? 1.0 / kMphPerMs : 1.0);
}

std::optional<double> UnitsShown::parseTemperature_c(const QString& text) const
{
    const auto typed = parseNumber(text);
    if (!typed)
        return std::nullopt;
    return temperature == TemperatureUnit::fahrenheit ? (typed->value - 32.0) / 1.8 : typed->value;
}

std::optional<core::Consumption> UnitsShown::parseConsumption(const QString& text,
                                                              ConsumptionUnit unit)
{
    const auto typed = parseNumber(text);
    if (!typed)
        return std::nullopt;
    return core::Consumption{typed->value, unit, typed->decimals, false};
}

QString UnitsShown::dateText(const std::string& ofFiles) const
{
    static const QRegularExpression form("^(\\d{4})-(\\d\\d)-(\\d\\d)(?:[T ](.+))?$");
    const QString text = QString::fromStdString(ofFiles);
    const auto date = form.match(text);
    if (locale.language() != QLocale::German || !date.hasMatch())
        return text;
    const QString day = date.captured(3) + u'.' + date.captured(2) + u'.' + date.captured(1);
    return date.captured(4).isEmpty() ? day : day + u' ' + date.captured(4);
}

std::string UnitsShown::dateOfFiles(const QString& typed)
{
    static const QRegularExpression form(
        "^(\\d{1,2})\\.\\s?(\\d{1,2})\\.\\s?(\\d{4})(?:[T ,]+(.+))?$");
    const auto date = form.match(typed.trimmed());
    if (!date.hasMatch())
        return typed.trimmed().toStdString();
    const QString day = date.captured(3) + u'-' + date.captured(2).rightJustified(2, u'0') + u'-' +
                        date.captured(1).rightJustified(2, u'0');
    return (date.captured(4).isEmpty() ? day : day + u'T' + date.captured(4)).toStdString();
}

QString UnitsShown::fieldText(double value, int mostDecimals) const
{
    QString text = number(value, mostDecimals);
    const QString point = locale.decimalPoint();
    if (!text.contains(point))
        return text;
    const QString zero = locale.zeroDigit();
    while (text.endsWith(zero))
        text.chop(zero.size());
    if (text.endsWith(point))
        text.chop(point.size());
    return text;
}

} // namespace bothways::app
