// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_pipeline.h"

#include "core/recording/unreadable_recording.h"

#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;
using SteadyClock = std::chrono::steady_clock;

constexpr std::size_t kRowsOfABlock = 65536;
constexpr std::size_t kSmallestBlock = std::size_t{1} << 20;
constexpr std::size_t kLargestBlock = std::size_t{4} << 20;
constexpr std::size_t kWorkers = 2;
constexpr std::size_t kMostWaiting = 3; ///< groups that wait to be stored
constexpr auto kBetweenProgress = std::chrono::milliseconds(50);

Error stopped(std::string_view name)
{
    return Error{ErrorCode::stopped, "stopped before the end; nothing was imported"_t,
                 std::string(name)};
}

std::size_t channelsOf(const TracePlan& plan)
{
    return static_cast<std::size_t>(
        std::count_if(plan.columns.begin(), plan.columns.end(),
                      [](const ColumnPlan& column) { return column.use == CellUse::number; }));
}

/// The threads of one reading and what they share.
class Readers {
public:
    Readers(TraceSource& source, const TraceLayout& layout, const TracePlan& plan,
            std::string_view name)
        : m_source(source),
          m_layout(layout),
          m_plan(plan),
          m_name(name),
          m_base(clockBaseOf(layout, plan)),
          m_totals(m_base, channelsOf(plan), layout.dataLine)
    {
    }

    core::Result<ReadTotals> run(const PutGroup& put, const Progress& progress,
                                 std::stop_token stop);

private:
    void work();
    void readBlocks();
    bool takeBlock(TextBlock& text, std::int64_t& index, std::uint64_t& consumed);
    std::optional<std::int64_t> takeTurn(std::int64_t index, std::uint64_t consumed,
                                         TraceBlock& block, std::vector<double>& time_s);
    bool hand(RowGroup&& group);
    std::optional<RowGroup> nextGroup(std::stop_token stop);
    void fail(Error error, std::int64_t blockIndex);
    bool failed();

    TraceSource& m_source;
    const TraceLayout& m_layout;
    const TracePlan& m_plan;
    std::string_view m_name;
    ClockBase m_base;

    std::mutex m_sourceMutex;
    std::int64_t m_blocks = 0; ///< handed out

    std::mutex m_mutex; ///< of all below
    std::condition_variable m_changed;
    BlockTotals m_totals;
    std::int64_t m_turn = 0; ///< block whose times come next
    std::deque<RowGroup> m_groups;
    std::size_t m_working = kWorkers;
    std::optional<Error> m_error;
    std::int64_t m_errorBlock = 0;
    std::uint64_t m_consumed = 0;
};

bool Readers::failed()
{
    const std::lock_guard lock(m_mutex);
    return m_error.has_value();
}

/// Of several errors the one that is first in the file counts.
void Readers::fail(Error error, std::int64_t blockIndex)
{
    const std::lock_guard lock(m_mutex);
    if (!m_error || blockIndex < m_errorBlock) {
        m_error = std::move(error);
        m_errorBlock = blockIndex;
    }
    m_changed.notify_all();
}

bool Readers::takeBlock(TextBlock& text, std::int64_t& index, std::uint64_t& consumed)
{
    const std::lock_guard lock(m_sourceMutex);
    index = m_blocks;
    auto got = m_source.next(text);
    if (!got) {
        Error error = got.error();
        { // its line is known when all before it were counted
            std::unique_lock turn(m_mutex);
            m_changed.wait(turn, [&] { return m_turn == index || m_error; });
            error.where = std::string(m_name);
            error.where.line = m_layout.dataLine + m_totals.totals().lines;
        }
        fail(std::move(error), index);
        return false;
    }
    if (!got.value())
        return false;
    ++m_blocks;
    consumed = m_source.consumed();
    return true;
}

/// @return  the place of the block's first row
std::optional<std::int64_t> Readers::takeTurn(std::int64_t index, std::uint64_t consumed,
                                              TraceBlock& block, std::vector<double>& time_s)
{
    std::unique_lock lock(m_mutex);
    m_changed.wait(lock, [&] { return m_turn == index || m_error; });
    if (m_error)
        return std::nullopt;
    const std::int64_t firstRow = m_totals.totals().order.rows;
    m_totals.put(block, time_s);
    m_consumed = consumed;
    ++m_turn;
    m_changed.notify_all();
    return firstRow;
}

