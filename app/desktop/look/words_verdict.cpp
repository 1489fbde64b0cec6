// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "app/desktop/look/study_values.h"
#include "core/study/units.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr int kPairsNamed = 4; // more would be a list, not a sentence

int pairsIn(const core::Analysis& analysis, bool device)
{
    return static_cast<int>(
        std::count_if(analysis.pairs.begin(), analysis.pairs.end(),
                      [&](const core::Pair& pair) { return pair.device == device; }));
}

std::string presentConfiguration(const core::Analysis& analysis)
{
    for (const core::Block& block : analysis.blocks)
        if (block.runs > 0)
            return block.configuration;
    return analysis.baseline;
}

} // namespace

Words::Words(const core::Analysis& analysis, UnitsShown units)
    : m_analysis(analysis), m_numbers([&] {
          units.electric = analysis.electric;
          return units;
      }())
{
}

QString Words::quoted(const std::string& name)
{
    const QString text = QString::fromStdString(name);
    //: a configuration's own name, in a sentence
    return text.size() <= 1 ? text : tr("“%1”").arg(text);
}

QString Words::baseline() const
{
    return m_analysis.baseline.empty() ? tr("the baseline") : quoted(m_analysis.baseline);
}

QString Words::device() const
{
    return m_analysis.device.empty() ? tr("the device") : quoted(m_analysis.device);
}

int Words::decimals() const
{
    return m_analysis.headline ? NumberWords::decimalsOfRange(m_analysis.headline->low_log,
                                                              m_analysis.headline->high_log)
                               : 2;
}

QString Words::className(core::VerdictClass cls)
{
    switch (cls) {
    case core::VerdictClass::less: return tr("less", "verdict");
    case core::VerdictClass::more: return tr("more", "verdict");
    case core::VerdictClass::equivalent: return tr("no difference as large as the margin");
    case core::VerdictClass::undecided: return tr("cannot tell");
    case core::VerdictClass::none: return tr("no verdict");
    }
    return {};
}

QString Words::verdict() const
{
    if (!m_analysis.headline || m_analysis.verdict.cls == core::VerdictClass::none)
        return noVerdict(m_analysis.verdict.reason.value_or(core::NoVerdict::noRuns));
    switch (m_analysis.verdict.cls) {
    case core::VerdictClass::less:
    case core::VerdictClass::more: return moreOrLess();
    case core::VerdictClass::equivalent: return equivalent();
    case core::VerdictClass::undecided: return undecided();
    case core::VerdictClass::none: break;
    }
    return {};
}

QString Words::moreOrLess() const
{
    const core::Headline& headline = *m_analysis.headline;
    const bool less = m_analysis.verdict.cls == core::VerdictClass::less;
    const QString size =
        m_numbers.fixed(std::abs(core::pctFromLog(headline.effect_log)), decimals());
    const QString confidence = m_numbers.percent(headline.confidence);
    const QString range = m_numbers.range(headline.low_log, headline.high_log, decimals());
    QString sentence;
    if (m_analysis.electric) //: %1 device, %3 baseline, %4 as "95 %", %5 as "0.4 to 2.0 % less"
        sentence = less ? tr("%1 used %2\u00a0% less energy than %3 (%4 interval: %5).")
                        //: %1 device, %3 baseline, %4 as "95 %", %5 as "0.4 to 2.0 % more"
                        : tr("%1 used %2\u00a0% more energy than %3 (%4 interval: %5).");
    else //: %1 device, %3 baseline, %4 as "95 %", %5 as "0.4 to 2.0 % less"
        sentence = less ? tr("%1 used %2\u00a0% less fuel than %3 (%4 interval: %5).")
                        //: %1 device, %3 baseline, %4 as "95 %", %5 as "0.4 to 2.0 % more"
                        : tr("%1 used %2\u00a0% more fuel than %3 (%4 interval: %5).");
    return sentence.arg(device(), size, baseline(), confidence, range);
}

QString Words::inUnits() const
{
    if (!m_analysis.headline || usesControl(m_analysis))
        return {};
    const core::Headline& headline = *m_analysis.headline;
    const double without = headline.baseline_l_per_100km;
    const double with = without + headline.difference_l_per_100km;
    if (!(without > 0.0) || !(with > 0.0))
        return {};
    const double shown = core::fromLPer100km(without, units().consumptionInForce());
    const int digits = std::clamp(
        NumberWords::decimalsFor(0.5 * shown * (headline.high_log - headline.low_log)), 1, 3);
    const QString a = units().consumptionText(without, digits);
    const QString b = units().consumptionText(with, digits);
    const bool told = m_analysis.verdict.cls == core::VerdictClass::less ||
                      m_analysis.verdict.cls == core::VerdictClass::more;
    //: %1 and %2 consumptions, %3 their unit
    return told ? tr("That is %1 in place of %2 %3.").arg(b, a, units().consumptionUnit())
                //: %1 baseline's name, %2 its consumption with the unit
                : tr("The average of %1 was %2.")
                      .arg(baseline(), units().consumptionWithUnit(without, digits));
}

