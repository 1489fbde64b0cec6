// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_rows.h"
#include "app/desktop/look/said.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace bothways::app {
namespace {

struct RunRowWords {
    Q_DECLARE_TR_FUNCTIONS(RunRowWords)
};

std::vector<RunRow> bareRows(const core::Study& study)
{
    const std::vector<BlockPlace> places = blockPlaces(study);
    const std::string baseline = core::baselineName(study);
    std::vector<RunRow> rows(study.runs.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].run = study.runs[i];
        rows[i].place = places[i];
        rows[i].device = !core::sameWord(study.runs[i].configuration, baseline);
        if (!study.runs[i].counted())
            rows[i].state = RunRow::discarded;
    }
    return rows;
}

/// @param result  of the study as it is
void addPairs(std::vector<RunRow>& rows, const ResultSet& result)
{
    std::vector<BracketPieces> brackets = pairBrackets(result.analysis.pairs, rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].brackets = std::move(brackets[i]);
        if (rows[i].state != RunRow::discarded)
            rows[i].state = RunRow::alone;
        if (!rows[i].run.consumption)
            rows[i].fromTrace = result.study.runs[i].consumption;
    }
    for (const core::Pair& pair : result.analysis.pairs)
        for (const std::size_t i : {pair.out_index, pair.return_index}) {
            rows[i].pair = pair.number;
            rows[i].state = RunRow::paired;
        }
}

/// What is on the screen stays until the answer is there.
void keepPairs(std::vector<RunRow>& rows, const std::vector<RunRow>& before)
{
    if (before.size() != rows.size())
        return;
    std::map<core::RunId, const RunRow*> old;
    for (const RunRow& row : before)
        old[row.run.id] = &row;
    for (RunRow& row : rows) {
        const auto found = old.find(row.run.id);
        if (found == old.end())
            continue;
        row.brackets = found->second->brackets;
        row.pair = found->second->pair;
        if (row.state == RunRow::waiting && found->second->state != RunRow::discarded)
            row.state = found->second->state;
    }
}

void addFindings(std::vector<RunRow>& rows, const StudyDocument& document,
                 const core::Screening& screening)
{
    std::map<int, RunRow*> byNumber;
    for (RunRow& row : rows)
        byNumber[row.run.number] = &row;
    for (const core::Finding& finding : screening.findings) {
        const auto found = byNumber.find(finding.run);
        if (found == byNumber.end())
            continue;
        RunRow& row = *found->second;
        const Answer answer = document.answerTo(finding);
        row.findings.emplace_back(finding, answer);
        if (answer == Answer::none && row.run.counted())
            row.grade = std::max(row.grade, static_cast<int>(finding.grade));
    }
}

void addBlockLines(std::vector<RunRow>& rows)
{
    for (std::size_t first = 0; first < rows.size();) {
        const std::size_t end = first + static_cast<std::size_t>(rows[first].place.rows);
        int inPairs = 0, left = 0;
        for (std::size_t i = first; i < end; ++i) {
            left += rows[i].run.counted() ? 0 : 1;
            inPairs += rows[i].state == RunRow::paired ? 1 : 0;
        }
        QStringList lines{nameShown(rows[first].run.configuration),
                          rows[first].device ? RunRowWords::tr("device")
                                             : RunRowWords::tr("baseline"),
                          RunRowWords::tr("%n pair(s)", nullptr, inPairs / 2)};
        if (left > 0)
            lines += RunRowWords::tr("%n discarded", nullptr, left);
        for (std::size_t i = first; i < end; ++i)
            rows[i].blockLines = lines;
        first = end;
    }
}

} // namespace

std::vector<RunRow> runRows(const StudyDocument& document, const std::vector<RunRow>& before)
{
    std::vector<RunRow> rows = bareRows(document.study());
    const auto result = document.result();
    if (document.isResultCurrent())
        addPairs(rows, *result);
    else
        keepPairs(rows, before);
    if (result)
        addFindings(rows, document, result->screening);
    addBlockLines(rows);
    return rows;
}

} // namespace bothways::app
