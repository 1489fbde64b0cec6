// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one machine of states, told from the start of a run to its end.
#include "app/desktop/roadside/roadside_session.h"

#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/roadside/roadside_words.h"
#include "app/desktop/runs/questions.h"
#include "app/desktop/watch/live_source.h"
#include "app/wording/findings.h"
#include "app/wording/run_under_way.h"
#include "core/effect/prepared_study.h"
#include "core/recording/trace_consumption.h"
#include "core/study/fuel.h"
#include "storage/sheet/run_sheet.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace bothways::app {
namespace {

constexpr int kLongestNumber = 8;
constexpr std::size_t kMostSteps = 100;
constexpr std::int64_t kClockSlip_ms = 2000; // less is the clock being kept right
// Common practice, no source: a run is a third longer or shorter when something went wrong.
constexpr double kOddDuration = 1.5;

/// Tenths of a second: nobody is faster.
double tenths(double seconds)
{
    return std::round(10.0 * seconds) / 10.0;
}

std::string otherOf(const QStringList& names, const std::string& name)
{
    for (const QString& other : names)
        if (!core::sameWord(other.toStdString(), name))
            return other.toStdString();
    return name;
}

} // namespace

RoadsideSession::RoadsideSession(StudyDocument& document, Preferences& preferences, Clock clock)
    : m_document(&document),
      m_preferences(preferences),
      m_clock(std::move(clock)),
      m_path(document.path())
{
    restore();
}

std::int64_t RoadsideSession::now_ms()
{
    std::int64_t moment_ms = m_clock().toMSecsSinceEpoch() + m_draft.shift_ms;
    if (moment_ms < m_draft.seen_ms) {
        const std::int64_t back_ms = m_draft.seen_ms - moment_ms;
        m_draft.shift_ms += back_ms;
        m_setBack = m_setBack || (hasRun() && back_ms > kClockSlip_ms);
        moment_ms = m_draft.seen_ms;
    }
    m_draft.seen_ms = moment_ms;
    return moment_ms;
}

double RoadsideSession::second(std::int64_t moment_ms) const
{
    return tenths(static_cast<double>(moment_ms - m_draft.run->start_ms) / 1000.0);
}

UpNext RoadsideSession::next() const
{
    if (!m_document)
        return {};
    const core::Study& study = m_document->study();
    UpNext next = upNext(study);
    if (m_configuration && !core::sameWord(*m_configuration, next.configuration)) {
        next.configuration = *m_configuration;
        next.device = core::sameWord(next.configuration, deviceName(study));
        next.switchFirst = !study.runs.empty() &&
                           !core::sameWord(next.configuration, study.runs.back().configuration);
        next.setting.clear();
        for (const core::Run& run : study.runs)
            if (core::sameWord(run.configuration, next.configuration))
                next.setting = run.setting;
    }
    if (m_direction)
        next.direction = *m_direction;
    if (m_setting)
        next.setting = *m_setting;
    if (!study.runs.empty() && !next.planned_blocks &&
        beginsBlock(study, next.configuration, startOfBlock())) {
        ++next.block;
        next.pairs_in_block = 0;
    }
    return next;
}

void RoadsideSession::chooseConfiguration()
{
    if (hasRun() || !m_document)
        return;
    const core::Study& study = m_document->study();
    const std::string baseline = baselineToDrive(study);
    const bool isBaseline = core::sameWord(next().configuration, baseline);
    m_configuration = isBaseline ? deviceName(study) : baseline;
    m_setting.reset();
}

void RoadsideSession::chooseDirection()
{
    if (!hasRun() && m_document)
        m_direction = otherOf(directionChoices(m_document->study()), next().direction);
}

void RoadsideSession::chooseSetting(const QString& setting)
{
    if (!hasRun())
        m_setting = setting.trimmed().toStdString();
}

QString RoadsideSession::start()
{
    if (hasRun())
        return tr("A run is under way already.");
    if (!m_document)
        return tr("The study is closed.");
    const std::int64_t moment_ms = now_ms();
    if (m_done_ms != 0 && moment_ms - m_done_ms < kDoublePress_ms)
        return tr("Pressed twice? Press Start once more to begin the next run.");
    begin(moment_ms, next());
    return {};
}

