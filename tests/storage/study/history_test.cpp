// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history_message.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/random_edits.h"
#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using storage::StudyFile;
using testing::ElementsAre;
using tests::aRun;
using tests::taken;

namespace {

/// Everything that undo may change.
struct State {
    core::Study study;
    std::vector<std::string> overruled;
    friend bool operator==(const State&, const State&) = default;
};

State stateOf(const StudyFile& file)
{
    State state{taken(file.study()), {}};
    for (const storage::Overruled& one : taken(file.overruled()))
        state.overruled.push_back(std::to_string(one.run) + one.rule + one.words);
    return state;
}

void reopen(StudyFile& file)
{
    const auto path = file.path();
    {
        const StudyFile closed = std::move(file);
    }
    file = taken(StudyFile::open(path));
}

std::vector<std::string> kindsOf(const StudyFile& file)
{
    std::vector<std::string> kinds;
    for (const storage::HistoryEntry& entry : taken(file.history()))
        kinds.push_back(entry.kind + (entry.undone ? " undone" : ""));
    return kinds;
}

} // namespace

TEST(History, RandomEditsUndoneAreTheStartAndRedoneAreTheEnd)
{
    for (const std::uint32_t seed : {1U, 2U, 3U}) {
        SCOPED_TRACE(seed);
        const tests::TemporaryFolder folder;
        StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
        tests::RandomEdits edits(seed);
        std::vector<State> states = {stateOf(file)};
        for (int i = 0; i < 60; ++i) {
            const std::size_t lines = taken(file.history()).size();
            edits.apply(file);
            if (taken(file.history()).size() > lines)
                states.push_back(stateOf(file));
        }
        ASSERT_GT(states.size(), 30u) << "most edits should take";

        for (std::size_t i = states.size() - 1; i > 0; --i) {
            ASSERT_TRUE(file.undo());
            ASSERT_EQ(stateOf(file), states[i - 1]) << "after undoing change " << i;
            if (i % 16 == 0)
                reopen(file);
        }
        EXPECT_FALSE(file.nextUndo());
        for (std::size_t i = 1; i < states.size(); ++i) {
            ASSERT_TRUE(file.redo());
            ASSERT_EQ(stateOf(file), states[i]) << "after redoing change " << i;
            if (i % 16 == 0)
                reopen(file);
        }
        EXPECT_FALSE(file.nextRedo());
    }
}

// A wandering through the history, compared with a plain list of states.
TEST(History, GoesBackAndForthAmidNewChangesLikeAList)
{
    constexpr std::uint32_t kSeed = 5;
    const tests::TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
    tests::RandomEdits edits(kSeed);
    std::vector<State> states = {stateOf(file)};
    std::size_t at = 0;
    for (int i = 0; i < 120; ++i) {
        const int what = edits.random().below(4);
        if (what == 0) {
            ASSERT_EQ(static_cast<bool>(file.undo()), at > 0) << "step " << i;
            at -= at > 0 ? 1 : 0;
        } else if (what == 1) {
            ASSERT_EQ(static_cast<bool>(file.redo()), at + 1 < states.size()) << "step " << i;
            at += at + 1 < states.size() ? 1 : 0;
        } else {
            const std::size_t lines = taken(file.history()).size();
            edits.apply(file);
            if (taken(file.history()).size() > lines) {
                states.resize(++at);
                states.push_back(stateOf(file));
            }
        }
        ASSERT_EQ(stateOf(file), states[at]) << "step " << i << ", seed " << kSeed;
        ASSERT_EQ(file.nextUndo().has_value(), at > 0);
        ASSERT_EQ(file.nextRedo().has_value(), at + 1 < states.size());
    }
}

TEST(History, SaysWhatChangedWhenAndForgetsNothing)
{
    const tests::TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
    file.setClock([] { return std::string("2026-05-09T04:00:00Z"); });
    const core::RunId id = taken(file.addRun(aRun()));
    core::Run run = taken(file.study()).runs.at(0);
    run.duration_s = 211;
    run.notes = "two\nlines";
    taken(file.updateRun(run));
    taken(file.discard({id}, {"overspeed", "rotor 3410 rpm"}));
    taken(file.undo());
    taken(file.note("look", "undecided"));
    taken(file.redo());
    taken(file.undo());
    core::StudyProperties properties;
    properties.margin_pct = 0.5;
    taken(file.setProperties(properties, {}));

    EXPECT_THAT(kindsOf(file), ElementsAre("new", "add_run", "edit_run", "discard undone", "undo",
                                           "look", "redo", "undo", "set"));
    const auto history = taken(file.history());
    EXPECT_EQ(history[1].at, "2026-05-09T04:00:00Z");
    EXPECT_EQ(historyDetail(history[1]).english(),
              "run 1: A out 2026-05-09T05:40:00, 8.41 L/100 km");
    EXPECT_EQ(historyDetail(history[2]).english(),
              "run 1: duration (s) '' -> '211', notes '' -> 'two\\nlines'");
    EXPECT_EQ(historyDetail(history[4]).english(), "discard run 1: over-speed, rotor 3410 rpm");
    EXPECT_EQ(historyDetail(history[8]).english(), "margin='0.5'");
    EXPECT_FALSE(file.redo()) << "something else was changed since";
}

TEST(History, ALookChangesNothingAndKeepsRedo)
{
    const tests::TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
    taken(file.addRun(aRun()));
    taken(file.undo());
    taken(file.note("look", "less"));
    EXPECT_TRUE(file.redo());
    EXPECT_EQ(taken(file.study()).runs.size(), 1u);
}

TEST(History, RemovingATiedRunUntiesItsPartnerAndUndoTiesThemAgain)
{
    const tests::TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
    const core::RunId out = taken(file.addRun(aRun()));
    const core::RunId back = taken(file.addRun(aRun().returning().at_min(7)));
    taken(file.pair(out, back));
    taken(file.overrule({2, "overspeed", "wrong counter"}));
    const State before = stateOf(file);
    taken(file.removeRuns({back}));
    EXPECT_EQ(taken(file.study()).runs.at(0).pair_mark, "");
    EXPECT_TRUE(taken(file.overruled()).empty());
    taken(file.undo());
    EXPECT_EQ(stateOf(file), before);
}

TEST(History, TwoConnectionsOfOneProgramTakeTurns)
{
    const tests::TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
    StudyFile other = taken(file.another());
    taken(file.addRun(aRun()));
    taken(other.addRun(aRun().returning().at_min(7)));
    EXPECT_EQ(taken(file.study()), taken(other.study()));
    taken(file.undo());
    EXPECT_EQ(taken(other.study()).runs.size(), 1u);
}
