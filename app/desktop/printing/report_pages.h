// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/report_html.h"

#include <QByteArray>
#include <QPageSize>

#include <memory>

class QPainter;
class QPrinter;

namespace bothways::app {

/// The report on paper: the same parts as the web page, laid out for a size of page. Each page has
/// the study's name and checksum on top and its number below; no row of a table is parted (unless
/// it is taller than a page), its head comes again on each page, a heading stays with what follows.
///
/// Everything is drawn as lines and text, pictures too. Positions cannot enter: see ReportInput.
class ReportPages {
public:
    /// Lengths of layout: 720 to the inch, so that fonts of whole sizes are fine enough.
    static constexpr double kUnitsPerInch = 720.0;

    ReportPages(const ReportInput& input, const QPageSize& size);
    ~ReportPages();
    ReportPages(ReportPages&&) noexcept;

    [[nodiscard]] int count() const;
    [[nodiscard]] QSizeF size() const; ///< of a page, units
    /// @param page     from 0
    /// @param painter  scaled to the units, its origin in the page's upper left corner
    void paint(QPainter& painter, int page) const;
    [[nodiscard]] QString title() const;

private:
    struct Layout;
    std::unique_ptr<Layout> m_layout;
};

/// Lays the report out for the printer's paper and prints the pages that it was asked for.
/// @return  false when the printer refused
[[nodiscard]] bool printReportOn(QPrinter& printer, const ReportInput& input);

/// The pages as PDF, in memory, so that a file is written whole or not at all.
[[nodiscard]] QByteArray reportPdf(const ReportPages& pages, const QPageSize& size);

} // namespace bothways::app
