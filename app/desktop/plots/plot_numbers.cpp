// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/plot_numbers.h"

#include <QLocale>

#include <cmath>

namespace bothways::app {
namespace {

QString quotedIfNeeded(QString text)
{
    if (!text.contains(u',') && !text.contains(u'"') && !text.contains(u'\n') &&
        !text.contains(u'\r'))
        return text;
    text.replace(u'"', QLatin1String("\"\""));
    return u'"' + text + u'"';
}

QString cell(const QVariant& value)
{
    if (!value.isValid())
        return {};
    if (value.typeId() == QMetaType::Double) {
        const double number = value.toDouble();
        if (!std::isfinite(number))
            return {};
        return QString::number(number, 'g', QLocale::FloatingPointShortest);
    }
    return quotedIfNeeded(value.toString());
}

QString line(const QStringList& cells)
{
    return cells.join(u',') + QLatin1String("\r\n");
}

} // namespace

QString PlotNumbers::csv() const
{
    QStringList cells;
    for (const QString& name : m_header)
        cells << quotedIfNeeded(name);
    QString text = line(cells);
    for (const QVariantList& row : m_rows) {
        cells.clear();
        for (const QVariant& value : row)
            cells << cell(value);
        text += line(cells);
    }
    return text;
}

} // namespace bothways::app
