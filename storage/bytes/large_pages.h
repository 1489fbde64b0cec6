// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace bothways::storage {

/// Room for `count` values, mapped in large pages where the system has them and the room is worth
/// it: to fetch a long channel into fresh memory page by page takes longer than to decode it.
/// Nothing else changes.
void reserveInLargePages(std::vector<double>& values, std::size_t count);

} // namespace bothways::storage
