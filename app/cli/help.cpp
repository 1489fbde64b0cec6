// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/help.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <sstream>

namespace bothways::cli {
namespace {

constexpr std::size_t kNameColumn = 28;

/// Columns that UTF-8 text takes less than bytes.
std::size_t extraBytes(const std::string& text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; // not the first of a letter
    }));
}

class Help : public CLI::Formatter {
public:
    explicit Help(const Language& in)
    {
        column_width(kNameColumn);
        label("Usage", in.say("Usage"_t));
        label("OPTIONS", in.say("OPTIONS"_t));
        label("SUBCOMMAND", in.say("VERB"_t));
        label("Positionals", in.say("Positionals"_t));
        label("Options", in.say("Options"_t));
        label("REQUIRED", in.say("REQUIRED"_t));
        label("Needs", in.say("Needs"_t));
        label("Excludes", in.say("Excludes"_t));
    }

    std::string make_group(std::string group, bool positional,
                           std::vector<const CLI::Option*> options) const override
    {
        return CLI::Formatter::make_group(get_label(group), positional, std::move(options));
    }

    /// As the parser's, which counts bytes where a reader counts letters.
    std::string make_option(const CLI::Option* option, bool positional) const override
    {
        const std::string name = make_option_name(option, positional) + make_option_opts(option);
        const std::size_t extra = extraBytes(name);
        const bool fits = name.size() - extra + 2 < column_width_;
        std::stringstream out;
        CLI::detail::format_help(out, name, make_option_desc(option),
                                 column_width_ + (fits ? extra : 0));
        return out.str();
    }
};

} // namespace

std::shared_ptr<CLI::FormatterBase> helpIn(const Language& in)
{
    return std::make_shared<Help>(in);
}

void nameTypes(const Language& in, CLI::App& verb)
{
    for (CLI::Option* option : verb.get_options()) {
        const std::string type = option->get_type_name();
        if (type == "TEXT")
            option->type_name(in.say("TEXT"_t));
        else if (type == "INT")
            option->type_name(in.say("INT"_t));
    }
}

} // namespace bothways::cli
