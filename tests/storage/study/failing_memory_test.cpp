// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_file.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <functional>

using namespace bothways;
using storage::StudyFile;
using tests::aRun;
using tests::taken;

namespace {

namespace fs = std::filesystem;

// SQLite's memory, of which the n-th piece is not there. What our own code allocates is not failed.
sqlite3_mem_methods usual;
long pieces = 0;
long missing = 0;

bool isMissing()
{
    return ++pieces == missing;
}

void* allocate(int size)
{
    return isMissing() ? nullptr : usual.xMalloc(size);
}

void* reallocate(void* old, int size)
{
    return isMissing() ? nullptr : usual.xRealloc(old, size);
}

bool watchMemory()
{
    sqlite3_shutdown();
    if (sqlite3_config(SQLITE_CONFIG_GETMALLOC, &usual) != SQLITE_OK)
        return false;
    sqlite3_mem_methods watched = usual;
    watched.xMalloc = allocate;
    watched.xRealloc = reallocate;
    return sqlite3_config(SQLITE_CONFIG_MALLOC, &watched) == SQLITE_OK &&
           sqlite3_initialize() == SQLITE_OK;
}

std::size_t linesOf(const fs::path& path)
{
    return taken(taken(StudyFile::open(path, true)).history()).size();
}

/// Fails each `step`th allocation once; empty, or what went wrong.
std::string failEach(const fs::path& original, const fs::path& path,
                     const std::function<bool(const fs::path&)>& work, int tries)
{
    const std::size_t before = linesOf(original);
    fs::copy_file(original, path, fs::copy_options::overwrite_existing);
    missing = 0;
    pieces = 0;
    if (!work(path))
        return "fails with all its memory";
    const long all = pieces;
    const std::size_t after = linesOf(path);
    const long step = std::max(1L, all / tries);
    for (long at = 1; at <= all; at += step) {
        fs::copy_file(original, path, fs::copy_options::overwrite_existing);
        pieces = 0;
        missing = at;
        const bool acknowledged = work(path);
        missing = 0;
        const std::size_t now = linesOf(path);
        if (now != after && (acknowledged || now != before))
            return fmt::format("allocation {} of {}: {} lines, {} before, {} after, {}", at, all,
                               now, before, after, acknowledged ? "acknowledged" : "refused");
    }
    return {};
}

} // namespace

TEST(FailingMemory, AtEachPieceThatSqliteAsksForNothingIsLostOrHalf)
{
    const tests::TemporaryFolder folder;
    const fs::path original = folder / "original.bothways";
    {
        StudyFile file = taken(StudyFile::create(original));
        for (int i = 0; i < 5; ++i)
            taken(file.addRun(aRun().at_min(7 * i)));
    }
    // In a process of its own: this is settled before SQLite's first use.
    const pid_t child = ::fork();
    if (child == 0) {
        if (!watchMemory())
            _exit(2);
        constexpr int kTries = 120;
        const std::pair<const char*, std::function<bool(const fs::path&)>> works[] = {
            {"add",
             [](const fs::path& path) {
                 auto file = StudyFile::open(path);
                 return file && file.value().addRun(aRun().at_min(700));
             }},
            {"undo", [](const fs::path& path) {
                 auto file = StudyFile::open(path);
                 return file && file.value().undo();
             }}};
        for (const auto& [name, work] : works)
            if (const std::string wrong =
                    failEach(original, folder / "work.bothways", work, kTries);
                !wrong.empty()) {
                fmt::print(stderr, "{}: {}\n", name, wrong);
                _exit(1);
            }
        _exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status)) << "ended by a signal";
    EXPECT_EQ(WEXITSTATUS(status), 0);
}
