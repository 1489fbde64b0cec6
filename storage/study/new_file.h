// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string_view>

namespace bothways::storage {

/// Makes a file that was not there, whole and on disk, under its name at once: nobody sees half of
/// it, and whatever goes wrong leaves nothing. An Error (studyFile) where the name is taken, also
/// by somebody who was a moment faster.
[[nodiscard]] core::Outcome makeNewFile(const std::filesystem::path& file, std::string_view bytes);

} // namespace bothways::storage
