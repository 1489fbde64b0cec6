// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <string>

namespace bothways::storage {

/// The bytes of a file that is small enough to hold. An Error (badInput) says what is wrong with
/// it: no such file, a directory, not readable, larger than `most` bytes.
/// @param expected  what it should have been: "a run sheet"_t
[[nodiscard]] core::Result<std::string> readWholeFile(const std::filesystem::path& file,
                                                      std::uintmax_t most, core::Text<0> expected);

} // namespace bothways::storage
