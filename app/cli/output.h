// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace CLI {
class App;
}

/// FILE that a verb writes.
namespace bothways::cli {

/// Where a verb was told to write: the word after FILE, or --output with or without --replace.
struct Target {
    std::string word, output;
    bool replace = false;
    [[nodiscard]] const std::string& file() const { return output.empty() ? word : output; }
    /// Nowhere else: no file was named, or one that is standard output by another name.
    [[nodiscard]] bool isStandardOutput() const;
};

/// TO, --output (--to), --replace
void addTarget(const Language& in, CLI::App& verb, Target& target);
/// Without TO, for a verb that takes several FILEs.
void addOutput(const Language& in, CLI::App& verb, Target& target);

/// @param inputs   files that the call reads
/// @param ownMark  of a page that may go without being asked; empty: none
[[nodiscard]] Outcome writeTo(const Target& target, std::string_view text,
                              const std::vector<std::filesystem::path>& inputs,
                              std::string_view ownMark = {});

/// Whether writeTo() would refuse, as things stand now.
[[nodiscard]] Outcome mayWriteTo(const Target& target,
                                 const std::vector<std::filesystem::path>& inputs,
                                 std::string_view ownMark = {});

/// The same for an option that names a file of its own ("--card"), beside --replace.
[[nodiscard]] Outcome writeTo(const std::string& file, const std::string& option, bool replace,
                              std::string_view text,
                              const std::vector<std::filesystem::path>& inputs,
                              std::string_view ownMark);

} // namespace bothways::cli
