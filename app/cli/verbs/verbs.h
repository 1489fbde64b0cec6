// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <span>

namespace CLI {
class App;
}

namespace bothways::cli {

struct Verb {
    const char* name; ///< as it is typed, in any language
    core::Text<0> what;
    /// Tells the parser of its options, with help and example, and what to do when it is called.
    /// Context outlives the parser.
    void (*describe)(CLI::App& verb, Context& context);
};
/// In the order of help.
[[nodiscard]] std::span<const Verb> allVerbs();

void describeNew(CLI::App& verb, Context& context);
void describeSet(CLI::App& verb, Context& context);
void describeImport(CLI::App& verb, Context& context);
void describeExport(CLI::App& verb, Context& context);
void describeAdd(CLI::App& verb, Context& context);
void describePair(CLI::App& verb, Context& context);
void describeUnpair(CLI::App& verb, Context& context);
void describeRename(CLI::App& verb, Context& context);
void describeUndo(CLI::App& verb, Context& context);
void describeRecord(CLI::App& verb, Context& context);
void describeWalk(CLI::App& verb, Context& context);
void describeRedo(CLI::App& verb, Context& context);
void describeRuns(CLI::App& verb, Context& context);
void describeScreen(CLI::App& verb, Context& context);
void describeDiscard(CLI::App& verb, Context& context);
void describeCount(CLI::App& verb, Context& context);
void describeEdit(CLI::App& verb, Context& context);
void describeHistory(CLI::App& verb, Context& context);
void describeOverrule(CLI::App& verb, Context& context);
void describeHelp(CLI::App& verb, Context& context);
void describeAnalyse(CLI::App& verb, Context& context);
void describeColumns(CLI::App& verb, Context& context);
void describePlan(CLI::App& verb, Context& context);
void describeLedger(CLI::App& verb, Context& context);
void describeReport(CLI::App& verb, Context& context);
void describeRig(CLI::App& verb, Context& context);

} // namespace bothways::cli
