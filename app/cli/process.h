// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace bothways::cli {

/// What main() does: the program with the streams, the environment and the signals of this process.
/// @param argv  as main() has it
/// @return  the exit code: one of those that exitCodesText() lists
[[nodiscard]] int runProcess(int argc, char** argv);

} // namespace bothways::cli