/// @param moment_ms  now, or a moment ago
void RoadsideSession::begin(std::int64_t moment_ms, const UpNext& what)
{
    m_waiting.reset();
    remember(tr("Start"));
    RoadsideRun run;
    run.configuration = what.configuration;
    run.setting = what.setting;
    run.direction = what.direction;
    run.start = instantOf(m_document->study(), m_clock().addMSecs(moment_ms - now_ms()));
    run.start_ms = moment_ms;
    run.unit = unit();
    m_draft.run = run;
    m_state = State::running;
    m_setBack = false;
    keep();
    m_isFound = false;
    m_liveStart_s.reset();
    beginLive();
}

void RoadsideSession::setLive(LiveSource* live)
{
    if (live == m_live)
        return;
    if (m_live)
        m_recording = m_live->recording(); // a run that was ended is written into it later
    m_live = live;
    m_waiting.reset();
    if (!live)
        return;
    m_recording.reset();
    m_liveStart_s.reset();
    beginLive();
}

/// A run that is under way since before the recording began has only its end in it.
void RoadsideSession::beginLive()
{
    if (!m_live || !m_document || m_state != State::running)
        return;
    if (!m_liveStart_s)
        m_liveStart_s = m_live->clock_s() - elapsed_s();
    core::RunUnderWay run;
    run.run = asRun();
    run.run.number = number();
    run.start_s = *m_liveStart_s;
    run.expected_s = expected_s();
    m_live->begin(run);
    for (const core::Mark& mark : m_draft.run->marks)
        m_live->mark(*m_liveStart_s + mark.at_s, mark.word, mark.words);
}

/// A step was taken back: the recording is where the session is.
void RoadsideSession::followLive(State before)
{
    if (!m_live)
        return;
    if (m_state == State::running && before != State::running)
        beginLive();
    else if (m_state != State::running && before == State::running)
        m_live->forget();
}

double RoadsideSession::elapsed_s()
{
    if (!hasRun())
        return 0.0;
    return second(m_draft.run->end_ms ? *m_draft.run->end_ms : now_ms());
}

std::optional<double> RoadsideSession::expected_s() const
{
    return m_document ? expectedDuration_s(m_document->study()) : std::nullopt;
}

QString RoadsideSession::mark(std::string_view word)
{
    if (m_state != State::running)
        return tr("Marks belong into a run, and none is under way.");
    const std::int64_t moment_ms = now_ms();
    if (moment_ms - m_draft.run->start_ms < kDoublePress_ms)
        return tr("The run has only just begun.");
    remember(tr("mark “%1”").arg(shown(wording::markName(m_preferences.spoken(), word))));
    m_draft.run->marks.push_back({second(moment_ms), std::string(word), {}});
    keep();
    if (m_live && m_liveStart_s)
        m_live->mark(*m_liveStart_s + second(moment_ms), std::string(word), {});
    return {};
}

QString RoadsideSession::describeMark(const QString& words)
{
    if (!hasRun() || m_draft.run->marks.empty())
        return tr("There is no mark to describe.");
    m_draft.run->marks.back().words = words.simplified().toStdString();
    keep();
    return {};
}

QString RoadsideSession::end()
{
    if (m_state != State::running)
        return sentenceOf(m_preferences.spoken(), wording::noRunUnderWay());
    const std::int64_t moment_ms = now_ms();
    if (moment_ms - m_draft.run->start_ms < kDoublePress_ms)
        return tr("The run has only just begun.");
    endAt(moment_ms);
    return {};
}

void RoadsideSession::endAt(std::int64_t moment_ms)
{
    remember(tr("End"));
    m_draft.run->end_ms = moment_ms;
    m_state = State::ended;
    if (m_live && m_liveStart_s)
        m_live->end(*m_liveStart_s + second(moment_ms));
    forgetQuestions();
    keep();
}

QString RoadsideSession::forget()
{
    if (!hasRun())
        return sentenceOf(m_preferences.spoken(), wording::noRunUnderWay());
    if (m_live)
        m_live->forget();
    m_draft.run.reset();
    m_steps.clear();
    forgetQuestions();
    m_resumed = false;
    m_state = State::ready;
    keep();
    return {};
}

core::ConsumptionUnit RoadsideSession::unit() const
{
    if (hasRun())
        return m_draft.run->unit;
    if (!m_document)
        return m_preferences.entryUnit();
    if (const auto last = core::lastUnit(m_document->study().runs))
        return *last;
    return m_document->isElectric() ? core::ConsumptionUnit::kwhPer100km
                                    : m_preferences.entryUnit();
}

