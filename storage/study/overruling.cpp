// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/finding.h"
#include "core/study/rule.h"
#include "storage/sheet/run_columns.h"
#include "storage/study/study_database.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <algorithm>

namespace bothways::storage {

using core::Done;
using core::ErrorCode;

core::Screening withoutOverruled(core::Screening screening, const std::vector<Overruled>& overruled)
{
    std::erase_if(screening.findings, [&](const core::Finding& finding) {
        return std::any_of(overruled.begin(), overruled.end(), [&](const Overruled& answer) {
            return answer.run == finding.run && answer.rule == core::ruleName(finding.rule);
        });
    });
    return screening;
}

Outcome StudyFile::overrule(const Overruled& overruled)
{
    return overrule(std::vector{overruled});
}

Outcome StudyFile::overrule(const std::vector<Overruled>& list)
{
    HistoryDetail detail{"overrule"};
    for (const Overruled& overruled : list)
        detail.values.push_back(HistoryValue::List{overruled.run, overruled.rule, overruled.words});
    return d->change("overrule", detail, [&](SQLite::Database& db) -> Outcome {
        for (const Overruled& overruled : list) {
            if (!core::ruleFromName(overruled.rule))
                return d->error(ErrorCode::wrongUse,
                                core::message("{} is no rule"_t, inQuotes(overruled.rule)));
            if (overruled.words.find_first_not_of(" \t\r\n") == std::string::npos)
                return d->error(ErrorCode::badInput, "overruling a finding needs words"_t);
            SQLite::Statement row(db, "INSERT INTO overruled (run, rule, words) "
                                      "SELECT id, ?, ? FROM run WHERE run = ? "
                                      "ON CONFLICT DO UPDATE SET words = excluded.words");
            row.bind(1, overruled.rule);
            row.bind(2, overruled.words);
            row.bind(3, overruled.run);
            if (row.exec() != 1)
                return d->error(ErrorCode::wrongUse,
                                core::message("the study has no run {}"_t, overruled.run));
        }
        return Done{};
    });
}

Outcome StudyFile::letStand(const std::vector<Overruled>& list)
{
    HistoryDetail detail{"stand"};
    for (const Overruled& one : list)
        detail.values.push_back(HistoryValue::List{one.run, one.rule});
    return d->change("let_stand", detail, [&](SQLite::Database& db) -> Outcome {
        for (const Overruled& one : list) {
            SQLite::Statement row(db, "DELETE FROM overruled WHERE rule = ? AND run = "
                                      "(SELECT id FROM run WHERE run = ?)");
            row.bind(1, one.rule);
            row.bind(2, one.run);
            if (row.exec() != 1)
                return d->error(ErrorCode::wrongUse,
                                core::message("the finding {} of run {} was not overruled"_t,
                                              one.rule, one.run));
        }
        return Done{};
    });
}

Result<std::vector<Overruled>> StudyFile::overruled() const
{
    using List = std::vector<Overruled>;
    return d->guarded<List>([&]() -> Result<List> {
        const SQLite::Transaction oneState(*d->database);
        static_cast<void>(d->current(*d->database));
        List list;
        SQLite::Statement rows(*d->database, "SELECT run.run, rule, words FROM overruled "
                                             "JOIN run ON run.id = overruled.run "
                                             "ORDER BY run.run, rule");
        while (rows.executeStep())
            list.push_back({rows.getColumn(0).getInt(), rows.getColumn(1).getString(),
                            rows.getColumn(2).getString()});
        return list;
    });
}

} // namespace bothways::storage
