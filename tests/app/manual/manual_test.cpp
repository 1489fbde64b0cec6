// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/program.h"
#include "app/manual/man_page.h"
#include "app/manual/manual_pages.h"
#include "app/manual/markdown.h"
#include "app/manual/web_page.h"
#include "app/output/version.h"

#include <CLI/CLI.hpp>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iostream>
#include <regex>
#include <sstream>

namespace bothways::app::manual {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

const std::filesystem::path kHelp = BOTHWAYS_SOURCE_DIR "/resources/help";

std::string fileText(const std::filesystem::path& file)
{
    std::ostringstream text;
    text << std::ifstream(file, std::ios::binary).rdbuf();
    return text.str();
}

std::string manOf(const Blocks& blocks)
{
    ManPage page({"x", 1, "2026-01-01", "1", "book"});
    page.handbook(blocks, ManPage::Headings::sections);
    return page.text();
}

} // namespace

TEST(Markdown, LooksNestAndLinksKeepThem)
{
    const Spans spans = parseSpans("a **b `c`** [*d*](e.md#f) 2 * 3 \\*");
    ASSERT_EQ(spans.size(), 6u);
    EXPECT_EQ(spans[0].text, "a ");
    EXPECT_TRUE(spans[1].strong);
    EXPECT_TRUE(spans[2].strong && spans[2].code);
    EXPECT_EQ(spans[2].text, "c");
    EXPECT_TRUE(spans[4].emphasised);
    EXPECT_EQ(spans[4].link, "e.md#f");
    EXPECT_EQ(spans[5].text, " 2 * 3 *");
}

TEST(Markdown, ABlockEndsWhereTheNextBegins)
{
    const Blocks blocks = parseMarkdown(
        "# T\nwords\nmore\n\n- a\n  b\n- c\n1. d\n\n| x | y |\n|---|---|\n| `|` | 2 |\n");
    ASSERT_EQ(blocks.size(), 5u);
    EXPECT_EQ(blocks[0].kind, BlockKind::heading);
    EXPECT_EQ(plainText(blocks[1].words), "words more");
    ASSERT_EQ(blocks[2].items.size(), 2u);
    EXPECT_EQ(plainText(blocks[2].items[0]), "a b");
    EXPECT_EQ(blocks[3].kind, BlockKind::numbers);
    ASSERT_EQ(blocks[4].rows.size(), 2u);
    EXPECT_EQ(plainText(blocks[4].rows[1][0]), "|");
    EXPECT_EQ(plainText(blocks[4].rows[1][1]), "2");
}

TEST(ManPage, NothingThatIsWrittenBecomesARequest)
{
    const std::string page =
        manOf(parseMarkdown(".so /etc/passwd and 'quoted\n\n\\fB is no font\n"));
    EXPECT_THAT(page, HasSubstr("\n\\&.so /etc/passwd"));
    EXPECT_THAT(page, HasSubstr("\n\\efB is no font\n"));
    // a word that comes to stand first in a line is guarded as well
    std::string text;
    for (int i = 0; i < 60; ++i)
        text += ".x ";
    EXPECT_FALSE(std::regex_search(manOf(parseMarkdown(text)), std::regex("\n\\.x")));
}

TEST(ManPage, LinesFitIntoEightyColumns)
{
    for (const char* page : {"spreadsheets.md", "method.md", "de/rules.md"}) {
        std::istringstream lines(manOf(parseMarkdown(fileText(kHelp / page))));
        for (std::string line; std::getline(lines, line);)
            if (line.find(' ') != std::string::npos && !line.starts_with('.') &&
                line.find("\\f") == std::string::npos) {
                EXPECT_LE(line.size(), 80u) << page << ": " << line;
            }
    }
}

TEST(Manual, HasEveryVerbAndEveryOptionOfItInBothLanguages)
{
    for (const std::string_view tag : Language::all()) {
        cli::Surroundings io{std::cout, std::cerr};
        io.language = *Language::named(tag);
        cli::withWholeParser(io, [&](const CLI::App& program) {
            const std::string page = commandPage(io.language, "2026-01-01", program, {});
            EXPECT_GE(program.get_subcommands(nullptr).size(), 23u);
            for (const CLI::App* verb : program.get_subcommands(nullptr)) {
                EXPECT_THAT(page, HasSubstr(".SS \"bothways " + verb->get_name()));
                for (const CLI::Option* option : verb->get_options())
                    for (std::string name : option->get_lnames()) {
                        if (name == "help")
                            continue; // said once, for all verbs
                        for (std::size_t at = 0; (at = name.find('-', at)) != name.npos; at += 2)
                            name.insert(at, "\\");
                        EXPECT_THAT(page, HasSubstr("\\-\\-" + name)) << verb->get_name();
                    }
            }
            EXPECT_THAT(page, HasSubstr(std::string("Bothways ") + kVersion));
        });
    }
}

TEST(WebPage, OfEveryPageLeadsOnlyToPagesAndPlacesThatAreThere)
{
    const std::regex link(R"re(<a href="([^"#]*)(?:#([^"]*))?">)re");
    int links = 0;
    for (const char* folder : {"", "de"}) {
        std::map<std::string, std::string> pages;
        for (const auto& entry : std::filesystem::directory_iterator(kHelp / folder))
            if (entry.path().extension() == ".md")
                pages[entry.path().stem().string() + ".html"] =
                    webPage(Language(), parseMarkdown(fileText(entry.path())), false);
        for (const auto& [name, html] : pages)
            for (auto it = std::sregex_iterator(html.begin(), html.end(), link);
                 it != std::sregex_iterator(); ++it, ++links) {
                const std::string target = (*it)[1].length() > 0 ? (*it)[1].str() : name;
                ASSERT_TRUE(pages.contains(target)) << folder << "/" << name << ": " << target;
                if ((*it)[2].length() > 0) {
                    EXPECT_THAT(pages.at(target), HasSubstr(" id=\"" + (*it)[2].str() + "\""))
                        << folder << "/" << name;
                }
            }
    }
    EXPECT_GE(links, 80);
}

TEST(WebPage, ShowsLettersAsTheyAreAndRunsNothing)
{
    const std::string page = webPage(Language(), parseMarkdown("# <script>&\n`a<b`\n"), true);
    EXPECT_THAT(page, HasSubstr("&lt;script&gt;&amp;</h1>"));
    EXPECT_THAT(page, HasSubstr("<code>a&lt;b</code>"));
    EXPECT_THAT(page, Not(HasSubstr("<script>")));
}

} // namespace bothways::app::manual
