// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "app/desktop/document/study_document.h"
#include "app/desktop/roadside/roadside_draft.h"
#include "app/desktop/runs/questions.h"
#include "app/desktop/runs/run_fields.h"

#include <QCoreApplication>
#include <QPointer>
#include <QStringList>

#include <optional>
#include <vector>

namespace bothways::app {

class LiveSource;
class Preferences;

/// One run after the other at the roadside: ready, running, ended (its number is being typed),
/// written, and so on. Knows no widget.
///
/// An order gives an empty text where it was followed, else a sentence that says why not; then
/// nothing has changed. Whatever has to outlive a crash is kept in the preferences with every step;
/// a session that finds a run there goes on with it, and wasResumed() says so.
///
/// Time never runs backwards: where the clock is set back during a run, the run's times go on from
/// the latest moment that was seen, so that they are right to the length between two looks.
class RoadsideSession {
    Q_DECLARE_TR_FUNCTIONS(RoadsideSession)

public:
    enum class State { ready, running, ended, written };

    /// A second press within this time is one that was not meant.
    static constexpr std::int64_t kDoublePress_ms = 1000;

    RoadsideSession(StudyDocument& document, Preferences& preferences, Clock clock);

    [[nodiscard]] State state() const { return m_state; }
    /// A run is under way, or its number is still to be typed.
    [[nodiscard]] bool hasRun() const { return m_draft.run.has_value(); }
    [[nodiscard]] const RoadsideRun* run() const { return hasRun() ? &*m_draft.run : nullptr; }
    /// What is driven next, with what was chosen otherwise. Not while hasRun().
    [[nodiscard]] UpNext next() const;
    /// The number that the run under way, or else the next, will have.
    [[nodiscard]] int number() const { return next().number; }
    [[nodiscard]] bool wasResumed() const { return m_resumed; }
    [[nodiscard]] bool clockWasSetBack() const { return m_setBack; }

    /// A recording that is being made hears of every step; null: none is made any more. A run under
    /// way is told at once.
    void setLive(LiveSource* live);
    /// Begins and ends runs where what is recorded says so (Rig::runs): roadside_session_found.cpp.
    /// A run that begins while the number of the one before is awaited waits for it.
    /// @return  what is to be said; empty: nothing has changed
    QString takeFound();

    // Before the run.
    void chooseConfiguration(); ///< the other one
    void chooseDirection();     ///< the other one
    void chooseSetting(const QString& setting);
    QString start();

    // Once a block, before its first run: roadside_session_block.cpp.
    [[nodiscard]] std::vector<core::WalkLine> walkLines() const;
    /// The block of the next run, or of the one under way, has no walk-round.
    [[nodiscard]] bool isWalkRoundDue() const;
    /// Of nothing yet, for the next run.
    [[nodiscard]] core::WalkRound blankWalkRound() const;
    /// Writes it. walkDifferences() has then what is too far from the one before.
    QString noteWalkRound(const core::WalkRound& round);
    [[nodiscard]] const QStringList& walkDifferences() const { return m_walkDifferences; }
    /// The next run begins a block, and nothing of its weather was noted.
    [[nodiscard]] bool isWeatherDue() const;
    /// As it stands in a field; empty where it was not noted.
    [[nodiscard]] QString weatherText(RunField field) const;
    QString noteWeather(RunField field, const QString& text);

    // During the run.
    [[nodiscard]] double elapsed_s();
    [[nodiscard]] std::optional<double> expected_s() const;
    /// Stamped with the seconds since the start.
    QString mark(std::string_view word);
    /// Words for the last mark.
    QString describeMark(const QString& words);
    QString end();
    void goOn() { m_resumed = false; }
    /// Throws the run away, unwritten.
    QString forget();

