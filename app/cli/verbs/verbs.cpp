// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/verbs.h"

#include <array>

namespace bothways::cli {
namespace {

constexpr std::array<Verb, 26> kVerbs{{
    {"new", "Make an empty study"_t, describeNew},
    {"set", "Set a study's properties and limits"_t, describeSet},
    {"import", "Bring a run sheet, or a data logger's recording, into a study"_t, describeImport},
    {"record", "Record instruments into a study while it is driven, and say what spoils a run"_t,
     describeRecord},
    {"export", "Give back the runs (CSV, JSON) or the pairs (CSV)"_t, describeExport},
    {"add", "Add one run to a study"_t, describeAdd},
    {"edit", "Change columns of one run or several"_t, describeEdit},
    {"pair", "Tie an out and a return run of one block, whatever their gap"_t, describePair},
    {"unpair", "Untie a run that was tied by hand"_t, describeUnpair},
    {"rename", "Another name for a configuration or a direction, in all runs"_t, describeRename},
    {"undo", "Take back the newest change; the history keeps both"_t, describeUndo},
    {"redo", "Do again what was taken back"_t, describeRedo},
    {"history", "Every change and every look at the verdict, with its time"_t, describeHistory},
    {"walk", "Tick the walk-round that is made before a block, or list it"_t, describeWalk},
    {"runs", "List the runs with state, reason, pair and findings"_t, describeRuns},
    {"screen", "Look for runs that cannot be used, and why"_t, describeScreen},
    {"discard", "Set runs aside, with a reason"_t, describeDiscard},
    {"count", "Lift a discard: the runs count again"_t, describeCount},
    {"overrule", "Put a finding aside, with a reason: the run may count"_t, describeOverrule},
    {"analyse", "Is there an effect, how large, how sure? Several files: a table"_t,
     describeAnalyse},
    {"columns", "The columns of a run sheet: name, unit, range, and other names"_t,
     describeColumns},
    {"plan", "What a day of driving could show, before it is driven"_t, describePlan},
    {"ledger", "The effect to expect from first principles, beside the measured one"_t,
     describeLedger},
    {"report", "One HTML page that a stranger can check: verdict, pictures, every run"_t,
     describeReport},
    {"rig", "The instruments of a car: try them, name their channels, calibrate them"_t,
     describeRig},
    {"help", "Say what a verb does, as VERB --help does"_t, describeHelp},
}};

} // namespace

std::span<const Verb> allVerbs()
{
    return kVerbs;
}

} // namespace bothways::cli
