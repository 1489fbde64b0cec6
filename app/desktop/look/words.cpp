// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "core/study/units.h"

#include <cmath>

namespace bothways::app {
namespace {

constexpr double kSmallestP = 0.001;

const QString& nothing()
{
    static const QString dash(QChar(0x2013));
    return dash;
}

} // namespace

wording::Units unitsOf(const UnitsShown& units)
{
    using wording::ShownUnit;
    const auto consumption = [&] {
        switch (units.consumption) {
        case core::ConsumptionUnit::mpgUs: return ShownUnit::mpgUs;
        case core::ConsumptionUnit::mpgImp: return ShownUnit::mpgImp;
        case core::ConsumptionUnit::kmPerL: return ShownUnit::kmPerL;
        default: return ShownUnit::lPer100km;
        }
    };
    return {consumption(), units.distance == DistanceUnit::miles,
            units.temperature == TemperatureUnit::fahrenheit};
}

QString NumberWords::fixed(double value, int decimals) const
{
    return m_units.number(value, decimals);
}

QString NumberWords::shortest(double value) const
{
    return m_units.fieldText(value, 6);
}

QString NumberWords::significant(double value, int digits) const
{
    const Rounded rounded = roundedTo(value, digits);
    return m_units.number(rounded.value, rounded.decimals);
}

QString NumberWords::signedRange(double lowLog, double highLog, int decimals) const
{
    const double low = core::pctFromLog(lowLog);
    const double high = core::pctFromLog(highLog);
    //: an interval in a table, both ends with their sign
    return tr("%1 to %2\u00a0%")
        .arg(m_units.signedNumber(low, decimalsThatShow(low, decimals)),
             m_units.signedNumber(high, decimalsThatShow(high, decimals)));
}

QString NumberWords::pAlone(double p) const
{
    if (p < kSmallestP)
        return tr("< %1").arg(m_units.number(kSmallestP, 3));
    return significant(p);
}

int NumberWords::decimalsOfRange(double lowLog, double highLog)
{
    return decimalsFor(0.5 * (core::pctFromLog(highLog) - core::pctFromLog(lowLog)));
}

QString NumberWords::change(double log, int decimals) const
{
    return std::isfinite(log) ? shown(app::change(language(), core::pctFromLog(log), decimals))
                              : nothing();
}

QString NumberWords::range(double lowLog, double highLog, int decimals) const
{
    if (!std::isfinite(lowLog) || !std::isfinite(highLog))
        return nothing();
    return shown(app::changeRange(language(), core::pctFromLog(lowLog), core::pctFromLog(highLog),
                                  decimals));
}

QString NumberWords::percent(double share) const
{
    return shown(app::intervalPercent(language(), share));
}

QString NumberWords::p(double p) const
{
    return std::isfinite(p) ? shown(app::pText(language(), p)) : nothing();
}

Words::Words(const core::Analysis& analysis, UnitsShown units)
    : m_analysis(analysis), m_numbers([&] {
          units.electric = analysis.electric;
          return units;
      }())
{
}

QString Words::verdict() const
{
    return shown(wording::shortVerdict(language(), m_analysis));
}

QString Words::inUnits() const
{
    return shown(wording::inUnits(language(), m_analysis, unitsOf(units())));
}

QString Words::whatItWouldTake() const
{
    return shown(wording::whatItWouldTake(language(), m_analysis));
}

QString Words::qualifier(core::Qualifier qualifier) const
{
    return shown(wording::qualifierSentence(language(), qualifier, m_analysis));
}

QString Words::detectable() const
{
    return shown(wording::detectableSentence(language(), m_analysis));
}

QString Words::leaveOneOut() const
{
    return shown(wording::leaveOneOutSentence(language(), m_analysis));
}

QString Words::discardsRestored() const
{
    return shown(wording::discardsRestoredSentence(language(), m_analysis));
}

QString Words::companion(core::Companion companion) const
{
    return shown(wording::companionSentence(language(), companion, m_analysis));
}

QString Words::companionName(core::Companion companion) const
{
    return shown(wording::companionName(language(), companion));
}

QString Words::note(const core::Note& note) const
{
    return shown(wording::noteSentence(language(), note));
}

QString Words::tally() const
{
    return shown(wording::tally(language(), m_analysis));
}

QString Words::check(CheckKind kind) const
{
    return shown(wording::checkSentence(language(), kind, m_analysis));
}

QString Words::checksPower() const
{
    return shown(wording::checksPowerSentence(language(), m_analysis));
}

QString Words::baseline() const
{
    return shown(wording::baselineWords(language(), m_analysis));
}

QString Words::device() const
{
    return shown(wording::deviceWords(language(), m_analysis));
}

QString Words::quoted(const std::string& name) const
{
    return shown(wording::inQuotes(language(), name));
}

QString Words::className(core::VerdictClass cls) const
{
    return shown(wording::classWords(language(), cls));
}

} // namespace bothways::app
