// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sentences.h"

#include "storage/study/history_message.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

// Lines of a study's history, in the words of the desktop's panel
// (app/desktop/document/history_words.cpp).
namespace bothways::app::english {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 22> kKinds{
    {{"new", "Study made"},
     {"add_run", "Run added"},
     {"edit_run", "Run changed"},
     {"edit_runs", "Run changed"},
     {"remove_runs", "Run removed"},
     {"discard", "Discarded"},
     {"count", "Counted again"},
     {"pair", "Pair tied"},
     {"unpair", "Pair untied"},
     {"set", "Study properties"},
     {"rename", "Renamed"},
     {"import", "Run sheet imported"},
     {"import_trace", "Recording imported"},
     {"assign_trace", "Recording given to a run"},
     {"unassign_trace", "Recording taken from a run"},
     {"cut_recording", "Recording cut into runs"},
     {"drop_recording", "Recording dropped"},
     {"overrule", "Finding overruled"},
     {"look", "Verdict looked at"},
     {"blind", "Blind screening"},
     {"undo", "Undone"},
     {"redo", "Done again"}}};

} // namespace

std::string historySentence(std::string_view kind, std::string_view detail)
{
    const auto known = std::find_if(kKinds.begin(), kKinds.end(),
                                    [&](const auto& entry) { return entry.first == kind; });
    const std::string_view words = known == kKinds.end() ? kind : known->second;
    if (detail.empty())
        return std::string(words);
    const storage::HistoryEntry entry{0, {}, std::string(kind), std::string(detail), false};
    if (const auto change = storage::changeBehind(entry))
        return fmt::format("{}: {}", words, historySentence(change->kind, change->detail));
    return fmt::format("{}: {}", words, storage::historyDetail(entry).english());
}

} // namespace bothways::app::english
