// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one page, state by state, in the order in which a run meets them.
#include "app/desktop/look/big_label.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/words.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/roadside/roadside_words.h"
#include "app/desktop/runs/run_tags.h"
#include "app/desktop/watch/alarm_band.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/watch_panel.h"

#include "app/desktop/look/said.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

using Kind = BigButton::Kind;

constexpr int kGap = 8;

/// What people in the car can see, of the rules' reasons.
constexpr core::Rule kReasons[] = {core::Rule::interrupted,     core::Rule::passingTraffic,
                                   core::Rule::notCruising,     core::Rule::roadSpeed,
                                   core::Rule::accessoryChange, core::Rule::accessoryTimer,
                                   core::Rule::settingMismatch, core::Rule::overspeed,
                                   core::Rule::vibration,       core::Rule::adjusted};

template <class Layout>
Layout* spaced(Layout* layout)
{
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(kGap);
    return layout;
}

} // namespace

BigButton* RoadsidePage::button(Kind kind, const char* name, Qt::Key key, QWidget* parent,
                                const std::function<void()>& job)
{
    auto* made = new BigButton(kind, name, key, parent);
    connect(made, &QAbstractButton::clicked, this, job);
    return made;
}

BigButton* RoadsidePage::find(const char* name) const
{
    return findChild<BigButton*>(name);
}

BigLabel* RoadsidePage::label(const char* name, double most, QWidget* parent)
{
    auto* made = new BigLabel(most, parent);
    made->setObjectName(name);
    return made;
}

void RoadsidePage::build()
{
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(kGap, kGap, kGap, kGap);
    box->setSpacing(kGap);
    auto* head = spaced(new QHBoxLayout);
    m_title = label("title", 0.055, this);
    m_title->setBold(true);
    m_pairs = label("pairs", 0.05, this);
    m_pairs->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_time = label("time", 0.05, this);
    m_time->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    head->addWidget(m_title, 52);
    head->addWidget(m_pairs, 34);
    head->addWidget(m_time, 14);
    box->addLayout(head, 9);
    m_notice = label("notice", 0.045, this);
    m_notice->setMargin(4);
    box->addWidget(m_notice, 11);
    buildLive(*box);
    m_stack = new QStackedWidget(this);
    m_stack->setObjectName("roadsideStack");
    for (QWidget* page :
         {m_ready = buildReady(), m_running = buildRunning(), m_typing = buildTyping(),
         m_discard = buildDiscard(), m_words = buildWords(), m_question = buildQuestion()})
        m_stack->addWidget(page);
    box->addWidget(m_stack, 58);
    m_timerStrip = new QWidget(this);
    m_timerStrip->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_timerBox = spaced(new QHBoxLayout(m_timerStrip));
    box->addWidget(m_timerStrip, 11);
    box->addWidget(buildBar(), 11);
}

QWidget* RoadsidePage::buildReady()
{
    auto* page = new QWidget(m_stack);
    auto* grid = m_readyGrid = spaced(new QGridLayout(page));
    auto* configuration = button(Kind::plain, "configuration", Qt::Key_C, page, [this] {
        m_session.chooseConfiguration();
        follow({});
    });
    auto* direction = button(Kind::plain, "direction", Qt::Key_D, page, [this] {
        m_session.chooseDirection();
        follow({});
    });
    auto* setting = button(Kind::plain, "setting", Qt::Key_V, page, [this] {
        askWords(tr("Which setting has the device in this run?"),
                 QString::fromStdString(m_session.next().setting), [this](const QString& words) {
                     m_session.chooseSetting(words);
                     return QString();
                 });
    });
    for (BigButton* value : {configuration, direction, setting})
        value->setMost(0.11);
    auto* start = button(Kind::primary, "start", Qt::Key_S, page, [this] {
        const QString refusal = m_session.start();
        if (refusal.isEmpty())
            m_said.clear();
        follow(refusal);
    });
    start->setMost(0.16);
    start->setWords(tr("Start"));
    m_todo = label("todo", 0.05, page);
    m_todo->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_below = label("below", 0.05, page);
    m_below->setAlignment(Qt::AlignLeft | Qt::AlignBottom);
    grid->addWidget(configuration, 0, 0);
    grid->addWidget(direction, 0, 1);
    grid->addWidget(setting, 0, 2);
    grid->addWidget(start, 1, 0, 1, 3);
    grid->addWidget(m_todo, 0, 3);
    grid->addLayout(buildOnceABlock(page), 1, 3);
    for (int column = 0; column < 3; ++column)
        grid->setColumnStretch(column, 20);
    grid->setColumnStretch(3, 42);
    grid->setRowStretch(0, 45);
    grid->setRowStretch(1, 55);
    m_watchReady = new WatchPanel(WatchPanel::kChannels, page);
    grid->addWidget(m_watchReady, 2, 0, 1, 4);
    return page;
}

