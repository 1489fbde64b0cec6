// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/recorded_words.h"

#include "app/wording/numbers.h"

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
    return QString::fromStdString(lengthOf(seconds));
}

} // namespace bothways::app
