// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/recorded_words.h"

#include <cmath>

namespace bothways::app {
namespace {

struct Recorded {
    Q_DECLARE_TR_FUNCTIONS(Recorded)
};

constexpr int kDecimals = 2;

} // namespace

QString recordedBeside(const core::Run& run, const core::Consumption& recorded,
                       const UnitsShown& units)
{
    const double fromRecording = core::toLPer100km(recorded.value, recorded.unit);
    const QString text = units.consumptionText(fromRecording, kDecimals);
    const auto typed = core::lPer100km(run);
    if (!typed || run.consumption->from_trace)
        return Recorded::tr("recording %1 %2").arg(text, units.consumptionUnit());
    const double ratio = units.moreIsBetter() ? *typed / fromRecording : fromRecording / *typed;
    return Recorded::tr("dashboard %1, recording %2 %3 (%4 %)")
        .arg(units.consumptionText(run), text, units.consumptionUnit(),
             units.signedNumber(100.0 * (ratio - 1.0), 1));
}

QString sizeText(qint64 bytes, const UnitsShown& units)
{
    return units.locale.formattedDataSize(bytes, 1, QLocale::DataSizeSIFormat);
}

QString lengthText(double seconds)
{
    const auto whole = std::llround(std::max(seconds, 0.0));
    const auto two = [](long long n) { return QStringLiteral("%1").arg(n, 2, 10, QChar(u'0')); };
    if (whole < 3600)
        return QStringLiteral("%1:%2").arg(whole / 60).arg(two(whole % 60));
    return QStringLiteral("%1:%2:%3").arg(whole / 3600).arg(two(whole / 60 % 60), two(whole % 60));
}

} // namespace bothways::app
