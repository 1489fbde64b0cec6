// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/columns_text.h"
#include "core/base/nearest_word.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/run_columns.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct ColumnsOptions {
    std::vector<std::string> names;
    bool markdown = false;
};

/// "windscreen_on_s" is in the list by what it is an example of.
std::string listedName(const std::string& column)
{
    return storage::timedAccessoryOf(column).empty() ? column : "NAME_on_s";
}

/// Our names of the columns that are asked for by any name that a sheet may have for them.
Result<std::vector<std::string>> columnsAsked(const std::vector<std::string>& names)
{
    std::vector<std::string> ours;
    for (const std::string& name : names) {
        const storage::ColumnMeaning meaning =
            storage::meaningOf(name.substr(0, name.find('@'))); // output_w@left: of a part
        if (meaning.known())
            ours.push_back(listedName(meaning.column));
        ours.insert(ours.end(), meaning.candidates.begin(), meaning.candidates.end());
        if (meaning.mentioned())
            continue;
        return wrongUse(core::didYouMean(core::message("there is no column '{}'"_t, name),
                                         storage::nearestColumn(storage::canonicalColumn(name))));
    }
    return ours;
}

} // namespace

void describeColumns(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<ColumnsOptions>();
    CLI::Option* names =
        verb.add_option(in.say("NAMES"_t), options->names,
                        in.say("The columns that are asked for, by any name (default: all)"_t))
            ->option_text(in.say("NAME"_t) + " ...");
    verb.add_flag("--markdown", options->markdown, in.say("As a table in Markdown"_t))
        ->excludes(names);
    addFooter(in, verb,
              "  bothways columns\n"
              "  bothways columns control Verbrauch",
              in.say("A column with another name is named with --column HEADER=COLUMN where the "
                     "sheet is read, as in: bothways analyse fahrten.xlsx --column "
                     "'Verbrauch=l_per_100km'"_t));
    onCall(verb, context, [options, &context]() -> Outcome {
        const Language& language = context.io.language;
        const auto asked = columnsAsked(options->names);
        if (!asked)
            return asked.error();
        context.io.out << (options->markdown ? app::columnsMarkdown(language)
                                             : app::columnsText(language, asked.value()));
        return Done{};
    });
}

} // namespace bothways::cli
