// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

// What is long is hard to hold in one's head. Above these sizes a reason stands beside it:
// "// Long: why", anywhere in a file, or in the lines just above a function.
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kMostLinesOfAFile = 400;
constexpr std::size_t kMostLinesOfAFunction = 60;
const std::string kReason = "// Long: ";

using Lines = std::vector<std::string>;

Lines linesOf(const fs::path& file)
{
    Lines lines;
    std::ifstream stream(file);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

bool hasReason(const Lines& lines, std::size_t begin, std::size_t end)
{
    for (std::size_t i = begin; i < end; ++i)
        if (const std::size_t at = lines[i].find(kReason);
            at != std::string::npos && lines[i].size() > at + kReason.size() + 10)
            return true;
    return false;
}

/// The first line of the declaration that the brace in line `brace` opens, comments aside.
std::size_t startOfDeclaration(const Lines& lines, std::size_t brace)
{
    std::size_t start = brace;
    while (start > 0 && !lines[start - 1].empty() && lines[start - 1].front() != '}' &&
           lines[start - 1].front() != '#' && !lines[start - 1].starts_with("//"))
        --start;
    return start;
}

std::size_t startOfComment(const Lines& lines, std::size_t declaration)
{
    std::size_t start = declaration;
    while (start > 0 && lines[start - 1].starts_with("//"))
        --start;
    return start;
}

/// Functions in our layout: their braces stand in the first column.
std::string tooLongFunctions(const std::string& name, const Lines& lines)
{
    std::string found;
    std::size_t brace = lines.size();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines[i] == "{")
            brace = i;
        if (lines[i] != "}" || brace == lines.size())
            continue;
        const std::size_t start = startOfDeclaration(lines, brace);
        if (i - start + 1 > kMostLinesOfAFunction &&
            !hasReason(lines, startOfComment(lines, start), start))
            found += name + ":" + std::to_string(start + 1) + ": " + std::to_string(i - start + 1) +
                     " lines; split it, or say '// Long: why'\n";
        brace = lines.size();
    }
    return found;
}

std::string tooLongFile(const std::string& name, const Lines& lines)
{
    if (lines.size() <= kMostLinesOfAFile || hasReason(lines, 0, lines.size()))
        return {};
    return name + ": " + std::to_string(lines.size()) + " lines; split it, or say '// Long: why'\n";
}

} // namespace

TEST(Sizes, NoFileAndNoFunctionIsLongWithoutAReason)
{
    const fs::path sources = BOTHWAYS_SOURCE_DIR;
    std::string found;
    int files = 0;
    for (const char* part : {"app", "core", "storage", "tests", "sample_data"})
        for (const fs::directory_entry& entry : fs::recursive_directory_iterator(sources / part)) {
            const fs::path& file = entry.path();
            if (file.extension() != ".h" && file.extension() != ".cpp")
                continue;
            ++files;
            const Lines lines = linesOf(file);
            const std::string name = fs::relative(file, sources).string();
            found += tooLongFile(name, lines) + tooLongFunctions(name, lines);
        }
    EXPECT_GT(files, 300) << "the sources were not found";
    EXPECT_EQ(found, "");
}

TEST(Sizes, TheMeasureSeesWhatIsTooLong)
{
    Lines lines{"int f()", "{"};
    lines.resize(70, "    ++i;");
    lines.push_back("}");
    EXPECT_NE(tooLongFunctions("f.cpp", lines), "");
    lines.insert(lines.begin(), "// Long: one case after the other, as in the standard");
    EXPECT_EQ(tooLongFunctions("f.cpp", lines), "");
    lines.front() = "// Long: ";
    EXPECT_NE(tooLongFunctions("f.cpp", lines), "") << "a reason has words";
    EXPECT_NE(tooLongFile("f.cpp", Lines(401, ";")), "");
    EXPECT_EQ(tooLongFile("f.cpp", Lines(400, ";")), "");
}
