// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/unreadable_recording.h"
#include "core/screening/screening.h"
#include "storage/chunks/chunk_codec.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"
#include "storage/study/study_database.h"
#include "tests/storage/recordings/trace_builders.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <gmock/gmock.h>

#include <numeric>

namespace bothways::storage {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using tests::taken;
using tests::TraceBench;

/// 12 minutes, once a second: the device's speed, which passes a limit once, and a second channel.
std::string morning(double offset_rpm)
{
    std::string text = "time,rotor_rpm,output_w\n";
    for (int i = 0; i < 720; ++i)
        text +=
            fmt::format("2026-05-09T05:{:02}:{:02},{},{}\n", 39 + i / 60, i % 60,
                        1000.0 + offset_rpm + i % 7 + (i > 200 && i < 220 ? 900 : 0), 300 + i % 11);
    return text;
}

/// A study whose run 1 has a recording that shows an over-speed, and run 2 one that does not.
class DamagedRecordings : public testing::Test {
protected:
    DamagedRecordings() : bench(morning(0.0))
    {
        TraceImportOptions options;
        options.run = 1;
        bench.import(options);
        bench.write(morning(3.0), "back.csv");
        options.run = 2;
        bench.import(options);
        auto study = taken(bench.m_study.study());
        study.properties.limits["overspeed.rpm"] = 1500.0;
        study.properties.limits["overspeed.seconds"] = 5.0;
        tests::taken(bench.m_study.setProperties(study.properties, "limit"));
    }
    void exec(const std::string& sql) { bench.m_study.database().database->exec(sql); }
    core::Result<core::Screening> screened()
    {
        const core::Study study = taken(bench.m_study.study());
        return core::readingRecordings(
            [&] { return core::screen(study, tracesOf(bench.m_study)); });
    }
    /// Everybody who reads says so, and names what is damaged.
    void expectDamage(const std::string& channel, const std::string& what)
    {
        const Outcome whole = checkRecordings(bench.m_study);
        ASSERT_FALSE(whole) << what;
        EXPECT_EQ(whole.error().code, core::ErrorCode::studyFile);
        EXPECT_THAT(
            core::describe(whole.error()),
            AllOf(HasSubstr("the recording drive.csv (run 1) is damaged in channel " + channel),
                  HasSubstr("restore the study from a copy")))
            << what;
        const auto findings = screened();
        ASSERT_FALSE(findings) << what << ": a finding was dropped in silence";
        EXPECT_EQ(findings.error().code, core::ErrorCode::studyFile);
        EXPECT_EQ(findings.error().where.run, 1) << what;
    }
    std::string bytesOf(int place)
    {
        SQLite::Statement row(*bench.m_study.database().database,
                              "SELECT bytes FROM chunk WHERE data = 1 AND place = ?");
        row.bind(1, place);
        row.executeStep();
        return row.getColumn(0).getString();
    }
    void setBytes(int place, const std::string& bytes)
    {
        SQLite::Statement row(*bench.m_study.database().database,
                              "UPDATE chunk SET bytes = ? WHERE data = 1 AND place = ?");
        row.bind(1, bytes.data(), static_cast<int>(bytes.size()));
        row.bind(2, place);
        row.exec();
    }
    static std::string evenChunk(std::uint32_t rows)
    {
        ScaledColumn column;
        column.scaled.resize(rows);
        std::iota(column.scaled.begin(), column.scaled.end(), std::int64_t{0});
        const EncodedChunk chunk = ChunkEncoder().encode(column, rows);
        return {reinterpret_cast<const char*>(chunk.bytes.data()), chunk.bytes.size()};
    }
    /// A chunk of times in place of those that were there.
    void insertTimes(std::int64_t firstRow, const std::string& bytes, double from_s)
    {
        if (firstRow == 0)
            exec("DELETE FROM chunk WHERE data = 1 AND place = 0");
        SQLite::Statement row(*bench.m_study.database().database,
                              "INSERT INTO chunk (data, place, first_row, rows, samples, minimum, "
                              "maximum, bytes) VALUES (1, 0, ?, ?, ?, ?, ?, ?)");
        row.bind(1, firstRow);
        row.bind(2, kMaxChunkRows);
        row.bind(3, kMaxChunkRows);
        row.bind(4, from_s);
        row.bind(5, from_s + kMaxChunkRows - 1);
        row.bind(6, bytes.data(), static_cast<int>(bytes.size()));
        row.exec();
    }
    TraceBench bench;
};

TEST_F(DamagedRecordings, AreFoundWhereNothingIsDamagedNot)
{
    EXPECT_TRUE(checkRecordings(bench.m_study));
    const auto findings = screened();
    ASSERT_TRUE(findings);
    EXPECT_FALSE(findings.value().findings.empty());
}

TEST_F(DamagedRecordings, AreSaidForAFlippedBitInAnyByteOfAnyChunk)
{
    for (const auto& [place, channel] : {std::pair{0, "time"}, {1, "rotor_rpm"}, {2, "output_w"}}) {
        const std::string sound = bytesOf(place);
        for (std::size_t at = 0; at < sound.size(); at += 1 + sound.size() / 12) {
            std::string flipped = sound;
            flipped[at] = static_cast<char>(flipped[at] ^ 4);
            setBytes(place, flipped);
            expectDamage(channel, fmt::format("place {}, byte {}", place, at));
        }
        setBytes(place, sound);
    }
    EXPECT_TRUE(checkRecordings(bench.m_study));
}

TEST_F(DamagedRecordings, AreSaidWithoutSumsAsWell)
{
    // A study of version 1, which a reader leaves as it is.
    exec("PRAGMA user_version = 1");
    EXPECT_TRUE(checkRecordings(bench.m_study));
    const std::string sound = bytesOf(1);
    std::string flipped = sound;
    flipped[flipped.size() / 2] = static_cast<char>(flipped[flipped.size() / 2] ^ 4);
    setBytes(1, flipped);
    expectDamage("rotor_rpm", "a flipped bit");
    setBytes(1, sound);
    exec("UPDATE chunk SET maximum = 1010 WHERE data = 1 AND place = 1");
    EXPECT_FALSE(checkRecordings(bench.m_study)) << "a bound that is not the values'";
}

TEST_F(DamagedRecordings, AreSaidForAChunkThatIsMissing)
{
    exec("DELETE FROM chunk WHERE data = 1 AND place = 1");
    expectDamage("rotor_rpm", "the chunk is gone");
}

TEST_F(DamagedRecordings, AreSaidWhereTimesAreMissing)
{
    exec("DELETE FROM chunk WHERE data = 1 AND place = 0");
    expectDamage("", "the times are gone");
}

TEST_F(DamagedRecordings, AreSaidForASoundChunkOfAnotherRecordingInItsPlace)
{
    exec("UPDATE chunk SET bytes = (SELECT bytes FROM chunk WHERE data = 2 AND place = 1) "
         "WHERE data = 1 AND place = 1");
    expectDamage("rotor_rpm", "the bytes of another chunk");
    exec("UPDATE chunk_sum SET sha256 = (SELECT sha256 FROM chunk_sum WHERE data = 2 AND "
         "place = 1) WHERE data = 1 AND place = 1");
    expectDamage("time", "with the other chunk's sum");
}

TEST_F(DamagedRecordings, AreSaidForChangedNumbersOfAChunk)
{
    exec("CREATE TEMP TABLE sound AS SELECT * FROM chunk");
    for (const char* change :
         {"maximum = 1010", "minimum = -5", "minimum = NULL, maximum = NULL", "rows = rows - 1",
          "samples = samples - 1", "rows = 4000000", "first_row = 1", "place = 7", "rows = 0"}) {
        for (const int place : {0, 1}) {
            exec(fmt::format("UPDATE chunk SET {} WHERE data = 1 AND place = {}", change, place));
            expectDamage("", fmt::format("{} of place {}", change, place));
            exec("DELETE FROM chunk WHERE data = 1");
            exec("INSERT INTO chunk SELECT * FROM sound WHERE data = 1");
        }
    }
    EXPECT_TRUE(checkRecordings(bench.m_study));
}

TEST_F(DamagedRecordings, AreSaidByTheListAndByEveryOtherWayToReadThem)
{
    exec("UPDATE chunk SET maximum = 1010 WHERE data = 1 AND place = 1");
    EXPECT_FALSE(recordings(bench.m_study));
    EXPECT_FALSE(openRecording(bench.m_study, core::RecordingId{1}));
    EXPECT_FALSE(readChannel(bench.m_study, core::RecordingId{1}, "output_w"));
    EXPECT_TRUE(readChannel(bench.m_study, core::RecordingId{2}, "output_w"));
}

TEST_F(DamagedRecordings, ThatClaimMoreRowsThanTheirSizeCanHoldTakeNoMemory)
{
    // 2^22 rows that follow an even step, in some forty bytes: the form allows for it.
    const std::string wide = evenChunk(kMaxChunkRows);
    ASSERT_LT(wide.size(), 200U);
    exec("PRAGMA user_version = 1"); // no sums, as a forger would have it
    for (int i = 0; i < 4; ++i)
        insertTimes(i * std::int64_t{kMaxChunkRows}, wide, i * double{kMaxChunkRows});
    exec(fmt::format("UPDATE recording SET rows = {}, from_s = 0, to_s = {} WHERE id = 1",
                     4 * std::int64_t{kMaxChunkRows}, 4.0 * kMaxChunkRows - 1));
    exec("DELETE FROM chunk WHERE data = 1 AND place > 0");
    exec("UPDATE channel SET samples = 0 WHERE recording = 1");
    const Outcome whole = checkRecordings(bench.m_study);
    ASSERT_FALSE(whole);
    EXPECT_THAT(whole.error().message.english(),
                HasSubstr("it claims more rows than its size can hold"));
}

TEST(LongEvenRecordings, WeighEnoughToBeReadAgain)
{
    // 4.3 million rows at an even pace that say the same for ever compress to nothing.
    std::string text = "time_s,rotor_rpm\n";
    constexpr int kRows = 4'300'000;
    text.reserve(kRows * 11);
    for (int i = 0; i < kRows; ++i) {
        text += std::to_string(i);
        text += ",7\n";
    }
    TraceBench bench(text);
    const auto id = bench.import().recording;
    EXPECT_TRUE(checkRecordings(bench.m_study));
    EXPECT_EQ(taken(readChannel(bench.m_study, id, "rotor_rpm")).size(), std::size_t{kRows});
    EXPECT_LT(taken(recordings(bench.m_study)).front().bytes, kRows / 16);
}

} // namespace
} // namespace bothways::storage
