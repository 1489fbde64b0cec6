// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/roadside_page.h"

#include "app/desktop/look/big_label.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/roadside/roadside_words.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/watch_panel.h"

#include <QCloseEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr int kTick_ms = 200;

} // namespace

RoadsidePage::RoadsidePage(StudyDocument& document, Preferences& preferences, Clock clock,
                           LiveDesk& live, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_document(document),
      m_preferences(preferences),
      m_clock(clock),
      m_session(document, preferences, std::move(clock)),
      m_live(live)
{
    setObjectName("roadsidePage");
    setWindowTitle(tr("Roadside – %1").arg(document.name()));
    setAccessibleName(tr("Roadside mode"));
    setAutoFillBackground(true);
    setFocusPolicy(Qt::ClickFocus);
    resize(1280, 800);
    build();
    for (const WatchPanel* panel : {m_watchReady, m_watchRunning})
        connect(panel, &WatchPanel::anotherWanted, this, &RoadsidePage::chooseAnotherChannel);
    buildTimers();
    orderTabs();
    takeTheme();
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
    connect(&live, &LiveDesk::recordingStarted, this, &RoadsidePage::takeLive);
    connect(&live, &LiveDesk::recordingStopping, this, &RoadsidePage::takeLive);
    connect(&live, &LiveDesk::looked, this, &RoadsidePage::lookLive);
    takeLive();
}

RoadsidePage::~RoadsidePage() = default;

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
    m_afterTurn = nullptr;
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
    refreshLive();
}

void RoadsidePage::tick()
{
    m_time->setWords(m_preferences.units().locale.toString(m_clock().time(), "HH:mm"));
    refreshTimers();
    if (m_usualWords->isVisible())
        m_wordsElapsed->setWords(RoadsideWords::clock(m_session.elapsed_s()));
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
                            const std::function<QString(const QString&)>& job, bool duringRun)
{
    m_usualWords->setVisible(duringRun);
    m_wordsElapsed->setWords(RoadsideWords::clock(m_session.elapsed_s()));
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
    if (!refusal.isEmpty())
        setNotice(refusal, true);
    else if (m_afterTurn)
        askNextInTurn();
    else
        refresh();
}

void RoadsidePage::markAt(const char* word)
{
    const QString refusal = m_session.mark(word);
    if (refusal.isEmpty() && std::string_view(word) == "other") {
        askWords(
            tr("The moment is noted. What happened?"), {},
            [this](const QString& words) { return m_session.describeMark(words); }, true);
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
        if (refusal.isEmpty()) {
            m_said = tr("Run %1 is discarded.").arg(number);
            m_live.settleEnded(number);
        }
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
    const QString sentence =
        words.arg(m_session.number())
            .arg(RoadsideWords::text(run.configuration), RoadsideWords::text(run.direction),
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
    if (key == Qt::Key_Return && m_stack->currentWidget() == m_typing && m_session.isUnanswered())
        return; // the question stays: its answers have keys of their own
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
