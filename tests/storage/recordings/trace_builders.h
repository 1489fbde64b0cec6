// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/loggers/trace_report.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/trace_import.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/study_builders.h"

#include <fstream>
#include <string>
#include <string_view>
#include <vector>

/// Builders for the tests of recordings.
namespace bothways::tests {

/// A study with runs 1 (05:40, out) and 2 (05:47, return), 210 s each, beside files of recordings.
class TraceBench {
public:
    explicit TraceBench(std::string_view text = {}, const std::string& name = "drive.csv")
        : m_study(taken(storage::StudyFile::create(m_folder / "day.bothways")))
    {
        if (!text.empty())
            write(text, name);
        core::Run first = aRun(), second = aRun().returning().at_min(7);
        first.duration_s = second.duration_s = 210.0;
        m_first = taken(m_study.addRun(first));
        m_second = taken(m_study.addRun(second));
    }
    std::filesystem::path write(std::string_view text, const std::string& name = "drive.csv")
    {
        m_file = m_folder / name;
        std::ofstream(m_file, std::ios::binary) << text;
        return m_file;
    }
    core::Result<storage::TraceReport> tryImport(const storage::TraceImportOptions& options = {})
    {
        return storage::importTrace(m_study, m_file, options);
    }
    storage::TraceReport import(const storage::TraceImportOptions& options = {})
    {
        return taken(tryImport(options));
    }
    core::Samples channel(std::string_view name)
    {
        return taken(
            storage::readChannel(m_study, taken(storage::recordings(m_study)).back().id, name));
    }
    std::vector<double> times(std::string_view name)
    {
        const core::Samples samples = channel(name);
        return {samples.time_s.begin(), samples.time_s.end()};
    }
    /// Everything in the study file that a person could see or take back.
    std::string content()
    {
        std::string text;
        for (const auto& entry : taken(m_study.history()))
            text += entry.kind + entry.detail + (entry.undone ? "-" : "+") + '\n';
        for (const auto& recording : taken(storage::recordings(m_study)))
            text += recording.name + '\n';
        return text;
    }

    TemporaryFolder m_folder;
    storage::StudyFile m_study;
    std::filesystem::path m_file;
    core::RunId m_first{}, m_second{};
};

} // namespace bothways::tests
