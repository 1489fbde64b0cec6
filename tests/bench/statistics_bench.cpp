// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// How fast and how exact the statistics are, beside R and beside the plain arithmetic. R is started
// where it is installed; without it its columns are left out. Results: README.md here.

#include "core/answer/analyse.h"
#include "core/companions/companions.h"
#include "core/companions/relabelling.h"
#include "core/effect/effect_model.h"
#include "core/statistics/durbin_watson.h"
#include "tests/published/published_data.h"
#include "tests/support/study_builder.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <map>
#include <numeric>
#include <sstream>
#include <string>
#include <vector>

namespace {

using namespace bothways;

const std::string kBench = BOTHWAYS_SOURCE_DIR "/tests/bench/";
const std::string kData = BOTHWAYS_SOURCE_DIR "/tests/published/data/nist_strd/";

struct Times {
    double least = 0.0, middle = 0.0, most = 0.0; ///< ms
};

Times timesOf(const std::function<void()>& work, int inner = 1)
{
    std::vector<double> ms;
    for (int round = 0; round < 7; ++round) {
        const auto begin = std::chrono::steady_clock::now();
        for (int i = 0; i < inner; ++i)
            work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - begin;
        ms.push_back(took.count() / inner);
    }
    std::ranges::sort(ms);
    return {ms.front(), ms[ms.size() / 2], ms.back()};
}

std::string show(const Times& t)
{
    return fmt::format("{:.3f} / {:.3f} / {:.3f} ms", t.least, t.middle, t.most);
}

/// What an R script prints; empty without R.
std::string rSays(const std::string& script, const std::string& argument = {})
{
    const std::string command =
        "Rscript --vanilla '" + kBench + script + "' '" + argument + "' 2>/dev/null";
    std::string text;
    if (FILE* pipe = popen(command.c_str(), "r")) {
        char buffer[4096];
        for (std::size_t n = 0; (n = fread(buffer, 1, sizeof buffer, pipe)) > 0;)
            text.append(buffer, n);
        pclose(pipe);
    }
    return text;
}

/// 24 pairs of A/B/A and the columns beside the effect.
struct Deals {
    std::vector<double> y;
    std::vector<bool> device;
    core::Columns nuisance{24};

