// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

/// What somebody does to a study who knows its format.
namespace bothways::tests {

/// Runs statements as any other program would: nothing is switched off.
void runSql(const std::filesystem::path& study, const std::string& statements);

/// The same, and then makes every checksum fit what is there: of the lines of the history and the
/// seal. Constraints of the tables are not looked at.
void forge(const std::filesystem::path& study, const std::string& statements);

/// Puts `changeset` in place of that of the newest change that stands, and makes all fit.
void forgeChangeset(const std::filesystem::path& study, const std::string& changeset);

/// The first column of the first row.
[[nodiscard]] std::string askSql(const std::filesystem::path& study, const std::string& query);

} // namespace bothways::tests
