// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "core/companions/relabelling.h"
#include "core/study/units.h"

#include <cmath>

// Sentences about how sure the answer is, and what other roads say.
namespace bothways::app {

QString Words::detectable() const
{
    if (!m_analysis.detectable || !m_analysis.headline)
        return tr("What these runs could have shown is not known without a verdict.");
    return tr("An effect of %1\u00a0% would have been found by such a day %2 times in 100; one "
              "pair scatters by %3\u00a0%.")
        .arg(m_numbers.significant(core::pctFromLog(m_analysis.detectable->log)),
             m_numbers.shortest(100.0 * m_analysis.detectable->power),
             m_numbers.significant(core::pctFromLog(m_analysis.headline->s)));
}

QString Words::leaveOneOut() const
{
    if (!m_analysis.leave_one_out || !m_analysis.leave_one_out->min_effect_log ||
        !m_analysis.leave_one_out->max_effect_log)
        return tr("Leaving pairs out one by one needs a verdict.");
    const core::LeaveOneOut& turns = *m_analysis.leave_one_out;
    const QString text =
        turns.changes_class
            ? tr("Without any one of the %n pair(s) the effect stays between %1; the verdict does "
                 "not stay.",
                 nullptr, static_cast<int>(turns.turns.size()))
            : tr("Without any one of the %n pair(s) the effect stays between %1; the verdict "
                 "stays, too.",
                 nullptr, static_cast<int>(turns.turns.size()));
    return text.arg(m_numbers.between(*turns.min_effect_log, *turns.max_effect_log, decimals()));
}

QString Words::discardsRestored() const
{
    if (m_analysis.discarded == 0)
        return tr("No run was discarded, so the discards did not choose this result.");
    const core::DiscardsRestored& restored = m_analysis.discards_restored;
    if (!restored.all)
        return tr("%n run(s) discarded; none can be put back.", nullptr, m_analysis.discarded);
    QString text;
    if (restored.all->effect_log && restored.all->low_log && restored.all->high_log) {
        const int digits =
            NumberWords::decimalsOfRange(*restored.all->low_log, *restored.all->high_log);
        text = tr("With every discarded run put back: %1 (%2 interval: %3), verdict: %4.")
                   .arg(m_numbers.change(*restored.all->effect_log, digits),
                        m_numbers.percent(m_analysis.options.confidence),
                        m_numbers.range(*restored.all->low_log, *restored.all->high_log, digits),
                        className(restored.all->cls));
    } else {
        text = tr("With every discarded run put back there is no verdict.");
    }
    if (restored.up + restored.down == 0)
        return text;
    const QString ways =
        tr("Put back singly, %1 of them would have moved the effect up and %2 down.")
            .arg(units().number(restored.up, 0), units().number(restored.down, 0));
    //: two sentences after one another
    return tr("%1 %2").arg(text, ways);
}

QString Words::companionName(core::Companion companion) const
{
    switch (companion) {
    case core::Companion::bracket: return tr("bracketing");
    case core::Companion::runs: return tr("single runs");
    case core::Companion::blocks: return tr("block means");
    case core::Companion::labels: return tr("dealing the labels");
    case core::Companion::correlated: return tr("allowing for correlated pairs");
    }
    return {};
}

QString Words::labels() const
{
    if (!m_analysis.companions.labels)
        return tr("Dealing the labels again over the pairs asks how often chance alone would look "
                  "like this; not to be had from these runs.");
    const core::LabelsTest& test = *m_analysis.companions.labels;
    const QString deals = units().number(static_cast<double>(test.deals), 0);
    const double smallest = core::smallestLabelsP(m_analysis);
    QString text = test.exact
                       ? tr("Dealing the labels again over the pairs asks how often chance alone "
                            "would look like this: %1, over all %2 deals. The labels were not "
                            "drawn by lot, so this p is exact only if pairs could be swapped where "
                            "there is no effect.")
                       : tr("Dealing the labels again over the pairs asks how often chance alone "
                            "would look like this: %1, over %2 random deals. The labels were not "
                            "drawn by lot, so this p holds only if pairs could be swapped where "
                            "there is no effect.");
    text = text.arg(m_numbers.p(test.p), deals);
    if (test.exact && smallest > 1.0 - m_analysis.options.confidence)
        //: two sentences after one another
        return tr("%1 %2").arg(text, tr("With so few deals no p below %1 is possible.")
                                         .arg(m_numbers.significant(smallest)));
    return text;
}

QString Words::companion(core::Companion companion) const
{
    const core::Companions& others = m_analysis.companions;
    QString what;
    const core::Interval* interval = nullptr;
    switch (companion) {
    case core::Companion::bracket:
        what = tr("Bracketing compares each device block with the line between its two "
                  "neighbouring baseline blocks");
        interval = others.bracket ? &*others.bracket : nullptr;
        break;
    case core::Companion::runs:
        what = tr("Single runs, unpaired ones too, with the direction as a term of its own");
        interval = others.runs ? &*others.runs : nullptr;
        break;
    case core::Companion::blocks:
        what = tr("Block means: few numbers, but the only way that stays honest when something "
                  "besides the device changes at a switch");
        interval = others.blocks ? &*others.blocks : nullptr;
        break;
    case core::Companion::correlated:
        what = tr("Allowing for pairs that resemble their neighbours widens the interval to where "
                  "such noise would put it");
        interval = others.correlated ? &*others.correlated : nullptr;
        break;
    case core::Companion::labels: return labels();
    }
    if (interval == nullptr) //: %1 what the companion is
        return tr("%1; not to be had from these runs.").arg(what);
    const int digits = NumberWords::decimalsOfRange(interval->low_log, interval->high_log);
    //: %1 what the companion is, %2 effect, %3 as "95 %", %4 as "0.4 to 2.0 % less"
    return tr("%1: %2 (%3 interval: %4).")
        .arg(what, m_numbers.change(interval->effect_log, digits),
             m_numbers.percent(m_analysis.options.confidence),
             m_numbers.range(interval->low_log, interval->high_log, digits));
}

QString Words::note(const core::Note& note) const
{
    const QString text = QString::fromStdString(note.text.english());
    switch (note.kind) {
    case core::NoteKind::discardedByScreening: return tr("Screening left out: %1.").arg(text);
    case core::NoteKind::controlUsed:
        return tr("Consumption is taken relative to the control vehicle that drove in step.");
    case core::NoteKind::controlIncomplete:
        return tr("The control vehicle is not used: some counted runs lack its consumption.");
    case core::NoteKind::pairMarkIgnored:
        return tr("A pair tied by hand is set aside: %1.").arg(text);
    case core::NoteKind::mixedUnits:
        return tr("Runs are given in more than one unit; they were converted before anything "
                  "else.");
    case core::NoteKind::dateAssumed:
        return tr("The sheet has times of day only; %1 was taken as its date.").arg(text);
    case core::NoteKind::sheetDialect: return tr("The sheet was read with %1.").arg(text);
    case core::NoteKind::consumptionFromTrace:
        return tr("Consumption taken from the recording: run %1.").arg(text);
    case core::NoteKind::consumptionLacking:
        return tr("No consumption, neither typed nor recorded, so not used: run %1.").arg(text);
    case core::NoteKind::pairingNotExact:
        return tr("Block %1 has so many runs within reach of one another that its pairs were "
                  "chosen by a short cut.")
            .arg(text);
    case core::NoteKind::densityOutsideRange:
        return tr("The air was outside the range of the density formula (15 to 27\u00a0°C, 600 to "
                  "1,100\u00a0hPa): take its density as approximate.");
    }
    return {};
}

} // namespace bothways::app