QString Words::equivalent() const
{
    const core::Headline& headline = *m_analysis.headline;
    const int digits =
        NumberWords::decimalsOfRange(headline.low_equivalence_log, headline.high_equivalence_log);
    return tr("No difference as large as %1\u00a0% between %2 and %3: the effect lies between %4 "
              "(%5 interval).")
        .arg(m_numbers.shortest(m_analysis.verdict.margin_pct), device(), baseline(),
             m_numbers.between(headline.low_equivalence_log, headline.high_equivalence_log, digits),
             m_numbers.percent(1.0 - 2.0 * (1.0 - headline.confidence)));
}

QString Words::undecided() const
{
    const core::Headline& headline = *m_analysis.headline;
    return tr("These runs cannot tell %1 from %2: the effect lies between %3 (%4 interval).")
        .arg(device(), baseline(),
             m_numbers.between(headline.low_log, headline.high_log, decimals()),
             m_numbers.percent(headline.confidence));
}

QString Words::whatItWouldTake() const
{
    if (m_analysis.verdict.cls != core::VerdictClass::undecided || !m_analysis.detectable)
        return {};
    const QString seen = m_numbers.significant(core::pctFromLog(m_analysis.detectable->log));
    const QString margin = m_numbers.shortest(m_analysis.verdict.margin_pct);
    const std::optional<int> more = m_analysis.verdict.more_pairs_per_block;
    if (!more)
        return tr("They could have shown %1\u00a0% or more; more pairs alone would hardly show "
                  "%2\u00a0% at this noise.")
            .arg(seen, margin);
    if (*more <= 0)
        return tr("They could have shown %1\u00a0% or more; such a day can show %2\u00a0%, so "
                  "driving it once more is worth while.")
            .arg(seen, margin);
    return tr("They could have shown %1\u00a0% or more; %n more pair(s) a block would show "
              "%2\u00a0%.",
              nullptr, *more)
        .arg(seen, margin);
}

QString Words::spoiledRuns(const std::vector<int>& runs) const
{
    if (runs.empty())
        return {};
    QStringList numbers;
    for (const int run : runs)
        numbers += QString::number(run);
    const QString sentence =
        runs.size() == 1 ? tr("Run %1 counts although a finding says that it is spoiled. Discard, "
                              "or overrule the finding with a reason, before you go by this.")
                         : tr("Runs %1 count although a finding says that they are spoiled. "
                              "Discard, or overrule the finding with a reason, before you go by "
                              "this.");
    return sentence.arg(numbers.join(QStringLiteral(", ")));
}

QString Words::noVerdict(core::NoVerdict reason) const
{
    switch (reason) {
    case core::NoVerdict::noRuns:
        return m_analysis.runs == 0 ? tr("No verdict: there are no runs yet.")
                                    : tr("No verdict: every run is discarded.");
    case core::NoVerdict::oneConfiguration:
        return tr("No verdict: only %1 has runs that count. The comparison needs the other "
                  "configuration, too.")
            .arg(quoted(presentConfiguration(m_analysis)));
    case core::NoVerdict::tooFewPairs: return tooFewPairs();
    case core::NoVerdict::noTimeSpread:
        return tr("No verdict: by their times, drift and effect cannot be told apart in these "
                  "pairs. Check the start times, or drive another block.");
    case core::NoVerdict::noVariation:
        return tr("No verdict: the readings agree to the last digit, so there is no noise to judge "
                  "by. Were they copied, or is the display too coarse?");
    }
    return {};
}

QString Words::tooFewPairs() const
{
    const int a = pairsIn(m_analysis, false);
    const int b = pairsIn(m_analysis, true);
    if (a >= 2 && b >= 2)
        return tr("No verdict: effect and drift use up all %n pair(s), and nothing is left to "
                  "judge the noise by. Drive one pair more.",
                  nullptr, a + b);
    const QString missing =
        tr("No verdict: there are %1 pairs of %2 and %3 of %4, and each needs at least 2, out and "
           "back in one block.")
            .arg(units().number(a, 0), baseline(), units().number(b, 0), device());
    if (m_analysis.unpaired.empty())
        return missing;
    const QString alone = tr("%n counted run(s) have no partner within %1 minutes.", nullptr,
                             static_cast<int>(m_analysis.unpaired.size()))
                              .arg(m_numbers.shortest(m_analysis.options.max_gap_min));
    //: two sentences after one another
    return tr("%1 %2").arg(missing, alone);
}

