// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <memory>

namespace CLI {
class App;
class FormatterBase;
} // namespace CLI

namespace bothways::cli {

/// How help is laid out, with its labels in the reader's language.
[[nodiscard]] std::shared_ptr<CLI::FormatterBase> helpIn(const Language& in);

/// The parser's own names for what an option takes ("TEXT", "INT"), in the reader's language.
void nameTypes(const Language& in, CLI::App& verb);

} // namespace bothways::cli
