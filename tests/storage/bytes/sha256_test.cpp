// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/sha256.h"
#include "storage/sheet/study_digest.h"

#include "tests/storage/study/study_builders.h"

#include <gtest/gtest.h>

#include <fstream>

using namespace bothways;
using storage::sha256;
using tests::aRun;

// The examples of the standard: FIPS 180-2 (2002), appendix B.1, B.2 and B.3, the same messages as
// in NIST's example values for FIPS 180-4. Written from memory, then compared with Python's
// hashlib, which gives the same four.
TEST(Sha256, GivesTheDigestsOfTheStandardsExamples)
{
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256(std::string(1'000'000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST(Sha256, DoesNotCareHowTheBytesComeInPieces)
{
    std::string text;
    for (int i = 0; i < 300; ++i)
        text += static_cast<char>(i);
    for (const std::size_t piece : {1U, 3U, 55U, 56U, 63U, 64U, 65U, 299U}) {
        storage::Sha256 hash;
        for (std::size_t at = 0; at < text.size(); at += piece)
            hash.add(std::string_view(text).substr(at, piece));
        EXPECT_EQ(hash.hex(), sha256(text)) << "in pieces of " << piece;
    }
}

TEST(Sha256, IsTheSameByPlainRoundsAndByInstructions)
{
    using storage::Sha256;
    std::string text;
    for (int i = 0; i < 700; ++i) {
        Sha256 plain(Sha256::By::plainRounds);
        plain.add(text);
        Sha256 fastest;
        fastest.add(text);
        ASSERT_EQ(plain.hex(), fastest.hex()) << i << " bytes";
        text += static_cast<char>(i * 37 % 251);
    }
    Sha256 plain(Sha256::By::plainRounds);
    plain.add("abc");
    EXPECT_EQ(plain.hex(), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(Sha256, OfAFileIsThatOfItsBytes)
{
    const tests::TemporaryFolder folder;
    std::ofstream(folder / "sheet.csv") << "abc";
    EXPECT_EQ(tests::taken(storage::sha256OfFile(folder / "sheet.csv")), sha256("abc"));
    EXPECT_FALSE(storage::sha256OfFile(folder / "nothing.csv"));
}

TEST(Sha256, OfAStudyChangesWithEveryWordOfIt)
{
    core::Study study;
    study.runs = {aRun().number(1)};
    const std::string before = storage::sha256OfStudy(study);
    EXPECT_EQ(storage::sha256OfStudy(study), before);
    study.runs[0].id = core::RunId{7};
    EXPECT_EQ(storage::sha256OfStudy(study), before) << "identities are not content";
    study.properties.margin_pct = 2;
    EXPECT_NE(storage::sha256OfStudy(study), before);
    study.properties.margin_pct = 1;
    study.runs[0].notes = "wet";
    EXPECT_NE(storage::sha256OfStudy(study), before);
}
