// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_html.h"
#include "core/answer/analyse.h"
#include "core/screening/finding.h"
#include "core/screening/screening.h"
#include "tests/bench/best_of_five.h"
#include "tests/support/study_builder.h"

#include <fmt/core.h>

#include <cstdio>
#include <fstream>

// The report of a long study, step by step, beside the time that writing so many bytes takes on
// this machine now. Best of five, in milliseconds.
using namespace bothways;
using bench::best_ms;

namespace {

void write(const std::string& file, const std::string& bytes)
{
    std::ofstream(file, std::ios::binary) << bytes;
}

void benchReport(const std::string& sequence, int pairs)
{
    const std::string file = "report_bench.tmp";
    core::Study study = tests::aDay(sequence, pairs);
    for (std::size_t k = 0; k < study.runs.size(); k += 10)
        study.runs[k].discard = core::Discard{"other", "bench"};
    core::Analysis analysis;
    core::Screening screening;
    std::string html;
    const double analysing = best_ms([&] { analysis = core::analyse(study, {}); });
    const double screening_ms = best_ms([&] { screening = core::screen(study); });
    const double making = best_ms([&] {
        html = app::reportHtml({study, analysis, screening, {}, "00ff", "bench.csv"});
    });
    const double whole = best_ms([&] {
        const core::Analysis its = core::analyse(study, {});
        const core::Screening found = core::screen(study);
        write(file, app::reportHtml({study, its, found, {}, "00ff", "bench.csv"}));
    });
    const std::string blank(html.size(), ' ');
    const double floor = best_ms([&] { write(file, blank); });
    std::remove(file.c_str());
    fmt::print("report {:6} runs {:9} bytes: analyse {:8.2f}, screen {:6.2f}, make {:6.2f}; whole "
               "{:8.2f}; floor (writing as many bytes) {:6.3f}\n",
               study.runs.size(), html.size(), analysing, screening_ms, making, whole, floor);
}

} // namespace

int main()
{
    benchReport("ABA", 4);
    benchReport("ABABA", 20);
    benchReport("ABABABABABABABABABAB", 50);
}
