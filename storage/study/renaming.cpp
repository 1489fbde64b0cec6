// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/renaming.h"

#include "core/base/utf8.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"
#include "storage/study/study_database.h"
#include "storage/study/study_rows.h"

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Done;
using core::ErrorCode;
using core::message;

const char* word(NameOf what)
{
    return what == NameOf::configuration ? "configuration" : "direction";
}

/// The name that `name` becomes, where one of the renamings is about it.
const std::string* newName(const std::vector<Renaming>& renamings, NameOf what,
                           const std::string& name)
{
    const auto about =
        std::find_if(renamings.begin(), renamings.end(), [&](const Renaming& renaming) {
            return renaming.what == what && core::sameWord(renaming.from, name);
        });
    return about == renamings.end() ? nullptr : &about->to;
}

/// "A or B".
core::Message anyOf(const std::vector<std::string>& names)
{
    core::Message text = core::Message::verbatim(names.front());
    for (std::size_t i = 1; i < names.size(); ++i)
        text = message("{} or {}"_t, text, names[i]);
    return text;
}

/// An Error of wrong use where a name is not there, of bad input where the new one cannot be.
Outcome possible(const std::vector<Renaming>& renamings, NameOf what,
                 std::vector<std::string> names)
{
    const bool configuration = what == NameOf::configuration;
    const auto bad = [](ErrorCode code, core::Message message) {
        return core::Error{code, std::move(message), {}};
    };
    for (const Renaming& renaming : renamings) {
        if (renaming.what != what)
            continue;
        if (names.empty())
            return bad(ErrorCode::wrongUse, configuration ? "the study has no configuration yet"_t
                                                          : "the study has no direction yet"_t);
        if (std::none_of(names.begin(), names.end(), [&](const std::string& name) {
                return core::sameWord(name, renaming.from);
            }))
            return bad(ErrorCode::wrongUse,
                       message(configuration ? "the study has no configuration {}; expected {}"_t
                                             : "the study has no direction {}; expected {}"_t,
                               inQuotes(renaming.from), anyOf(names)));
        if (!core::isUtf8(renaming.to))
            return bad(ErrorCode::badInput, "the new name is not UTF-8 text"_t);
        if (renaming.to.empty() || renaming.to.find_first_of("\r\n") != std::string::npos)
            return bad(ErrorCode::badInput,
                       message(configuration
                                   ? "expected a new name for configuration {}, on one line"_t
                                   : "expected a new name for direction {}, on one line"_t,
                               inQuotes(renaming.from)));
    }
    for (std::string& name : names)
        if (const std::string* becomes = newName(renamings, what, name))
            name = *becomes;
    if (names.size() == 2 && core::sameWord(names[0], names[1]))
        return bad(ErrorCode::badInput,
                   message(configuration ? "both configurations would be {}; expected two names"_t
                                         : "both directions would be {}; expected two names"_t,
                           inQuotes(names[0])));
    return Done{};
}

HistoryDetail forHistory(const std::vector<Renaming>& renamings)
{
    HistoryDetail detail{"rename"};
    for (const Renaming& renaming : renamings)
        detail.values.push_back(HistoryValue::List{word(renaming.what), shownCell(renaming.from),
                                                   shownCell(renaming.to)});
    return detail;
}

} // namespace

Outcome rename(StudyFile& file, const std::vector<Renaming>& given)
{
    std::vector<Renaming> renamings = given;
    for (Renaming& renaming : renamings)
        renaming.to = std::string(csv::trimmed(renaming.to));
    const HistoryDetail detail = forHistory(renamings);
    StudyFile::Private& d = file.database();
    return d.change("rename", detail, [&](SQLite::Database& database) -> Outcome {
        core::Study& study = d.editable(database);
        for (const auto& [what, names] :
             {std::pair{NameOf::configuration, core::configurations(study)},
              std::pair{NameOf::direction, core::directions(study)}})
            if (const Outcome can = possible(renamings, what, names); !can)
                return d.error(can.error().code, can.error().message);
        const std::string baseline = core::baselineName(study);
        const std::string* baselineBecomes = newName(renamings, NameOf::configuration, baseline);
        for (core::Run& run : study.runs) {
            const core::Run before = run;
            if (const auto* to = newName(renamings, NameOf::configuration, run.configuration))
                run.configuration = *to;
            if (const auto* to = newName(renamings, NameOf::direction, run.direction))
                run.direction = *to;
            if (!(run == before))
                rewriteRun(database, run);
        }
        // Without a name of its own the baseline is "A", or that of the first run: say it where the
        // new names would make it another.
        const std::string stays = baselineBecomes ? *baselineBecomes : baseline;
        if ((baselineBecomes && !study.properties.baseline.empty()) ||
            !core::sameWord(core::baselineName(study), stays)) {
            study.properties.baseline = stays;
            rewriteProperties(database, study.properties);
        }
        return Done{};
    });
}

} // namespace bothways::storage