QString Words::qualifierName(core::Qualifier qualifier)
{
    switch (qualifier) {
    case core::Qualifier::openDesign: return tr("one switch only");
    case core::Qualifier::fragile: return tr("fragile");
    case core::Qualifier::sensitive: return tr("sensitive");
    case core::Qualifier::assumptions: return tr("assumption not met");
    case core::Qualifier::smallerThanMargin: return tr("smaller than the margin");
    case core::Qualifier::interim: return tr("interim");
    }
    return {};
}

QString Words::qualifier(core::Qualifier qualifier) const
{
    switch (qualifier) {
    case core::Qualifier::openDesign:
        return tr("One switch only: whatever else changed over the day (wind, warmth, traffic) "
                  "cannot be told from the effect. Go back to the first configuration and drive it "
                  "again.");
    case core::Qualifier::fragile: return fragile();
    case core::Qualifier::sensitive: return sensitive();
    case core::Qualifier::assumptions: {
        QStringList names;
        for (const CheckKind kind : kCheckKinds)
            if (stateOf(m_analysis.checks, kind) == core::CheckState::fails)
                names << checkName(kind);
        return tr("An assumption is not met (%1): read that check before you trust the interval.")
            .arg(m_numbers.joined(names));
    }
    case core::Qualifier::smallerThanMargin:
        return tr("There is an effect, but it is smaller than the %1\u00a0% that you care about.")
            .arg(m_numbers.shortest(m_analysis.verdict.margin_pct));
    case core::Qualifier::interim:
        return tr("Interim: the plan is not driven to its end. Stopping at the first “less” or "
                  "“more” gives some 15\u00a0% false alarms where 5\u00a0% are promised.");
    }
    return {};
}

QString Words::fragileBy(core::Companion companion) const
{
    const core::Companions& others = m_analysis.companions;
    const auto says = [this](core::Companion who, const core::Interval* interval) {
        return interval ? tr("%1 (%2)", "companion and what it says")
                              .arg(companionName(who), className(interval->cls))
                        : companionName(who);
    };
    switch (companion) {
    case core::Companion::bracket:
        return says(companion, others.bracket ? &*others.bracket : nullptr);
    case core::Companion::runs: return says(companion, others.runs ? &*others.runs : nullptr);
    case core::Companion::correlated:
        return says(companion, others.correlated ? &*others.correlated : nullptr);
    case core::Companion::blocks:
        return tr("%1 (their interval leaves the estimate out)").arg(companionName(companion));
    case core::Companion::labels:
        return others.labels ? tr("%1 (%2)", "companion and what it says")
                                   .arg(companionName(companion), m_numbers.p(others.labels->p))
                             : companionName(companion);
    }
    return {};
}

QString Words::fragile() const
{
    QStringList parts;
    for (const core::Companion companion : m_analysis.verdict.fragile_by)
        parts << fragileBy(companion);
    return tr("Fragile: another honest way to the same number disagrees: %1.")
        .arg(m_numbers.joined(parts));
}

QString Words::sensitive() const
{
    QStringList pairs;
    if (m_analysis.leave_one_out)
        for (const core::LeaveOneOutTurn& turn : m_analysis.leave_one_out->turns)
            if (turn.cls != m_analysis.verdict.cls)
                pairs << tr("%1 (%2)", "pair number and verdict without it")
                             .arg(units().number(turn.pair, 0), className(turn.cls));
    if (pairs.isEmpty())
        return tr("Sensitive: leaving out a single pair changes the verdict.");
    if (pairs.size() > kPairsNamed)
        return tr("Sensitive: leaving out a single pair changes the verdict for %1 of the %n "
                  "pair(s).",
                  nullptr, static_cast<int>(m_analysis.pairs.size()))
            .arg(units().number(static_cast<double>(pairs.size()), 0));
    return tr("Sensitive: the verdict hangs on single pairs. It changes when pair %1 is left out.")
        .arg(m_numbers.anyOf(pairs));
}

QString Words::tally() const
{
    const auto blocksWithPairs =
        std::count_if(m_analysis.blocks.begin(), m_analysis.blocks.end(),
                      [](const core::Block& block) { return block.pairs > 0; });
    const QString pairs = tr("%n pair(s)", nullptr, static_cast<int>(m_analysis.pairs.size()));
    const QString blocks = tr("%n block(s)", nullptr, static_cast<int>(blocksWithPairs));
    const QString counted = tr("%n counted run(s)", nullptr, m_analysis.counted);
    if (m_analysis.discarded == 0)
        return tr("%1 from %2 in %3; none discarded.").arg(pairs, counted, blocks);
    return tr("%1 from %2 in %3; %n discarded.", nullptr, m_analysis.discarded)
        .arg(pairs, counted, blocks);
}

} // namespace bothways::app
