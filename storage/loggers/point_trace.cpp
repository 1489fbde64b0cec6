// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/point_trace.h"

#include <algorithm>
#include <chrono>

namespace bothways::storage {

using core::Error;
using core::ErrorCode;

TracePreview PointTrace::preview() const
{
    TracePreview preview;
    preview.format = format();
    return preview;
}

std::vector<ChannelMapping> PointTrace::mapping(const std::vector<ChannelMapping>&) const
{
    return {};
}

Error PointTrace::at(std::int64_t line, core::Message message) const
{
    core::Place where(m_name);
    where.line = line;
    return Error{ErrorCode::badInput, std::move(message), std::move(where)};
}

std::size_t PointTrace::bytes(char* buffer, std::size_t size)
{
    if (m_problem)
        return 0;
    if (m_stop.stop_requested()) {
        m_problem =
            Error{ErrorCode::stopped, "stopped before the end; nothing was imported"_t, m_name};
        return 0;
    }
    const auto got = m_source.readRaw(buffer, size);
    if (got)
        return got.value();
    m_problem = got.error();
    m_problem->where = m_name;
    return 0;
}

Result<ReadTotals> PointTrace::take(const TakeBlock& take)
{
    auto totals = parse(take);
    if (m_problem)
        return *m_problem;
    return totals;
}

Result<ReadTotals> PointTrace::read(const PutGroup& put, const Progress& progress,
                                    std::stop_token stop)
{
    m_stop = std::move(stop);
    ChunkEncoder encoder;
    std::int64_t rows = 0;
    const auto started = std::chrono::steady_clock::now();
    return take([&](const TraceBlock& block, const std::vector<double>& time_s) -> Outcome {
        RowGroup group = encodeGroup(encoder, block, time_s, rows);
        rows += block.rows;
        if (progress) {
            const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - started;
            const auto done = static_cast<double>(m_source.consumed());
            progress(std::min(1.0, done / std::max(1.0, static_cast<double>(m_source.size()))),
                     done / std::max(taken.count(), 1e-9));
        }
        return put(std::move(group));
    });
}

} // namespace bothways::storage
