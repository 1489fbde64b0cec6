// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/cut.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Recordings of data loggers into a study: progress, and what was met in them.
namespace bothways::cli {

/// While it lives, a terminal shows how far an import is.
class ImportWatch {
public:
    using Progress =
        std::function<void(const std::string& name, double done, double bytesPerSecond)>;

    explicit ImportWatch(const Surroundings& io);
    ~ImportWatch();
    ImportWatch(const ImportWatch&) = delete;
    ImportWatch& operator=(const ImportWatch&) = delete;

    [[nodiscard]] Progress progress();
    /// Wipes the line of progress away.
    void done();

private:
    const Surroundings& m_io;
};

/// "COLUMN=CHANNEL[,FACTOR[,OFFSET]]", each of them.
[[nodiscard]] Result<std::vector<storage::ChannelMapping>>
mappingFrom(const std::vector<std::string>& texts);

/// What is known about a recording before it comes in.
struct RecordingOrder {
    std::filesystem::path file;
    std::optional<int> run; ///< that it belongs to; none: not yet cut
    std::vector<storage::ChannelMapping> mapping;
    storage::CutsOf cuts;   ///< empty: it is not cut
    double shift_s = 0.0;   ///< is added to the times of its clock
    std::string start = {}; ///< when its time 0 was, of one without a clock
};
[[nodiscard]] Result<storage::TraceReport>
importRecording(storage::StudyFile& file, const RecordingOrder& order, Surroundings& io);

/// "imported drive.csv: 1,200 rows, ...", a line each for what was odd in it.
[[nodiscard]] std::string whatWasMet(const Language& in, const storage::TraceReport& report,
                                     const std::string& name);

/// Says where a recording is in the study twice.
void warnOfASecondCopy(const storage::StudyFile& file, core::RecordingId imported,
                       Surroundings& io);

} // namespace bothways::cli