QString RoadsideSession::changeUnit()
{
    if (m_state != State::ended)
        return tr("No run is waiting for its number.");
    if (!m_document || m_document->isElectric())
        return tr("This study is in %1.").arg(m_preferences.units().unitText(unit()));
    const auto* const first = std::begin(core::kConsumptionUnits);
    const auto* const last = std::end(core::kConsumptionUnits);
    const auto* next = std::find(first, last, m_draft.run->unit);
    do
        next = next == last || next + 1 == last ? first : next + 1;
    while (*next == core::ConsumptionUnit::kwhPer100km);
    m_draft.run->unit = *next;
    m_preferences.setEntryUnit(*next);
    forgetQuestions();
    keep();
    return {};
}

void RoadsideSession::type(QChar key)
{
    if (m_state != State::ended)
        return;
    QString& typed = m_draft.run->typed;
    const QString point = m_preferences.units().locale.decimalPoint();
    if (key == u'.' || key == u',' || point == key) {
        if (typed.contains(point))
            return;
        if (typed.isEmpty())
            typed = u'0';
        typed += point;
    } else if (key.isDigit() && typed.size() < kLongestNumber) {
        typed += QChar(u'0' + key.digitValue());
    } else {
        return;
    }
    forgetQuestions();
    keep();
}

void RoadsideSession::backspace()
{
    if (m_state != State::ended || m_draft.run->typed.isEmpty())
        return;
    m_draft.run->typed.chop(1);
    forgetQuestions();
    keep();
}

void RoadsideSession::setWithoutDuration(bool without)
{
    if (m_state != State::ended)
        return;
    m_draft.run->without_duration = without;
    forgetQuestions();
    keep();
}

bool RoadsideSession::isDurationOdd() const
{
    const auto expected = expected_s();
    if (!expected || !hasRun() || !m_draft.run->end_ms || m_draft.run->without_duration)
        return false;
    const double ratio = second(*m_draft.run->end_ms) / *expected;
    return ratio > kOddDuration || ratio < 1.0 / kOddDuration;
}

/// The run as it would be written now, with what was typed where that is a number.
core::Run RoadsideSession::asRun() const
{
    const RoadsideRun& noted = *m_draft.run;
    const core::StudyProperties& properties = m_document->study().properties;
    core::Run run;
    run.configuration = noted.configuration;
    run.setting = noted.setting;
    run.direction = noted.direction;
    run.start = noted.start;
    run.marks = noted.marks;
    if (noted.end_ms && !noted.without_duration)
        run.duration_s = second(*noted.end_ms);
    if (!noted.typed.isEmpty())
        run.consumption = UnitsShown::parseConsumption(noted.typed, noted.unit);
    if (core::needsDistance(noted.unit))
        if (const auto km = properties.limits.find("stretch.km"); km != properties.limits.end())
            run.distance_km = km->second;
    for (const core::TimedAccessory& accessory : properties.timed_accessories)
        if (const auto on = m_draft.accessory_on_ms.find(accessory.name);
            on != m_draft.accessory_on_ms.end())
            run.accessory_on_s[accessory.name] = std::round(second(on->second));
    putWeather(run, m_draft.weather);
    return run;
}

/// What keeps the run from being written at all; empty: nothing.
QString RoadsideSession::whyNotSaved() const
{
    if (m_state != State::ended)
        return tr("No run is waiting for its number.");
    if (!m_document)
        return tr("The study is closed. The run is kept until it is open again.");
    if (m_draft.run->typed.isEmpty())
        return tr("Type the consumption first, as the dashboard shows it.");
    const core::Run run = asRun();
    if (!run.consumption || !(run.consumption->value > 0.0))
        return tr("A consumption of 0 cannot be.");
    if (core::needsDistance(run.consumption->unit) && !run.distance_km)
        return tr("An amount of fuel needs a distance, and the study has no length of the stretch. "
                  "Choose another unit, or set the stretch.");
    const auto faults = storage::faultsOf(m_document->study(), run);
    return faults.empty() ? QString() : sentenceOf(m_preferences.spoken(), faults.front());
}

/// What looks like a slip. While consumption is hidden, nothing of other runs is said.
void RoadsideSession::askAbout(const core::Run& run)
{
    const UnitsShown units = m_preferences.units(m_document->isElectric());
    const Sight sight = m_document->isBlind() ? Sight::typed : Sight::open;
    for (const Question& question : questionsAbout(m_document->study(), run, units, sight)) {
        m_questions += question.sentence;
        if (question.about == Question::About::consumption)
            m_odd = question;
    }
    if (isDurationOdd())
        m_questions +=
            tr("The run took %1; about %2 was expected.")
                .arg(RoadsideWords::clock(*run.duration_s), RoadsideWords::clock(*expected_s()));
}