    // After it.
    [[nodiscard]] core::ConsumptionUnit unit() const;
    QString changeUnit(); ///< the next of those that a dashboard may show
    /// A digit or a decimal sign, whichever it is. What cannot follow is left out.
    void type(QChar key);
    void backspace();
    void setWithoutDuration(bool without);
    /// Where the duration is far from what was expected.
    [[nodiscard]] bool isDurationOdd() const;
    /// Writes the run. Where something about it is odd, questions() has it then and nothing is
    /// written; asked a second time it writes, but not a consumption that is far off: that wants
    /// keepTyped() or takeLikely(), or another number.
    QString save();
    [[nodiscard]] const QStringList& questions() const { return m_questions; }
    /// The consumption waits for an answer, which a second press of OK is not.
    [[nodiscard]] bool isUnanswered() const { return m_odd.has_value(); }
    /// What may have been meant; nothing where nothing fits, or nothing was asked.
    [[nodiscard]] std::optional<core::Consumption> likely() const;
    QString keepTyped();  ///< writes the run as it was typed
    QString takeLikely(); ///< writes it with what was meant
    /// The run under way or ended; else the last one of the study.
    QString discard(const core::Discard& why);
    /// Number of the run that discard() would take; 0 where there is none.
    [[nodiscard]] int discardable() const;
    [[nodiscard]] int writtenNumber() const { return m_writtenNumber; }

    /// Takes the last step back.
    QString undo();
    /// What undo() would take back; empty where there is nothing.
    [[nodiscard]] QString undoWords() const;

    struct Timer {
        core::TimedAccessory accessory;
        std::optional<double> left_s; ///< empty: not switched on; <= 0: dropped out so long ago
        bool dropsOutInRun = false;   ///< within the next run, or the one under way
    };
    [[nodiscard]] std::vector<Timer> timers();
    /// Off becomes on; on becomes off; dropped out becomes on. During a run it is noted as a
    /// change.
    QString switchAccessory(const std::string& name);

private:
    struct Step {
        QString words;
        State state;
        RoadsideDraft draft;
        std::optional<std::int64_t> history; ///< line of the study's history to be taken back
        int writtenNumber = 0;
        std::optional<double> liveStart_s;
        bool isFound = false;
    };

    [[nodiscard]] core::Instant startOfBlock() const;
    std::int64_t now_ms();
    [[nodiscard]] double second(std::int64_t moment_ms) const;
    [[nodiscard]] core::Run asRun() const;
    [[nodiscard]] QString whyNotSaved() const;
    void askAbout(const core::Run& run);
    void forgetQuestions();
    void remember(const QString& words);
    void begin(std::int64_t moment_ms, const UpNext& what);
    void endAt(std::int64_t moment_ms);
    QString beginFound(const core::FoundBound& found);
    QString endFound(std::int64_t moment_ms);
    QString dropFound();
    QString follow(const core::FoundBound& found);
    [[nodiscard]] std::int64_t momentOf(double at_s);
    void beginLive();
    void followLive(State before);
    void keep();
    void restore();
    QString write(const core::Run& run, const QString& words);
    QString order(const std::function<bool(StudyDocument&)>& job);
    void noteHistory();

    QPointer<StudyDocument> m_document;
    Preferences& m_preferences;
    Clock m_clock;
    QString m_path;
    State m_state = State::ready;
    RoadsideDraft m_draft;
    std::optional<std::string> m_configuration, m_setting, m_direction; ///< chosen by hand
    QStringList m_questions, m_walkDifferences;
    std::optional<Question> m_odd; ///< about the consumption, not answered
    std::vector<Step> m_steps;
    std::int64_t m_done_ms = 0; ///< when the last run was written
    int m_writtenNumber = 0;
    LiveSource* m_live = nullptr;
    std::optional<double> m_liveStart_s;          ///< of the run, in the recording's time
    std::optional<core::FoundBound> m_waiting;    ///< a run that has begun, not taken yet
    std::size_t m_stepsBefore = 0;                ///< so many steps were there when it did
    bool m_isFound = false;                       ///< what is recorded began the run
    std::optional<core::RecordingId> m_recording; ///< that ended before the run was written
    bool m_resumed = false, m_setBack = false;
};

} // namespace bothways::app
