// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QStringList>
#include <QVariant>

namespace bothways::app {

/// The numbers behind a picture, as a table for a spreadsheet.
///
/// Numbers are written in C form with every digit that matters, whatever the locale; a cell that
/// is not available is empty. RFC 4180.
class PlotNumbers {
public:
    PlotNumbers() = default;
    explicit PlotNumbers(QStringList header) : m_header(std::move(header)) {}
    /// Cells are numbers, texts, or invalid (not available).
    void add(const QVariantList& row) { m_rows.append(row); }
    [[nodiscard]] const QStringList& header() const { return m_header; }
    [[nodiscard]] const QList<QVariantList>& rows() const { return m_rows; }
    [[nodiscard]] bool isEmpty() const { return m_rows.isEmpty(); }
    [[nodiscard]] QString csv() const;

private:
    QStringList m_header;
    QList<QVariantList> m_rows;
};

} // namespace bothways::app
