// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/study_file.h"

#include <cstdint>

namespace bothways::storage {

/// Bytes of recordings that were dropped or whose import was undone: what compact() would free, and
/// undo could still bring back.
[[nodiscard]] Result<std::int64_t> freeableBytes(const StudyFile& study);

} // namespace bothways::storage
