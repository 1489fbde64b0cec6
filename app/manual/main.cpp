// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/program.h"
#include "app/manual/manual_pages.h"
#include "app/manual/markdown.h"
#include "app/manual/web_page.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>
#include <stdexcept>

// Makes the manual pages and the handbook for a browser. Usage: manuals HELP FOLDER DATE
//   HELP    resources/help
//   FOLDER  gets man/ and handbook/
//   DATE    of the version, for the manual pages
namespace {

namespace fs = std::filesystem;
using namespace bothways::app;

std::string readText(const fs::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    if (!stream)
        throw std::runtime_error(file.string() + " cannot be read");
    return text.str();
}

void writeText(const fs::path& file, const std::string& text)
{
    fs::create_directories(file.parent_path());
    std::ofstream stream(file, std::ios::binary);
    stream << text;
    if (!stream.flush())
        throw std::runtime_error(file.string() + " cannot be written");
}

void makeManual(const Language& in, const fs::path& help, const fs::path& folder,
                const std::string& date)
{
    const fs::path section1 = folder / "man1";
    const fs::path section5 = folder / "man5";
    bothways::cli::Surroundings io{std::cout, std::cerr};
    io.language = in;
    bothways::cli::withWholeParser(io, [&](const CLI::App& program) {
        writeText(section1 / "bothways.1",
                  manual::commandPage(in, date, program, readText(help / "command_line.md")));
    });
    writeText(section1 / "bothways-desktop.1",
              manual::desktopPage(in, date, readText(help / "window.md")));
    writeText(section5 / "bothways-study.5",
              manual::studyPage(in, date, readText(help / "study_file.md")));
    writeText(section5 / "bothways-sheet.5",
              manual::sheetPage(in, date, readText(help / "spreadsheets.md")));
}

void makeHandbook(const Language& in, const fs::path& help, const fs::path& folder)
{
    for (const fs::directory_entry& entry : fs::directory_iterator(help)) {
        if (entry.path().extension() != ".md")
            continue;
        const std::string name = entry.path().stem().string();
        const manual::Blocks blocks = manual::parseMarkdown(readText(entry.path()));
        writeText(folder / (name + ".html"), manual::webPage(in, blocks, name == "index"));
    }
    for (const fs::directory_entry& entry : fs::directory_iterator(help / "pictures"))
        writeText(folder / "pictures" / entry.path().filename(), readText(entry.path()));
}

void makeAll(const fs::path& help, const fs::path& folder, const std::string& date)
{
    fs::remove_all(folder / "man");
    fs::remove_all(folder / "handbook");
    for (const std::string_view tag : Language::all()) {
        const Language in = *Language::named(tag);
        const fs::path below = tag == "en" ? fs::path() : fs::path(tag);
        makeManual(in, help / below, folder / "man" / below, date);
        makeHandbook(in, help / below, folder / "handbook" / below);
    }
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 4) {
        std::cerr << "usage: manuals HELP FOLDER DATE\n";
        return 2;
    }
    try {
        makeAll(argv[1], argv[2], argv[3]);
    } catch (const std::exception& problem) {
        std::cerr << "manuals: " << problem.what() << "\n";
        return 1;
    }
    return 0;
}
