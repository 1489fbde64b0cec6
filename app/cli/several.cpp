// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/several.h"

namespace bothways::cli {

Result<Several>
readSeveral(const std::vector<std::string>& files, const Overrides& overrides,
            const Surroundings& io, const std::function<Answered(const Input&)>& answer,
            const std::function<void(Input&&, const std::shared_ptr<const app::ResultSet>&)>& taken)
{
    Several several;
    std::vector<core::StudyEffect> effects;
    for (const std::string& path : files) {
        auto input = readInput(path, overrides, io);
        if (!input)
            return input.error();
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