void RoadsideSession::forgetQuestions()
{
    m_questions.clear();
    m_odd.reset();
}

QString RoadsideSession::save()
{
    if (const QString why = whyNotSaved(); !why.isEmpty())
        return why;
    if (isUnanswered())
        return {}; // the question stays
    const core::Run run = asRun();
    if (m_questions.isEmpty()) {
        askAbout(run);
        if (!m_questions.isEmpty())
            return {};
    }
    return write(run, tr("run %1 written").arg(number()));
}

std::optional<core::Consumption> RoadsideSession::likely() const
{
    return m_odd ? m_odd->likely : std::nullopt;
}

QString RoadsideSession::keepTyped()
{
    if (!isUnanswered())
        return save();
    if (const QString why = whyNotSaved(); !why.isEmpty())
        return why;
    return write(asRun(), tr("run %1 written").arg(number()));
}

QString RoadsideSession::takeLikely()
{
    const auto meant = likely();
    if (!meant)
        return tr("There is no other number to take.");
    const UnitsShown units = m_preferences.units(m_document && m_document->isElectric());
    m_draft.run->typed = units.number(meant->value, core::shownDecimals(*meant));
    m_draft.run->unit = meant->unit;
    forgetQuestions();
    keep();
    return save();
}

int RoadsideSession::discardable() const
{
    if (hasRun())
        return number();
    if (!m_document || m_document->study().runs.empty())
        return 0;
    const core::Run& last = m_document->study().runs.back();
    return last.counted() ? last.number : 0;
}

QString RoadsideSession::discard(const core::Discard& why)
{
    if (!m_document)
        return tr("The study is closed. The run is kept until it is open again.");
    if (why.reason == "other" && QString::fromStdString(why.evidence).trimmed().isEmpty())
        return tr("This reason needs words.");
    if (discardable() == 0)
        return sentenceOf(m_preferences.spoken(), wording::noRunToDiscard());
    const QString words = tr("run %1 discarded").arg(discardable());
    if (hasRun()) {
        core::Run run = asRun();
        const bool underWay = m_state == State::running;
        if (run.consumption && !(run.consumption->value > 0.0))
            run.consumption.reset();
        if (run.consumption && core::needsDistance(run.consumption->unit) && !run.distance_km)
            run.consumption.reset();
        run.discard = why;
        const auto faults = storage::faultsOf(m_document->study(), run);
        if (!faults.empty())
            return sentenceOf(m_preferences.spoken(), faults.front());
        const double end_s = elapsed_s();
        const QString wrong = write(run, words);
        if (wrong.isEmpty() && underWay && m_live && m_liveStart_s)
            m_live->end(*m_liveStart_s + end_s);
        return wrong;
    }
    const core::RunId last = m_document->study().runs.back().id;
    const QString wrong =
        order([&](StudyDocument& document) { return document.discardRuns({last}, why); });
    if (!wrong.isEmpty())
        return wrong;
    remember(words);
    noteHistory();
    return {};
}

/// Everything is on disk when this gives an empty text.
QString RoadsideSession::write(const core::Run& run, const QString& words)
{
    const int number = this->number();
    const auto recording = m_live ? m_live->recording() : m_recording;
    const QString wrong = order([&](StudyDocument& document) {
        if (!recording || !m_liveStart_s || *m_liveStart_s < 0.0)
            return document.addRun(run).has_value();
        storage::Cut part; // in one step with its part of the recording
        part.run = document.withWalkRound(run);
        part.offset_s = *m_liveStart_s;
        return document.cutRecording(*recording, {part});
    });
    if (!wrong.isEmpty())
        return wrong;
    remember(words);
    noteHistory();
    m_draft.run.reset();
    if (run.counted()) // one that is driven again has the same weather
        m_draft.weather.clear();
    m_configuration.reset();
    m_direction.reset();
    m_setting.reset();
    forgetQuestions();
    m_resumed = false;
    m_state = State::written;
    m_writtenNumber = number;
    m_done_ms = now_ms();
    keep();
    return {};
}

QString RoadsideSession::order(const std::function<bool(StudyDocument&)>& job)
{
    const core::Outcome done = m_document->outcomeOf([&] { return job(*m_document); });
    return done ? QString() : sentenceOf(m_preferences.spoken(), done.error());
}

/// The step just remembered is to be taken back in the study too.
void RoadsideSession::noteHistory()
{
    if (const auto line = m_document->undoable())
        m_steps.back().history = line->id;
}

