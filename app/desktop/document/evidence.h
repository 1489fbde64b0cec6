// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/bytes/evidence_file.h"

#include <QString>

#include <optional>
#include <string>

/// Evidence that is a file, as the window shows and opens it.
namespace bothways::app {

class StudyDocument;

struct ShownEvidence {
    QString file; ///< where it should be
    QString name; ///< "clip.mp4", or "clip.mp4, at 83.5 s"
    enum class State { there, changed, missing } state = State::missing;
};

/// The file that the words of a discard or of an overruling name; nothing where they name none. Its
/// size is looked at, not its bytes, which may be many.
[[nodiscard]] std::optional<ShownEvidence> evidenceIn(const StudyDocument& document,
                                                      const std::string& words);
/// Hands it to the program that the desktop has for it.
/// @return  a sentence why not; empty: it was handed over
[[nodiscard]] QString openEvidence(const ShownEvidence& evidence);

} // namespace bothways::app