QWidget* RoadsidePage::buildRunning()
{
    auto* page = new QWidget(m_stack);
    m_runningGrid = spaced(new QGridLayout(page));
    m_watchRunning = new WatchPanel(2, page);
    m_distance = label("distance", 0.07, page);
    m_distance->setBold(true);
    m_distance->setAlignment(Qt::AlignCenter);
    m_elapsed = label("elapsed", 0.24, page);
    m_elapsed->setBold(true);
    m_elapsed->setAlignment(Qt::AlignCenter);
    m_reminder = label("reminder", 0.05, page);
    m_reminder->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    const auto group = std::make_shared<std::vector<BigButton*>>();
    const auto mark = [&](const char* name, const char* word, Qt::Key key) {
        BigButton* made = button(Kind::plain, name, key, page, [this, word] { markAt(word); });
        made->setMost(0.06);
        made->setWords(shown(wording::markName(m_preferences.spoken(), word)));
        made->setGroup(group);
    };
    mark("markTraffic", kTrafficMark.data(), Qt::Key_P);
    mark("markGust", "gust", Qt::Key_G);
    mark("markAdjusted", kAdjustedMark.data(), Qt::Key_J);
    mark("markOther", "other", Qt::Key_O);
    auto* end = button(Kind::primary, "end", Qt::Key_E, page, [this] { follow(m_session.end()); });
    end->setMost(0.14);
    end->setWords(tr("End"));
    return page;
}

QWidget* RoadsidePage::buildTyping()
{
    auto* page = new QWidget(m_stack);
    auto* across = spaced(new QHBoxLayout(page));
    auto* left = spaced(new QVBoxLayout);
    m_summary = label("summary", 0.05, page);
    m_summary->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_display = label("display", 0.16, page);
    m_display->setBold(true);
    m_display->setAlignment(Qt::AlignCenter);
    m_display->setAutoFillBackground(true);
    m_display->setFrameShape(QFrame::Box);
    m_display->setLineWidth(2);
    m_display->setAccessibleName(tr("Consumption"));
    auto* choices = spaced(new QHBoxLayout);
    choices->addWidget(
        button(Kind::quiet, "unit", Qt::Key_U, page, [this] { follow(m_session.changeUnit()); }));
    choices->addWidget(button(Kind::quiet, "duration", Qt::Key_L, page, [this] {
        m_session.setWithoutDuration(!m_session.run()->without_duration);
        follow({});
    }));
    left->addWidget(m_summary, 30);
    left->addWidget(m_display, 45);
    left->addLayout(choices, 25);
    across->addLayout(left, 46);
    across->addLayout(buildPad(page), 54);
    return page;
}

QLayout* RoadsidePage::buildPad(QWidget* page)
{
    auto* pad = spaced(new QGridLayout);
    const auto group = std::make_shared<std::vector<BigButton*>>();
    const auto digit = [&](int number, int row, int column) {
        const QString name = QString("digit%1").arg(number);
        const auto key = Qt::Key(Qt::Key_0 + number);
        BigButton* made = button(Kind::plain, name.toUtf8().constData(), key, page, [this, number] {
            m_session.type(QChar(u'0' + number));
            follow({});
        });
        made->setMost(0.09);
        made->setWords(m_preferences.units().locale.toString(number));
        made->setKey(kNoKey); // the key is the text
        made->setProperty("digit", number);
        made->setGroup(group);
        pad->addWidget(made, row, column);
    };
    for (int number = 1; number <= 9; ++number)
        digit(number, 2 - (number - 1) / 3, (number - 1) % 3);
    digit(0, 3, 0);
    BigButton* point = button(Kind::plain, "decimalSign", kNoKey, page, [this] {
        m_session.type(u'.');
        follow({});
    });
    point->setWords(m_preferences.units().locale.decimalPoint());
    point->setAccessibleName(tr("Decimal sign"));
    point->setMost(0.09);
    pad->addWidget(point, 3, 1);
    BigButton* backspace = button(Kind::plain, "backspace", Qt::Key_Backspace, page, [this] {
        m_session.backspace();
        follow({});
    });
    backspace->setWords(tr("Back", "take the last digit away"));
    backspace->setMost(0.05);
    pad->addWidget(backspace, 3, 2);
    pad->addLayout(buildAnswers(page), 0, 3, 4, 1);
    for (int column = 0; column < 3; ++column)
        pad->setColumnStretch(column, 20);
    pad->setColumnStretch(3, 28);
    for (int row = 0; row < 4; ++row)
        pad->setRowStretch(row, 1);
    return pad;
}

