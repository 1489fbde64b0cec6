// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: what callers order is done by one thread; both share a state of which each touches its
// part.
#include "app/live/live_session.h"

#include "app/live/channel_strip.h"
#include "app/live/disk_watch.h"
#include "core/recording/unreadable_recording.h"
#include "core/study/limits.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <deque>
#include <functional>
#include <future>
#include <limits>
#include <mutex>
#include <thread>
#include <utility>

namespace bothways::app {
namespace {

using core::Done;
using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds kTick(100);
constexpr int kTicksALook = 5;   ///< alarms, half a second
constexpr int kTicksACommit = 5; ///< and so is the disk
/// What came so many ticks ago has surely been delivered by every instrument.
constexpr std::size_t kTicksOfGrace = 3;
/// Of the time before a run that rules ask for.
constexpr double kApproach_s = 60.0;
constexpr int kTicksToObey = 10; ///< who takes what was found does it by then

std::optional<double> targetOf(const core::Study& study)
{
    return core::limitOf(study.properties.limits, "road_speed.target_kmh");
}

/// What slows down at the end of a run is no fault of it.
bool isOfSlowingDown(const core::Alarm& alarm)
{
    return alarm.kind == core::Alarm::Kind::finding &&
           (alarm.finding.rule == core::Rule::roadSpeed ||
            alarm.finding.rule == core::Rule::interrupted);
}
} // namespace

// The worker alone touches what stands below `worker`; the mutex guards the rest.
struct LiveSession::Private {
    /// A channel while it is recorded.
    struct Channel {
        storage::ReadChannel read;
        std::string name;
        ChannelStrip strip;
        std::size_t watched = 0; ///< its place in the watcher
        bool isDistance = false, isSpeed = false, isLatitude = false, isLongitude = false;
        std::vector<double> time_s, value; ///< of this tick
    };

    Private(storage::StudyFile file, storage::RigReader instruments, core::Study study,
            core::RunFinder finds)
        : connection(std::move(file)),
          reader(std::move(instruments)),
          watcher(std::move(study)),
          finder(std::move(finds))
    {
    }

    storage::StudyFile connection;
    storage::RigReader reader;
    std::optional<storage::LiveRecorder> recorder;
    core::Instant first;
    std::string name;
    std::vector<std::string> instrumentNames;

    std::mutex mutex;
    std::condition_variable wake;
    std::vector<std::function<void()>> orders; ///< done by the worker, in turn
    std::vector<core::FoundBound> found;       ///< that nobody has taken
    LiveSnapshot shown;
    std::optional<core::RecordingId> recording;
    bool stopping = false;

    std::thread worker;
    core::Watcher watcher;
    core::RunFinder finder;
    int ticksOver = 0; ///< the run under way is over, as was found: until somebody has ended it
    std::vector<Channel> channels;
    DistanceMeter distance;
    DiskWatch disk;
    std::deque<double> clocks; ///< at the last ticks
    std::vector<storage::Reading> readings;
    std::vector<storage::ReadMark> marks;
    std::optional<double> run_s; ///< start of the run under way
    std::optional<double> end_s; ///< its end, until all of it has surely come
    int ticksToEnd = 0;          ///< until then
    std::vector<core::Alarm> alarms;
    std::optional<core::Screening> ended;
    std::optional<core::Error> trouble;

