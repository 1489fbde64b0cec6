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
        if (const Outcome once = given.take(app::givenStudy(input.value()), remark); !once)
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
    Overrides each = overrides;
    each.sheet.lacking_columns = files.size() > 1; // what is said of one may not fit the others
    auto inputs = readInputs(files, each, io);     // all of them, before one is looked at
    if (!inputs)
        return inputs.error();
    if (Outcome fits = checkColumns(inputs.value(), overrides); !fits)
        return fits.error();
    std::vector<app::NamedAnswer> answers;
    for (Input& input : inputs.value()) {
        const Answered answered = answer(input);
        if (!answered)
            return answered.error();
        answers.push_back({input.name(), answered.value()});
        taken(std::move(input), answered.value());
    }
    return Several{app::together(answers),
                   app::wording::shownUnitOf(answers.front().result->study)};
}

} // namespace bothways::cli
