// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace bothways::app {

/// `text` with &, <, > and quotes written as entities, for HTML and SVG alike; what is legal in
/// neither, or invisible, is marked as visibleText() does.
[[nodiscard]] std::string escaped(std::string_view text);

} // namespace bothways::app