bool Readers::hand(RowGroup&& group)
{
    std::unique_lock lock(m_mutex);
    m_changed.wait(lock, [&] { return m_groups.size() < kMostWaiting || m_error; });
    if (m_error)
        return false;
    m_groups.push_back(std::move(group));
    m_changed.notify_all();
    return true;
}

/// Also where memory runs out in this thread the others are told, and nobody waits for ever.
void Readers::work()
{
    try {
        readBlocks();
    } catch (const std::bad_alloc&) {
        fail({ErrorCode::studyFile, core::outOfMemory().message, std::string(m_name)}, -1);
    }
    const std::lock_guard lock(m_mutex);
    --m_working;
    m_changed.notify_all();
}

void Readers::readBlocks()
{
    TextBlock text;
    TraceBlock block;
    std::vector<double> time_s;
    TraceBlockReader reader(m_layout, m_plan, m_base.us);
    ChunkEncoder encoder;
    std::int64_t index = 0;
    std::uint64_t consumed = 0;
    while (!failed() && takeBlock(text, index, consumed)) {
        reader.read(text.text(), text.quotes, block);
        timesOf(block, time_s);
        const auto firstRow = takeTurn(index, consumed, block, time_s);
        if (!firstRow || (block.rows > 0 && !hand(encodeGroup(encoder, block, time_s, *firstRow))))
            break;
    }
}

/// Nothing at the end, after an error, or when asked to stop.
std::optional<RowGroup> Readers::nextGroup(std::stop_token stop)
{
    std::unique_lock lock(m_mutex);
    m_changed.wait(lock, [&] { return !m_groups.empty() || m_working == 0 || m_error; });
    if (stop.stop_requested() && !m_error) {
        m_error = stopped(m_name);
        m_errorBlock = -1;
        m_changed.notify_all();
    }
    if (m_error || m_groups.empty())
        return std::nullopt;
    RowGroup group = std::move(m_groups.front());
    m_groups.pop_front();
    m_changed.notify_all();
    return group;
}

core::Result<ReadTotals> Readers::run(const PutGroup& put, const Progress& progress,
                                      std::stop_token stop)
{
    const auto started = SteadyClock::now();
    auto said = started - kBetweenProgress;
    {
        std::vector<std::jthread> threads;
        for (std::size_t i = 0; i < kWorkers; ++i)
            threads.emplace_back([this] { work(); });
        while (auto group = nextGroup(stop)) {
            if (const auto stored = put(std::move(*group)); !stored)
                fail(stored.error(), -1);
            const auto now = SteadyClock::now();
            if (progress && now - said >= kBetweenProgress) {
                said = now;
                std::uint64_t consumed = 0;
                {
                    const std::lock_guard lock(m_mutex);
                    consumed = m_consumed;
                }
                const double bytes = static_cast<double>(consumed);
                progress(std::min(1.0, bytes / std::max(1.0, static_cast<double>(m_source.size()))),
                         bytes / std::chrono::duration<double>(now - started).count());
            }
        }
    }
    if (stop.stop_requested() && !m_error)
        m_error = stopped(m_name);
    if (m_error)
        return *m_error;
    ReadTotals totals = m_totals.take();
    totals.half_last_line = m_source.halfLastLine();
    return totals;
}

} // namespace

ClockBase clockBaseOf(const TraceLayout& layout, const TracePlan& plan)
{
    ClockBase base;
    if (!plan.hasClock())
        return base;
    ClockParser parser;
    const auto cell = [](const std::vector<std::string>& row, std::size_t column) {
        return column < row.size() ? std::string_view(row[column]) : std::string_view();
    };
    base.kind = plan.clockForm == ClockForm::timeOfDay && !plan.date ? ClockKind::timeOfDay
                                                                     : ClockKind::local;
    for (const auto& row : layout.rows) {
        const auto time = parser.parse(cell(row, plan.time), plan.clockForm);
        const auto date = plan.date ? parser.parse(cell(row, *plan.date), ClockForm::date)
                                    : std::optional<ClockTime>(ClockTime{});
        if (!time || !date)
            continue;
        base.us = time->us + date->us;
        base.utc_offset_min = time->utc_offset_min;
        if (time->utc_offset_min)
            base.kind = ClockKind::utc;
        return base;
    }
    return base;
}

