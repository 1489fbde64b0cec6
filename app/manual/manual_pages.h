// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"

#include <string>

namespace CLI {
class App;
}

/// The four manual pages: from what --help says and from pages of the handbook.
namespace bothways::app::manual {

/// bothways(1). @param files  the handbook's page command_line
[[nodiscard]] std::string commandPage(const Language& in, const std::string& date,
                                      const CLI::App& program, const std::string& files);
/// bothways-desktop(1). @param window  the handbook's page of that name
[[nodiscard]] std::string desktopPage(const Language& in, const std::string& date,
                                      const std::string& window);
/// bothways-study(5). @param file  the handbook's page study_file
[[nodiscard]] std::string studyPage(const Language& in, const std::string& date,
                                    const std::string& file);
/// bothways-sheet(5). @param sheets  the handbook's page spreadsheets
[[nodiscard]] std::string sheetPage(const Language& in, const std::string& date,
                                    const std::string& sheets);

} // namespace bothways::app::manual
