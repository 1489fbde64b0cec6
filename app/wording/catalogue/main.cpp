// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/catalogue/catalogue.h"

#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <fstream>

// sentences table OUT.cpp TAG=FILE.ts...   the table that app/wording/translations.h declares
// sentences update FILE.ts TAG FOLDER...   new sentences of the sources into FILE.ts, old ones out
namespace {

using namespace bothways::app::catalogue;

void write(const std::string& file, const std::string& text)
{
    std::ofstream stream(file, std::ios::binary);
    stream << text;
    if (!stream.flush())
        throw std::runtime_error(file + ": cannot be written");
}

void table(const std::vector<std::string>& words)
{
    std::string tables;
    std::string list;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const std::size_t equals = words[i].find('=');
        const std::string tag = words[i].substr(0, equals);
        tables += tableSource(readTs(words[i].substr(equals + 1)), "k_" + tag) + "\n";
        list += fmt::format("    {{\"{0}\", k_{0}}},\n", tag);
    }
    write(words.at(0), fmt::format("// Written while building, by app/wording/catalogue.\n"
                                   "#include \"app/wording/translations.h\"\n\n"
                                   "namespace bothways::app {{\nnamespace {{\n\n{}"
                                   "constexpr TranslatedSentences kAll[] = {{\n{}}};\n\n"
                                   "}} // namespace\n\n"
                                   "std::span<const TranslatedSentences> translatedSentences()\n"
                                   "{{\n    return kAll;\n}}\n\n}} // namespace bothways::app\n",
                                   tables, list));
}

void update(const std::vector<std::string>& words)
{
    const std::set<std::string> keys = textsBelow({words.begin() + 2, words.end()});
    const Translations made = updated(readTs(words.at(0)), keys);
    write(words.at(0), writeTs(made, words.at(1)));
    long long missing = 0;
    for (const auto& [key, translation] : made)
        missing += translation.empty() ? 1 : 0;
    fmt::print("{}: {} sentences, {} without a translation\n", words.at(0), made.size(), missing);
}

} // namespace

int main(int argc, char** argv)
try {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (words.size() >= 3 && words[0] == "table")
        table({words.begin() + 1, words.end()});
    else if (words.size() >= 4 && words[0] == "update")
        update({words.begin() + 1, words.end()});
    else
        throw std::runtime_error("expected table OUT.cpp TAG=FILE.ts or update FILE.ts TAG FOLDER");
    return 0;
} catch (const std::exception& problem) {
    fmt::print(stderr, "sentences: {}\n", problem.what());
    return 1;
}
