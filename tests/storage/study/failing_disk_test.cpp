// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/renaming.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/random_studies.h"
#include "tests/storage/study/study_builders.h"
#include "tests/support/forgetful_disk.h"

#include <gtest/gtest.h>

#include <functional>

using namespace bothways;
using storage::StudyFile;
using tests::aRun;
using tests::ForgetfulDisk;
using tests::taken;

namespace {

namespace fs = std::filesystem;

/// What a person sees: runs, properties, and how long the history is.
struct Seen {
    core::Study study;
    std::size_t lines = 0;
    friend bool operator==(const Seen&, const Seen&) = default;
};

Seen seenIn(const StudyFile& file)
{
    return {taken(file.study()), taken(file.history()).size()};
}

struct FailingDisk : testing::Test {
    tests::TemporaryFolder folder;
    fs::path original = folder / "original.bothways";
    fs::path path = folder / "work" / "day.bothways";
    fs::path survivor = folder / "after" / "day.bothways";

    using Edit = std::function<core::Outcome(StudyFile&)>;
    struct Verb {
        const char* name;
        Edit edit;
    };
    std::vector<Verb> verbs = {
        {"add", [](StudyFile& file) { return done(file.addRun(aRun().number(900).at_min(900))); }},
        {"import",
         [](StudyFile& file) {
             core::Study sheet;
             for (int i = 0; i < 60; ++i)
                 sheet.runs.push_back(aRun().at_min(1000 + 7 * i));
             return file.importRuns(sheet, "long.csv");
         }},
        {"undo", [](StudyFile& file) { return done(file.undo()); }},
        {"discard",
         [](StudyFile& file) {
             const auto id = taken(file.study()).runs.back().id;
             return file.discard({id}, {"adjusted", "by hand"});
         }},
        {"rename",
         [](StudyFile& file) {
             return rename(file, {{storage::NameOf::configuration, "A", "without"}});
         }},
        {"note", [](StudyFile& file) { return file.note("look", "at it"); }}};

    template <class T>
    static core::Outcome done(const core::Result<T>& result)
    {
        return result ? core::Outcome(core::Done{}) : core::Outcome(result.error());
    }

    void SetUp() override
    {
        StudyFile file = taken(StudyFile::create(original));
        for (int i = 0; i < 12; ++i) {
            auto run = aRun().at_min(7 * i);
            if (i % 2 == 1)
                run.returning();
            if (i / 2 % 3 == 1)
                run.device();
            taken(file.addRun(run));
        }
    }
    void freshCopy() const
    {
        for (const fs::path& one : {path.parent_path(), survivor.parent_path()}) {
            fs::remove_all(one);
            fs::create_directory(one);
        }
        fs::copy_file(original, path);
    }
    /// As it is before and after the edit, and how many calls opening and the edit take.
    struct Course {
        Seen before, after;
        long calls = 0;
    };
    Course courseOf(const Edit& edit) const
    {
        freshCopy();
        ForgetfulDisk disk;
        StudyFile file = taken(StudyFile::open(path));
        Course course{seenIn(file), {}, 0};
        disk.failAt(0, ForgetfulDisk::Fault::error);
        EXPECT_TRUE(edit(file));
        course.calls = disk.calls();
        course.after = seenIn(file);
        return course;
    }
    /// Empty, or what is wrong with what the file holds.
    static std::string judge(const fs::path& file, const Course& course, bool acknowledged)
    {
        const auto opened = StudyFile::open(file);
        if (!opened)
            return core::describe(opened.error());
        const Seen seen = seenIn(opened.value());
        if (seen == course.after || (seen == course.before && !acknowledged))
            return {};
        return acknowledged ? "lost what was acknowledged" : "holds neither before nor after";
    }
};

} // namespace

TEST_F(FailingDisk, AtEachCallOfEachVerbNothingIsLostOrHalf)
{
    long tried = 0;
    for (const auto& [name, edit] : verbs) {
        const Course course = courseOf(edit);
        ASSERT_GT(course.calls, 5) << name;
        for (long call = 1; call <= course.calls; ++call, ++tried) {
            freshCopy();
            const auto fault =
                call % 2 == 0 ? ForgetfulDisk::Fault::full : ForgetfulDisk::Fault::error;
            bool acknowledged = false;
            {
                ForgetfulDisk disk;
                StudyFile file = taken(StudyFile::open(path));
                disk.failAt(call, fault);
                const core::Outcome outcome = edit(file);
                EXPECT_TRUE(disk.failed()) << name << " " << call;
                disk.failAt(0, fault);
                acknowledged = static_cast<bool>(outcome);
                // What the program says is so.
                const bool isIn =
                    outcome || outcome.error().message.english().starts_with(
                                   "the change is in the study, but the disk did not confirm it");
                EXPECT_TRUE(seenIn(file) == (isIn ? course.after : course.before))
                    << name << ", call " << call << ": "
                    << (outcome ? "acknowledged" : core::describe(outcome.error()));
            }
            ASSERT_EQ(judge(path, course, acknowledged), "") << name << ", call " << call;
        }
    }
    EXPECT_GT(tried, 150);
}

TEST_F(FailingDisk, WhatWasNotFlushedMayBeForgottenAtEachCall)
{
    constexpr std::uint32_t kSeeds = 2;
    verbs.resize(3);
    long tried = 0;
    for (const auto& [name, edit] : verbs) {
        const Course course = courseOf(edit);
        for (long call = 1; call <= course.calls + 1; ++call)
            for (std::uint32_t seed = 0; seed < kSeeds; ++seed, ++tried) {
                freshCopy();
                bool acknowledged = false;
                {
                    ForgetfulDisk disk;
                    StudyFile file = taken(StudyFile::open(path));
                    disk.failAt(call, ForgetfulDisk::Fault::dead);
                    acknowledged = static_cast<bool>(edit(file));
                    disk.survive(survivor.parent_path(),
                                 seed + 97 * static_cast<std::uint32_t>(call));
                }
                ASSERT_EQ(judge(survivor, course, acknowledged), "")
                    << name << ", call " << call << ", seed " << seed;
            }
    }
    EXPECT_GT(tried, 150);
}
