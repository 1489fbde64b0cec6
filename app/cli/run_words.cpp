// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "core/base/number_text.h"
#include "storage/sheet/run_columns.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <optional>
#include <string_view>

namespace bothways::cli {
namespace {

struct RunRange {
    int first = 0, last = 0;
};

std::optional<int> runNumberFrom(std::string_view text)
{
    const auto number = core::wholeNumber<int>(text);
    return number && *number >= 1 && *number <= storage::kLargestRunNumber ? number : std::nullopt;
}

/// "7" or "7-9", the dash in either of its two lengths.
Result<RunRange> rangeFrom(std::string_view text)
{
    constexpr std::string_view kDashes[] = {"-", "–"};
    for (const std::string_view dash : kDashes) {
        const std::size_t at = text.find(dash);
        if (at == std::string_view::npos)
            continue;
        const auto first = runNumberFrom(text.substr(0, at));
        const auto last = runNumberFrom(text.substr(at + dash.size()));
        if (first && last && *first <= *last)
            return RunRange{*first, *last};
        if (first && last)
            return wrongUse(
                core::message("the runs {0}-{1} run backwards; expected {1}-{0}"_t, *first, *last));
    }
    if (const auto one = runNumberFrom(text))
        return RunRange{*one, *one};
    return wrongUse(
        core::message("'{}' is no run; expected a number, or several like 7-9,12"_t, text));
}

Result<std::vector<RunRange>> rangesFrom(const RunWords& words)
{
    std::vector<RunRange> ranges;
    for (const std::string& word : words) {
        std::string_view rest = word;
        if (rest.ends_with(',')) // "7-9, 12" comes as two words
            rest.remove_suffix(1);
        for (bool more = true; more;) {
            const std::size_t comma = std::min(rest.find(','), rest.size());
            const auto range = rangeFrom(rest.substr(0, comma));
            if (!range)
                return range.error();
            ranges.push_back(range.value());
            more = comma < rest.size();
            rest.remove_prefix(std::min(comma + 1, rest.size()));
        }
    }
    return ranges;
}

} // namespace

void addRuns(const Language& in, CLI::App& verb, RunWords& words)
{
    verb.add_option(in.say("RUNS"_t), words,
                    in.say("Numbers of the runs: 7, several like 7 9, or ranges like 7-9,12"_t))
        ->option_text(in.say("RUNS"_t) + " ... " + in.say("REQUIRED"_t))
        ->required();
}

Result<std::vector<const core::Run*>> namedRuns(const core::Study& study, const RunWords& words,
                                                const std::filesystem::path& path)
{
    const auto ranges = rangesFrom(words);
    if (!ranges)
        return ranges.error();
    std::vector<const core::Run*> byNumber;
    for (const core::Run& run : study.runs)
        byNumber.push_back(&run);
    std::sort(byNumber.begin(), byNumber.end(),
              [](const core::Run* a, const core::Run* b) { return a->number < b->number; });
    std::vector<const core::Run*> named;
    for (const RunRange& range : ranges.value()) {
        for (const int end : {range.first, range.last})
            if (const auto id = runByNumber(study, end, path); !id)
                return id.error();
        for (const core::Run* run : byNumber)
            if (run->number >= range.first && run->number <= range.last &&
                std::find(named.begin(), named.end(), run) == named.end())
                named.push_back(run);
    }
    return named;
}

std::vector<core::RunId> idsOf(const std::vector<const core::Run*>& runs)
{
    std::vector<core::RunId> ids;
    for (const core::Run* run : runs)
        ids.push_back(run->id);
    return ids;
}

std::vector<int> numbersOf(const std::vector<const core::Run*>& runs)
{
    std::vector<int> numbers;
    for (const core::Run* run : runs)
        numbers.push_back(run->number);
    return numbers;
}

Outcome changeRuns(const std::filesystem::path& path, const RunWords& words,
                   const std::function<Outcome(storage::StudyFile&, const core::Study&,
                                               const std::vector<const core::Run*>&)>& job)
{
    if (const auto readable = rangesFrom(words); !readable)
        return readable.error();
    auto file = openForChange(path);
    if (!file)
        return file.error();
    const auto study = file.value().study();
    if (!study)
        return study.error();
    const auto runs = namedRuns(study.value(), words, path);
    if (!runs)
        return runs.error();
    return job(file.value(), study.value(), runs.value());
}

} // namespace bothways::cli
