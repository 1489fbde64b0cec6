// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/rule.h"

#include <QIcon>
#include <QRectF>

class QColor;
class QPainter;

/// Small signs that say by their shape what their colour says as well.
namespace bothways::app {

struct Theme;

/// Spoils: a triangle with an exclamation mark; doubtful: a lozenge with a question mark; note: a
/// disc with an i.
void paintGrade(QPainter& painter, const QRectF& box, core::Grade grade, const Theme& theme);
[[nodiscard]] QIcon gradeIcon(core::Grade grade, const Theme& theme);
/// Baseline: a disc; device: a square.
void paintConfiguration(QPainter& painter, const QRectF& box, bool device, const QColor& colour);
/// A question mark in a ring: this number is odd.
void paintQuestion(QPainter& painter, const QRectF& box, const Theme& theme);

} // namespace bothways::app
