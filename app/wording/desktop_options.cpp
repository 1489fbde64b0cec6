// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/desktop_options.h"

#include <fmt/ranges.h>

#include <array>
#include <string>

namespace bothways::app::wording {
namespace {

constexpr std::array kDesktopPages{"start",
                                   "runs",
                                   "result",
                                   "companions",
                                   "checks",
                                   "why",
                                   "plan",
                                   "ledger",
                                   "findings",
                                   "history",
                                   "recordings",
                                   "recordings.list",
                                   "entry",
                                   "roadside",
                                   "edit",
                                   "discard",
                                   "properties",
                                   "properties.stretchPage",
                                   "properties.limitsPage",
                                   "properties.accessoriesPage",
                                   "properties.planPage",
                                   "preferences",
                                   "help"};

} // namespace

std::vector<DesktopOption> desktopOptions()
{
    return {
        {"picture", "Paint the window into FILE (PNG) and end."_t, "FILE"_t},
        {"page",
         core::message("Show one part of the window first: {}."_t,
                       fmt::format("{}", fmt::join(kDesktopPages, ", "))),
         "NAME##of a part of the window"_t},
        {"theme", "Colours: system, light or dark."_t, "NAME##of colours"_t},
        {"large-text", "Large text."_t},
        {"size", "Size of the picture, 1280x800; of a thumbnail its side, 128."_t,
         "WxH##width and height"_t},
        {"demo", "Open the demo study."_t},
        {"new", "Begin a new study."_t},
        {"roadside", "Open the study, or the newest one, in roadside mode."_t},
        {"thumbnail",
         "Paint the runs of the study into FILE (PNG), small enough for a list of files, and end."_t,
         "FILE"_t},
        {"settings", "Keep preferences in FILE (INI)."_t, "FILE"_t}};
}

core::Message desktopFile()
{
    return "A study (.bothways) or a run sheet (CSV)."_t;
}

core::Message desktopSummary()
{
    return "Logs out-and-back fuel-economy test runs and says whether there is an effect."_t;
}

std::span<const char* const> desktopPages()
{
    return kDesktopPages;
}

} // namespace bothways::app::wording
