// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/written_file.h"

#include "storage/study/study_file.h"
#include "tests/support/plain_disk.h"

#include <gmock/gmock.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <thread>
#include <vector>

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace bothways;
namespace fs = std::filesystem;
using storage::WriteRules;
using storage::writeWholeFile;
using testing::HasSubstr;

namespace {

class WrittenFiles : public testing::Test {
protected:
    void SetUp() override
    {
        std::string form = (fs::temp_directory_path() / "bothways_written_XXXXXX").string();
        ASSERT_NE(mkdtemp(form.data()), nullptr);
        m_folder = form;
    }
    void TearDown() override { fs::remove_all(m_folder); }

    [[nodiscard]] fs::path at(const std::string& name) const { return m_folder / name; }
    fs::path given(const std::string& name, const std::string& text) const
    {
        std::ofstream(at(name), std::ios::binary) << text;
        return at(name);
    }
    static std::string textOf(const fs::path& file)
    {
        std::ifstream stream(file, std::ios::binary);
        return {std::istreambuf_iterator<char>(stream), {}};
    }
    [[nodiscard]] std::size_t filesHere() const
    {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(m_folder), fs::directory_iterator()));
    }
    static std::string refusalOf(const fs::path& target, const WriteRules& rules = {})
    {
        const core::Outcome written = writeWholeFile(target, "new", rules);
        if (written)
            return {};
        EXPECT_EQ(written.error().code, core::ErrorCode::studyFile);
        return written.error().message.english();
    }
    static WriteRules replacing(std::vector<fs::path> inputs = {})
    {
        WriteRules rules;
        rules.replace = true;
        rules.inputs = std::move(inputs);
        return rules;
    }

    void expectTooLargeLeavesWhatWasThere() const
    {
        given("old.csv", "old");
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            std::signal(SIGXFSZ, SIG_IGN);
            const rlimit most{4096, 4096};
            setrlimit(RLIMIT_FSIZE, &most);
            const std::string text(100'000, 'x');
            const bool old = static_cast<bool>(writeWholeFile(at("old.csv"), text, replacing()));
            const bool fresh = static_cast<bool>(writeWholeFile(at("new.csv"), text));
            _exit(old || fresh ? 1 : 0);
        }
        int status = -1;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        EXPECT_EQ(status, 0) << "an error, no signal";
        EXPECT_EQ(textOf(at("old.csv")), "old");
        EXPECT_EQ(filesHere(), 1U);
    }

private:
    fs::path m_folder;
};

TEST_F(WrittenFiles, AreWholeAndLeaveNothingBesideThem)
{
    const std::string text(3'000'000, 'x');
    ASSERT_TRUE(writeWholeFile(at("a.csv"), text));
    EXPECT_EQ(textOf(at("a.csv")), text);
    ASSERT_TRUE(writeWholeFile(at("a.csv"), "short", replacing()));
    EXPECT_EQ(textOf(at("a.csv")), "short");
    EXPECT_EQ(filesHere(), 1U);
}

TEST_F(WrittenFiles, DoNotReplaceWhatIsThereUnlessToldTo)
{
    given("b.csv", "old");
    WriteRules rules;
    rules.howToReplace = "say so"_t;
    EXPECT_THAT(refusalOf(at("b.csv"), rules), HasSubstr("there is such a file already; say so"));
    EXPECT_EQ(textOf(at("b.csv")), "old");
    EXPECT_EQ(refusalOf(at("b.csv"), replacing()), "");
    EXPECT_EQ(textOf(at("b.csv")), "new");
    EXPECT_EQ(refusalOf(at("b.csv")), "") << "the very bytes are there already";
    EXPECT_EQ(filesHere(), 1U);
}

TEST_F(WrittenFiles, ReplaceAPageOfTheirOwnKindWithoutBeingTold)
{
    WriteRules rules;
    rules.ownMark = "<made by us>";
    given("ours.html", "<head><made by us>old");
    given("theirs.html", "<head>old, not <made by them>");
    given("late.html", std::string(5000, ' ') + "<made by us>");
    EXPECT_EQ(refusalOf(at("ours.html"), rules), "");
    EXPECT_EQ(textOf(at("ours.html")), "new");
    EXPECT_NE(refusalOf(at("theirs.html"), rules), "");
    EXPECT_NE(refusalOf(at("late.html"), rules), "") << "what stands in a text is no mark";
}

TEST_F(WrittenFiles, NeverReplaceAnInputByWhateverNameItHas)
{
    const fs::path input = given("in.csv", "input");
    fs::create_hard_link(input, at("hard.csv"));
    fs::create_directory_symlink(at("."), at("folder"));
    for (const fs::path& name : {input, at("hard.csv"), at("folder") / "in.csv"})
        EXPECT_THAT(refusalOf(name, replacing({input})), HasSubstr("what is being read")) << name;
    fs::create_symlink(input, at("soft.csv"));
    EXPECT_NE(refusalOf(input, replacing({at("soft.csv")})), "") << "read through a link";
    EXPECT_EQ(textOf(input), "input");
}

TEST_F(WrittenFiles, NeverReplaceWhatALinkLeadsTo)
{
    given("aim.csv", "aim");
    fs::create_symlink(at("aim.csv"), at("link.csv"));
    fs::create_symlink(at("nothing.csv"), at("dangling.csv"));
    for (const char* name : {"link.csv", "dangling.csv"})
        for (const WriteRules& rules : {WriteRules{}, replacing()}) {
            EXPECT_THAT(refusalOf(at(name), rules), HasSubstr("it is a link"));
            EXPECT_TRUE(fs::is_symlink(at(name)));
        }
    EXPECT_EQ(textOf(at("aim.csv")), "aim");
    EXPECT_FALSE(fs::exists(at("nothing.csv")));
}

