// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <string>

namespace bothways::storage {

/// SHA-256 of what a study says: its properties by name and its runs as a run sheet. The same for
/// every study file and sheet with the same content, whatever its history.
[[nodiscard]] std::string sha256OfStudy(const core::Study& study);

} // namespace bothways::storage
