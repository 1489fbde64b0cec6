// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/study/study.h"
#include "core/study/units.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>

#include <optional>
#include <string_view>

namespace bothways::app {

enum class DistanceUnit { km, miles }; ///< speed follows: km/h, mph; wind: m/s, mph
enum class TemperatureUnit { celsius, fahrenheit };

/// A number as a person typed it.
struct TypedNumber {
    double value = 0.0;
    int decimals = 0; ///< digits after the decimal sign
};

/// Numbers on the screen, both ways: in the units and the locale of the person who reads them, and
/// the language in which sentences are said to that person.
///
/// A value: copy it, compare it. Texts without a unit are for cells and fields whose header names
/// it; those with one are for sentences. A value that is not finite is shown as an en dash.
/// Files and JSON never pass through here.
struct UnitsShown {
    Q_DECLARE_TR_FUNCTIONS(UnitsShown)

public:
    core::ConsumptionUnit consumption = core::ConsumptionUnit::lPer100km; ///< no amount of fuel
    DistanceUnit distance = DistanceUnit::km;
    TemperatureUnit temperature = TemperatureUnit::celsius;
    bool electric = false; ///< the study's litres are kWh: consumption is kWh/100 km throughout
    QLocale locale = QLocale::c();
    Language language = {};

    /// The unit in force: `consumption`, or kWh/100 km where `electric`.
    [[nodiscard]] core::ConsumptionUnit consumptionInForce() const;
    /// True where a larger number means less fuel (mpg, km/L).
    [[nodiscard]] bool moreIsBetter() const;

    [[nodiscard]] QString number(double value, int decimals) const;
    /// With its sign: "+1.2", and a true minus.
    [[nodiscard]] QString signedNumber(double value, int decimals) const;
    /// "−1.3 %", from a difference of logs.
    [[nodiscard]] QString percentFromLog(double log, int decimals = 1) const;

    [[nodiscard]] QString consumptionText(double l_per_100km, int decimals = -1) const;
    [[nodiscard]] QString consumptionWithUnit(double l_per_100km, int decimals = -1) const;
    /// A run's own: digit by digit as given where it was given in the unit shown; empty where the
    /// run has none.
    [[nodiscard]] QString consumptionText(const core::Run& run) const;
    [[nodiscard]] QString distanceText(double km, int decimals = 2) const;
    [[nodiscard]] QString distanceWithUnit(double km, int decimals = 2) const;
    [[nodiscard]] QString speedText(double kmh, int decimals = 0) const;
    [[nodiscard]] QString speedWithUnit(double kmh, int decimals = 0) const;
    [[nodiscard]] QString windText(double ms, int decimals = 1) const;
    [[nodiscard]] QString windWithUnit(double ms, int decimals = 1) const;
    [[nodiscard]] QString temperatureText(double celsius, int decimals = 1) const;
    [[nodiscard]] QString temperatureWithUnit(double celsius, int decimals = 1) const;

    [[nodiscard]] QString consumptionUnit() const; ///< "L/100 km"
    [[nodiscard]] QString distanceUnit() const;
    [[nodiscard]] QString speedUnit() const;
    [[nodiscard]] QString windUnit() const;
    [[nodiscard]] QString temperatureUnit() const;
    [[nodiscard]] QString unitText(core::ConsumptionUnit unit) const;
    /// A unit's sign as files and limits have it ("rpm", "L/h"), as the user's language writes it.
    [[nodiscard]] QString signShown(std::string_view sign) const;

    /// Reads a number with either decimal sign, blanks ignored. One comma or one point is always
    /// the decimal sign, so "8.41" is the same number under every locale. Nothing where the text
    /// is no number.
    [[nodiscard]] static std::optional<TypedNumber> parseNumber(const QString& text);
    [[nodiscard]] std::optional<double> parseDistance_km(const QString& text) const;
    [[nodiscard]] std::optional<double> parseSpeed_kmh(const QString& text) const;
    [[nodiscard]] std::optional<double> parseWind_ms(const QString& text) const;
    [[nodiscard]] std::optional<double> parseTemperature_c(const QString& text) const;
    /// @param unit  of the field that the number was typed into
    [[nodiscard]] static std::optional<core::Consumption>
    parseConsumption(const QString& text, core::ConsumptionUnit unit);

    /// A date, or a moment, of files (2026-05-09, 2026-05-09T05:20) as the user's language writes
    /// it: 09.05.2026 05:20 in German.
    [[nodiscard]] QString dateText(const std::string& ofFiles) const;
    /// The same as files have it, where it was typed with points; else as it was typed.
    [[nodiscard]] static std::string dateOfFiles(const QString& typed);

    /// Shortest text of a field, so that what was typed is what stands there: no trailing zeros.
    [[nodiscard]] QString fieldText(double value, int mostDecimals = 3) const;

    friend bool operator==(const UnitsShown&, const UnitsShown&) = default;
};

} // namespace bothways::app
