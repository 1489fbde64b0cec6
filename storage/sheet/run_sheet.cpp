// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/run_sheet.h"

#include "storage/sheet/run_rules.h"
#include "storage/sheet/sheet_reader.h"

#include <algorithm>

namespace bothways::storage {

using core::Error;
using core::ErrorCode;
using core::Run;
using core::Study;

Result<RunSheet> parseRunSheet(std::string_view text, std::string_view name,
                               const SheetOptions& options, const Study* existing)
{
    return SheetReader(text, name, options, existing).read();
}

Result<std::string> readSheetBytes(const std::filesystem::path& file, Streams streams)
{
    constexpr std::uintmax_t kMostBytes = std::uintmax_t{64} << 20;
    return readWholeFile(file, kMostBytes, "a run sheet"_t, streams);
}

Result<RunSheet> readRunSheet(const std::filesystem::path& file, const SheetOptions& options,
                              const Study* existing)
{
    const auto bytes = readSheetBytes(file);
    if (!bytes)
        return bytes.error();
    return parseRunSheet(bytes.value(), file.string(), options, existing);
}

std::vector<Error> faultsOf(const Study& study, const Run& run)
{
    const auto others = othersIn(study, run.id);
    Spellings spellings = Spellings::of(others);
    const Run whole = normalised(run, spellings);
    std::vector<RunFault> faults = ownFaults(whole);
    const auto among = faultsAmong(others, {&whole, 1});
    faults.insert(faults.end(), among.begin(), among.end());
    std::vector<Error> errors;
    for (RunFault& wrong : faults) {
        core::Place where;
        where.column = shownCell(wrong.column);
        errors.push_back(Error{ErrorCode::badInput, std::move(wrong.message), std::move(where)});
    }
    return errors;
}

} // namespace bothways::storage
