// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

namespace CLI {
class App;
}

/// One function a verb (or family of verbs): tells the parser of it, with help and example, and
/// what to do when it is called. Context outlives the parser.
namespace bothways::cli {

void addNew(CLI::App& program, Context& context);
void addSet(CLI::App& program, Context& context);
void addImport(CLI::App& program, Context& context);
void addExport(CLI::App& program, Context& context);
void addAdd(CLI::App& program, Context& context);
void addPairing(CLI::App& program, Context& context); ///< pair, unpair
void addRename(CLI::App& program, Context& context);
void addUndo(CLI::App& program, Context& context); ///< undo, redo
void addRuns(CLI::App& program, Context& context);
void addScreen(CLI::App& program, Context& context);
void addDiscard(CLI::App& program, Context& context); ///< discard, count
void addAnalyse(CLI::App& program, Context& context);
void addPlan(CLI::App& program, Context& context);
void addLedger(CLI::App& program, Context& context);
void addReport(CLI::App& program, Context& context);

} // namespace bothways::cli