QString RoadsideSession::undo()
{
    if (m_steps.empty())
        return tr("There is nothing to undo.");
    const Step step = m_steps.back();
    if (step.history) {
        if (!m_document)
            return tr("The study is closed.");
        const auto line = m_document->undoable();
        if (!line || line->id != *step.history)
            return tr("The study was changed since. Undo it in the run list.");
        const QString wrong = order([](StudyDocument& document) { return document.undo(); });
        if (!wrong.isEmpty())
            return wrong;
    }
    m_steps.pop_back();
    const State before = m_state;
    m_liveStart_s = step.liveStart_s;
    m_isFound = step.isFound;
    const std::int64_t seen_ms = m_draft.seen_ms, shift_ms = m_draft.shift_ms;
    m_draft = step.draft;
    m_draft.seen_ms = seen_ms; // time goes on
    m_draft.shift_ms = shift_ms;
    m_state = step.state;
    m_writtenNumber = step.writtenNumber;
    forgetQuestions();
    m_done_ms = 0;
    keep();
    followLive(before);
    return {};
}

QString RoadsideSession::undoWords() const
{
    return m_steps.empty() ? QString() : m_steps.back().words;
}

std::vector<RoadsideSession::Timer> RoadsideSession::timers()
{
    std::vector<Timer> timers;
    if (!m_document)
        return timers;
    const std::int64_t moment_ms = now_ms();
    const double run_s =
        expected_s().value_or(300.0) - (m_state == State::running ? elapsed_s() : 0.0);
    for (const core::TimedAccessory& accessory : m_document->study().properties.timed_accessories) {
        Timer timer{accessory, {}, false};
        const auto on = m_draft.accessory_on_ms.find(accessory.name);
        if (on != m_draft.accessory_on_ms.end()) {
            timer.left_s =
                60.0 * accessory.minutes - static_cast<double>(moment_ms - on->second) / 1000.0;
            timer.dropsOutInRun = m_state != State::ended && *timer.left_s > 0.0 &&
                                  *timer.left_s < std::max(run_s, 0.0);
        }
        timers.push_back(timer);
    }
    return timers;
}

QString RoadsideSession::switchAccessory(const std::string& name)
{
    for (const Timer& timer : timers()) {
        if (timer.accessory.name != name)
            continue;
        const bool on = !timer.left_s || *timer.left_s <= 0.0;
        const QString shown = RoadsideWords::readable(name);
        const QString words = on ? tr("%1 on").arg(shown) : tr("%1 off").arg(shown);
        remember(words);
        const std::int64_t moment_ms = now_ms();
        if (on)
            m_draft.accessory_on_ms[name] = moment_ms;
        else
            m_draft.accessory_on_ms.erase(name);
        if (m_state == State::running) { // the rules go by this mark
            const core::Mark mark{second(moment_ms), "accessory_change",
                                  name + (on ? " on" : " off")};
            m_draft.run->marks.push_back(mark);
            if (m_live && m_liveStart_s)
                m_live->mark(*m_liveStart_s + mark.at_s, mark.word, mark.words);
        }
        keep();
        return {};
    }
    return tr("The study has no such accessory.");
}

void RoadsideSession::remember(const QString& words)
{
    if (m_steps.size() == kMostSteps)
        m_steps.erase(m_steps.begin());
    m_steps.push_back({words, m_state, m_draft, {}, m_writtenNumber, m_liveStart_s, m_isFound});
}

void RoadsideSession::keep()
{
    m_preferences.setRoadsideDraft(m_path, toBytes(m_draft));
}

/// A run that was under way when the program ended goes on; its steps can be taken back again.
void RoadsideSession::restore()
{
    const auto kept = draftFrom(m_preferences.roadsideDraft(m_path));
    if (!kept)
        return;
    m_draft = *kept;
    if (!kept->run)
        return;
    m_resumed = true;
    m_draft.run.reset();
    remember(tr("Start"));
    m_draft.run = kept->run;
    m_draft.run->marks.clear();
    m_draft.run->end_ms.reset();
    m_state = State::running;
    for (const core::Mark& mark : kept->run->marks) {
        remember(tr("mark “%1”").arg(shown(wording::markName(m_preferences.spoken(), mark.word))));
        m_draft.run->marks.push_back(mark);
    }
    if (kept->run->end_ms) {
        remember(tr("End"));
        m_state = State::ended;
    }
    m_draft.run = kept->run;
}

} // namespace bothways::app
