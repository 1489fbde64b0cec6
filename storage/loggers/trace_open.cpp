// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_open.h"

#include "core/study/clock.h"
#include "storage/loggers/trace_names.h"

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;

class CsvTrace final : public TraceFile {
public:
    CsvTrace(TraceSource&& source, std::string name, TraceLayout layout)
        : m_source(std::move(source)), m_name(std::move(name)), m_layout(std::move(layout))
    {
    }

    std::string_view format() const override { return "csv"; }
    std::string headerKey() const override { return m_layout.headerKey; }
    const std::string& name() const override { return m_name; }
    const std::vector<TraceChannel>& channels() const override { return m_channels; }
    TracePreview preview() const override;
    Outcome plan(const std::vector<ChannelMapping>& mapping) override;
    std::vector<ChannelMapping> mapping(const std::vector<ChannelMapping>& given) const override;
    Result<std::optional<core::Instant>> zero(const ReadTotals& totals,
                                              const std::string& date) const override;
    Result<ReadTotals> read(const PutGroup& put, const Progress& progress,
                            std::stop_token stop) override;
    Result<ReadTotals> take(const TakeBlock& take) override;

private:
    TraceSource m_source;
    std::string m_name;
    TraceLayout m_layout;
    TracePlan m_plan;
    std::vector<TraceChannel> m_channels;
};

TracePreview CsvTrace::preview() const
{
    TracePreview preview;
    preview.format = "csv";
    preview.separator = m_layout.separator;
    preview.decimalComma = m_layout.decimalComma;
    preview.columns = m_layout.header;
    preview.units = m_layout.units;
    preview.rows = m_layout.rows;
    return preview;
}

Outcome CsvTrace::plan(const std::vector<ChannelMapping>& mapping)
{
    auto plan = planColumns(m_layout, mapping, m_name);
    if (!plan)
        return plan.error();
    m_plan = std::move(plan).take();
    m_channels.clear();
    for (std::size_t i = 0; i < m_plan.columns.size(); ++i) {
        const ColumnPlan& column = m_plan.columns[i];
        if (column.use == CellUse::number)
            m_channels.push_back({column.channel, column.unit, column.factor, column.offset,
                                  m_layout.header[i], m_layout.nameless[i]});
    }
    return Done{};
}

std::vector<ChannelMapping> CsvTrace::mapping(const std::vector<ChannelMapping>& given) const
{
    std::vector<ChannelMapping> all;
    for (const std::string& header : m_layout.header) {
        if (const ChannelMapping* found = mappingOf(given, header)) {
            all.push_back(*found);
            continue;
        }
        const std::string plain = plainName(header);
        all.push_back({header, channelUnit(plain).empty() ? header : plain, 1.0, 0.0});
    }
    return all;
}

Result<std::optional<core::Instant>> CsvTrace::zero(const ReadTotals& totals,
                                                    const std::string& date) const
{
    const ClockBase base = clockBaseOf(m_layout, m_plan);
    switch (base.kind) {
    case ClockKind::none: return m_plan.zero;
    case ClockKind::timeOfDay: {
        if (date.empty())
            return std::optional<core::Instant>();
        const auto day_us = core::parseDate_us(date);
        if (!day_us)
            return day_us.error();
        return std::optional(core::Instant{day_us.value() + base.us - totals.main_shift_us, {}});
    }
    case ClockKind::local:
    case ClockKind::utc: break;
    }
    return std::optional(core::Instant{base.us - totals.main_shift_us, base.utc_offset_min});
}

Result<ReadTotals> CsvTrace::read(const PutGroup& put, const Progress& progress,
                                  std::stop_token stop)
{
    m_source.start(m_layout, blockSizeFor(m_layout));
    return readCsvTrace(m_source, m_layout, m_plan, m_name, put, progress, std::move(stop));
}

