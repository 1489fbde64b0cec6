// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/trace_loader.h"

#include "core/recording/unreadable_recording.h"
#include "core/screening/rule_channels.h"
#include "storage/recordings/run_traces.h"

#include <QString>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <set>

namespace bothways::app {
namespace {

// In a logger's own name. "Accessory power" and "output" are not what the vehicle used.
constexpr std::array kTellingWords{"fuel",   "consum", "mpg",      "kwh", "economy",
                                   "inject", "l/h",    "air_mass", "maf"};

} // namespace

bool tellsConsumption(const std::string& channel)
{
    const QString name = QString::fromStdString(channel).toLower();
    return core::tellsConsumption(name.toStdString()) ||
           std::any_of(kTellingWords.begin(), kTellingWords.end(),
                       [&](const char* word) { return name.contains(QLatin1String(word)); });
}

/// Used by the loader's thread alone, once it is handed over. Traces go before the connection that
/// they read from.
struct TraceLoader::Source {
    std::shared_ptr<storage::StudyFile> connection;
    std::map<core::RunId, std::unique_ptr<core::RunTrace>> traces;
};

class TraceLoader::LazyTrace final : public core::RunTrace {
public:
    LazyTrace(TraceLoader& loader, core::RunId run, const core::RunTrace& whole)
        : m_loader(&loader), m_run(run), m_all(whole.channels()), m_marks(whole.marks())
    {
    }
    void setBlind(bool blind)
    {
        m_shown = m_all;
        if (blind)
            std::erase_if(m_shown, [](const auto& info) { return tellsConsumption(info.name); });
    }
    void put(const std::string& channel, std::shared_ptr<const core::Samples> samples)
    {
        m_samples[channel] = std::move(samples);
    }
    void forsake() { m_loader = nullptr; } ///< the loader has begun anew, or is gone

    const std::vector<core::ChannelInfo>& channels() const override { return m_shown; }
    const std::vector<TextMark>& marks() const override { return m_marks; }
    std::shared_ptr<const core::Samples> samples(std::string_view channel) const override
    {
        const std::string name(channel);
        if (std::none_of(m_shown.begin(), m_shown.end(),
                         [&](const auto& info) { return info.name == name; }))
            return nullptr;
        if (const auto known = m_samples.find(name); known != m_samples.end())
            return known->second;
        if (m_loader && m_wanted.insert(name).second)
            m_loader->want(m_run, name);
        return nullptr;
    }
    double last_s() const override
    {
        double last = std::numeric_limits<double>::quiet_NaN();
        for (const auto& [name, samples] : m_samples)
            if (samples && samples->size() > 0)
                last = std::isnan(last) ? samples->time_s.back()
                                        : std::max(last, samples->time_s.back());
        return last;
    }

private:
    TraceLoader* m_loader;
    core::RunId m_run;
    std::vector<core::ChannelInfo> m_all, m_shown;
    std::vector<TextMark> m_marks;
    std::map<std::string, std::shared_ptr<const core::Samples>> m_samples;
    mutable std::set<std::string> m_wanted;
};

TraceLoader::TraceLoader(QObject* parent) : QObject(parent)
{
    m_thread.setMaxThreadCount(1); // a connection is one thread's
    m_news.setSingleShot(true);
    m_news.setInterval(0);
    connect(&m_news, &QTimer::timeout, this, &TraceLoader::loaded);
}

TraceLoader::~TraceLoader()
{
    m_thread.clear();
    m_thread.waitForDone();
    for (const auto& [run, trace] : m_traces)
        trace->forsake();
}

void TraceLoader::open(std::shared_ptr<storage::StudyFile> connection, std::vector<core::Run> runs)
{
    for (const auto& [run, trace] : m_traces)
        trace->forsake();
    m_traces.clear();
    m_source = std::make_shared<Source>();
    m_source->connection = std::move(connection);
    if (!m_source->connection) {
        emit opened();
        return;
    }
    ++m_pending;
    m_thread.start([this, source = m_source, runs = std::move(runs)]() mutable {
        const core::TraceProvider provider = storage::tracesOf(*source->connection);
        std::map<core::RunId, std::shared_ptr<LazyTrace>> traces;
        for (const core::Run& run : runs) {
            auto trace = core::readingRecordings([&] { return provider(run); });
            if (!trace) {
                say(source, trace.error());
            } else if (trace.value()) {
                traces[run.id] = std::make_shared<LazyTrace>(*this, run.id, *trace.value());
                source->traces[run.id] = std::move(trace).take();
            }
        }
        QMetaObject::invokeMethod(
            this,
            [this, source, traces = std::move(traces)] {
                --m_pending;
                if (source != m_source)
                    return;
                m_traces = traces;
                setBlind(m_blind);
                emit opened();
            },
            Qt::QueuedConnection);
    });
}

std::shared_ptr<const core::RunTrace> TraceLoader::trace(core::RunId run) const
{
    const auto found = m_traces.find(run);
    return found == m_traces.end() ? nullptr : found->second;
}

void TraceLoader::setBlind(bool blind)
{
    m_blind = blind;
    for (const auto& [run, trace] : m_traces)
        trace->setBlind(blind);
}

/// From the loader's thread.
void TraceLoader::say(const std::shared_ptr<Source>& source, const core::Error& error)
{
    QMetaObject::invokeMethod(
        this,
        [this, source, error] {
            if (source == m_source)
                emit failed(error);
        },
        Qt::QueuedConnection);
}

void TraceLoader::want(core::RunId run, const std::string& channel)
{
    ++m_pending;
    m_thread.start([this, source = m_source, run, channel] {
        const core::RunTrace& trace = *source->traces.at(run);
        const auto read = core::readingRecordings([&] { return trace.samples(channel); });
        if (!read)
            say(source, read.error());
        auto samples = read ? read.value() : nullptr;
        QMetaObject::invokeMethod(
            this,
            [this, source, run, channel, samples = std::move(samples)] {
                --m_pending;
                if (source != m_source)
                    return;
                m_traces.at(run)->put(channel, samples);
                m_news.start();
            },
            Qt::QueuedConnection);
    });
}

} // namespace bothways::app
