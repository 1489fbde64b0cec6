// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/loggers/trace_points.h"

/// What recordings of positions have in common, whatever their format.
namespace bothways::storage {

class PointTrace : public TraceFile {
public:
    PointTrace(TraceSource&& source, std::string name)
        : m_source(std::move(source)), m_name(std::move(name))
    {
    }
    std::string headerKey() const override { return {}; }
    const std::string& name() const override { return m_name; }
    const std::vector<TraceChannel>& channels() const override { return pointChannels(); }
    TracePreview preview() const override;
    Outcome plan(const std::vector<ChannelMapping>&) override { return core::Done{}; }
    std::vector<ChannelMapping> mapping(const std::vector<ChannelMapping>&) const override;
    Result<ReadTotals> read(const PutGroup& put, const Progress& progress,
                            std::stop_token stop) override;
    Result<ReadTotals> take(const TakeBlock& take) override;

protected:
    /// Reads all points.
    virtual Result<ReadTotals> parse(const TakeBlock& take) = 0;
    /// The source's bytes. At an error or a stop there are none, and the next m_problem says why.
    std::size_t bytes(char* buffer, std::size_t size);
    core::Error at(std::int64_t line, core::Message message) const;

    TraceSource m_source;
    std::string m_name;
    std::optional<core::Error> m_problem;

private:
    std::stop_token m_stop;
};

} // namespace bothways::storage
