// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_document_private.h"

#include "app/wording/recordings.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/sheet_import.h"

// Recordings in the open study.
namespace bothways::app {

Recomputer::Question StudyDocument::Private::question(const core::AnalysisOptions& options) const
{
    Recomputer::Question question{
        materialOf(study, overruled, history), options, nullptr, {}, revision};
    if (recordings.empty())
        return question;
    if (auto second = file.another())
        question.connection = std::make_shared<storage::StudyFile>(std::move(second).take());
    else
        question.fault = second.error();
    return question;
}

const std::vector<storage::RecordingInfo>& StudyDocument::recordings() const
{
    return d->recordings;
}

const std::vector<storage::RunTraceInfo>& StudyDocument::assignedTraces() const
{
    return d->assigned;
}

const std::vector<storage::RecoveredRecording>& StudyDocument::recovered() const
{
    return d->recovered;
}

std::optional<storage::LiveRecord> StudyDocument::liveRecord(core::RecordingId recording) const
{
    auto record = storage::liveRecord(d->file, recording);
    return record ? std::move(record).take() : std::nullopt;
}

std::vector<std::string> StudyDocument::liveRecordings(const Language& in) const
{
    auto lines = wording::liveRecordings(in, d->file);
    return lines ? std::move(lines).take() : std::vector<std::string>();
}

std::shared_ptr<storage::StudyFile> StudyDocument::anotherConnection()
{
    auto second = d->file.another();
    if (second)
        return std::make_shared<storage::StudyFile>(std::move(second).take());
    emit failed(second.error());
    return {};
}

bool StudyDocument::takeForeignChange(const core::Outcome& outcome)
{
    return finish(outcome);
}

storage::SheetOptions StudyDocument::keptColumns(const std::string& sheet, const QString& file,
                                                 storage::SheetOptions options) const
{
    return storage::withKeptColumns(d->file, sheet, file.toStdString(), std::move(options));
}

core::Outcome StudyDocument::keepColumns(const std::string& sheet, const QString& file,
                                         const storage::SheetOptions& options)
{
    return storage::keepColumns(d->file, sheet, file.toStdString(), options);
}

bool StudyDocument::cutRecording(core::RecordingId recording, const std::vector<storage::Cut>& cuts)
{
    return change([&] { return storage::cutRecording(d->file, recording, cuts); });
}

bool StudyDocument::dropRecording(core::RecordingId recording)
{
    return change([&] { return storage::dropRecording(d->file, recording); });
}

} // namespace bothways::app
