// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/said.h"
#include "app/desktop/look/units_shown.h"
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/verdict.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

/// What app/wording says about a study, as the window shows it: in the user's language, locale and
/// units. Sentences are there; here are numbers for tables and axes.
namespace bothways::app {

using wording::CheckKind;
using wording::kCheckKinds;
using wording::stateOf;

/// The units that a sentence names.
[[nodiscard]] wording::Units unitsOf(const UnitsShown& units);

/// Numbers as people read them: sensible digits, sizes in words. Every function takes any double;
/// what is not finite is an en dash.
class NumberWords {
    Q_DECLARE_TR_FUNCTIONS(NumberWords)

public:
    explicit NumberWords(const UnitsShown& units) : m_units(units) {}
    [[nodiscard]] const UnitsShown& units() const { return m_units; }
    [[nodiscard]] const Language& language() const { return m_units.language; }

    // Cells and axes.
    [[nodiscard]] QString fixed(double value, int decimals) const;
    /// Shortest text: "1", "0.5", "95".
    [[nodiscard]] QString shortest(double value) const;
    /// About `digits` significant digits, no exponent.
    [[nodiscard]] QString significant(double value, int digits = 2) const;
    /// "−0.06 to +1.69 %".
    [[nodiscard]] QString signedRange(double lowLog, double highLog, int decimals) const;
    /// "0.064", "< 0.001": for a column that says p.
    [[nodiscard]] QString pAlone(double p) const;
    /// Decimals that give half the width of an interval two significant digits.
    [[nodiscard]] static int decimalsOfRange(double lowLog, double highLog);

    // Pieces of sentences, as app/wording/numbers.h says them, of differences of logs.
    [[nodiscard]] QString change(double log, int decimals) const;
    [[nodiscard]] QString range(double lowLog, double highLog, int decimals) const;
    /// "95 %" of 0.95, before the word "interval".
    [[nodiscard]] QString percent(double share) const;
    [[nodiscard]] QString p(double p) const;

private:
    UnitsShown m_units;
};

/// What can be said about one analysis. Holds a reference: the analysis must outlive it.
class Words {
public:
    Words(const core::Analysis& analysis, UnitsShown units);
    [[nodiscard]] const UnitsShown& units() const { return m_numbers.units(); }
    [[nodiscard]] const NumberWords& numbers() const { return m_numbers; }
    [[nodiscard]] const Language& language() const { return m_numbers.language(); }

    /// The answer in one sentence (or what is missing).
    [[nodiscard]] QString verdict() const;
    /// What the answer means in consumption; empty where there is none to name.
    [[nodiscard]] QString inUnits() const;
    /// What it would take to see the margin; empty where the answer needs no more.
    [[nodiscard]] QString whatItWouldTake() const;
    [[nodiscard]] QString qualifier(core::Qualifier qualifier) const;
    [[nodiscard]] QString detectable() const;
    [[nodiscard]] QString leaveOneOut() const;
    [[nodiscard]] QString discardsRestored() const;
    [[nodiscard]] QString companion(core::Companion companion) const;
    [[nodiscard]] QString companionName(core::Companion companion) const;
    [[nodiscard]] QString note(const core::Note& note) const;
    /// How many runs, pairs, blocks: below a picture.
    [[nodiscard]] QString tally() const;
    [[nodiscard]] QString check(CheckKind kind) const;
    /// How much the checks can see with so few pairs; empty where there are many.
    [[nodiscard]] QString checksPower() const;

    [[nodiscard]] QString baseline() const; ///< its name as it stands in a sentence
    [[nodiscard]] QString device() const;
    /// A configuration's name in a sentence: B, 'roof box'.
    [[nodiscard]] QString quoted(const std::string& name) const;
    /// A class in words: "less", "cannot tell", ...
    [[nodiscard]] QString className(core::VerdictClass cls) const;

private:
    const core::Analysis& m_analysis;
    NumberWords m_numbers;
};

} // namespace bothways::app
