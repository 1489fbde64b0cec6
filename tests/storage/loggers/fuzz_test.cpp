// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/loggers/fuzz.h"

#include "tests/fuzz/targets.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

namespace bothways::tests {
namespace {

const std::filesystem::path kCorpus =
    std::filesystem::path(BOTHWAYS_SOURCE_DIR) / "tests/storage/corpus";

TEST(Fuzz, FindsTheCorpusItselfInOrder)
{
    Fuzz fuzz(kCorpus, 1);
    EXPECT_EQ(fuzz.plainTurns(), "") << fuzz.lastFile();
    EXPECT_GE(fuzz.readable(), 12);
}

/// What libFuzzer (tests/fuzz) found worth keeping, and a sound file for each reader.
TEST(Fuzz, HasNoReaderThatStumblesOverItsCorpus)
{
    for (const FuzzTarget& target : fuzzTargets()) {
        int fed = 0;
        for (const auto& entry : std::filesystem::directory_iterator(kCorpus / target.name)) {
            std::ifstream stream(entry.path(), std::ios::binary);
            const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
            EXPECT_EQ(target.feed(bytes), "") << entry.path();
            ++fed;
        }
        EXPECT_GT(fed, 0) << target.name;
    }
}

/// tests/bench/fuzz_stress goes on for longer.
TEST(Fuzz, BreaksNoReaderInSomeThousandTurns)
{
    constexpr int kTurns = 3000;
    Fuzz fuzz(kCorpus, 20260314);
    for (int turn = 0; turn < kTurns; ++turn)
        ASSERT_EQ(fuzz.turn(), "") << "turn " << turn << ":\n" << fuzz.lastFile().substr(0, 4000);
    EXPECT_GT(fuzz.readable(), kTurns / 5);
}

} // namespace
} // namespace bothways::tests
