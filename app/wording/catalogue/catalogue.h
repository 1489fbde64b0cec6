// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// The texts with suffix _t in the sources, and their translations in .ts files (the form of Qt's
/// Linguist, so that it can edit them). For building, and for the tests that hold both together.
namespace bothways::app::catalogue {

/// Translation by key; empty where it is still to be made.
using Translations = std::map<std::string, std::string>;

/// The texts that end with "_t" in C++ source: literals that stand together are one. Comments and
/// raw literals are passed over.
[[nodiscard]] std::vector<std::string> textsIn(std::string_view source);
/// The keys of all .h and .cpp files below these folders.
[[nodiscard]] std::set<std::string> textsBelow(const std::vector<std::filesystem::path>& folders);

/// Throws std::runtime_error, with file and line, where it is no .ts file.
[[nodiscard]] Translations readTs(const std::filesystem::path& file);
/// @param language  "de"
[[nodiscard]] std::string writeTs(const Translations& translations, std::string_view language);
/// Those of `keys`: what is known keeps its translation, what is new has none.
[[nodiscard]] Translations updated(const Translations& known, const std::set<std::string>& keys);

/// C++ source of the table: `const std::pair<const char*, const char*> NAME[]`. What has no
/// translation is left out.
[[nodiscard]] std::string tableSource(const Translations& translations, std::string_view name);

/// What is wrong with a translation, in words for who wrote it: places that differ from those of
/// the key. Empty: nothing.
[[nodiscard]] std::string faultOf(const std::string& key, const std::string& translation);

} // namespace bothways::app::catalogue
