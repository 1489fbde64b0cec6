// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/roadside_words.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {

QString RoadsideWords::clock(double seconds)
{
    const auto whole = static_cast<long long>(std::floor(std::max(seconds, 0.0) + 1e-9));
    const long long hours = whole / 3600;
    const QString minutes = QString::number(whole / 60 % 60);
    const QString rest = QString("%1").arg(whole % 60, 2, 10, QChar(u'0'));
    if (hours == 0)
        return QString("%1:%2").arg(minutes, rest);
    return QString("%1:%2:%3").arg(hours).arg(minutes, 2, QChar(u'0')).arg(rest);
}

QString RoadsideWords::readable(std::string name)
{
    std::replace(name.begin(), name.end(), '_', ' ');
    return QString::fromStdString(name);
}

} // namespace bothways::app
