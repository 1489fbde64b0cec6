// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history_message.h"
#include "storage/study/renaming.h"

#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using storage::NameOf;
using storage::StudyFile;
using testing::ElementsAre;
using testing::HasSubstr;
using tests::aRun;
using tests::taken;
using tests::TemporaryFolder;

namespace {

/// A day of two configurations, "A" and "B", out and return.
struct ADay : testing::Test {
    TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
    ADay()
    {
        taken(file.addRun(aRun().at_min(0)));
        taken(file.addRun(aRun().returning().at_min(7)));
        taken(file.addRun(aRun().device().at_min(14)));
        taken(file.addRun(aRun().device().returning().at_min(21)));
    }
    core::Study study() const { return taken(file.study()); }
    std::string refusal(const std::vector<storage::Renaming>& renamings)
    {
        const core::Study before = study();
        const auto lines = taken(file.history()).size();
        const auto outcome = storage::rename(file, renamings);
        EXPECT_FALSE(outcome);
        EXPECT_EQ(study().runs, before.runs);
        EXPECT_EQ(taken(file.history()).size(), lines);
        return outcome ? "" : outcome.error().message.english();
    }
};

} // namespace

TEST_F(ADay, GivesAConfigurationAndADirectionOtherNamesInOneStep)
{
    ASSERT_TRUE(storage::rename(
        file, {{NameOf::configuration, "b", " roof box "}, {NameOf::direction, "out", "east"}}));
    EXPECT_THAT(core::configurations(study()), ElementsAre("A", "roof box"));
    EXPECT_THAT(core::directions(study()), ElementsAre("east", "return"));
    EXPECT_THAT(historyDetail(taken(file.history()).back()).english(),
                HasSubstr("configuration 'b' -> 'roof box', direction 'out' -> 'east'"));
    taken(file.undo());
    EXPECT_THAT(core::configurations(study()), ElementsAre("A", "B"));
    EXPECT_THAT(core::directions(study()), ElementsAre("out", "return"));
}

TEST_F(ADay, KeepsTheBaselineUnderItsNewName)
{
    // Without a baseline of its own, "A" is it; nothing is called so any more afterwards.
    ASSERT_TRUE(storage::rename(
        file, {{NameOf::configuration, "A", "on"}, {NameOf::configuration, "B", "A"}}));
    EXPECT_EQ(core::baselineName(study()), "on");
    ASSERT_TRUE(storage::rename(file, {{NameOf::configuration, "on", "with"}}));
    EXPECT_EQ(core::baselineName(study()), "with");
    EXPECT_EQ(study().properties.baseline, "with");
}

TEST_F(ADay, ExchangesTwoNames)
{
    ASSERT_TRUE(storage::rename(
        file, {{NameOf::direction, "out", "return"}, {NameOf::direction, "return", "out"}}));
    EXPECT_THAT(core::directions(study()), ElementsAre("return", "out"));
}

TEST_F(ADay, SpellsANameInAnotherWay)
{
    ASSERT_TRUE(storage::rename(file, {{NameOf::direction, "out", "Out"}}));
    EXPECT_THAT(core::directions(study()), ElementsAre("Out", "return"));
}

TEST_F(ADay, RefusesWhatWouldNotBeTwoNames)
{
    EXPECT_EQ(refusal({{NameOf::configuration, "B", "a"}}),
              "both configurations would be 'A'; expected two names");
    EXPECT_EQ(refusal({{NameOf::configuration, "C", "D"}}),
              "the study has no configuration 'C'; expected A or B");
    EXPECT_EQ(refusal({{NameOf::direction, "out", "  "}}),
              "expected a new name for direction 'out', on one line");
    EXPECT_EQ(refusal({{NameOf::direction, "out", "a\nb"}}),
              "expected a new name for direction 'out', on one line");
    StudyFile empty = taken(StudyFile::create(folder / "empty.bothways"));
    const auto outcome = storage::rename(empty, {{NameOf::configuration, "A", "B"}});
    ASSERT_FALSE(outcome);
    EXPECT_EQ(outcome.error().message.english(), "the study has no configuration yet");
}
