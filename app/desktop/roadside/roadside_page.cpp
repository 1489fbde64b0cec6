// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/roadside_page.h"

#include "app/desktop/preferences.h"
#include "app/desktop/roadside/big_label.h"
#include "app/desktop/roadside/roadside_words.h"

#include <QCloseEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr int kTick_ms = 200;

QString text(const std::string& words)
{
    return QString::fromStdString(words);
}

} // namespace

RoadsidePage::RoadsidePage(StudyDocument& document, Preferences& preferences, Clock clock,
                           QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_document(document),
      m_preferences(preferences),
      m_clock(clock),
      m_session(document, preferences, std::move(clock))
{
    setObjectName("roadsidePage");
    setWindowTitle(tr("Roadside – %1").arg(document.name()));
    setAccessibleName(tr("Roadside mode"));
    setAutoFillBackground(true);
    resize(1280, 800);
    build();
    buildTimers();
    orderTabs();
    dress();
    m_said = tr("The driver drives, the companion types.");
    refresh();
    if (m_session.wasResumed())
        askAboutResumed();
    connect(&document, &StudyDocument::studyChanged, this, [this] {
        if (m_timers.size() != m_document.study().properties.timed_accessories.size()) {
            buildTimers();
            orderTabs();
        }
        refresh();
    });
    connect(&document, &StudyDocument::analysisChanged, this, [this] { refreshHead(); });
    connect(&document, &StudyDocument::blindChanged, this, [this] { refreshHead(); });
    connect(&m_ticking, &QTimer::timeout, this, &RoadsidePage::tick);
}

BigButton* RoadsidePage::find(const char* name) const
{
    return findChild<BigButton*>(name);
}

QString RoadsidePage::notice() const
{
    return m_notice->text();
}

void RoadsidePage::follow(const QString& refusal)
{
    if (!refusal.isEmpty()) {
        setNotice(refusal, true);
        m_refused = true;
        refreshTimers();
        return;
    }
    refresh();
}

void RoadsidePage::setNotice(const QString& sentence, bool problem)
{
    //: in front of a sentence that says what is wrong
    m_notice->setWords(problem ? tr("⚠ %1").arg(sentence) : sentence);
    const Theme theme = Theme::of(palette());
    QPalette colours = palette();
    colours.setColor(QPalette::Window, problem ? theme.ink : theme.window);
    colours.setColor(QPalette::WindowText, problem ? theme.paper : theme.ink);
    m_notice->setAutoFillBackground(problem);
    m_notice->setPalette(colours);
}

bool RoadsidePage::isAside() const
{
    const QWidget* page = m_stack->currentWidget();
    return page == m_discard || page == m_words || page == m_question;
}

void RoadsidePage::showPart(QWidget* page)
{
    if (m_stack->currentWidget() == page)
        return;
    m_stack->setCurrentWidget(page);
    const char* first = nullptr;
    if (page == m_ready)
        first = "start";
    else if (page == m_running)
        first = "end";
    else if (page == m_typing)
        first = "ok";
    else if (page == m_question)
        first = "choice0";
    else if (page == m_discard)
        first = "discardBack";
    if (first)
        find(first)->setFocus(Qt::OtherFocusReason);
    else
        m_line->setFocus(Qt::OtherFocusReason);
}

/// What the session has come to, on the page that belongs to it.
void RoadsidePage::refresh()
{
    m_refused = false;
    refreshHead();
    switch (m_session.state()) {
    case RoadsideSession::State::ready:
    case RoadsideSession::State::written:
        showPart(m_ready);
        refreshReady();
        break;
    case RoadsideSession::State::running:
        showPart(m_running);
        refreshRunning();
        break;
    case RoadsideSession::State::ended:
        showPart(m_typing);
        refreshTyping();
        break;
    }
    refreshTimers();
    refreshBar();
}

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
        lines += tr("Switch to %1 first. Note what was changed.").arg(text(next.configuration));
    const auto& runs = m_document.study().runs;
    const auto last = std::find_if(runs.rbegin(), runs.rend(),
                                   [](const core::Run& run) { return run.counted(); });
    if (last != runs.rend() && !last->accessories.empty())
        lines += tr("On, as in run %1: %2.").arg(last->number).arg(text(last->accessories));
    else
        lines += tr("Accessories as in every run; windows closed.");
    return lines.join(u'\n');
}

