// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <string>
#include <vector>

// Arrows point one way: app -> storage -> core. Every #include of the sources is read; each rule
// shows once that it would see what it forbids.
namespace {

namespace fs = std::filesystem;

const fs::path kSources = BOTHWAYS_SOURCE_DIR;

const std::string kQt = R"re(Q[A-Z]\w*|Qt\w*/.*|qcustomplot\.h)re";
const std::string kSqlite = R"re(SQLiteCpp/.*|sqlite3\.h)re";

struct Include {
    std::string where; ///< "core/study.cpp:5"
    std::string what;  ///< "core/study.h"
};

bool isSource(const fs::path& file)
{
    return file.extension() == ".h" || file.extension() == ".cpp";
}

std::vector<Include> includesOf(const fs::path& part)
{
    static const std::regex line(R"re(^\s*#\s*include\s*[<"]([^>"]+)[>"].*)re");
    std::vector<Include> includes;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(kSources / part)) {
        if (!entry.is_regular_file() || !isSource(entry.path()))
            continue;
        std::ifstream stream(entry.path());
        std::string text;
        std::smatch match;
        for (int number = 1; std::getline(stream, text); ++number)
            if (std::regex_match(text, match, line))
                includes.push_back(
                    {fs::relative(entry.path(), kSources).string() + ":" + std::to_string(number),
                     match[1]});
    }
    return includes;
}

/// "core/study.cpp:5 includes QString", a line each.
std::string matching(const std::vector<Include>& includes, const std::string& forbidden)
{
    const std::regex pattern(forbidden);
    std::string found;
    for (const Include& include : includes)
        if (std::regex_match(include.what, pattern))
            found += include.where + " includes " + include.what + "\n";
    return found;
}

std::vector<Include> withOneOf(const char* what)
{
    return {{"somewhere:1", what}};
}

} // namespace

TEST(Layering, CoreKnowsNeitherQtNorSqliteNorTheOtherParts)
{
    const std::string forbidden = kQt + "|" + kSqlite + "|storage/.*|app/.*|tests/.*";
    const auto includes = includesOf("core");
    EXPECT_GT(includes.size(), 100u) << "the sources were not found";
    EXPECT_EQ(matching(includes, forbidden), "");
    for (const char* what : {"QString", "QtCore/QString", "qcustomplot.h", "sqlite3.h",
                             "SQLiteCpp/Database.h", "storage/csv.h", "app/output/english.h"})
        EXPECT_NE(matching(withOneOf(what), forbidden), "") << what << " must be seen";
    EXPECT_NE(matching(includesOf("storage"), kSqlite), "") << "the scanner sees storage's SQLite";
}

TEST(Layering, StorageKnowsNeitherQtNorTheProgramsAboveIt)
{
    const std::string forbidden = kQt + "|app/.*|tests/.*";
    EXPECT_EQ(matching(includesOf("storage"), forbidden), "");
    EXPECT_NE(matching(includesOf("storage"), "core/.*"), "") << "the scanner sees storage's core";
}

TEST(Layering, TheCommandLineAndTheOutputKnowNoQt)
{
    for (const char* part : {"app/cli", "app/output"})
        EXPECT_EQ(matching(includesOf(part), kQt + "|app/desktop/.*|tests/.*"), "") << part;
    EXPECT_EQ(matching(includesOf("app/output"), "app/cli/.*"), "");
}

TEST(Layering, OnlyStorageSpeaksSql)
{
    EXPECT_EQ(matching(includesOf("app"), kSqlite), "");
}

TEST(Layering, EverySourceSaysWhoseItIsAndUnderWhichLicence)
{
    std::string without;
    int files = 0;
    for (const char* part : {"app", "core", "storage", "tests", "sample_data"})
        for (const fs::directory_entry& entry : fs::recursive_directory_iterator(kSources / part)) {
            if (!entry.is_regular_file() || !isSource(entry.path()))
                continue;
            ++files;
            std::ifstream stream(entry.path());
            std::string first;
            std::string second;
            std::getline(stream, first);
            std::getline(stream, second);
            if (first != "// Copyright (C) 2026 The Bothways developers" ||
                second != "// SPDX-License-Identifier: GPL-3.0-or-later")
                without += fs::relative(entry.path(), kSources).string() + "\n";
        }
    EXPECT_GT(files, 100);
    EXPECT_EQ(without, "");
}
