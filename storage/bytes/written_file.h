// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/bytes/file_bytes.h"

#include <filesystem>
#include <string_view>
#include <vector>

/// The one way in which either program writes a file that is no study of its own.
namespace bothways::storage {

struct WriteRules {
    /// Somebody said that what is there may go. Without it only that goes which begins with
    /// `ownMark`; and what has the very bytes already stays.
    bool replace = false;
    /// Files that the bytes were made from: never written over, by whatever name or link.
    std::vector<std::filesystem::path> inputs = {};
    /// What a page of ours says of itself near its beginning; empty: it says nothing.
    std::string_view ownMark = {};
    /// Ends the refusal: how to say that what is there may go.
    core::Message howToReplace = {};
    /// Whether a pipe, a terminal or "/dev/fd/N" may be written to. A window must never wait.
    Streams streams = Streams::refused;
};

/// Writes a file whole or not at all: into an unnamed one in the same folder, flushed, which then
/// takes the name. Never over a study, an input, or what a link leads to. Of several writers the
/// last whole one stands. Permissions are those of what is replaced, else as the user's mask has
/// them. An Error (studyFile) says why it was not written; then all is as it was.
[[nodiscard]] core::Outcome writeWholeFile(const std::filesystem::path& target,
                                           std::string_view bytes, const WriteRules& rules = {});
/// Whether it would be refused as things stand now: asked before work that leaves a trace.
[[nodiscard]] core::Outcome mayWriteFile(const std::filesystem::path& target,
                                         const WriteRules& rules);

/// Of the name of a study.
inline constexpr const char* kStudyEnding = ".bothways";
/// Whether these bytes begin an SQLite database, as every study does.
[[nodiscard]] bool beginsAsAStudy(std::string_view bytes);

} // namespace bothways::storage
