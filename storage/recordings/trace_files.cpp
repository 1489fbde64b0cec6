// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/cutting.h"
#include "core/recording/unreadable_recording.h"
#include "core/study/clock.h"
#include "storage/bytes/decimal.h"
#include "storage/loggers/trace_open.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"

#include <algorithm>
#include <map>
#include <set>
#include <system_error>

namespace bothways::storage {
namespace {

using core::Done;

/// Above it a sheet's recordings are read again when they are asked for.
constexpr std::uintmax_t kKeptBytes = std::uintmax_t{256} << 20;

/// A recording in memory, in its own time.
struct LoadedTrace {
    TraceReport report;
    core::SampleTimes times; ///< of all rows
    std::vector<StoredChannel> channels;
    std::vector<core::Samples> samples; ///< by place - 1
    std::vector<core::RunTrace::TextMark> marks;
};

/// Appends a block's samples of one channel.
void append(core::Samples& samples, const ScaledColumn& column, const TraceChannel& channel,
            const std::vector<double>& time_s, bool wantsTimes)
{
    const double divisor = kPowersOfTen[static_cast<std::size_t>(column.decimals)];
    auto gap = column.gaps.begin();
    auto odd = column.odd.begin();
    for (std::uint32_t row = 0; row < time_s.size(); ++row) {
        if (gap != column.gaps.end() && *gap == row) {
            ++gap;
            continue;
        }
        double value = static_cast<double>(column.scaled[row]) / divisor;
        if (odd != column.odd.end() && odd->first == row)
            value = (odd++)->second;
        if (channel.factor != 1.0 || channel.offset != 0.0)
            value = value * channel.factor + channel.offset;
        samples.value.push_back(value);
        if (wantsTimes)
            samples.time_s.push_back(time_s[row]);
    }
}

Result<LoadedTrace> load(const std::filesystem::path& file, const std::stop_token& stop)
{
    auto opened = openTrace(file);
    if (!opened)
        return opened.error();
    TraceFile& trace = *opened.value();
    if (const Outcome planned = trace.plan({}); !planned)
        return planned.error();
    LoadedTrace loaded;
    loaded.samples.resize(trace.channels().size());
    std::vector<double> times;
    // Times of a channel of its own are gathered from its first gap on.
    std::vector<bool> dense(trace.channels().size(), true);
    const auto totals =
        trace.take([&](const TraceBlock& block, const std::vector<double>& time_s) -> Outcome {
            if (stop.stop_requested())
                return core::Error{core::ErrorCode::stopped, "stopped before the end"_t, {}};
            for (std::size_t i = 0; i < block.channels.size(); ++i) {
                core::Samples& samples = loaded.samples[i];
                if (dense[i] && !block.channels[i].gaps.empty()) {
                    dense[i] = false;
                    samples.time_s = core::SampleTimes(times);
                }
                append(samples, block.channels[i], trace.channels()[i], time_s, !dense[i]);
            }
            for (const auto& [row, words] : block.marks)
                loaded.marks.push_back({time_s[row], words});
            times.insert(times.end(), time_s.begin(), time_s.end());
            return Done{};
        });
    if (!totals)
        return totals.error();
    auto described = describeTrace(trace, totals.value(), {});
    if (!described)
        return described.error();
    loaded.report = std::move(described.value().report);
    loaded.channels = std::move(described.value().channels);
    loaded.times = core::SampleTimes(std::move(times));
    for (std::size_t i = 0; i < dense.size(); ++i)
        if (dense[i])
            loaded.samples[i].time_s = loaded.times;
    return loaded;
}

core::SampleTimes shifted(const core::SampleTimes& times, double zero_s)
{
    std::vector<double> result(times.begin(), times.end());
    for (double& time : result)
        time -= zero_s;
    return result;
}

Result<std::unique_ptr<core::MemoryTrace>> traceOf(const LoadedTrace& loaded, const core::Run& run,
                                                   const std::filesystem::path& file,
                                                   const core::ClockOptions& clock)
{
    const TraceReport& report = loaded.report;
    const auto match =
        core::matchClocks({report.first, report.from_s, report.to_s}, {&run, 1}, clock);
    if (!match) {
        core::Error error = match.error();
        error.where = file.string();
        return error;
    }
    const double zero_s = match.value().front().offset_s;
    auto trace = std::make_unique<core::MemoryTrace>();
    const core::SampleTimes common = zero_s == 0.0 ? loaded.times : shifted(loaded.times, zero_s);
    for (const StoredChannel& channel : loaded.channels) {
        const core::Samples& samples = loaded.samples[static_cast<std::size_t>(channel.place - 1)];
        const bool sharesTimes = samples.time_s.data() == loaded.times.data();
        trace->add(channel.name, channel.unit,
                   {sharesTimes     ? common
                    : zero_s == 0.0 ? samples.time_s
                                    : shifted(samples.time_s, zero_s),
                    samples.value});
    }
    for (const auto& mark : loaded.marks)
        trace->addMark(mark.at_s - zero_s, mark.words);
    return trace;
}

/// Where a recording is; empty: it is not there.
std::filesystem::path placeOf(const std::string& trace, const std::filesystem::path& sheet,
                              const SheetTraces& where)
{
    const std::filesystem::path beside = sheet.parent_path() / trace;
    std::error_code problem;
    if (std::filesystem::exists(beside, problem))
        return beside;
    if (where.folder.empty())
        return {};
    for (const std::filesystem::path& file :
         {where.folder / trace, where.folder / std::filesystem::path(trace).filename()})
        if (std::filesystem::exists(file, problem))
            return file;
    return {};
}

core::Error notThere(const std::string& trace, const std::filesystem::path& sheet,
                     const SheetTraces& where)
{
    return {core::ErrorCode::badInput,
            where.folder.empty()
                ? core::Message("there is no such file; expected the recording where its sheet has "
                                "it, or to be told its folder: --traces FOLDER"_t)
                : core::message("there is no such file, and none of this name in {}"_t,
                                where.folder.string()),
            (sheet.parent_path() / trace).string()};
}

} // namespace

Result<TraceFiles> traceFiles(const core::Study& runs, const std::filesystem::path& sheet,
                              const SheetTraces& where)
{
    TraceFiles files;
    std::vector<core::Error> missing;
    std::set<std::string> said;
    for (const core::Run& run : runs.runs) {
        if (run.trace.empty())
            continue;
        std::filesystem::path file = placeOf(run.trace, sheet, where);
        if (!file.empty())
            files.emplace(run.number, std::move(file));
        else if (said.insert(run.trace).second)
            missing.push_back(notThere(run.trace, sheet, where));
    }
    if (missing.empty())
        return files;
    core::Error all = missing.front();
    all.others.assign(missing.begin() + 1, missing.end());
    return all;
}

Result<std::unique_ptr<core::RunTrace>> readTraceFile(const std::filesystem::path& file,
                                                      const core::Run& run,
                                                      const std::stop_token& stop,
                                                      const core::ClockOptions& clock)
{
    const auto loaded = load(file, stop);
    if (!loaded)
        return loaded.error();
    auto trace = traceOf(loaded.value(), run, file, clock);
    if (!trace)
        return trace.error();
    return std::unique_ptr<core::RunTrace>(std::move(trace).take());
}

Result<core::TraceProvider> tracesOfSheet(const std::filesystem::path& sheet,
                                          const core::Study& study, const std::stop_token& stop,
                                          const SheetTraces& where)
{
    auto found = traceFiles(study, sheet, where);
    if (!found)
        return found.error();
    const auto files = std::make_shared<const TraceFiles>(std::move(found).take());
    const core::ClockOptions clock{-where.shift_s, {}};
    auto kept = std::make_shared<std::map<int, core::MemoryTrace>>(); // by the run's number
    std::map<std::filesystem::path, LoadedTrace> loaded;
    std::uintmax_t bytes = 0;
    for (const core::Run& run : study.runs) {
        if (run.trace.empty())
            continue;
        const std::filesystem::path& file = files->at(run.number);
        auto known = loaded.find(file);
        if (known == loaded.end()) {
            auto read = load(file, stop);
            if (!read)
                return read.error();
            loaded.clear(); // runs of one recording follow one another
            known = loaded.emplace(file, std::move(read).take()).first;
        }
        auto trace = traceOf(known->second, run, file, clock);
        if (!trace)
            return trace.error();
        std::error_code problem;
        bytes += std::filesystem::file_size(file, problem);
        if (bytes <= kKeptBytes)
            kept->emplace(run.number, *trace.value());
    }
    return core::TraceProvider(
        [files, clock, kept, stop](const core::Run& run) -> std::unique_ptr<core::RunTrace> {
            const auto file = files->find(run.number);
            if (run.trace.empty() || file == files->end())
                return nullptr;
            if (const auto in = kept->find(run.number); in != kept->end())
                return std::make_unique<core::MemoryTrace>(in->second);
            auto trace = readTraceFile(file->second, run, stop, clock);
            if (!trace)
                throw core::UnreadableRecording(trace.error());
            return std::move(trace).take();
        });
}

} // namespace bothways::storage