    Deals()
    {
        for (std::size_t i = 0; i < 24; ++i) {
            const double k = static_cast<double>(i + 1);
            device.push_back(i >= 8 && i < 16);
            y.push_back(2.4 + 0.003 * k + 0.01 * std::sin(7.3 * k * k));
        }
        std::ranges::fill(nuisance.add(), 1.0);
        const auto time = nuisance.add();
        std::iota(time.begin(), time.end(), -11.5);
    }
};

/// Three sums over 8 of 24 rows, 20,000 times, from rows that lie in order: what a deal cannot do
/// without.
double plainSums(const std::vector<double>& rows)
{
    double total = 0.0;
    for (std::size_t deal = 0; deal < 20'000; ++deal) {
        double a = 0.0, b = 0.0, c = 0.0;
        for (std::size_t i = deal % 16; i < deal % 16 + 8; ++i) {
            a += rows[3 * i];
            b += rows[3 * i + 1];
            c += rows[3 * i + 2];
        }
        total += a * a > 0.3 * (8.0 - b * b - c * c) ? 1.0 : 0.0;
    }
    return total;
}

void printLabels()
{
    const Deals deals;
    double sink = 0.0;
    const Times ours = timesOf(
        [&] { sink += core::dealLabelsAgain(deals.y, deals.device, deals.nuisance, 1)->p; });
    const std::vector<double> rows(72, 0.2);
    const Times floor = timesOf([&] { sink += plainSums(rows); });
    fmt::print("labels, 20,000 random deals on 24 pairs: {}; {:.1f} x the plain sums ({})\n",
               show(ours), ours.middle / floor.middle, show(floor));
    const std::string peer = rSays("labels_peer.R");
    if (!peer.empty())
        fmt::print("  vectorised R: {} ms, {:.0f} x ours\n", peer.substr(0, peer.find(' ')),
                   std::stod(peer) / ours.middle);
    if (sink < 0.0)
        fmt::print("\n");
}

void printWholeStudies()
{
    double sink = 0.0;
    for (const auto& [sequence, pairs] :
         {std::pair{"ABA", 4}, {"ABABA", 4}, {"ABABABABAB", 2}, {"ABA", 20}}) {
        const core::Study study = tests::aDay(sequence, pairs, 0.005);
        const core::PreparedStudy prepared = core::prepareStudy(study, {});
        const auto observations = core::pairObservations(prepared);
        const core::Columns columns = core::effectColumns(observations, prepared.sloped());
        const Times whole = timesOf([&] { sink += core::analyse(study, {}).headline->p; }, 5);
        const core::Headline headline = *core::analyse(study, {}).headline;
        const Times companions =
            timesOf([&] { sink += core::companionsOf(study, prepared, headline, {}).runs->p; }, 5);
        const Times order = timesOf(
            [&] { sink += core::durbinWatsonTails(1.7, columns.dense(), columns.rows()).below; },
            5);
        fmt::print("{} runs ({}): whole analysis {}; companions {}; Durbin-Watson {}\n",
                   study.runs.size(), sequence, show(whole), show(companions), show(order));
    }
    if (sink < 0.0)
        fmt::print("\n");
}

struct Digits {
    double coefficients = 15.0, residual = 0.0;
};

Digits digitsOf(const std::string& dataset, int degree, bool intercept)
{
    const published::Table table = published::readTable("nist_strd/" + dataset + ".csv");
    const std::vector<double> y = published::asNumbers(table.at("y"));
    core::Columns columns(y.size());
    std::vector<int> index;
    if (intercept) {
        std::ranges::fill(columns.add(), 1.0);
        index.push_back(0);
    }
    for (int j = 1; j <= (degree == 0 ? 6 : degree); ++j) {
        const auto x = published::asNumbers(
            table.at(degree == 0 ? "x" + std::to_string(j) : std::string("x")));
        std::ranges::transform(x, columns.add().begin(),
                               [&](double value) { return std::pow(value, degree == 0 ? 1 : j); });
        index.push_back(j);
    }
    const core::LeastSquaresFit fit = core::leastSquares(columns, y);
    const auto certified = published::certified(dataset);
    Digits digits;
    for (std::size_t j = 0; j < index.size(); ++j)
        digits.coefficients =
            std::min(digits.coefficients,
                     published::agreeingDigits(fit.coefficients[j],
                                               certified.at("B" + std::to_string(index[j]))));
    digits.residual = published::agreeingDigits(fit.s(), certified.at("residual_sd"));
    return digits;
}

void printNist()
{
    std::map<std::string, Digits> peer;
    std::istringstream lines(rSays("nist_peer.R", kData));
    for (std::string name; lines >> name;)
        lines >> peer[name].coefficients >> peer[name].residual;
    fmt::print(
        "\nNIST regressions, digits that agree (fewest of the coefficients; residual standard "
        "deviation)\n{:<12}{:>12}{:>8}{:>14}{:>8}\n",
        "", "Bothways", "", "lm() of R", "");
    const std::vector<std::tuple<std::string, int, bool>> sets = {
        {"Norris", 1, true},   {"Pontius", 2, true},  {"NoInt1", 1, false},  {"NoInt2", 1, false},
        {"Filip", 10, true},   {"Wampler1", 5, true}, {"Wampler2", 5, true}, {"Wampler3", 5, true},
        {"Wampler4", 5, true}, {"Wampler5", 5, true}, {"Longley", 0, true}};
    for (const auto& [name, degree, intercept] : sets) {
        const Digits ours = digitsOf(name, degree, intercept);
        fmt::print("{:<12}{:>12.1f}{:>8.1f}", name, ours.coefficients, ours.residual);
        if (peer.contains(name))
            fmt::print("{:>14.1f}{:>8.1f}", peer[name].coefficients, peer[name].residual);
        fmt::print("\n");
    }
}

} // namespace

int main()
{
    fmt::print("times are least / median / most of 7 rounds\n\n");
    printLabels();
    printWholeStudies();
    printNist();
}
