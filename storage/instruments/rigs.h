// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/rig.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

/// The rigs that a user keeps.
namespace bothways::storage {

/// "bothways/rigs" in the folder of the user's settings (XDG Base Directory Specification); empty
/// where the system names none.
[[nodiscard]] std::filesystem::path rigsFolder();
/// Names in order; none where there is no such folder.
[[nodiscard]] std::vector<std::string> rigNames(const std::filesystem::path& folder);
/// Where a rig of that name is kept; an Error where it is no name of a file.
[[nodiscard]] core::Result<std::filesystem::path> rigFile(const std::filesystem::path& folder,
                                                          std::string_view name);
/// What a word of the command line means: a file (with a '/' or ".json"), or the user's rig of that
/// name. An Error names the rigs that there are.
[[nodiscard]] core::Result<Rig> rigByWord(const std::filesystem::path& folder,
                                          std::string_view word);
/// The file that a word means, whether it is there or not.
[[nodiscard]] core::Result<std::filesystem::path> rigFileByWord(const std::filesystem::path& folder,
                                                                std::string_view word);
/// Writes it, and the folders that lead to it.
[[nodiscard]] core::Outcome saveRig(const std::filesystem::path& file, const Rig& rig,
                                    bool replace);

/// A serial port that is there.
struct SerialPortName {
    std::string path;  ///< the one that stays the same wherever it is plugged in, if there is one
    std::string means; ///< "/dev/ttyUSB0"
};
[[nodiscard]] std::vector<SerialPortName>
serialPorts(const std::filesystem::path& devices = "/dev");

} // namespace bothways::storage
