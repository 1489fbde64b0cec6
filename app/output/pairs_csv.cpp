// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_json.h"

#include "storage/sheet/run_columns.h"

#include <fmt/format.h>

namespace bothways::app {
namespace {

std::string csvField(const std::string& text)
{
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + '"';
}

std::string textCell(const std::string& text, storage::csv::Form form)
{
    const bool isPlain = form == storage::csv::Form::plain || storage::parseNumber(text);
    return isPlain ? text : storage::csv::guarded(text);
}

} // namespace

std::string pairsCsv(const core::Analysis& analysis, storage::csv::Form form)
{
    std::string csv = "pair,out_run,return_run,block,day,configuration,time_h,";
    csv += analysis.electric ? "kwh_per_100km" : "l_per_100km";
    csv += ",log,mixed_setting,fitted_log,residual_log\n";
    for (std::size_t i = 0; i < analysis.pairs.size(); ++i) {
        const core::Pair& pair = analysis.pairs[i];
        csv +=
            fmt::format("{},{},{},{},{},{},{},{},{},{}", pair.number, pair.out_run, pair.return_run,
                        pair.block, pair.day + 1, csvField(textCell(pair.configuration, form)),
                        pair.time_h, pair.l_per_100km, pair.log, pair.mixed_setting ? 1 : 0);
        const bool fits = analysis.headline && i < analysis.headline->fitted.size() &&
                          i < analysis.headline->residuals.size();
        csv += fits ? fmt::format(",{},{}\n", analysis.headline->fitted[i],
                                  analysis.headline->residuals[i])
                    : ",,\n";
    }
    return csv;
}

} // namespace bothways::app
