// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/file_bytes.h"

#include "storage/sheet/run_sheet.h"
#include "storage/study/study_file.h"
#include "tests/support/read_sheet.h"

#include <gmock/gmock.h>

#include <cstring>
#include <filesystem>
#include <fstream>
#include <string>
#include <thread>

#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

using namespace bothways;
namespace fs = std::filesystem;
using storage::readWholeFile;
using storage::Streams;
using testing::HasSubstr;

namespace {

class FileBytes : public testing::Test {
protected:
    void SetUp() override
    {
        std::string form = (fs::temp_directory_path() / "bothways_bytes_XXXXXX").string();
        ASSERT_NE(mkdtemp(form.data()), nullptr);
        m_folder = form;
        ASSERT_EQ(mkfifo(at("pipe").c_str(), 0600), 0);
    }
    void TearDown() override { fs::remove_all(m_folder); }
    [[nodiscard]] fs::path at(const std::string& name) const { return m_folder / name; }

    static std::string faultOf(const fs::path& file, Streams streams = Streams::refused)
    {
        const auto read = readWholeFile(file, 1 << 20, "a run sheet"_t, streams);
        return read ? "" : read.error().message.english();
    }

private:
    fs::path m_folder;
};

TEST_F(FileBytes, AreNotWaitedForAtAPipeASocketOrADevice)
{
    const int listener = socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    std::strncpy(address.sun_path, at("socket").c_str(), sizeof address.sun_path - 1);
    ASSERT_EQ(bind(listener, reinterpret_cast<sockaddr*>(&address), sizeof address), 0);
    EXPECT_EQ(faultOf(at("pipe")), "is a pipe; expected a run sheet");
    EXPECT_EQ(faultOf(at("socket")), "is a socket; expected a run sheet");
    EXPECT_EQ(faultOf("/dev/zero"), "is a device; expected a run sheet");
    EXPECT_EQ(faultOf(at("")), "is a directory; expected a run sheet");
    EXPECT_EQ(faultOf(at("none")), "there is no such file; expected a run sheet");
    close(listener);
}

TEST_F(FileBytes, OfAStudyAreNotWaitedForEither)
{
    fs::rename(at("pipe"), at("day.bothways"));
    const auto study = storage::StudyFile::open(at("day.bothways"), true);
    ASSERT_FALSE(study);
    EXPECT_THAT(study.error().message.english(), HasSubstr("is a pipe"));
    fs::rename(at("day.bothways"), at("pipe"));
    EXPECT_FALSE(storage::StudyFile::isStudyFile(at("pipe")));
    EXPECT_FALSE(tests::readRunSheet(at("pipe")));
}

TEST_F(FileBytes, ComeFromAPipeUpToItsEndAndNoFurtherThanTheBound)
{
    const auto pour = [this](std::size_t size) {
        std::ofstream(at("pipe")) << std::string(size, 'x');
    };
    std::thread writer([&] { pour(300'000); });
    const auto read = readWholeFile(at("pipe"), 1 << 20, "a run sheet"_t, Streams::taken);
    writer.join();
    ASSERT_TRUE(read);
    EXPECT_EQ(read.value(), std::string(300'000, 'x'));
    EXPECT_EQ(faultOf("/dev/zero", Streams::taken), "is larger than 1 MB; expected a run sheet");
}

TEST_F(FileBytes, HaveNamesForWhatWasHandedToUs)
{
    EXPECT_EQ(storage::handedFile("/dev/stdin"), 0);
    EXPECT_EQ(storage::handedFile("/dev/fd/63"), 63);
    EXPECT_EQ(storage::handedFile("/proc/self/fd/1"), 1);
    EXPECT_EQ(storage::handedFile("/dev/../dev/stdout"), 1);
    for (const char* other : {"/dev/fd/", "/dev/fd/1x", "/dev/fd/-1", "/dev/stdinx", "stdin", ""})
        EXPECT_EQ(storage::handedFile(other), std::nullopt) << other;
}

} // namespace
