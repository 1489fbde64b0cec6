// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/words.h"

#include <QString>

namespace bothways::app {

/// The arithmetic of one study, step by step with its own numbers: from the runs to the verdict, so
/// that a stranger with a pocket calculator can follow it. HTML of the plain kind (headings,
/// paragraphs, tables) that QTextDocument reads; complete sentences, numbers in the user's locale.
[[nodiscard]] QString whyHtml(const ResultSet& result, const Words& words);

} // namespace bothways::app
