// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/columns_text.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {

void describeColumns(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto markdown = std::make_shared<bool>(false);
    verb.add_flag("--markdown", *markdown, in.say("As a table in Markdown"_t));
    addFooter(in, verb, "  bothways columns",
              in.say("A column with another name is named with --column HEADER=COLUMN where the "
                     "sheet is read, as in: bothways analyse fahrten.xlsx --column "
                     "'Verbrauch=l_per_100km'"_t));
    onCall(verb, context, [markdown, &context]() -> Outcome {
        const Language& language = context.io.language;
        context.io.out << (*markdown ? app::columnsMarkdown(language) : app::columnsText(language));
        return Done{};
    });
}

} // namespace bothways::cli
