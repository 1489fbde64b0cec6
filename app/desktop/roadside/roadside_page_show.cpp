// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/roadside_page.h"

#include "app/desktop/look/big_label.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/roadside/roadside_words.h"
#include "app/desktop/watch/alarm_band.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/watch_panel.h"
#include "app/wording/findings.h"
#include "app/wording/instruments.h"

#include <algorithm>

/// What the page shows of the session: the head, each part, the timers, the bar.
namespace bothways::app {

void RoadsidePage::refreshHead()
{
    const UpNext next = m_session.next();
    QStringList parts{m_session.hasRun() ? tr("Run %1").arg(next.number)
                                         : tr("Next: run %1").arg(next.number)};
    parts += next.planned_blocks ? tr("block %1 of %2").arg(next.block).arg(*next.planned_blocks)
                                 : tr("block %1").arg(next.block);
    if (next.planned_pairs_in_block)
        parts += tr("pair %1 of %2")
                     .arg(std::min(next.pairs_in_block + 1, *next.planned_pairs_in_block))
                     .arg(*next.planned_pairs_in_block);
    m_title->setWords(parts.join(QString::fromUtf8(" · ")));
    m_pairs->setWords(pairsText());
    m_time->setWords(m_preferences.units().locale.toString(m_clock().time(), "HH:mm"));
}

/// Of the plan where one is tied; else what the verdict asks for, unless it is hidden.
QString RoadsidePage::pairsText() const
{
    const PairTally tally = pairTally(m_document.study());
    if (tally.planned)
        return tr("Pairs: %1 of %2").arg(tally.done).arg(*tally.planned);
    const QString done = tr("Pairs: %1").arg(tally.done);
    const auto result = m_document.result();
    if (m_document.isBlind() || !result || !m_document.isResultCurrent())
        return done;
    const auto more = result->analysis.verdict.more_pairs_per_block;
    if (!more || *more <= 0)
        return done;
    return tr("%1, %2 more in each block").arg(done).arg(*more);
}

QString RoadsidePage::todo(const UpNext& next) const
{
    QStringList lines;
    switch (next.because) {
    case UpNext::Because::plan: break;
    case UpNext::Because::planDone: lines += tr("The plan is driven. More runs do no harm."); break;
    case UpNext::Because::offThePlan:
        lines += tr("The blocks so far are not those of the plan. Going on as after the last run.");
        break;
    case UpNext::Because::lastRun:
        if (m_document.study().runs.empty())
            lines += tr("Nothing is planned and nothing driven yet. Choose what this run is.");
        break;
    }
    if (next.switchFirst)
        lines += tr("Switch to %1 first. Note what was changed.")
                     .arg(RoadsideWords::text(next.configuration));
    if (m_session.isWalkRoundDue())
        lines += tr("Walk round the car before this block.");
    const auto& runs = m_document.study().runs;
    const auto last = std::find_if(runs.rbegin(), runs.rend(),
                                   [](const core::Run& run) { return run.counted(); });
    if (last != runs.rend() && !last->accessories.empty())
        lines += tr("In run %1 these were on: %2. Have the same on now.")
                     .arg(last->number)
                     .arg(RoadsideWords::text(last->accessories));
    else
        lines += tr("Accessories as in every run; windows closed.");
    return lines.join(u'\n');
}

void RoadsidePage::refreshReady()
{
    const UpNext next = m_session.next();
    find("configuration")
        ->setWords(QString::fromUtf8(next.device ? "■ %1" : "● %1")
                       .arg(RoadsideWords::text(next.configuration)),
                   tr("Configuration"));
    find("direction")->setWords(RoadsideWords::text(next.direction), tr("Direction"));
    find("setting")->setWords(next.setting.empty() ? QString(QChar(0x2013))
                                                   : RoadsideWords::text(next.setting),
                              tr("Setting"));
    m_todo->setWords(todo(next));
    QStringList below;
    if (const auto expected = m_session.expected_s())
        below += tr("A run takes about %1.").arg(RoadsideWords::clock(*expected));
    const core::RunsBy::Way way = m_live.rig().runs.way;
    const bool isFound = m_live.isRecording() && way != core::RunsBy::Way::hand;
    below += isFound ? tr("Runs begin and end %1. Start and End do it by hand.")
                           .arg(shown(wording::runsByWords(m_preferences.spoken(), way)))
                     : tr("Press Start when the meter is reset: when already cruising.");
    m_below->setWords(below.join(u'\n'));
    refreshOnceABlock();
    const QString warning = timerWarning();
    setNotice(warning.isEmpty() ? m_said : warning, !warning.isEmpty());
}

void RoadsidePage::refreshRunning()
{
    m_elapsed->setWords(RoadsideWords::clock(m_session.elapsed_s()));
    const RoadsideRun& run = *m_session.run();
    QStringList lines;
    const auto expected = m_session.expected_s();
    if (expected)
        lines += tr("of about %1").arg(RoadsideWords::clock(*expected));
    const int marks = static_cast<int>(run.marks.size());
    if (marks > 0)
        lines += tr("Marks: %1, the last at %2 s")
                     .arg(marks)
                     .arg(m_preferences.units().fieldText(run.marks.back().at_s, 0));
    else
        lines += tr("The meter was reset when already cruising? If not: Discard.");
    if (m_session.isWalkRoundDue())
        lines += tr("This block began without its walk-round.");
    m_reminder->setWords(lines.join(u'\n'));
    QString warning = timerWarning();
    if (m_session.clockWasSetBack())
        warning =
            tr("The clock was set back during this run. Its times go on from where they were.");
    if (warning.isEmpty() && expected && m_session.elapsed_s() > 1.5 * *expected)
        warning = tr("This run is long over what was expected. Was the end missed?");
    setNotice(warning.isEmpty() ? tr("%1, %2. Note what happens when it happens.")
                                      .arg(RoadsideWords::text(run.configuration),
                                           RoadsideWords::text(run.direction))
                                : warning,
              !warning.isEmpty());
}

void RoadsidePage::refreshTyping()
{
    const RoadsideRun& run = *m_session.run();
    QStringList parts{RoadsideWords::text(run.configuration), RoadsideWords::text(run.direction)};
    if (!run.setting.empty())
        parts.insert(1, RoadsideWords::text(run.setting));
    QStringList marks;
    for (const core::Mark& mark : run.marks)
        marks += tr("%1 at %2 s")
                     .arg(shown(wording::markName(m_preferences.spoken(), mark.word)),
                          m_preferences.units().fieldText(mark.at_s, 0));
    QString summary = parts.join(QString::fromUtf8(" · "));
    if (!marks.isEmpty())
        summary += u'\n' + marks.mid(std::max<qsizetype>(0, marks.size() - 3)).join("; ");
    m_summary->setWords(summary);
    const QString unit = m_preferences.units().unitText(m_session.unit());
    m_display->setWords(run.typed.isEmpty() ? QString(QChar(0x2013)) : run.typed);
    m_display->setAccessibleDescription(tr("%1 %2").arg(run.typed, unit));
    find("unit")->setWords(unit, tr("Unit"));
    const QString taken = RoadsideWords::clock(m_session.elapsed_s());
    find("duration")->setWords(run.without_duration ? tr("left out") : taken, tr("Duration"));
    const QStringList& questions = m_session.questions();
    refreshAnswers();
    if (questions.isEmpty())
        setNotice(m_said.isEmpty() ? tr("What does the dashboard show, in %1?").arg(unit) : m_said);
    else
        setNotice(questions.join(u' '), true);
}

/// OK, or what answers the question about a consumption that is far off.
void RoadsidePage::refreshAnswers()
{
    const RoadsideRun& run = *m_session.run();
    const bool unanswered = m_session.isUnanswered();
    const auto likely = m_session.likely();
    BigButton* ok = find("ok");
    BigButton* take = find("takeLikely");
    BigButton* keep = find("keepTyped");
    const bool hadKeyboard = ok->hasFocus() || take->hasFocus() || keep->hasFocus();
    ok->setVisible(!unanswered);
    take->setVisible(likely.has_value());
    keep->setVisible(unanswered);
    ok->setWords(m_session.questions().isEmpty() ? tr("OK") : tr("Yes, keep it"));
    if (likely)
        take->setWords(tr("Take %1").arg(shortly(*likely, run.unit, m_preferences.units())));
    if (unanswered)
        keep->setWords(tr("Keep %1").arg(run.typed));
    if (hadKeyboard && unanswered) // where Space does no harm
        setFocus(Qt::OtherFocusReason);
    else if (hadKeyboard || (!unanswered && hasFocus()))
        ok->setFocus(Qt::OtherFocusReason);
}

QString RoadsidePage::timerWarning()
{
    for (const auto& timer : m_session.timers()) {
        const QString name = RoadsideWords::readable(timer.accessory.name);
        if (timer.left_s && *timer.left_s <= 0.0)
            return tr("%1 has dropped out. Press its button when it is on again, twice if it stays "
                      "off.")
                .arg(name);
        if (timer.dropsOutInRun)
            return m_session.hasRun()
                       ? tr("%1 drops out in %2, before the end of this run.")
                             .arg(name, RoadsideWords::clock(*timer.left_s))
                       : tr("%1 would drop out in %2, during the next run. Switch it on anew "
                            "before Start.")
                             .arg(name, RoadsideWords::clock(*timer.left_s));
    }
    return {};
}

void RoadsidePage::refreshTimers()
{
    const auto timers = m_session.timers();
    for (std::size_t i = 0; i < timers.size() && i < m_timers.size(); ++i) {
        const auto& timer = timers[i];
        const QString name = RoadsideWords::readable(timer.accessory.name);
        QString words;
        if (!timer.left_s)
            words = tr("%1: off. Press when switched on").arg(name);
        else if (*timer.left_s > 0.0)
            words = tr("%1: on, %2 left").arg(name, RoadsideWords::clock(*timer.left_s));
        else
            words = tr("%1: dropped out %2 ago").arg(name, RoadsideWords::clock(-*timer.left_s));
        m_timers[i]->setWords(words);
        const bool warns = timer.left_s && (*timer.left_s <= 0.0 || timer.dropsOutInRun);
        m_timers[i]->setKind(warns ? BigButton::Kind::primary : BigButton::Kind::plain);
        m_timers[i]->setEnabled(!isAside());
    }
}

void RoadsidePage::refreshBar()
{
    const int number = m_session.discardable();
    find("discard")->setWords(number > 0 ? tr("Discard run %1").arg(number) : tr("Discard"));
    find("discard")->setEnabled(number > 0 && !isAside());
    const QString undo = m_session.undoWords();
    find("undo")->setWords(undo.isEmpty() ? tr("Undo") : tr("Undo: %1").arg(undo));
    find("undo")->setEnabled(!undo.isEmpty() && !isAside());
    find("theme")->setWords(Theme::of(palette()).dark ? tr("Light") : tr("Dark"));
    find("leave")->setWords(isAside() ? tr("Back") : tr("Leave"));
}

void RoadsidePage::takeTheme()
{
    const ThemeChoice choice = m_preferences.roadsideTheme();
    if (choice != ThemeChoice::system) // else it follows the program
        setPalette((choice == ThemeChoice::dark ? Theme::night() : Theme::light()).palette());
}

void RoadsidePage::dress()
{
    const Theme theme = Theme::of(palette());
    for (BigButton* made : findChildren<BigButton*>())
        made->setTheme(theme);
    m_watchReady->setTheme(theme);
    m_watchRunning->setTheme(theme);
    m_alarm->setTheme(theme);
    QPalette paper = palette();
    paper.setColor(QPalette::Window, theme.paper);
    paper.setColor(QPalette::WindowText, theme.ink);
    m_display->setPalette(paper);
    setNotice(m_notice->text(), false);
}

} // namespace bothways::app
