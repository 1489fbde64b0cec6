// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_pipeline.h"
#include "storage/loggers/trace_report.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

/// A recording's file, whatever its format. What it is is told by its content.
namespace bothways::storage {

/// A channel that a file has, before anything of it is read.
struct TraceChannel {
    std::string name;
    std::string unit;
    double factor = 1.0, offset = 0.0;
    std::string column = {}; ///< in the header; empty where the format has none
    bool nameless = false;   ///< its header cell was empty
};

/// Rows that were read and set in order, with their times.
using TakeBlock = std::function<Outcome(const TraceBlock&, const std::vector<double>& time_s)>;

class TraceFile {
public:
    virtual ~TraceFile() = default;
    [[nodiscard]] virtual std::string_view format() const = 0;
    /// Of the header; empty where the format has none.
    [[nodiscard]] virtual std::string headerKey() const = 0;
    [[nodiscard]] virtual TracePreview preview() const = 0;
    /// Says what each column is. Before read() and take().
    [[nodiscard]] virtual Outcome plan(const std::vector<ChannelMapping>& mapping) = 0;
    /// The mapping of every column that plan() would take.
    [[nodiscard]] virtual std::vector<ChannelMapping>
    mapping(const std::vector<ChannelMapping>& given) const = 0;
    [[nodiscard]] virtual const std::vector<TraceChannel>& channels() const = 0;
    /// Time 0 by a clock, before changes of it are taken into account; `date` for times of day.
    [[nodiscard]] virtual Result<std::optional<core::Instant>>
    zero(const ReadTotals& totals, const std::string& date) const = 0;
    /// Reads everything and encodes it, once.
    [[nodiscard]] virtual Result<ReadTotals> read(const PutGroup& put, const Progress& progress,
                                                  std::stop_token stop) = 0;
    /// Reads everything, once, as it is.
    [[nodiscard]] virtual Result<ReadTotals> take(const TakeBlock& take) = 0;
    [[nodiscard]] virtual const std::string& name() const = 0;
};

[[nodiscard]] Result<std::unique_ptr<TraceFile>> openTrace(const std::filesystem::path& file);

struct DescribedTrace {
    TraceReport report;
    std::vector<StoredChannel> channels;
};
/// What was read, in words and numbers. An Error where it is no recording after all: no row, or
/// hardly a time that could be read.
[[nodiscard]] Result<DescribedTrace> describeTrace(const TraceFile& trace, const ReadTotals& totals,
                                                   const std::string& date);

/// Makers of each format, from its opened source.
[[nodiscard]] Result<std::unique_ptr<TraceFile>> openCsvTrace(TraceSource&& source,
                                                              std::string name);
[[nodiscard]] Result<std::unique_ptr<TraceFile>> openGpxTrace(TraceSource&& source,
                                                              std::string name);
[[nodiscard]] Result<std::unique_ptr<TraceFile>> openNmeaTrace(TraceSource&& source,
                                                               std::string name);
[[nodiscard]] bool looksLikeGpx(std::string_view head);
[[nodiscard]] bool looksLikeNmea(std::string_view head);

} // namespace bothways::storage
