// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <regex>
#include <set>
#include <string>
#include <vector>

// Arrows point one way: app -> storage -> core, and within each from a room to those above it in
// kRooms. Every #include of the sources is read; each rule shows once that it would see what it
// forbids.
namespace {

namespace fs = std::filesystem;

const fs::path kSources = BOTHWAYS_SOURCE_DIR;

const std::string kQt = R"re(Q[A-Z]\w*|Qt\w*/.*|qcustomplot\.h)re";
const std::string kSqlite = R"re(SQLiteCpp/.*|sqlite3\.h)re";

/// Every room, from the ground up. A file may include its own room and those before it: so there is
/// no circle of rooms. A new room gets its line here.
constexpr std::array kRooms = {
    "core/base", "core/statistics", "core/pairing", "core/study", "core/recording",
    "core/screening", "core/watching", "core/planning", "core/effect", "core/companions",
    "core/checks", "core/answer",
    // in and out
    "storage/bytes", "storage/spreadsheet", "storage/sheet", "storage/study", "storage/chunks",
    "storage/loggers", "storage/recordings", "storage/instruments", "storage/live",
    // the programs
    "app/answer", "app/wording", "app/output", "app/live", "app/cli", "app/manual",
    "app/desktop/look", "app/desktop/document", "app/desktop/plots", "app/desktop/pages",
    "app/desktop/runs", "app/desktop/findings", "app/desktop/recordings", "app/desktop/planning",
    "app/desktop/printing", "app/desktop/watch", "app/desktop/roadside", "app/desktop/help",
    "app/desktop/window"};

struct Include {
    std::string where; ///< "core/study/study.cpp:5"
    std::string what;  ///< "core/study/study.h"
};

bool isSource(const fs::path& file)
{
    return file.extension() == ".h" || file.extension() == ".cpp";
}

/// "core/study/study.cpp": every source in a part.
std::vector<std::string> filesOf(const fs::path& part)
{
    std::vector<std::string> files;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(kSources / part))
        if (entry.is_regular_file() && isSource(entry.path()))
            files.push_back(fs::relative(entry.path(), kSources).string());
    return files;
}

std::vector<Include> includesOf(const fs::path& part)
{
    static const std::regex line(R"re(^\s*#\s*include\s*[<"]([^>"]+)[>"].*)re");
    std::vector<Include> includes;
    for (const std::string& file : filesOf(part)) {
        std::ifstream stream(kSources / file);
        std::string text;
        std::smatch match;
        for (int number = 1; std::getline(stream, text); ++number)
            if (std::regex_match(text, match, line))
                includes.push_back({file + ":" + std::to_string(number), match[1]});
    }
    return includes;
}

/// "core/study/study.cpp:5 includes QString", a line each.
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

/// Place of a file's room in kRooms.
std::optional<std::size_t> roomOf(const std::string& path)
{
    for (std::size_t i = 0; i < kRooms.size(); ++i)
        if (path.starts_with(std::string(kRooms[i]) + "/"))
            return i;
    return std::nullopt;
}

bool isOurs(const std::string& path)
{
    return path.starts_with("core/") || path.starts_with("storage/") || path.starts_with("app/");
}

/// Files that are in no room, whatever they include: a line each.
std::string outsideTheRooms(const std::vector<std::string>& files)
{
    std::string found;
    for (const std::string& file : files)
        if (!roomOf(file))
            found += file + " is in no room; put it into one, or add the room to kRooms\n";
    return found;
}

/// Includes that go up, or into no room: a line each.
std::string againstTheOrder(const std::vector<Include>& includes)
{
    std::string found;
    for (const Include& include : includes) {
        if (!isOurs(include.what))
            continue;
        const auto from = roomOf(include.where);
        const auto to = roomOf(include.what);
        if (!from || !to)
            found += include.where + " includes " + include.what + ": one of them is in no room\n";
        else if (*to > *from)
            found += include.where + " includes " + include.what + ": " + kRooms[*to] +
                     " is above " + kRooms[*from] +
                     "; move what both need into a room below, or the file into a room above\n";
    }
    return found;
}

