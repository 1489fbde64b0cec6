// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/thumbnail.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/look/theme.h"
#include "storage/study/study_file.h"

#include <QPainter>

#include <algorithm>
#include <vector>

namespace bothways::app {
namespace {

struct Dot {
    double time = 0.0, height = 0.0; ///< 0 to 1
    bool device = false, discarded = false;
};

bool isHidden(const std::vector<storage::HistoryEntry>& history)
{
    bool hidden = false;
    for (const storage::HistoryEntry& entry : history)
        if (entry.kind == "blind")
            hidden = entry.detail == "on";
    return hidden;
}

/// Values to shares of their range; the middle where all are alike.
void spread(std::vector<Dot>& dots, double Dot::*member)
{
    if (dots.empty())
        return;
    const auto [low, high] = std::ranges::minmax(dots, {}, member);
    const double from = low.*member;
    const double range = high.*member - from;
    for (Dot& dot : dots)
        dot.*member = range > 0.0 ? (dot.*member - from) / range : 0.5;
}

std::vector<Dot> dotsOf(const core::Study& study, bool hidden)
{
    const std::string baseline = core::baselineName(study);
    std::vector<Dot> dots;
    for (const core::Run& run : study.runs) {
        const auto consumption = core::lPer100km(run);
        if (!consumption && !hidden)
            continue;
        dots.push_back({static_cast<double>(run.start.us), hidden ? 0.0 : *consumption,
                        !core::sameWord(run.configuration, baseline), run.discard.has_value()});
    }
    spread(dots, &Dot::time);
    spread(dots, &Dot::height);
    return dots;
}

} // namespace

core::Result<QImage> thumbnailOf(const QString& study, int side_px)
{
    const auto file = storage::StudyFile::open(toPath(study), true);
    if (!file)
        return file.error();
    const auto runs = file.value().study();
    if (!runs)
        return runs.error();
    const auto history = file.value().history();
    if (!history)
        return history.error();

    const Theme theme = Theme::light();
    QImage image(side_px, side_px, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const double unit = side_px / 32.0;
    const QRectF sheet(unit, 4 * unit, 30 * unit, 24 * unit);
    painter.setPen(QPen(theme.ink, unit));
    painter.setBrush(theme.paper);
    painter.drawRoundedRect(sheet, 2 * unit, 2 * unit);
    const QRectF field = sheet.adjusted(3.5 * unit, 3.5 * unit, -3.5 * unit, -3.5 * unit);
    for (const Dot& dot : dotsOf(runs.value(), isHidden(history.value()))) {
        const QPointF at(field.left() + dot.time * field.width(),
                         field.bottom() - dot.height * field.height());
        painter.setPen(QPen(theme.series(dot.device), 0.7 * unit));
        painter.setBrush(dot.discarded ? QBrush(Qt::NoBrush) : QBrush(theme.series(dot.device)));
        painter.drawEllipse(at, unit, unit);
    }
    return image;
}

} // namespace bothways::app
