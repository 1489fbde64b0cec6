// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/big_button.h"
#include "app/desktop/roadside/roadside_session.h"

#include <QHash>
#include <QTimer>
#include <QWidget>

#include <functional>

class QBoxLayout;
class QGridLayout;
class QHBoxLayout;
class QLineEdit;
class QStackedWidget;

namespace bothways::app {

class AlarmBand;
class BigLabel;
class LiveDesk;
class WatchPanel;

/// One page that fills the screen, for the companion in the passenger seat: what is driven next,
/// Start, Mark, End, and the number pad. Every button has a key, and works by mouse and touch.
///
/// The places of the buttons are chosen so that a second press, which was not meant, meets nothing:
/// where Start was there is the time, where End was there is an OK that asks for a number first.
class RoadsidePage final : public QWidget {
    Q_OBJECT

public:
    /// @param live  whose recording, while one is made, is watched here
    RoadsidePage(StudyDocument& document, Preferences& preferences, Clock clock, LiveDesk& live,
                 QWidget* parent = nullptr);
    ~RoadsidePage() override;

    [[nodiscard]] RoadsideSession& session() { return m_session; }
    /// The sentence on show.
    [[nodiscard]] QString notice() const;
    /// Goes out of the mode; asks where a run is under way.
    void leave();

signals:
    void left(); ///< the page is closed; what was under way is kept

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    // roadside_page_build.cpp
    void build();
    QWidget* buildReady();
    QWidget* buildRunning();
    QWidget* buildTyping();
    [[nodiscard]] QLayout* buildPad(QWidget* page);
    [[nodiscard]] QLayout* buildAnswers(QWidget* page);
    QWidget* buildDiscard();
    QWidget* buildWords();
    QWidget* buildUsualWords(QWidget* page);
    QWidget* buildQuestion();
    QWidget* buildBar();
    void buildTimers();
    void orderTabs();
    BigButton* button(BigButton::Kind kind, const char* name, Qt::Key key, QWidget* parent,
                      const std::function<void()>& job);
    BigLabel* label(const char* name, double most, QWidget* parent);
    [[nodiscard]] BigButton* find(const char* name) const;

    /// Says why not, or shows what has become of the session.
    void follow(const QString& refusal);
    void refresh();
    void tick();
    void dress();
    void takeTheme(); ///< the mode's own; the program keeps its
    void setNotice(const QString& sentence, bool problem = false);

    // roadside_page_live.cpp
    void buildLive(QBoxLayout& box);
    void layOutRunning();
    void takeLive(); ///< a recording has begun or ended
    void lookLive(); ///< it has been looked at
    void refreshLive();
    void discardForFinding();
    /// What spoils the run under way or ended, and is not answered.
    [[nodiscard]] std::optional<core::Finding> spoiling();
    void chooseAnotherChannel(int tile);
    [[nodiscard]] QStringList watched() const;

    // roadside_page_block.cpp
    [[nodiscard]] QLayout* buildOnceABlock(QWidget* page);
    void refreshOnceABlock();
    void walkRound();
    void askWalkLine();
    void endWalkRound();
    void askWeather();
    /// Questions one after the other; whoever goes back gives all of them up.
    void askInTurn(std::vector<std::function<void()>> questions, std::function<void()> end);
    void askNextInTurn();

    // roadside_page_show.cpp
    void refreshHead();
    void refreshReady();
    void refreshRunning();
    void refreshTyping();
    void refreshAnswers();
    void refreshTimers();
    void refreshBar();
    [[nodiscard]] QString todo(const UpNext& next) const;
    [[nodiscard]] QString pairsText() const;
    [[nodiscard]] QString timerWarning();

    struct Choice {
        QString text;
        Qt::Key key;
        std::function<void()> job;
    };
    void ask(const QString& question, const std::vector<Choice>& choices);
    void askWords(const QString& question, const QString& before,
                  const std::function<QString(const QString&)>& job, bool duringRun = false);
    void acceptWords();
    void chooseReason();
    void discardFor(const std::string& reason);
    void askAboutResumed();
    void markAt(const char* word);
    void back(); ///< from a question to the work
    void showPart(QWidget* page);
    [[nodiscard]] bool isAside() const; ///< a question, words or reasons are on show
    void quit();

    StudyDocument& m_document;
    Preferences& m_preferences;
    Clock m_clock;
    RoadsideSession m_session;
    LiveDesk& m_live;
    QTimer m_ticking;
    QStackedWidget* m_stack = nullptr;
    QWidget *m_ready = nullptr, *m_running = nullptr, *m_typing = nullptr, *m_discard = nullptr,
            *m_words = nullptr, *m_question = nullptr, *m_timerStrip = nullptr,
            *m_usualWords = nullptr;
    QHBoxLayout* m_timerBox = nullptr;
    QGridLayout *m_readyGrid = nullptr, *m_runningGrid = nullptr;
    WatchPanel *m_watchReady = nullptr, *m_watchRunning = nullptr;
    QWidget* m_alarmRow = nullptr;
    AlarmBand* m_alarm = nullptr;
    BigLabel *m_instruments = nullptr, *m_distance = nullptr;
    BigLabel *m_title = nullptr, *m_pairs = nullptr, *m_time = nullptr, *m_notice = nullptr;
    BigLabel *m_todo = nullptr, *m_below = nullptr, *m_elapsed = nullptr, *m_reminder = nullptr,
             *m_summary = nullptr, *m_display = nullptr, *m_asked = nullptr,
             *m_wordsAsked = nullptr, *m_reasonAsked = nullptr, *m_wordsElapsed = nullptr;
    QLineEdit* m_line = nullptr;
    std::vector<BigButton*> m_choices, m_timers;
    std::function<QString(const QString&)> m_wordsJob;
    std::vector<std::function<void()>> m_inTurn; ///< questions to come, the next one last
    std::function<void()> m_afterTurn;           ///< null: no questions in turn are asked
    core::WalkRound m_walk;                      ///< that is being made
    bool m_refused = false; ///< the notice is a refusal, which stays until the next press
    QString m_said;         ///< by the last order
};

} // namespace bothways::app
