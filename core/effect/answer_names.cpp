// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/answer.h"

// The words of the JSON form "bothways.analysis/1". They are a promise: never change one.
namespace bothways::core {

std::string_view name(Design value)
{
    return value == Design::closed ? "closed" : "open";
}

std::string_view name(VerdictClass value)
{
    switch (value) {
    case VerdictClass::less: return "less";
    case VerdictClass::more: return "more";
    case VerdictClass::equivalent: return "equivalent";
    case VerdictClass::undecided: return "undecided";
    case VerdictClass::none: return "none";
    }
    return {};
}

std::string_view name(NoVerdict value)
{
    switch (value) {
    case NoVerdict::noRuns: return "no_runs";
    case NoVerdict::oneConfiguration: return "one_configuration";
    case NoVerdict::tooFewPairs: return "too_few_pairs";
    case NoVerdict::noTimeSpread: return "no_time_spread";
    case NoVerdict::noVariation: return "no_variation";
    }
    return {};
}

std::string_view name(Qualifier value)
{
    switch (value) {
    case Qualifier::openDesign: return "open_design";
    case Qualifier::fragile: return "fragile";
    case Qualifier::needsIndependence: return "needs_independence";
    case Qualifier::sensitive: return "sensitive";
    case Qualifier::assumptions: return "assumptions";
    case Qualifier::smallerThanMargin: return "smaller_than_margin";
    case Qualifier::looked: return "looked";
    case Qualifier::interim: return "interim";
    case Qualifier::planLate: return "plan_late";
    }
    return {};
}

std::string_view name(CheckState value)
{
    switch (value) {
    case CheckState::holds: return "holds";
    case CheckState::note: return "note";
    case CheckState::fails: return "fails";
    case CheckState::notComputed: return "not_computed";
    }
    return {};
}

std::string_view name(Companion value)
{
    switch (value) {
    case Companion::bracket: return "bracket";
    case Companion::runs: return "runs";
    case Companion::blocks: return "blocks";
    case Companion::curved: return "curved";
    case Companion::labels: return "labels";
    case Companion::correlated: return "correlated";
    case Companion::anyLook: return "any_look";
    case Companion::borrowed: return "borrowed";
    case Companion::days: return "days";
    }
    return {};
}

std::string_view name(ClaimState value)
{
    switch (value) {
    case ClaimState::borneOut: return "borne_out";
    case ClaimState::refuted: return "refuted";
    case ClaimState::open: return "open";
    }
    return {};
}

AnalysisOptions AnalysisOptions::of(const StudyProperties& properties)
{
    AnalysisOptions options;
    options.margin_pct = properties.margin_pct;
    options.confidence = properties.confidence;
    options.max_gap_min = properties.max_gap_min;
    options.baseline = properties.baseline;
    options.claim_pct = properties.claim_pct;
    if (properties.noise)
        options.noise = BorrowedNoise{properties.noise->pct / 100.0, properties.noise->df};
    return options;
}

} // namespace bothways::core
