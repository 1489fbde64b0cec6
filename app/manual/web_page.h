// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/manual/markdown.h"
#include "app/wording/language.h"

#include <string>

/// A page of the handbook for a browser: one file, no script, nothing from elsewhere.
namespace bothways::app::manual {

/// @param isIndex  has no way back to the index
[[nodiscard]] std::string webPage(const Language& in, const Blocks& blocks, bool isIndex);

} // namespace bothways::app::manual
