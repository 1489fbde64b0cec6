// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/evidence_file.h"

#include "tests/storage/study/study_builders.h"

#include <gtest/gtest.h>

#include <fstream>

namespace bothways::tests {
namespace {

using storage::EvidenceState;

void writeBytes(const std::filesystem::path& file, std::string_view text)
{
    std::ofstream(file, std::ios::binary) << text;
}

TEST(EvidenceFile, IsKeptByNameSizeAndSum)
{
    TemporaryFolder folder;
    std::filesystem::create_directory(folder / "clips");
    writeBytes(folder / "clips/abc.mp4", "abc");
    const auto file =
        taken(storage::evidenceFile((folder / "clips/abc.mp4").string() + "@83,5", folder / ""));
    EXPECT_EQ(file.name, "clips/abc.mp4");
    EXPECT_EQ(file.at_s, 83.5);
    EXPECT_EQ(file.bytes, 3);
    // FIPS 180-2, appendix B.1
    EXPECT_EQ(file.sha256, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    const std::string words = storage::withEvidenceFile("a lorry, close", file);
    EXPECT_EQ(words, "a lorry, close [clips/abc.mp4 @ 83.5 s, 3 bytes, SHA-256 "
                     "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad]");
    EXPECT_EQ(storage::evidenceFileIn(words), file);
    EXPECT_EQ(storage::withoutEvidenceFile(words), "a lorry, close");
    EXPECT_EQ(storage::withEvidenceFile(words, file), words) << "one file, not two";
    EXPECT_EQ(storage::evidenceFileIn(storage::withEvidenceFile("", file)), file);
}

TEST(EvidenceFile, NamesEndAsTheyBegan)
{
    TemporaryFolder folder;
    for (const char* name : {"a, b.jpg", "x @ 3 s", "mail@home.png", "größe.jpg"}) {
        writeBytes(folder / name, name);
        const auto file = taken(storage::evidenceFile((folder / name).string(), folder / ""));
        EXPECT_EQ(file.at_s, std::nullopt) << name;
        const auto back = storage::evidenceFileIn(storage::withEvidenceFile("w", file));
        ASSERT_TRUE(back) << name;
        EXPECT_EQ(back->sha256, file.sha256);
        if (std::string_view(name) != "x @ 3 s") { // which reads like a moment
            EXPECT_EQ(*back, file);
        }
    }
    writeBytes(folder / "a[1].jpg", "x");
    EXPECT_FALSE(storage::evidenceFile((folder / "a[1].jpg").string(), folder / ""));
}

TEST(EvidenceFile, SaysWhetherTheFileIsWhatItWas)
{
    TemporaryFolder folder;
    writeBytes(folder / "photo.jpg", "one");
    const auto file = taken(storage::evidenceFile((folder / "photo.jpg").string(), folder / ""));
    EXPECT_EQ(storage::stateOf(file, folder / ""), EvidenceState::same);
    writeBytes(folder / "photo.jpg", "two");
    EXPECT_EQ(storage::stateOf(file, folder / ""), EvidenceState::changed);
    std::filesystem::remove(folder / "photo.jpg");
    EXPECT_EQ(storage::stateOf(file, folder / ""), EvidenceState::missing);
}

TEST(EvidenceFile, RefusesWhatIsNoFile)
{
    TemporaryFolder folder;
    EXPECT_FALSE(storage::evidenceFile((folder / "none.jpg").string(), folder / ""));
    EXPECT_FALSE(storage::evidenceFile((folder / "none.jpg@3").string(), folder / ""));
    EXPECT_FALSE(storage::evidenceFile((folder / "").string(), folder / ""));
}

TEST(EvidenceFile, OrdinaryWordsHoldNone)
{
    for (const char* words : {"", "]", "[a]", "lorry [a, 3 bytes]", "x, SHA-256 ab]",
                              "3410 rpm (limit 3200 rpm), 96.2-97.1 s"})
        EXPECT_FALSE(storage::evidenceFileIn(words)) << words;
}

} // namespace
} // namespace bothways::tests
