// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

/// Evidence that is a file: a photo, or a moment of a clip. A study keeps its name, size and
/// SHA-256 at the end of the evidence's words, not the file itself; so it goes through run sheets,
/// history and report as words do.
namespace bothways::storage {

struct EvidenceFile {
    std::string name;           ///< as it was given: absolute, or relative to the study's folder
    std::optional<double> at_s; ///< the moment in a clip
    std::int64_t bytes = 0;
    std::string sha256;
    friend bool operator==(const EvidenceFile&, const EvidenceFile&) = default;
};

/// Looks at the file. @param folder  of the study; a file below it is named relative to it
/// @param word    its path, with "@SECONDS" behind it for a moment of a clip
/// @return  an Error (badInput) where there is no such ordinary file
[[nodiscard]] core::Result<EvidenceFile> evidenceFile(const std::string& word,
                                                      const std::filesystem::path& folder);
/// "words [clip.mp4 @ 83.5 s, 1234567 bytes, SHA-256 ab12...]"; what stood there before is
/// replaced.
[[nodiscard]] std::string withEvidenceFile(std::string_view words, const EvidenceFile& file);
/// The file at the end of the words; nothing where there is none.
[[nodiscard]] std::optional<EvidenceFile> evidenceFileIn(std::string_view words);
/// The words alone.
[[nodiscard]] std::string_view withoutEvidenceFile(std::string_view words);

enum class EvidenceState { same, changed, missing };
/// Whether the file is what it was. Reads all of it.
[[nodiscard]] EvidenceState stateOf(const EvidenceFile& file, const std::filesystem::path& folder);
[[nodiscard]] std::filesystem::path pathOf(const EvidenceFile& file,
                                           const std::filesystem::path& folder);

} // namespace bothways::storage
