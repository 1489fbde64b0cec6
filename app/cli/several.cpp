// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/several.h"

#include <ostream>
#include <system_error>

namespace bothways::cli {
namespace {

/// Pooled with itself, a day counts twice and seems surer than it is. A copy may be meant to be
/// compared, and is said.
Outcome refuseTwice(const std::string& path, const std::string& other, bool sameContent,
                    const Surroundings& io)
{
    std::error_code problem;
    if (path == other || std::filesystem::equivalent(path, other, problem))
        return wrongUse("is given twice; expected each file once"_t, path);
    if (sameContent)
        io.err << io.language.say(
                      "warning: {}"_t,
                      core::message("{} holds the same as {}, and counts twice"_t, path, other))
               << "\n";
    return Done{};
}

} // namespace

Result<Several>
readSeveral(const std::vector<std::string>& files, const Overrides& overrides,
            const Surroundings& io, const std::function<Answered(const Input&)>& answer,
            const std::function<void(Input&&, const std::shared_ptr<const app::ResultSet>&)>& taken)
{
    Several several;
    std::vector<core::StudyEffect> effects;
    std::vector<std::pair<std::string, std::string>> read; // names and checksums
    Overrides each = overrides;
    each.sheet.lacking_columns = files.size() > 1; // what is said of one may not fit the others
    for (const std::string& path : files) {
        auto input = readInput(path, each, io);
        if (!input)
            return input.error();
        for (const auto& [other, sha256] : read)
            if (Outcome once = refuseTwice(path, other, input.value().sha256 == sha256, io); !once)
                return once.error();
        read.emplace_back(path, input.value().sha256);
        const Answered answered = answer(input.value());
        if (!answered)
            return answered.error();
        const core::Analysis& analysis = answered.value()->analysis;
        app::StudyRow row{input.value().name(), {}, analysis.verdict.cls};
        if (analysis.headline) {
            row.effect = core::studyEffectOf(row.name, *analysis.headline);
            effects.push_back(*row.effect);
        }
        if (several.rows.empty())
            several.confidence = analysis.options.confidence;
        several.rows.push_back(std::move(row));
        taken(std::move(input).take(), answered.value());
    }
    several.pooled = core::pool(effects, several.confidence);
    return several;
}

} // namespace bothways::cli