void RoadsidePage::refreshReady()
{
    const UpNext next = m_session.next();
    find("configuration")
        ->setWords(QString::fromUtf8(next.device ? "■ %1" : "● %1").arg(text(next.configuration)),
                   tr("Configuration"));
    find("direction")->setWords(text(next.direction), tr("Direction"));
    find("setting")->setWords(next.setting.empty() ? QString(QChar(0x2013)) : text(next.setting),
                              tr("Setting"));
    m_todo->setWords(todo(next));
    QStringList below;
    if (const auto expected = m_session.expected_s())
        below += tr("A run takes about %1.").arg(RoadsideWords::clock(*expected));
    below += tr("Press Start when the meter is reset: when already cruising.");
    m_below->setWords(below.join(u'\n'));
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
    m_reminder->setWords(lines.join(u'\n'));
    QString warning = timerWarning();
    if (m_session.clockWasSetBack())
        warning =
            tr("The clock was set back during this run. Its times go on from where they were.");
    if (warning.isEmpty() && expected && m_session.elapsed_s() > 1.5 * *expected)
        warning = tr("This run is long over what was expected. Was the end missed?");
    setNotice(warning.isEmpty() ? tr("%1, %2. Note what happens when it happens.")
                                      .arg(text(run.configuration), text(run.direction))
                                : warning,
              !warning.isEmpty());
}

void RoadsidePage::refreshTyping()
{
    const RoadsideRun& run = *m_session.run();
    QStringList parts{text(run.configuration), text(run.direction)};
    if (!run.setting.empty())
        parts.insert(1, text(run.setting));
    QStringList marks;
    for (const core::Mark& mark : run.marks)
        marks +=
            tr("%1 at %2 s")
                .arg(RoadsideWords::mark(mark.word), m_preferences.units().fieldText(mark.at_s, 0));
    QString summary = parts.join(QString::fromUtf8(" · "));
    if (!marks.isEmpty())
        summary += u'\n' + marks.mid(std::max<qsizetype>(0, marks.size() - 3)).join("; ");
    m_summary->setWords(summary);
    const QString unit = UnitsShown::unitText(m_session.unit());
    m_display->setWords(run.typed.isEmpty() ? QString(QChar(0x2013)) : run.typed);
    m_display->setAccessibleDescription(tr("%1 %2").arg(run.typed, unit));
    find("unit")->setWords(unit, tr("Unit"));
    const QString taken = RoadsideWords::clock(m_session.elapsed_s());
    find("duration")->setWords(run.without_duration ? tr("left out") : taken, tr("Duration"));
    const QStringList& questions = m_session.questions();
    find("ok")->setWords(questions.isEmpty() ? tr("OK") : tr("Yes, keep it"));
    if (questions.isEmpty())
        setNotice(m_said.isEmpty() ? tr("What does the dashboard show, in %1?").arg(unit) : m_said);
    else
        setNotice(questions.join(u' '), true);
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

void RoadsidePage::tick()
{
    m_time->setWords(m_preferences.units().locale.toString(m_clock().time(), "HH:mm"));
    refreshTimers();
    if (isAside())
        return;
    // A refusal stays until the next press; a warning goes on with the clock.
    switch (m_session.state()) {
    case RoadsideSession::State::ready:
        if (!m_refused)
            refreshReady();
        break;
    case RoadsideSession::State::running:
        if (m_refused)
            m_elapsed->setWords(RoadsideWords::clock(m_session.elapsed_s()));
        else
            refreshRunning();
        break;
    case RoadsideSession::State::ended:
    case RoadsideSession::State::written: break;
    }
}

void RoadsidePage::dress()
{
    const Theme theme = Theme::of(palette());
    for (BigButton* made : findChildren<BigButton*>())
        made->setTheme(theme);
    QPalette paper = palette();
    paper.setColor(QPalette::Window, theme.paper);
    paper.setColor(QPalette::WindowText, theme.ink);
    m_display->setPalette(paper);
    setNotice(m_notice->text(), false);
}

void RoadsidePage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && m_display) {
        dress();
        if (!isAside())
            refresh();
    }
}

void RoadsidePage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    m_ticking.start(kTick_ms);
    if (!isAside())
        refresh();
}

void RoadsidePage::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    m_ticking.stop();
}

void RoadsidePage::ask(const QString& question, const std::vector<Choice>& choices)
{
    m_asked->setWords(question);
    for (std::size_t i = 0; i < m_choices.size(); ++i) {
        BigButton* choice = m_choices[i];
        choice->disconnect(this);
        choice->setVisible(i < choices.size());
        if (i >= choices.size())
            continue;
        choice->setKey(choices[i].key);
        choice->setWords(choices[i].text);
        connect(choice, &QAbstractButton::clicked, this, choices[i].job);
    }
    setNotice({});
    showPart(m_question);
    refreshTimers();
    refreshBar();
}

void RoadsidePage::askWords(const QString& question, const QString& before,
                            const std::function<QString(const QString&)>& job)
{
    m_wordsAsked->setWords(question);
    m_line->setText(before);
    m_line->selectAll();
    m_wordsJob = job;
    QFont font = m_line->font();
    font.setPixelSize(std::max(14, height() / 16));
    m_line->setFont(font);
    setNotice({});
    showPart(m_words);
    refreshTimers();
    refreshBar();
}

