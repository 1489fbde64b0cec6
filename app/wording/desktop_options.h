// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"

#include <span>
#include <vector>

/// The command line of bothways-desktop: its help and its manual page are made from this.
namespace bothways::app::wording {

struct DesktopOption {
    const char* name; ///< without its dashes
    core::Message what;
    core::Message value = {}; ///< what stands for its value in help; empty: it has none
};
[[nodiscard]] std::vector<DesktopOption> desktopOptions();
/// What it is given besides.
[[nodiscard]] core::Message desktopFile();
[[nodiscard]] core::Message desktopSummary();
/// Parts of the window that --page can show.
[[nodiscard]] std::span<const char* const> desktopPages();

} // namespace bothways::app::wording
