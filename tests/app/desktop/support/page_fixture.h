// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/theme.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QWidget>

#include <memory>
#include <ostream>
#include <string>

class QWidget;

inline void PrintTo(const QString& text, std::ostream* out)
{
    *out << '"' << text.toStdString() << '"';
}

namespace bothways::tests {

/// The result of a run sheet among the worked examples ("morning").
[[nodiscard]] std::shared_ptr<const app::ResultSet>
resultOfExample(const std::string& name, const std::string& baseline = {});
/// The result of a demo sheet ("levee_generator").
[[nodiscard]] std::shared_ptr<const app::ResultSet>
resultOfSample(const std::string& name, const std::string& baseline = {});
[[nodiscard]] std::shared_ptr<const app::ResultSet>
resultOf(core::Study study, const core::AnalysisOptions& options = {});

/// Every text that a page shows or tells a screen reader: labels, tables, plots.
[[nodiscard]] QString allTexts(const QWidget& page);

/// Shows a page at a size and lets it lay itself out. With BOTHWAYS_PICTURES set to a folder the
/// picture is kept there as NAME.png, to be looked at.
QImage pictureOf(QWidget& page, const QString& name, QSize size = QSize(1100, 860));

/// What no screen may ever show.
[[nodiscard]] bool hasNonsense(const QString& text);

} // namespace bothways::tests
