// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/manual/manual_pages.h"

#include "app/manual/man_page.h"
#include "app/output/version.h"
#include "app/wording/desktop_options.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace bothways::app::manual {
namespace {

constexpr core::Text<0> kProgram =
    "logs out-and-back fuel-economy runs and says whether there is an effect"_t;

ManPage begun(const Language& in, const std::string& date, const char* name, int section,
              const core::Message& what)
{
    ManPage page({name, section, date, kVersion, in.say("The Bothways handbook"_t)});
    page.section(in.say("NAME##of a manual page"_t));
    page.name(name, in.say(what));
    return page;
}

Spans typed(const std::string& words)
{
    Span span{words};
    span.code = true;
    return {span};
}

/// "--output, --to FILE"
Spans termOf(const CLI::Option& option)
{
    std::string names;
    for (const std::string& name : option.get_snames())
        names += (names.empty() ? "-" : ", -") + name;
    for (const std::string& name : option.get_lnames())
        names += (names.empty() ? "--" : ", --") + name;
    Spans term = typed(names);
    if (option.get_items_expected_max() > 0 && !option.get_type_name().empty()) {
        term.push_back({" "});
        Span value{option.get_type_name()};
        value.emphasised = true;
        term.push_back(value);
    }
    return term;
}

Spans plain(const std::string& words)
{
    return {{words}};
}

/// Help's last words: an example is indented there, and stands as it is typed here.
void footer(ManPage& page, const std::string& text)
{
    std::string words;
    std::string code;
    const auto flush = [&] {
        if (!words.empty())
            page.paragraph(plain(words));
        if (!code.empty())
            page.example(code);
        words.clear();
        code.clear();
    };
    std::size_t begin = 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        const std::string line = text.substr(begin, end - begin);
        begin = end + 1;
        if (line.starts_with("  ")) {
            code += (code.empty() ? "" : "\n") + line.substr(2);
            continue;
        }
        if (!code.empty() || line.empty())
            flush();
        words += (words.empty() ? "" : " ") + line;
    }
    flush();
}

void options(ManPage& page, const CLI::App& app)
{
    for (const CLI::Option* option : app.get_options()) {
        if (option->get_positional()) {
            Span name{option->get_name(true)};
            name.emphasised = true;
            page.entry({name}, plain(option->get_description()));
        }
    }
    for (const CLI::Option* option : app.get_options())
        if (!option->get_positional() && !option->check_lname("help"))
            page.entry(termOf(*option), plain(option->get_description()));
}

/// "bothways edit STUDY RUNS"
std::string callOf(const CLI::App& verb)
{
    std::string call = "bothways " + verb.get_name();
    for (const CLI::Option* option : verb.get_options()) {
        if (!option->get_positional())
            continue;
        std::string name = option->get_name(true);
        if (option->get_items_expected_max() > 1)
            name += "\u00a0…";
        call += option->get_required() ? " " + name : " [" + name + "]";
    }
    return call;
}

void seeAlso(ManPage& page, const Language& in, std::string_view but)
{
    page.section(in.say("SEE ALSO##of a manual page"_t));
    std::string names;
    for (const std::string_view name :
         {"bothways(1)", "bothways-desktop(1)", "bothways-sheet(5)", "bothways-study(5)"})
        if (name != but)
            names += (names.empty() ? "" : ", ") + std::string(name);
    page.paragraph(plain(names));
    page.paragraph(plain(in.say("The handbook, for a browser: {}"_t, BOTHWAYS_HANDBOOK)));
}

} // namespace

std::string commandPage(const Language& in, const std::string& date, const CLI::App& program,
                        const std::string& files)
{
    ManPage page = begun(in, date, "bothways", 1, kProgram);
    page.section(in.say("SYNOPSIS##of a manual page"_t));
    Spans call = typed("bothways");
    Span rest{" " + in.say("VERB"_t) + " … [" + in.say("OPTIONS"_t) + "]"};
    rest.emphasised = true;
    call.push_back(rest);
    page.paragraph(call);
    page.section(in.say("DESCRIPTION##of a manual page"_t));
    footer(page, program.get_description());
    footer(page, program.get_footer());
    page.section(in.say("OPTIONS"_t));
    options(page, program);
    page.section(in.say("VERBS##of a manual page"_t));
    for (const CLI::App* verb : program.get_subcommands(nullptr)) {
        page.subsection(callOf(*verb));
        page.paragraph(plain(verb->get_description()));
        options(page, *verb);
        footer(page, verb->get_footer());
    }
    page.handbook(parseMarkdown(files), ManPage::Headings::sections);
    page.section(in.say("ENVIRONMENT##of a manual page"_t));
    page.entry(typed("LC_ALL, LC_MESSAGES, LANG"),
               plain(in.say("The language: the first that is set. JSON and CSV do not change."_t)));
    page.entry(typed("NO_COLOR"), plain(in.say("Any value: no colours."_t)));
    seeAlso(page, in, "bothways(1)");
    return page.text();
}

std::string desktopPage(const Language& in, const std::string& date, const std::string& window)
{
    ManPage page = begun(in, date, "bothways-desktop", 1, kProgram);
    page.section(in.say("SYNOPSIS##of a manual page"_t));
    Spans call = typed("bothways-desktop");
    Span rest{" [" + in.say("OPTIONS"_t) + "] [" + in.say("FILE"_t) + "]"};
    rest.emphasised = true;
    call.push_back(rest);
    page.paragraph(call);
    page.section(in.say("OPTIONS"_t));
    Span file{in.say("FILE"_t)};
    file.emphasised = true;
    page.entry({file}, plain(in.say(wording::desktopFile())));
    for (const wording::DesktopOption& option : wording::desktopOptions()) {
        Spans term = typed(std::string("--") + option.name);
        if (!option.value.empty()) {
            Span value{in.say(option.value)};
            value.emphasised = true;
            term.push_back({" "});
            term.push_back(value);
        }
        page.entry(term, plain(in.say(option.what)));
    }
    page.section(in.say("DESCRIPTION##of a manual page"_t));
    page.handbook(parseMarkdown(window), ManPage::Headings::sections);
    seeAlso(page, in, "bothways-desktop(1)");
    return page.text();
}

std::string studyPage(const Language& in, const std::string& date, const std::string& file)
{
    ManPage page = begun(in, date, "bothways-study", 5, "what is in a study file of Bothways"_t);
    page.section(in.say("DESCRIPTION##of a manual page"_t));
    page.handbook(parseMarkdown(file), ManPage::Headings::sections);
    seeAlso(page, in, "bothways-study(5)");
    return page.text();
}

std::string sheetPage(const Language& in, const std::string& date, const std::string& sheets)
{
    ManPage page = begun(in, date, "bothways-sheet", 5, "the run sheets that Bothways reads"_t);
    page.section(in.say("DESCRIPTION##of a manual page"_t));
    page.handbook(parseMarkdown(sheets), ManPage::Headings::sections);
    seeAlso(page, in, "bothways-sheet(5)");
    return page.text();
}

} // namespace bothways::app::manual
