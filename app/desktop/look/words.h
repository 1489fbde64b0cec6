// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "core/effect/answer.h"
#include "core/screening/finding.h"
#include "core/study/rule.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <array>

/// The sentences of the window, in the user's language, locale and units: the same as those of
/// app/wording/, from the same class and numbers.
namespace bothways::app {

/// The checks of method, sections 7 and 10, in the order in which they are shown.
enum class CheckKind {
    normal,
    outlier,
    order,
    curve,
    spread,
    baseline,
    direction,
    resolution,
    air
};
inline constexpr std::array kCheckKinds{
    CheckKind::normal,    CheckKind::outlier,    CheckKind::order,
    CheckKind::curve,     CheckKind::spread,     CheckKind::baseline,
    CheckKind::direction, CheckKind::resolution, CheckKind::air};
[[nodiscard]] core::CheckState stateOf(const core::Checks& checks, CheckKind kind);

/// Numbers as people read them: sensible digits, sizes in words. Every function takes any double;
/// what is not finite is an en dash.
class NumberWords {
    Q_DECLARE_TR_FUNCTIONS(NumberWords)

public:
    explicit NumberWords(const UnitsShown& units) : m_units(units) {}
    [[nodiscard]] const UnitsShown& units() const { return m_units; }

    [[nodiscard]] QString fixed(double value, int decimals) const;
    /// Shortest text: "1", "0.5", "95".
    [[nodiscard]] QString shortest(double value) const;
    /// About `digits` significant digits, no exponent.
    [[nodiscard]] QString significant(double value, int digits = 2) const;
    /// "95 %" of 0.95.
    [[nodiscard]] QString percent(double share) const;
    /// "1.2 % less", "1.2 % more", "0.0 %".
    [[nodiscard]] QString change(double log, int decimals) const;
    /// "0.4 to 2.0 % less", "0.1 % less to 1.7 % more". An end that rounds to nothing gets the
    /// digits that show on which side of zero it lies.
    [[nodiscard]] QString range(double lowLog, double highLog, int decimals) const;
    /// The same to follow the word "between": "0.1 % less and 1.7 % more".
    [[nodiscard]] QString between(double lowLog, double highLog, int decimals) const;
    /// "−0.06 to +1.69 %": for tables and axes.
    [[nodiscard]] QString signedRange(double lowLog, double highLog, int decimals) const;
    /// "p = 0.064", "p < 0.001".
    [[nodiscard]] QString p(double p) const;
    /// "0.064", "< 0.001": for a column that says p.
    [[nodiscard]] QString pAlone(double p) const;
    /// "A, B and C".
    [[nodiscard]] QString joined(const QStringList& parts) const;
    /// "A, B or C".
    [[nodiscard]] QString anyOf(const QStringList& parts) const;
    /// Decimals that give half the width of an interval two significant digits (JCGM 100:2008,
    /// 7.2.6); 0 to 4.
    [[nodiscard]] static int decimalsOfRange(double lowLog, double highLog);
    [[nodiscard]] static int decimalsFor(double uncertainty);

private:
    [[nodiscard]] QString size(double pct, int decimals) const;
    UnitsShown m_units;
};

/// What can be said about one analysis. Holds a reference: the analysis must outlive it.
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)

public:
    Words(const core::Analysis& analysis, UnitsShown units);
    [[nodiscard]] const UnitsShown& units() const { return m_numbers.units(); }
    [[nodiscard]] const NumberWords& numbers() const { return m_numbers; }

    /// The answer in one sentence (or what is missing).
    [[nodiscard]] QString verdict() const;
    /// What the answer means in consumption; empty where there is none to name.
    [[nodiscard]] QString inUnits() const;
    [[nodiscard]] QString qualifier(core::Qualifier qualifier) const;
    /// A word for the qualifier, as on a label.
    [[nodiscard]] static QString qualifierName(core::Qualifier qualifier);
    [[nodiscard]] QString noVerdict(core::NoVerdict reason) const;
    /// That these runs count though a finding says that they are spoiled; empty without any.
    [[nodiscard]] QString spoiledRuns(const std::vector<int>& runs) const;
    /// What it would take to see the margin; empty where the answer needs no more.
    [[nodiscard]] QString whatItWouldTake() const;
    [[nodiscard]] QString detectable() const;
    [[nodiscard]] QString leaveOneOut() const;
    [[nodiscard]] QString discardsRestored() const;
    [[nodiscard]] QString companion(core::Companion companion) const;
    [[nodiscard]] QString companionName(core::Companion companion) const;
    [[nodiscard]] QString note(const core::Note& note) const;
    /// A class in words: "less", "more", "no difference as large as the margin", ...
    [[nodiscard]] static QString className(core::VerdictClass cls);
    /// "shown as …" below a picture: how many runs, pairs, blocks.
    [[nodiscard]] QString tally() const;

    [[nodiscard]] QString check(CheckKind kind) const;
    [[nodiscard]] static QString checkName(CheckKind kind);
    [[nodiscard]] static QString stateName(core::CheckState state);
    /// How much the checks can see with so few pairs; empty where there are many.
    [[nodiscard]] QString checksPower() const;

    [[nodiscard]] QString baseline() const; ///< its name as it stands in a sentence
    [[nodiscard]] QString device() const;
    /// A configuration's name in a sentence: B, “roof box”.
    [[nodiscard]] static QString quoted(const std::string& name);

private:
    [[nodiscard]] QString moreOrLess() const;
    [[nodiscard]] QString equivalent() const;
    [[nodiscard]] QString undecided() const;
    [[nodiscard]] QString tooFewPairs() const;
    [[nodiscard]] QString fragile() const;
    [[nodiscard]] QString fragileBy(core::Companion companion) const;
    [[nodiscard]] QString sensitive() const;
    [[nodiscard]] QString labels() const;
    [[nodiscard]] QString normal() const;
    [[nodiscard]] QString outlier() const;
    [[nodiscard]] QString order() const;
    [[nodiscard]] QString curve() const;
    [[nodiscard]] QString spread() const;
    [[nodiscard]] QString baselineMoved() const;
    [[nodiscard]] QString direction() const;
    [[nodiscard]] QString resolution() const;
    [[nodiscard]] QString air() const;
    [[nodiscard]] int decimals() const;

    const core::Analysis& m_analysis;
    NumberWords m_numbers;
};

/// Screening, in words.
class FindingWords {
    Q_DECLARE_TR_FUNCTIONS(FindingWords)

public:
    explicit FindingWords(const UnitsShown& units) : m_numbers(units) {}
    /// What was found, without the run's number.
    [[nodiscard]] QString finding(const core::Finding& finding) const;
    [[nodiscard]] QString notChecked(const core::NotChecked& notChecked) const;
    [[nodiscard]] QString pattern(const core::OverspeedPattern& pattern) const;
    /// "accessory load changed", "over-speed", ...: also the words for reasons of discards.
    [[nodiscard]] static QString ruleName(core::Rule rule);
    /// A discard's reason: ruleName() where it is a rule, "other reason" else.
    [[nodiscard]] static QString reasonName(const std::string& reason);
    [[nodiscard]] static QString gradeName(core::Grade grade);

private:
    [[nodiscard]] QString overspeed(const core::Finding& finding) const;
    [[nodiscard]] QString whereAndLimit(const core::Finding& finding) const;
    [[nodiscard]] QString sheetFinding(const core::Finding& finding) const;
    [[nodiscard]] QString speedFinding(const core::Finding& finding) const;
    [[nodiscard]] QString size(const std::optional<double>& value) const;
    NumberWords m_numbers;
};

} // namespace bothways::app