Result<ReadTotals> CsvTrace::take(const TakeBlock& take)
{
    m_source.start(m_layout, blockSizeFor(m_layout));
    return readCsvBlocks(m_source, m_layout, m_plan, m_name, take);
}

/// More than half of the rows without a time: the column is no time after all.
std::optional<Error> refuseTimes(const TraceFile& trace, const ReadTotals& totals)
{
    const OrderCounts& order = totals.order;
    core::Place where = trace.name();
    where.line = totals.bad_time_line;
    if (order.bad_times > order.rows)
        return Error{ErrorCode::badInput,
                     core::message("no time that can be read in '{}' and {} other rows, more than "
                                   "half of all; expected a column of time"_t,
                                   totals.bad_time, order.bad_times - 1),
                     where};
    if (order.rows == 0)
        return Error{ErrorCode::badInput, "no row with a time; expected a recording"_t, where};
    return std::nullopt;
}

} // namespace

Result<std::unique_ptr<TraceFile>> openCsvTrace(TraceSource&& source, std::string name)
{
    auto layout = layoutOf(source.head(), source.headIsWhole(), name);
    if (!layout)
        return layout.error();
    return std::unique_ptr<TraceFile>(
        std::make_unique<CsvTrace>(std::move(source), std::move(name), std::move(layout).take()));
}

Result<std::unique_ptr<TraceFile>> openTrace(const std::filesystem::path& file)
{
    auto source = TraceSource::open(file);
    if (!source)
        return source.error();
    const std::string_view head = source.value().head();
    if (looksLikeGpx(head))
        return openGpxTrace(std::move(source).take(), file.string());
    if (looksLikeNmea(head))
        return openNmeaTrace(std::move(source).take(), file.string());
    return openCsvTrace(std::move(source).take(), file.string());
}

Result<DescribedTrace> describeTrace(const TraceFile& trace, const ReadTotals& totals,
                                     const std::string& date)
{
    if (const auto refused = refuseTimes(trace, totals))
        return *refused;
    DescribedTrace described;
    TraceReport& report = described.report;
    const OrderCounts& order = totals.order;
    report.format = trace.format();
    report.rows = order.rows;
    report.bad_times = order.bad_times;
    report.repeated_times = order.repeated_times;
    report.backward_times = order.backward_times;
    report.clock_changes = order.clock_changes;
    report.rate_changes = order.rate_changes;
    report.gaps = order.gaps;
    report.longest_gap_s = order.longest_gap_s;
    report.interval_s = order.interval_s;
    report.short_rows = totals.short_rows;
    report.long_rows = totals.long_rows;
    report.bad_checksums = totals.bad_checksums;
    report.bad_positions = totals.bad_positions;
    report.no_fix = totals.no_fix;
    report.marks = totals.marks;
    report.half_last_line = totals.half_last_line;
    report.from_s = order.first_s;
    report.to_s = order.last_s;
    report.length_s = order.last_s - order.first_s;
    report.mapping_key = trace.headerKey();
    auto zero = trace.zero(totals, date);
    if (!zero)
        return zero.error();
    report.first = zero.value();
    for (std::size_t i = 0; i < trace.channels().size(); ++i) {
        const TraceChannel& channel = trace.channels()[i];
        const std::int64_t samples = totals.samples[i], bad = totals.bad_cells[i];
        if (samples == 0 && (bad > 0 || channel.nameless)) {
            if (!channel.nameless)
                report.left_out.push_back(channel.column);
            continue;
        }
        report.bad_cells += bad;
        report.missing_cells += order.rows - samples - bad;
        report.channels.push_back(channel.name);
        described.channels.push_back({static_cast<std::int64_t>(i) + 1, channel.name, channel.unit,
                                      channel.factor, channel.offset, samples});
    }
    if (described.channels.empty())
        return Error{ErrorCode::badInput, "no channel with a number in it; expected one at least"_t,
                     trace.name()};
    return described;
}

} // namespace bothways::storage
