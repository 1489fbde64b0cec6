// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>
#include <utility>

/// The sentences of resources/translations/sentences_*.ts as a table. The definition is written
/// while building, by app/wording/catalogue.
namespace bothways::app {

struct TranslatedSentences {
    std::string_view tag;                                           ///< "de"
    std::span<const std::pair<const char*, const char*>> sentences; ///< by key, ascending
};
[[nodiscard]] std::span<const TranslatedSentences> translatedSentences();

} // namespace bothways::app
