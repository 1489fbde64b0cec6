// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/history.h"

#include "storage/study/history_message.h"

#include <algorithm>
#include <array>
#include <utility>

namespace bothways::app::wording {
namespace {

constexpr std::array<std::pair<std::string_view, core::Text<0>>, 26> kKinds{
    {{"new", "Study made"_t},
     {"add_run", "Run added"_t},
     {"edit_run", "Run changed"_t},
     {"edit_runs", "Run changed"_t},
     {"remove_runs", "Run removed"_t},
     {"discard", "Discarded"_t},
     {"count", "Counted again"_t},
     {"pair", "Pair tied"_t},
     {"unpair", "Pair untied"_t},
     {"set", "Study properties"_t},
     {"rename", "Renamed"_t},
     {"import", "Run sheet imported"_t},
     {"import_trace", "Recording imported"_t},
     {"assign_trace", "Recording given to a run"_t},
     {"unassign_trace", "Recording taken from a run"_t},
     {"cut_recording", "Recording cut into runs"_t},
     {"drop_recording", "Recording dropped"_t},
     {"record", "Recording begun"_t},
     {"walk_round", "Walk-round"_t},
     {"record_end", "Recording ended"_t},
     {"overrule", "Finding overruled"_t},
     {"let_stand", "Finding stands again"_t},
     {"look", "Verdict looked at"_t},
     {"blind", "Blind screening"_t},
     {"undo", "Undone"_t},
     {"redo", "Done again"_t}}};

} // namespace

std::string historyKind(const Language& in, std::string_view kind)
{
    const auto known = std::find_if(kKinds.begin(), kKinds.end(),
                                    [&](const auto& entry) { return entry.first == kind; });
    return in.say(known == kKinds.end() ? core::Message::verbatim(std::string(kind))
                                        : core::Message(known->second));
}

std::string historySentence(const Language& in, std::string_view kind, std::string_view detail)
{
    const storage::HistoryEntry entry{0, {}, std::string(kind), std::string(detail), false};
    return historyLine(in, entry);
}

std::string historyLine(const Language& in, const storage::HistoryEntry& entry)
{
    const std::string words = historyKind(in, entry.kind);
    if (entry.detail.empty())
        return words;
    if (const auto change = storage::changeBehind(entry))
        return in.say("{}: {}"_t, words, historySentence(in, change->kind, change->detail));
    return in.say("{}: {}"_t, words, storage::historyDetail(entry));
}

std::vector<std::string> historyLines(const Language& in,
                                      const std::vector<storage::HistoryEntry>& history)
{
    std::vector<std::string> lines;
    for (const storage::HistoryEntry& entry : history)
        lines.push_back(entry.at + " " + historyLine(in, entry) +
                        (entry.undone ? " " + in.say("(undone)"_t) : ""));
    return lines;
}

} // namespace bothways::app::wording