void RoadsidePage::acceptWords()
{
    const QString refusal = m_wordsJob(m_line->text());
    if (refusal.isEmpty())
        refresh();
    else
        setNotice(refusal, true);
}

void RoadsidePage::markAt(const char* word)
{
    const QString refusal = m_session.mark(word);
    if (refusal.isEmpty() && std::string_view(word) == "other") {
        askWords(tr("The moment is noted. What happened?"), {},
                 [this](const QString& words) { return m_session.describeMark(words); });
        return;
    }
    follow(refusal);
}

void RoadsidePage::chooseReason()
{
    if (isAside())
        return;
    m_reasonAsked->setWords(tr("Why does run %1 not count? It stays in the list, with the reason.")
                                .arg(m_session.discardable()));
    setNotice({});
    showPart(m_discard);
    refreshTimers();
    refreshBar();
}

void RoadsidePage::discardFor(const std::string& reason)
{
    const int number = m_session.discardable();
    const auto discard = [this, reason, number](const QString& words) {
        const QString refusal = m_session.discard({reason, words.trimmed().toStdString()});
        if (refusal.isEmpty())
            m_said = tr("Run %1 is discarded.").arg(number);
        return refusal;
    };
    if (reason == "other") {
        askWords(tr("Why does run %1 not count?").arg(number), {}, discard);
        return;
    }
    follow(discard({}));
}

void RoadsidePage::askAboutResumed()
{
    const RoadsideRun& run = *m_session.run();
    const QString words =
        run.end_ms ? tr("Run %1 (%2, %3) was ended %4 after its start, and its consumption is not "
                        "typed yet.")
                   : tr("Run %1 (%2, %3) was under way when the program ended. It started %4 ago.");
    const QString sentence = words.arg(m_session.number())
                                 .arg(text(run.configuration), text(run.direction),
                                      RoadsideWords::clock(m_session.elapsed_s()));
    ask(sentence, {{tr("Go on"), Qt::Key_G,
                    [this] {
                        m_session.goOn();
                        refresh();
                    }},
                   {tr("Discard it, with a reason"), Qt::Key_X,
                    [this] {
                        m_session.goOn();
                        refresh();
                        chooseReason();
                    }},
                   {tr("Forget it"), Qt::Key_F, [this] {
                        m_session.forget();
                        m_said = tr("The run was forgotten; nothing was written.");
                        refresh();
                    }}});
}

void RoadsidePage::back()
{
    refresh();
}

void RoadsidePage::leave()
{
    if (m_session.wasResumed() && m_stack->currentWidget() == m_question) {
        quit(); // not answered: it is asked again
        return;
    }
    if (isAside()) {
        back();
        return;
    }
    if (!m_session.hasRun()) {
        quit();
        return;
    }
    const bool running = m_session.state() == RoadsideSession::State::running;
    ask(running ? tr("Run %1 is under way. Leave all the same? Start and marks are kept.")
                      .arg(m_session.number())
                : tr("The consumption of run %1 is not written yet. Leave all the same? What was "
                     "noted is kept.")
                      .arg(m_session.number()),
        {{tr("Stay"), Qt::Key_S, [this] { back(); }},
         {tr("Leave"), Qt::Key_L, [this] { quit(); }}});
}

void RoadsidePage::quit()
{
    hide();
    emit left();
}

void RoadsidePage::closeEvent(QCloseEvent* event)
{
    event->accept(); // what is under way is kept
    emit left();
}

/// A key presses the button that shows it.
void RoadsidePage::keyPressEvent(QKeyEvent* event)
{
    const int key = event->key() == Qt::Key_Enter ? Qt::Key_Return : event->key();
    if (event->isAutoRepeat() && key != Qt::Key_Backspace)
        return;
    if (key == Qt::Key_F9) {
        leave();
        return;
    }
    if (m_stack->currentWidget() == m_typing && !event->text().isEmpty()) {
        const QChar typed = event->text().front();
        if (typed.isDigit() || typed == u'.' || typed == u',') {
            m_session.type(typed);
            follow({});
            return;
        }
    }
    for (BigButton* made : findChildren<BigButton*>()) {
        if (made->isVisible() && made->isEnabled() && made->key() != kNoKey && made->key() == key &&
            !(made->objectName() == "leave" && isAside() && m_stack->currentWidget() == m_words)) {
            made->click();
            return;
        }
    }
    if (auto* focused = qobject_cast<BigButton*>(focusWidget()); focused && key == Qt::Key_Return)
        focused->click();
}

} // namespace bothways::app