/// OK, or the two answers to a question about a consumption that is far off.
QLayout* RoadsidePage::buildAnswers(QWidget* page)
{
    auto* answers = spaced(new QVBoxLayout);
    const auto written = [this](QString (RoadsideSession::*order)()) {
        const QString refusal = (m_session.*order)();
        if (refusal.isEmpty() && m_session.state() == RoadsideSession::State::written)
            m_said = tr("Run %1 is written.").arg(m_session.writtenNumber());
        if (m_session.state() == RoadsideSession::State::written)
            m_live.settleEnded(m_session.writtenNumber());
        follow(refusal);
    };
    // Another key than OK's: a second press of Enter is no answer.
    BigButton* take = button(Kind::primary, "takeLikely", Qt::Key_Y, page,
                             [written] { written(&RoadsideSession::takeLikely); });
    take->setMost(0.08);
    BigButton* keep = button(Kind::plain, "keepTyped", Qt::Key_K, page,
                             [written] { written(&RoadsideSession::keepTyped); });
    keep->setMost(0.08);
    BigButton* ok = button(Kind::primary, "ok", Qt::Key_Return, page,
                           [written] { written(&RoadsideSession::save); });
    ok->setMost(0.11);
    for (BigButton* answer : {take, keep, ok})
        answers->addWidget(answer, 1);
    return answers;
}

QWidget* RoadsidePage::buildDiscard()
{
    auto* page = new QWidget(m_stack);
    auto* box = spaced(new QVBoxLayout(page));
    m_reasonAsked = label("reasonAsked", 0.05, page);
    box->addWidget(m_reasonAsked, 14);
    auto* grid = spaced(new QGridLayout);
    box->addLayout(grid, 86);
    const auto group = std::make_shared<std::vector<BigButton*>>();
    int place = 0;
    const auto add = [&](const QByteArray& name, const QString& words, Qt::Key key,
                         const std::function<void()>& job) {
        BigButton* made = button(Kind::plain, name.constData(), key, page, job);
        made->setMost(0.05);
        made->setWords(words);
        made->setGroup(group);
        grid->addWidget(made, place / 4, place % 4);
        ++place;
    };
    for (const core::Rule rule : kReasons) {
        const std::string reason(core::ruleName(rule));
        add("reason_" + QByteArray::fromStdString(reason),
            withCapital(shown(wording::ruleName(m_preferences.spoken(), rule))),
            Qt::Key(place == 9 ? Qt::Key_0 : Qt::Key_1 + place),
            [this, reason] { discardFor(reason); });
    }
    add("reason_other", tr("Other, in words"), Qt::Key_O, [this] { discardFor("other"); });
    add("discardBack", tr("Back, it counts"), Qt::Key_B, [this] { back(); });
    for (int i = 0; i < 4; ++i)
        grid->setColumnStretch(i, 1);
    for (int i = 0; i < 3; ++i)
        grid->setRowStretch(i, 1);
    return page;
}

QWidget* RoadsidePage::buildWords()
{
    auto* page = new QWidget(m_stack);
    auto* box = spaced(new QVBoxLayout(page));
    m_wordsAsked = label("wordsAsked", 0.05, page);
    m_line = new QLineEdit(page);
    m_line->setObjectName("words");
    m_line->setAccessibleName(tr("Words"));
    m_line->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_line->setMinimumHeight(1);
    auto* buttons = spaced(new QHBoxLayout);
    auto* ok = button(Kind::primary, "wordsOk", Qt::Key_Return, page, [this] { acceptWords(); });
    ok->setWords(tr("OK"));
    auto* no = button(Kind::plain, "wordsBack", Qt::Key_Escape, page, [this] { back(); });
    no->setWords(tr("Back"));
    buttons->addWidget(ok, 60);
    buttons->addWidget(no, 40);
    box->addWidget(m_wordsAsked, 22);
    box->addWidget(buildUsualWords(page), 36);
    box->addWidget(m_line, 17);
    box->addLayout(buttons, 25);
    return page;
}

/// During a run: the clock and End stay in sight, and what happens often needs no keyboard.
QWidget* RoadsidePage::buildUsualWords(QWidget* page)
{
    m_usualWords = new QWidget(page);
    m_usualWords->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    auto* grid = spaced(new QGridLayout(m_usualWords));
    m_wordsElapsed = label("wordsElapsed", 0.11, m_usualWords);
    m_wordsElapsed->setBold(true);
    m_wordsElapsed->setAlignment(Qt::AlignCenter);
    auto* end = button(Kind::primary, "wordsEnd", Qt::Key_F10, m_usualWords, [this] {
        acceptWords();
        if (m_session.state() == RoadsideSession::State::running)
            follow(m_session.end());
    });
    end->setMost(0.07);
    end->setWords(tr("End"));
    const auto group = std::make_shared<std::vector<BigButton*>>();
    int place = 0;
    for (const QString& words : {tr("Braked"), tr("Overtook"), tr("Overtaken"), tr("Rain"),
                                 tr("Roadworks"), tr("Animal on the road")}) {
        const QByteArray name = "usualWords" + QByteArray::number(place);
        BigButton* made =
            button(Kind::plain, name.constData(), kNoKey, m_usualWords, [this, words] {
                m_line->setText(words);
                acceptWords();
            });
        made->setMost(0.045);
        made->setWords(words);
        made->setGroup(group);
        grid->addWidget(made, place / 3, place % 3);
        ++place;
    }
    grid->addWidget(m_wordsElapsed, 0, 3);
    grid->addWidget(end, 1, 3);
    for (int column = 0; column < 4; ++column)
        grid->setColumnStretch(column, column < 3 ? 24 : 28);
    grid->setRowStretch(0, 1);
    grid->setRowStretch(1, 1);
    return m_usualWords;
}

