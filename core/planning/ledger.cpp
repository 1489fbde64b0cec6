// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/ledger.h"

#include "core/base/decimal_text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bothways::core {
namespace {

constexpr double kJoulePerMegajoule = 1e6;
constexpr double kMetrePer100km = 1e5;

Error wrongLedger(Message why)
{
    return Error{ErrorCode::wrongUse, std::move(why), {}};
}

std::optional<Error> faultOf(const Range& range, Text<0> what)
{
    const auto outside = [](double x) { return !(x > 0.0 && x <= 1.0); };
    if (outside(range.low) || outside(range.middle) || outside(range.high))
        return wrongLedger(message("{}: {}, {}, {} given; each must be above 0 and at most 1"_t,
                                   what, decimalText(range.low), decimalText(range.middle),
                                   decimalText(range.high)));
    if (range.low > range.middle || range.middle > range.high)
        return wrongLedger(message("{}: {}, {}, {} given; low, middle and high must ascend"_t, what,
                                   decimalText(range.low), decimalText(range.middle),
                                   decimalText(range.high)));
    return std::nullopt;
}

std::optional<Error> faultOf(double value, Text<0> what)
{
    if (value > 0.0 && std::isfinite(value))
        return std::nullopt;
    return wrongLedger(
        message("{}: {} given; a number above 0 is expected"_t, what, decimalText(value)));
}

std::optional<Error> faultOf(const LedgerOptions& options)
{
    for (const auto& [value, what] :
         {std::pair{options.output_w, "output in watts"_t},
          std::pair{options.speed_kmh, "speed in km/h"_t},
          std::pair{options.consumption_l_per_100km, "consumption in L/100 km"_t},
          std::pair{options.heating_value_mj_per_l, "heating value in MJ/L"_t}})
        if (auto fault = faultOf(value, what))
            return fault;
    for (const auto& [range, what] : {std::pair{options.alternator, "alternator efficiency"_t},
                                      std::pair{options.marginal, "marginal engine efficiency"_t},
                                      std::pair{options.generator, "generator efficiency"_t},
                                      std::pair{options.drive, "drive efficiency"_t}})
        if (auto fault = faultOf(range, what))
            return fault;
    if (!(options.induction >= 0.0 && options.induction < 1.0))
        return wrongLedger(
            message("induction factor: {} given; 0 to below 1 is expected (1/3 at the "
                    "best operating point)"_t,
                    decimalText(options.induction)));
    return std::nullopt;
}

/// L/100 km of one watt at the engine's fuel, before any efficiency.
double litresPerWatt(const LedgerOptions& options)
{
    const double speed_ms = options.speed_kmh / 3.6;
    return kMetrePer100km / (options.heating_value_mj_per_l * kJoulePerMegajoule * speed_ms);
}

double relief(const LedgerOptions& options, double alternator, double marginal)
{
    if (!options.relief)
        return 0.0;
    // The converter draws from the traction battery: the motor has no part in it.
    const double engine = options.fuel == Fuel::electric ? 1.0 : marginal;
    return options.output_w * litresPerWatt(options) / (alternator * engine);
}

double cost(const LedgerOptions& options, double generator, double drive, double marginal)
{
    return options.cost ? options.output_w * litresPerWatt(options) /
                              (generator * (1.0 - options.induction) * drive * marginal)
                        : 0.0;
}

/// Smallest and largest net over every corner of the four ranges; the marginal efficiency is the
/// same in both terms.
Range netOf(const LedgerOptions& options)
{
    Range net;
    net.middle =
        cost(options, options.generator.middle, options.drive.middle, options.marginal.middle) -
        relief(options, options.alternator.middle, options.marginal.middle);
    net.low = net.high = net.middle;
    const auto ends = [](const Range& range) { return std::array{range.low, range.high}; };
    for (const double marginal : ends(options.marginal))
        for (const double alternator : ends(options.alternator))
            for (const double generator : ends(options.generator))
                for (const double drive : ends(options.drive)) {
                    const double corner = cost(options, generator, drive, marginal) -
                                          relief(options, alternator, marginal);
                    net.low = std::min(net.low, corner);
                    net.high = std::max(net.high, corner);
                }
    return net;
}

} // namespace

LedgerOptions LedgerOptions::forFuel(Fuel fuel)
{
    LedgerOptions options;
    options.fuel = fuel;
    switch (fuel) {
    case Fuel::petrol: break;
    case Fuel::e10: options.heating_value_mj_per_l = 31.1; break;
    case Fuel::diesel:
        options.heating_value_mj_per_l = 35.9;
        options.marginal = Range{0.38, 0.42, 0.46};
        break;
    case Fuel::electric:
        // Battery to shaft, and battery to the 12 V system: common practice, no source.
        options.heating_value_mj_per_l = 3.6;
        options.marginal = Range{0.80, 0.87, 0.92};
        options.alternator = Range{0.90, 0.94, 0.97};
        options.consumption_l_per_100km = 18.0;
        break;
    }
    return options;
}

Result<Ledger> makeLedger(const LedgerOptions& options)
{
    if (auto fault = faultOf(options))
        return std::move(*fault);
    Ledger ledger;
    ledger.options = options;
    ledger.relief_l_per_100km =
        Range{relief(options, options.alternator.high, options.marginal.high),
              relief(options, options.alternator.middle, options.marginal.middle),
              relief(options, options.alternator.low, options.marginal.low)};
    ledger.cost_l_per_100km = Range{
        cost(options, options.generator.high, options.drive.high, options.marginal.high),
        cost(options, options.generator.middle, options.drive.middle, options.marginal.middle),
        cost(options, options.generator.low, options.drive.low, options.marginal.low)};
    ledger.net_l_per_100km = netOf(options);
    const double pct = 100.0 / options.consumption_l_per_100km;
    ledger.net_pct = Range{ledger.net_l_per_100km.low * pct, ledger.net_l_per_100km.middle * pct,
                           ledger.net_l_per_100km.high * pct};
    return ledger;
}

std::optional<double> wattsToSee(const LedgerOptions& options, double effect_pct)
{
    LedgerOptions oneWatt = options;
    oneWatt.output_w = 1.0;
    const Result<Ledger> ledger = makeLedger(oneWatt);
    if (!ledger || !std::isfinite(effect_pct))
        return std::nullopt;
    const double pctPerWatt = std::abs(ledger.value().net_pct.middle);
    if (!(pctPerWatt > 0.0))
        return std::nullopt;
    const double watts = std::abs(effect_pct) / pctPerWatt;
    return std::isfinite(watts) ? std::optional(watts) : std::nullopt;
}

} // namespace bothways::core