    void work();
    void prepareWatcher();
    void endIfDelivered(bool now);
    void tick(int number);
    void meetChannels();
    void spread();
    void takeMarks();
    void tellFound();
    void save();
    void show(double now_s);
    [[nodiscard]] std::vector<storage::LiveCounts> counts() const;
    void order(std::function<void()> what);
};

void LiveSession::Private::meetChannels()
{
    const auto read = reader.channels();
    if (read.size() == channels.size())
        return;
    recorder->setChannels(read);
    for (std::size_t i = channels.size(); i < read.size(); ++i) {
        Channel channel;
        channel.read = read[i];
        channel.name = read[i].channel.name.empty() ? read[i].channel.source : read[i].channel.name;
        channel.watched = watcher.channel(channel.name, read[i].channel.unit);
        channel.isDistance = channel.name == "distance_m";
        channel.isSpeed = channel.name == "road_speed_kmh";
        channel.isLatitude = channel.name == "lat_deg";
        channel.isLongitude = channel.name == "lon_deg";
        channels.push_back(std::move(channel));
    }
}

/// A trouble with an earlier recording keeps nobody from recording: it is said.
void LiveSession::Private::prepareWatcher()
{
    const auto learnt = core::readingRecordings([&] {
        watcher.learn(storage::tracesOf(connection));
        return Done{};
    });
    if (!learnt)
        trouble = learnt.error();
    watcher.recordedBy([this](const core::Run&) -> std::unique_ptr<core::RunTrace> {
        const auto id = recorder->recording();
        if (!id || !run_s)
            return nullptr;
        auto part = storage::openPart(connection, *id, *run_s, *run_s - kApproach_s,
                                      std::numeric_limits<double>::infinity());
        if (!part)
            throw core::UnreadableRecording(part.error());
        return std::move(part).take();
    });
}

void LiveSession::Private::tellFound()
{
    const auto news = finder.take();
    if (news.empty())
        return;
    for (const core::FoundBound& bound : news)
        if (bound.what != core::FoundBound::What::begins)
            ticksOver = kTicksToObey;
    const std::lock_guard lock(mutex);
    found.insert(found.end(), news.begin(), news.end());
}

void LiveSession::Private::takeMarks()
{
    marks.clear();
    reader.takeMarks(marks);
    for (const storage::ReadMark& mark : marks) {
        recorder->mark(mark.time_s, mark.words);
        finder.mark(mark.time_s, mark.words);
        const std::size_t blank = std::min(mark.words.find(' '), mark.words.size());
        if (watcher.isUnderWay())
            watcher.mark(
                mark.time_s, std::string_view(mark.words).substr(0, blank),
                std::string_view(mark.words).substr(std::min(blank + 1, mark.words.size())));
    }
}

/// All of the run is in the study before it is asked what screening says of it.
void LiveSession::Private::endIfDelivered(bool now)
{
    if (!end_s || (!now && ticksToEnd-- > 0))
        return;
    save();
    const auto screened = core::readingRecordings([&] { return watcher.end(*end_s); });
    end_s.reset();
    if (screened)
        ended = screened.value();
    else
        trouble = screened.error();
    run_s.reset();
    distance.end();
}

/// To the recorder, the strips, the watcher.
void LiveSession::Private::spread()
{
    recorder->put(readings);
    for (const storage::Reading& reading : readings) {
        if (reading.channel >= channels.size())
            continue;
        Channel& channel = channels[reading.channel];
        const double value =
            reading.value() * channel.read.channel.factor + channel.read.channel.offset;
        channel.strip.put(reading.time_s, value);
        channel.time_s.push_back(reading.time_s);
        channel.value.push_back(value);
        if (channel.isDistance)
            distance.putDistance(reading.time_s, value);
        if (channel.isSpeed) {
            distance.putSpeed(reading.time_s, value);
            finder.speed(reading.time_s, value);
        }
        if (channel.isLatitude)
            finder.latitude(reading.time_s, value);
        if (channel.isLongitude)
            finder.longitude(reading.time_s, value);
    }
    for (Channel& channel : channels) {
        if (channel.value.empty())
            continue;
        watcher.put(channel.watched, channel.time_s, channel.value);
        channel.time_s.clear();
        channel.value.clear();
    }
}

std::vector<storage::LiveCounts> LiveSession::Private::counts() const
{
    std::vector<storage::LiveCounts> list;
    const auto states = reader.states();
    for (std::size_t i = 0; i < states.size(); ++i)
        list.push_back({i < instrumentNames.size() ? instrumentNames[i] : std::string(),
                        states[i].lines, states[i].garbage_lines, states[i].lost_bytes,
                        states[i].reconnects, states[i].silences, states[i].clock_drift_s});
    return list;
}

void LiveSession::Private::save()
{
    const std::size_t size = clocks.size();
    if (size <= kTicksOfGrace)
        return;
    const core::Outcome done = recorder->commit(clocks[size - 1 - kTicksOfGrace]);
    trouble.reset();
    if (!done)
        trouble = done.error();
    disk.put(recorder->bytes(), connection.path());
}

void LiveSession::Private::show(double now_s)
{
    LiveSnapshot next;
    next.now_s = now_s;
    for (const Channel& channel : channels) {
        LiveChannel shownChannel;
        shownChannel.name = channel.name;
        shownChannel.unit = channel.read.channel.unit;
        shownChannel.instrument = channel.read.instrument;
        shownChannel.derived = channel.read.derived;
        channel.strip.show(now_s, shownChannel);
        next.channels.push_back(std::move(shownChannel));
    }
    next.instruments = reader.states();
    next.instrument_names = instrumentNames;
    next.alarms = alarms;
    if (run_s)
        next.run_s = std::max(now_s - *run_s, 0.0);
    next.distance_km = distance.km();
    next.ended = ended;
    next.samples = recorder->samples();
    next.bytes = recorder->bytes();
    next.disk_full_min = disk.left_min();
    next.trouble = trouble;
    next.finished = reader.ended();
    const std::lock_guard lock(mutex);
    shown = std::move(next);
    recording = recorder->recording();
}

void LiveSession::Private::tick(int number)
{
    // In this order: whatever was read up to now_s is taken.
    const double now_s = reader.clock_s();
    readings.clear();
    reader.take(readings);
    meetChannels();
    spread();
    takeMarks();
    finder.passTime(now_s);
    tellFound();
    std::vector<std::function<void()>> todo;
    {
        const std::lock_guard lock(mutex);
        todo.swap(orders);
    }
    for (const auto& order : todo)
        order();
    clocks.push_back(now_s);
    if (clocks.size() > kTicksOfGrace + 1)
        clocks.pop_front();
    ticksOver = std::max(ticksOver - 1, 0);
    if (number % kTicksALook == 0 || !todo.empty())
        alarms = watcher.look(now_s);
    // Whether it ends is known later: until then nothing is said of it. It is found again, if not.
    if (ticksOver > 0 || end_s || finder.isInDoubt())
        std::erase_if(alarms, isOfSlowingDown);
    if (number % kTicksACommit == 0)
        save();
    endIfDelivered(false);
    show(now_s);
}

void LiveSession::Private::work()
{
    prepareWatcher();
    auto next = Clock::now();
    for (int number = 1;; ++number) {
        tick(number);
        next = std::max(next + kTick, Clock::now());
        std::unique_lock lock(mutex);
        wake.wait_until(lock, next, [&] { return stopping; });
        if (stopping)
            return;
    }
}

void LiveSession::Private::order(std::function<void()> what)
{
    const std::lock_guard lock(mutex);
    orders.push_back(std::move(what));
}

bool lacksTarget(const core::RunsBy& runs, const core::Study& study)
{
    return runs.way == core::RunsBy::Way::speed && !targetOf(study);
}

LiveSession::LiveSession(std::unique_ptr<Private> p) : d(std::move(p)) {}

LiveSession::~LiveSession()
{
    static_cast<void>(stop());
}

core::Result<std::unique_ptr<LiveSession>> LiveSession::start(storage::StudyFile connection,
                                                              const storage::Rig& rig,
                                                              const core::Instant& first,
                                                              const std::string& name)
{
    auto study = connection.study();
    if (!study)
        return study.error();
    auto reader = storage::RigReader::start(rig);
    if (!reader)
        return reader.error();
    if (lacksTarget(rig.runs, study.value()))
        return core::Error{core::ErrorCode::badInput,
                           "runs that begin by speed need the study's target; expected "
                           "road_speed.target_kmh"_t,
                           {}};
    core::RunFinder finder(rig.runs, targetOf(study.value()), core::directions(study.value()));
    auto p = std::make_unique<Private>(std::move(connection), std::move(reader).take(),
                                       std::move(study).take(), std::move(finder));
    auto recorder = storage::LiveRecorder::begin(p->connection, {name, first, rigText(rig)});
    if (!recorder)
        return recorder.error();
    p->recorder.emplace(std::move(recorder).take());
    p->first = first;
    p->name = name;
    for (const storage::Instrument& instrument : rig.instruments)
        p->instrumentNames.push_back(instrument.name);
    p->worker = std::thread([d = p.get()] { d->work(); });
    return std::unique_ptr<LiveSession>(new LiveSession(std::move(p)));
}

LiveSnapshot LiveSession::snapshot() const
{
    const std::lock_guard lock(d->mutex);
    return d->shown;
}

double LiveSession::clock_s() const
{
    return d->reader.clock_s();
}

core::Instant LiveSession::first() const
{
    return d->first;
}

const std::string& LiveSession::name() const
{
    return d->name;
}

std::optional<core::RecordingId> LiveSession::recording() const
{
    const std::lock_guard lock(d->mutex);
    return d->recording;
}

void LiveSession::next(const core::RunUnderWay& run)
{
    d->order([p = d.get(), run] { p->watcher.next(run); });
}

void LiveSession::begin(const core::RunUnderWay& run)
{
    d->order([p = d.get(), run] {
        p->endIfDelivered(true);
        p->ended.reset();
        p->ticksOver = 0;
        p->run_s = run.start_s;
        p->distance.begin(run.start_s);
        p->watcher.begin(run);
    });
}

void LiveSession::mark(double at_s, const std::string& word, const std::string& words)
{
    d->order([p = d.get(), at_s, word, words] {
        p->recorder->mark(at_s, words.empty() ? word : word + " " + words);
        if (p->watcher.isUnderWay())
            p->watcher.mark(at_s, word, words);
    });
}

void LiveSession::end(double at_s)
{
    d->order([p = d.get(), at_s] {
        if (!p->watcher.isUnderWay())
            return;
        p->end_s = at_s;
        p->ticksToEnd = static_cast<int>(kTicksOfGrace) + 1;
    });
}

void LiveSession::forget()
{
    d->order([p = d.get()] {
        p->watcher.forget();
        p->run_s.reset();
        p->distance.end();
    });
}

std::vector<core::FoundBound> LiveSession::takeFound()
{
    const std::lock_guard lock(d->mutex);
    return std::exchange(d->found, {});
}

void LiveSession::finishRuns()
{
    if (!d->worker.joinable())
        return;
    std::promise<void> done;
    d->order([p = d.get(), &done] {
        p->finder.finish(p->reader.clock_s());
        p->tellFound();
        done.set_value();
    });
    done.get_future().wait();
}

void LiveSession::setStudy(core::Study study)
{
    d->order([p = d.get(), study = std::move(study)] {
        p->finder.setStudy(targetOf(study), core::directions(study));
        p->watcher.setStudy(study);
    });
}

core::Outcome LiveSession::stop()
{
    if (!d->worker.joinable())
        return Done{};
    {
        const std::lock_guard lock(d->mutex);
        d->stopping = true;
    }
    d->wake.notify_all();
    d->worker.join();
    d->tick(0); // what came last
    d->endIfDelivered(true);
    const auto told = d->counts();
    d->reader.stop();
    const core::Outcome done = d->recorder->stop(told);
    const std::lock_guard lock(d->mutex);
    d->shown.finished = true;
    d->recording = d->recorder->recording();
    if (!done)
        d->shown.trouble = done.error();
    return done;
}

} // namespace bothways::app