QWidget* RoadsidePage::buildQuestion()
{
    auto* page = new QWidget(m_stack);
    auto* box = spaced(new QVBoxLayout(page));
    m_asked = label("asked", 0.06, page);
    box->addWidget(m_asked, 50);
    auto* buttons = spaced(new QHBoxLayout);
    const auto group = std::make_shared<std::vector<BigButton*>>();
    for (int i = 0; i < 4; ++i) {
        auto* choice = new BigButton(i == 0 ? Kind::primary : Kind::plain,
                                     QString("choice%1").arg(i).toUtf8().constData(), kNoKey, page);
        choice->setMost(0.06);
        choice->setGroup(group);
        buttons->addWidget(choice);
        m_choices.push_back(choice);
    }
    box->addLayout(buttons, 50);
    return page;
}

QWidget* RoadsidePage::buildBar()
{
    auto* bar = new QWidget(this);
    bar->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    auto* box = spaced(new QHBoxLayout(bar));
    const auto group = std::make_shared<std::vector<BigButton*>>();
    const auto add = [&](const char* name, Qt::Key key, int share,
                         const std::function<void()>& job) {
        BigButton* made = button(Kind::quiet, name, key, bar, job);
        made->setMost(0.04);
        made->setGroup(group);
        box->addWidget(made, share);
    };
    add("discard", Qt::Key_X, 28, [this] { chooseReason(); });
    add("undo", Qt::Key_Z, 34, [this] {
        const QString words = m_session.undoWords();
        const QString refusal = m_session.undo();
        if (refusal.isEmpty())
            m_said = tr("Taken back: %1.").arg(words);
        follow(refusal);
    });
    add("theme", Qt::Key_T, 17, [this] {
        const bool dark = Theme::of(palette()).dark;
        m_preferences.setRoadsideTheme(dark ? ThemeChoice::light : ThemeChoice::dark);
        takeTheme();
    });
    add("leave", Qt::Key_Escape, 21, [this] { leave(); });
    return bar;
}

void RoadsidePage::buildTimers()
{
    for (BigButton* old : m_timers)
        delete old;
    m_timers.clear();
    const auto group = std::make_shared<std::vector<BigButton*>>();
    int place = 0;
    for (const auto& timer : m_session.timers()) {
        const std::string name = timer.accessory.name;
        const QByteArray object = "timer_" + QByteArray::fromStdString(name);
        const Qt::Key key = place < 7 ? Qt::Key(Qt::Key_F2 + place) : kNoKey; // F9 leaves
        ++place;
        BigButton* made = button(Kind::plain, object.constData(), key, m_timerStrip,
                                 [this, name] { follow(m_session.switchAccessory(name)); });
        made->setMost(0.045);
        made->setGroup(group);
        made->setTheme(Theme::of(palette()));
        m_timerBox->addWidget(made, 1);
        m_timers.push_back(made);
    }
    m_timerStrip->setVisible(!m_timers.empty());
}

/// Driving order: what is driven, Start, marks, End, the number, and what is always there.
void RoadsidePage::orderTabs()
{
    QWidget* before = nullptr;
    const auto next = [&](QWidget* widget) {
        if (before)
            setTabOrder(before, widget);
        before = widget;
    };
    for (const char* name :
         {"start", "configuration", "direction", "setting", "walkRound", "weather", "markTraffic",
          "markGust", "markAdjusted", "markOther", "end"})
        next(find(name));
    for (int number = 1; number <= 10; ++number)
        next(find(QString("digit%1").arg(number % 10).toUtf8().constData()));
    for (const char* name :
         {"decimalSign", "backspace", "ok", "takeLikely", "keepTyped", "unit", "duration"})
        next(find(name));
    for (BigButton* timer : m_timers)
        next(timer);
    for (const char* name :
         {"discardForFinding", "alarmHeard", "discard", "undo", "theme", "leave"})
        next(find(name));
    for (const WatchPanel* panel : {m_watchReady, m_watchRunning})
        for (ChannelTile* tile : panel->tiles())
            next(tile);
}

} // namespace bothways::app