TEST_F(WrittenFiles, NeverReplaceAStudyOrAPartOfOne)
{
    ASSERT_TRUE(storage::StudyFile::create(at("day.bothways"), {}));
    const std::string before = textOf(at("day.bothways"));
    fs::copy_file(at("day.bothways"), at("day.csv"));
    given("broken.bothways", "no study any more");
    for (const char* name : {"day.bothways", "day.csv", "broken.bothways"})
        EXPECT_THAT(refusalOf(at(name), replacing()), HasSubstr("it is a study")) << name;
    for (const char* name : {"day.bothways-journal", "day.bothways-wal", "day.csv-journal"})
        EXPECT_THAT(refusalOf(at(name), replacing()), HasSubstr("part of the study")) << name;
    EXPECT_EQ(textOf(at("day.bothways")), before);
    EXPECT_EQ(refusalOf(at("my-journal")), "") << "beside no study";
}

TEST_F(WrittenFiles, AreNoDirectoriesPipesOrFilesInFoldersThatAreNotThere)
{
    ASSERT_EQ(mkfifo(at("pipe").c_str(), 0600), 0);
    EXPECT_THAT(refusalOf(at("pipe"), replacing()), HasSubstr("no ordinary file"));
    EXPECT_THAT(refusalOf(at(""), replacing()), HasSubstr("directory"));
    EXPECT_THAT(refusalOf(at("none/a.csv")), HasSubstr("No such file or directory"));
    EXPECT_THAT(refusalOf(at(std::string(300, 'n'))), HasSubstr("too long"));
    EXPECT_EQ(filesHere(), 1U);
}

TEST_F(WrittenFiles, HaveThePermissionsOfTheMaskOrOfWhatTheyReplace)
{
    const auto permissions = [&](const char* name) {
        struct stat found {};
        EXPECT_EQ(stat(at(name).c_str(), &found), 0);
        return found.st_mode & 0777U;
    };
    const mode_t before = umask(027);
    ASSERT_TRUE(writeWholeFile(at("new.csv"), "text"));
    given("old.csv", "old");
    ASSERT_EQ(chmod(at("old.csv").c_str(), 0604), 0);
    ASSERT_TRUE(writeWholeFile(at("old.csv"), "text", replacing()));
    umask(before);
    EXPECT_EQ(permissions("new.csv"), 0640U);
    EXPECT_EQ(permissions("old.csv"), 0604U);
}

TEST_F(WrittenFiles, OfSeveralWritersTheLastWholeOneStands)
{
    const auto written = [&](const WriteRules& rules) {
        std::vector<std::thread> writers;
        std::vector<int> done(8);
        for (std::size_t i = 0; i < done.size(); ++i)
            writers.emplace_back([&, i] {
                const std::string text(400'000, static_cast<char>('a' + i));
                done[i] = writeWholeFile(at("same.csv"), text, rules) ? 1 : 0;
            });
        for (std::thread& writer : writers)
            writer.join();
        const std::string text = textOf(at("same.csv"));
        EXPECT_EQ(text.size(), 400'000U);
        EXPECT_EQ(text.find_first_not_of(text.front()), std::string::npos) << "none is mixed";
        EXPECT_EQ(filesHere(), 1U);
        return std::count(done.begin(), done.end(), 1);
    };
    EXPECT_EQ(written({}), 1) << "the others found a file that was there";
    fs::remove(at("same.csv"));
    for (int round = 0; round < 10; ++round)
        EXPECT_EQ(written(replacing()), 8);
}

TEST_F(WrittenFiles, ThatGrowTooLargeLeaveWhatWasThere)
{
    expectTooLargeLeavesWhatWasThere();
}

TEST_F(WrittenFiles, MayBePipesWhereThatIsWanted)
{
    const fs::path pipe = at("pipe");
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    std::string got;
    std::thread reader([&] { got = textOf(pipe); });
    WriteRules rules;
    rules.streams = storage::Streams::taken;
    EXPECT_TRUE(writeWholeFile(pipe, "through", rules));
    reader.join();
    EXPECT_EQ(got, "through");
    EXPECT_TRUE(fs::is_fifo(pipe));
    EXPECT_TRUE(writeWholeFile("/dev/null", "away", rules));
    const core::Outcome full = writeWholeFile("/dev/full", "away", rules);
    ASSERT_FALSE(full);
    EXPECT_THAT(full.error().message.english(), HasSubstr("No space left"));
}

TEST_F(WrittenFiles, OnAPlainDiskAreWholeAndLeaveNothingBesideThem)
{
    const tests::PlainDisk disk;
    const std::string text(3'000'000, 'x');
    ASSERT_TRUE(writeWholeFile(at("a.csv"), text));
    EXPECT_EQ(textOf(at("a.csv")), text);
    EXPECT_THAT(refusalOf(at("a.csv")), HasSubstr("there is such a file already"));
    EXPECT_EQ(textOf(at("a.csv")), text);
    ASSERT_TRUE(writeWholeFile(at("a.csv"), "short", replacing()));
    EXPECT_EQ(textOf(at("a.csv")), "short");
    EXPECT_EQ(filesHere(), 1U);
}

TEST_F(WrittenFiles, OnAPlainDiskThatIsFullLeaveWhatWasThere)
{
    const tests::PlainDisk disk;
    expectTooLargeLeavesWhatWasThere();
}

} // namespace
