// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/report_model.h"

#include <QColor>
#include <QPointF>

#include <memory>
#include <vector>

class QPainter;
class QTextDocument;

/// What a printed report is made of: pieces that are not parted between pages. Private to printing.
/// Lengths are those of ReportPages.
namespace bothways::app::printing {

/// One piece across the page.
class Chunk {
public:
    virtual ~Chunk() = default;
    [[nodiscard]] virtual double height() const = 0;
    virtual void paint(QPainter& painter, QPointF at) const = 0;
    /// Heights at which it may be parted where it is taller than a page; the last is height().
    [[nodiscard]] virtual std::vector<double> breaks() const { return {height()}; }

    double spaceBefore = 0.0;            ///< dropped at the top of a page
    bool keepWithNext = false;           ///< never the last on a page
    std::shared_ptr<const Chunk> repeat; ///< comes first when a page begins with this one
};

/// The chunks of one part. `width` is that between the margins.
[[nodiscard]] std::vector<std::shared_ptr<Chunk>> chunksOf(const report::Part& part, double width);
/// The report's title.
[[nodiscard]] std::shared_ptr<Chunk> titleChunk(const std::string& title, double width);

/// Rich text as one column; `pixels` is the size of its letters.
[[nodiscard]] std::unique_ptr<QTextDocument> richText(const QString& html, double width, int pixels,
                                                      Qt::Alignment alignment = Qt::AlignLeft);

} // namespace bothways::app::printing
