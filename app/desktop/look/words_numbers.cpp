// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "core/study/units.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr int kMostDecimals = 4;
constexpr double kSmallestP = 0.001;

bool roundsToNothing(double value, int decimals)
{
    return std::abs(value) < 0.5 * std::pow(10.0, -decimals);
}

int decimalsThatShow(double value, int decimals)
{
    while (decimals < kMostDecimals && value != 0.0 && roundsToNothing(value, decimals))
        ++decimals;
    return decimals;
}

} // namespace

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
    if (value == 0.0 || !std::isfinite(value))
        return m_units.number(value, 0);
    const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(value))));
    const int decimals = digits - 1 - magnitude;
    if (decimals >= 0)
        return m_units.number(value, std::min(decimals, 9));
    const double unit = std::pow(10.0, -decimals);
    return m_units.number(std::round(value / unit) * unit, 0);
}

QString NumberWords::percent(double share) const
{
    return tr("%1\u00a0%", "stands before the word interval").arg(shortest(100.0 * share));
}

QString NumberWords::size(double pct, int decimals) const
{
    return m_units.number(std::abs(pct), decimalsThatShow(pct, decimals));
}

QString NumberWords::change(double log, int decimals) const
{
    const double pct = core::pctFromLog(log);
    if (!std::isfinite(pct) || roundsToNothing(pct, decimals))
        return tr("%1\u00a0%").arg(m_units.number(pct, decimals));
    //: a change of consumption, as part of a sentence
    return pct < 0.0 ? tr("%1\u00a0% less").arg(size(pct, decimals))
                     //: a change of consumption, as part of a sentence
                     : tr("%1\u00a0% more").arg(size(pct, decimals));
}

QString NumberWords::range(double lowLog, double highLog, int decimals) const
{
    const double low = core::pctFromLog(lowLog);
    const double high = core::pctFromLog(highLog);
    if (high < 0.0) //: an interval, small to large
        return tr("%1 to %2\u00a0% less").arg(size(high, decimals), size(low, decimals));
    if (low > 0.0) //: an interval, small to large
        return tr("%1 to %2\u00a0% more").arg(size(low, decimals), size(high, decimals));
    //: an interval with zero inside it
    return tr("%1\u00a0% less to %2\u00a0% more").arg(size(low, decimals), size(high, decimals));
}

QString NumberWords::between(double lowLog, double highLog, int decimals) const
{
    const double low = core::pctFromLog(lowLog);
    const double high = core::pctFromLog(highLog);
    if (high < 0.0) //: follows the word "between"; small and large
        return tr("%1 and %2\u00a0% less").arg(size(high, decimals), size(low, decimals));
    if (low > 0.0) //: follows the word "between"; small and large
        return tr("%1 and %2\u00a0% more").arg(size(low, decimals), size(high, decimals));
    //: follows the word "between"
    return tr("%1\u00a0% less and %2\u00a0% more").arg(size(low, decimals), size(high, decimals));
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

QString NumberWords::p(double p) const
{
    if (p < kSmallestP)
        return tr("p < %1").arg(m_units.number(kSmallestP, 3));
    return tr("p = %1").arg(significant(p));
}

QString NumberWords::pAlone(double p) const
{
    if (p < kSmallestP)
        return tr("< %1").arg(m_units.number(kSmallestP, 3));
    return significant(p);
}

QString NumberWords::joined(const QStringList& parts) const
{
    if (parts.size() < 2)
        return parts.join(QString());
    //: the last of a list
    return tr("%1 and %2").arg(parts.mid(0, parts.size() - 1).join(tr(", ")), parts.back());
}

QString NumberWords::anyOf(const QStringList& parts) const
{
    if (parts.size() < 2)
        return parts.join(QString());
    //: the last of a list of possibilities
    return tr("%1 or %2").arg(parts.mid(0, parts.size() - 1).join(tr(", ")), parts.back());
}

int NumberWords::decimalsFor(double uncertainty)
{
    if (!(uncertainty > 0.0) || !std::isfinite(uncertainty))
        return 2;
    const int magnitude = static_cast<int>(std::floor(std::log10(uncertainty)));
    return std::clamp(1 - magnitude, 0, kMostDecimals);
}

int NumberWords::decimalsOfRange(double lowLog, double highLog)
{
    return decimalsFor(0.5 * (core::pctFromLog(highLog) - core::pctFromLog(lowLog)));
}

} // namespace bothways::app
