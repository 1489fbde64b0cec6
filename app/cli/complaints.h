// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

namespace CLI {
class ParseError;
}

namespace bothways::cli {

/// What the parser complains of, which it says in English only, as a sentence with its values.
[[nodiscard]] core::Message complaint(const CLI::ParseError& problem);

} // namespace bothways::cli
