// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <system_error>

namespace bothways::storage {

/// Calls take(entry) for what is in a folder; what vanishes meanwhile (a process, a device that is
/// unplugged) ends it without a word.
template <class Take>
void eachEntry(const std::filesystem::path& folder, Take&& take)
{
    std::error_code problem;
    for (std::filesystem::directory_iterator at(folder, problem), end; !problem && at != end;
         at.increment(problem))
        take(*at);
}

} // namespace bothways::storage
