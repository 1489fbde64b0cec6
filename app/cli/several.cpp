// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/several.h"

#include "app/answer/same_runs.h"
#include "app/cli/warnings.h"

#include <algorithm>

namespace bothways::cli {
namespace {

/// An Error where none of the files has a column that was said to be there.
Outcome checkColumns(const std::vector<Input>& inputs, const Overrides& overrides)
{
    for (const storage::ColumnMapping& mapping : overrides.sheet.columns)
        if (std::all_of(inputs.begin(), inputs.end(), [&](const Input& input) {
                const auto& lacking = input.lacking_columns;
                return !input.isSheet() ||
                       std::find(lacking.begin(), lacking.end(), mapping.column) != lacking.end();
            }))
            return wrongUse(
                core::message("none of the files has a column '{}'; expected a name of a "
                              "header"_t,
                              mapping.column),
                "--column");
    return Done{};
}

} // namespace

Result<std::vector<Input>> readInputs(const std::vector<std::string>& files,
                                      const Overrides& overrides, const Surroundings& io)
{
    std::vector<Input> inputs;
    app::GivenRuns given;
    for (const std::string& path : files) {
        auto input = readInput(path, overrides, io);
        if (!input)
            return input.error();
        core::Message remark;
        if (const Outcome once = given.take(input.value(), remark); !once)
            return once.error();
        if (!remark.empty())
            warn(io.language.say(remark), io);
        inputs.push_back(std::move(input).take());
    }
    return inputs;
}

Result<Several>
readSeveral(const std::vector<std::string>& files, const Overrides& overrides,
            const Surroundings& io, const std::function<Answered(const Input&)>& answer,
            const std::function<void(Input&&, const std::shared_ptr<const app::ResultSet>&)>& taken)
{
    Several several;
    std::vector<core::StudyEffect> effects;
    Overrides each = overrides;
    each.sheet.lacking_columns = files.size() > 1; // what is said of one may not fit the others
    auto inputs = readInputs(files, each, io);     // all of them, before one is looked at
    if (!inputs)
        return inputs.error();
    if (Outcome fits = checkColumns(inputs.value(), overrides); !fits)
        return fits.error();
    for (Input& input : inputs.value()) {
        const Answered answered = answer(input);
        if (!answered)
            return answered.error();
        const core::Analysis& analysis = answered.value()->analysis;
        app::StudyRow row{
            input.name(),   {}, analysis.verdict.cls, {}, analysis.electric, analysis.baseline,
            analysis.device};
        if (analysis.headline) {
            row.baseline_l_per_100km = analysis.headline->baseline_l_per_100km;
            row.effect = core::studyEffectOf(row.name, *analysis.headline);
            effects.push_back(*row.effect);
        }
        if (several.rows.empty())
            several.asked = {analysis.options.confidence, analysis.options.margin_pct,
                             app::wording::shownUnitOf(answered.value()->study)};
        several.rows.push_back(std::move(row));
        taken(std::move(input), answered.value());
    }
    several.pooled = core::pool(effects, several.asked.confidence);
    return several;
}

} // namespace bothways::cli
