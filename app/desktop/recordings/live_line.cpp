// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/live_line.h"

#include "app/desktop/look/said.h"
#include "app/wording/recordings.h"
#include "storage/instruments/rig.h"

namespace bothways::app {

QString liveLine(const Language& in, const StudyDocument& document, core::RecordingId recording)
{
    const auto record = document.liveRecord(recording);
    if (!record)
        return {};
    const auto rig = storage::rigFromText(record->rig, {});
    return asSentence(
        shown(wording::recordedLive(in, rig ? rig.value().name : std::string(), *record)));
}

} // namespace bothways::app