BlockTotals::BlockTotals(const ClockBase& base, std::size_t channels, std::int64_t firstLine)
    : m_order(base.kind), m_firstLine(firstLine)
{
    m_totals.samples.resize(channels);
    m_totals.bad_cells.resize(channels);
}

/// A column of marks that says the same in row after row means one mark.
void BlockTotals::dropRepeatedMarks(TraceBlock& block)
{
    const std::int64_t before = m_totals.order.rows;
    std::erase_if(block.marks, [&](const auto& mark) {
        const std::int64_t row = before + mark.first;
        const bool repeats = row == m_lastMarkRow + 1 && mark.second == m_lastMark;
        m_lastMarkRow = row;
        m_lastMark = mark.second;
        return repeats;
    });
}

void BlockTotals::put(TraceBlock& block, std::vector<double>& time_s)
{
    if (block.bad_time_line > 0 && m_totals.bad_time_line == 0) {
        m_totals.bad_time_line = m_firstLine - 1 + m_totals.lines + block.bad_time_line;
        m_totals.bad_time = core::Message::verbatim(block.bad_time);
    }
    m_totals.lines += block.lines;
    m_totals.short_rows += block.short_rows;
    m_totals.long_rows += block.long_rows;
    if (!m_totals.utc_offset_min)
        m_totals.utc_offset_min = block.utc_offset_min;
    m_order.put(block, time_s);
    dropRepeatedMarks(block);
    m_totals.marks += static_cast<std::int64_t>(block.marks.size());
    m_totals.order = m_order.counts();
    for (std::size_t i = 0; i < block.channels.size(); ++i) {
        m_totals.samples[i] +=
            block.rows - static_cast<std::int64_t>(block.channels[i].gaps.size());
        m_totals.bad_cells[i] += block.bad[i];
    }
}

ReadTotals BlockTotals::take()
{
    m_totals.main_shift_us = m_order.mainShift_us();
    return std::move(m_totals);
}

RowGroup encodeGroup(ChunkEncoder& encoder, const TraceBlock& block,
                     const std::vector<double>& time_s, std::int64_t firstRow)
{
    RowGroup group;
    group.first_row = firstRow;
    group.time = encoder.encode(block.time, block.rows);
    group.channels.reserve(block.channels.size());
    for (const auto& channel : block.channels)
        group.channels.push_back(encoder.encode(channel, block.rows));
    for (const auto& [row, words] : block.marks)
        group.marks.push_back({time_s[row], words});
    return group;
}

std::size_t blockSizeFor(const TraceLayout& layout)
{
    std::size_t bytes = 0;
    for (const auto& row : layout.rows)
        for (const auto& cell : row)
            bytes += cell.size() + 1;
    const std::size_t rows = std::max<std::size_t>(layout.rows.size(), 1);
    return std::clamp(bytes / rows * kRowsOfABlock, kSmallestBlock, kLargestBlock);
}

core::Result<ReadTotals> readCsvTrace(TraceSource& source, const TraceLayout& layout,
                                      const TracePlan& plan, std::string_view name,
                                      const PutGroup& put, const Progress& progress,
                                      std::stop_token stop)
{
    return Readers(source, layout, plan, name).run(put, progress, std::move(stop));
}

core::Result<ReadTotals> readCsvBlocks(
    TraceSource& source, const TraceLayout& layout, const TracePlan& plan, std::string_view name,
    const std::function<core::Outcome(const TraceBlock&, const std::vector<double>&)>& put)
{
    const ClockBase base = clockBaseOf(layout, plan);
    BlockTotals totals(base, channelsOf(plan), layout.dataLine);
    TraceBlockReader reader(layout, plan, base.us);
    TextBlock text;
    TraceBlock block;
    std::vector<double> time_s;
    for (;;) {
        auto got = source.next(text);
        if (!got) {
            Error error = got.error();
            error.where = std::string(name);
            error.where.line = layout.dataLine + totals.totals().lines;
            return error;
        }
        if (!got.value())
            break;
        reader.read(text.text(), text.quotes, block);
        timesOf(block, time_s);
        totals.put(block, time_s);
        if (const auto outcome = put(block, time_s); !outcome)
            return outcome.error();
    }
    ReadTotals result = totals.take();
    result.half_last_line = source.halfLastLine();
    return result;
}

} // namespace bothways::storage