/// Files that include each other, round and round: "a.h -> b.h -> a.h".
std::string circleIn(const std::map<std::string, std::set<std::string>>& arrows)
{
    std::map<std::string, int> state; // 1: on the way, 2: done
    std::vector<std::string> way;
    std::string circle;
    const auto visit = [&](const auto& self, const std::string& file) -> void {
        if (!circle.empty() || state[file] == 2)
            return;
        way.push_back(file);
        if (state[file] == 1) {
            for (auto at = std::find(way.begin(), way.end(), file); at != way.end(); ++at)
                circle += (circle.empty() ? "" : " -> ") + *at;
            return;
        }
        state[file] = 1;
        if (const auto to = arrows.find(file); to != arrows.end())
            for (const std::string& next : to->second)
                self(self, next);
        state[file] = 2;
        way.pop_back();
    };
    for (const auto& [file, to] : arrows)
        visit(visit, file);
    return circle;
}

std::map<std::string, std::set<std::string>> arrowsOf(const std::vector<Include>& includes)
{
    std::map<std::string, std::set<std::string>> arrows;
    for (const Include& include : includes)
        arrows[include.where.substr(0, include.where.rfind(':'))].insert(include.what);
    return arrows;
}

} // namespace

TEST(Layering, CoreKnowsNeitherQtNorSqliteNorTheOtherParts)
{
    const std::string forbidden = kQt + "|" + kSqlite + "|storage/.*|app/.*|tests/.*";
    const auto includes = includesOf("core");
    EXPECT_GT(includes.size(), 100u) << "the sources were not found";
    EXPECT_EQ(matching(includes, forbidden), "");
    for (const char* what :
         {"QString", "QtCore/QString", "qcustomplot.h", "sqlite3.h", "SQLiteCpp/Database.h",
          "storage/bytes/csv.h", "app/wording/verdict.h"})
        EXPECT_NE(matching(withOneOf(what), forbidden), "") << what << " must be seen";
    EXPECT_NE(matching(includesOf("storage"), kSqlite), "") << "the scanner sees storage's SQLite";
}

TEST(Layering, StorageKnowsNeitherQtNorTheProgramsAboveIt)
{
    const std::string forbidden = kQt + "|app/.*|tests/.*";
    EXPECT_EQ(matching(includesOf("storage"), forbidden), "");
    EXPECT_NE(matching(includesOf("storage"), "core/.*"), "") << "the scanner sees storage's core";
}

TEST(Layering, NothingButTheWindowKnowsQt)
{
    for (const char* part :
         {"app/answer", "app/cli", "app/live", "app/manual", "app/output", "app/wording"})
        EXPECT_EQ(matching(includesOf(part), kQt + "|app/desktop/.*|tests/.*"), "") << part;
    EXPECT_EQ(matching(includesOf("app/output"), "app/cli/.*"), "");
}

TEST(Layering, EveryFileIsInARoomAndIncludesOnlyWhatIsBelow)
{
    for (const char* layer : {"core", "storage", "app"}) {
        EXPECT_EQ(outsideTheRooms(filesOf(layer)), "") << "in " << layer;
        EXPECT_EQ(againstTheOrder(includesOf(layer)), "") << "in " << layer;
    }
    EXPECT_NE(outsideTheRooms({"core/attic/attic.h"}), "");
    EXPECT_NE(outsideTheRooms({"core/attic.h"}), "");
    EXPECT_NE(againstTheOrder({{"core/pairing/pairing.h:3", "core/effect/headline.h"}}), "");
    EXPECT_NE(againstTheOrder({{"core/attic/attic.h:3", "core/effect/headline.h"}}), "");
    EXPECT_EQ(againstTheOrder({{"core/effect/headline.cpp:3", "core/pairing/pairing.h"}}), "");
}

TEST(Layering, EveryRoomThatIsNamedIsThere)
{
    for (const char* room : kRooms)
        EXPECT_FALSE(includesOf(room).empty()) << room << " is empty or gone";
}

TEST(Layering, NoFileIncludesItselfByDetour)
{
    for (const char* layer : {"core", "storage", "app"})
        EXPECT_EQ(circleIn(arrowsOf(includesOf(layer))), "") << "in " << layer;
    EXPECT_EQ(circleIn({{"a.h", {"b.h"}}, {"b.h", {"c.h"}}, {"c.h", {"b.h"}}}),
              "b.h -> c.h -> b.h");
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
