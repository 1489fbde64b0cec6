// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

// What is long is hard to hold in one's head. Above these sizes a reason stands beside it,
// "// Long: why": of a file in the comment that it begins with, of a function just above it.
// Neither excuses the other.
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

std::string_view withoutIndent(std::string_view line)
{
    line.remove_prefix(std::min(line.find_first_not_of(' '), line.size()));
    return line;
}

/// Whether a declaration cannot go on from this line into the next one.
bool endsBefore(std::string_view line)
{
    line = withoutIndent(line);
    return line.empty() || line.front() == '}' || line.front() == '#' || line.starts_with("//") ||
           line.back() == ';' || line.back() == '{' || line.back() == ':';
}

/// The first line of the declaration that the brace in line `brace` opens, comments aside.
std::size_t startOfDeclaration(const Lines& lines, std::size_t brace)
{
    std::size_t start = brace;
    while (start > 0 && !endsBefore(lines[start - 1]))
        --start;
    return start;
}

std::size_t startOfComment(const Lines& lines, std::size_t declaration)
{
    std::size_t start = declaration;
    while (start > 0 && withoutIndent(lines[start - 1]).starts_with("//"))
        --start;
    return start;
}

/// Functions in our layout: a brace alone in its line, in the first column or within a class, and
/// its fellow below it. What stands within a function is part of it.
std::string tooLongFunctions(const std::string& name, const Lines& lines)
{
    std::string found;
    std::size_t brace = lines.size();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (brace == lines.size() && withoutIndent(lines[i]) == "{")
            brace = i;
        if (brace == lines.size() || withoutIndent(lines[i]) != "}" ||
            lines[i].size() != lines[brace].size())
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
    std::size_t head = 0;
    while (head < lines.size() && (lines[head].empty() || lines[head].starts_with("//")))
        ++head;
    if (lines.size() <= kMostLinesOfAFile || hasReason(lines, 0, head))
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
    Lines inAClass{"class F {", "public:", "    int f()", "    {"};
    inAClass.resize(50, "        ++i;");
    inAClass.insert(inAClass.end(), {"        {", "        }"});
    inAClass.resize(80, "        ++i;");
    inAClass.insert(inAClass.end(), {"    }", "};"});
    EXPECT_EQ(tooLongFunctions("f.cpp", inAClass).find("f.cpp:3: 79 lines"), 0U);
    inAClass.insert(inAClass.begin() + 2,
                    "    // Long: one case after the other, as in the standard");
    EXPECT_EQ(tooLongFunctions("f.cpp", inAClass), "");
    inAClass.resize(500, ";");
    EXPECT_NE(tooLongFile("f.cpp", inAClass), "") << "a function's reason is none of its file";
    inAClass.insert(inAClass.begin(), "// Long: one case after the other, as in the standard");
    EXPECT_EQ(tooLongFile("f.cpp", inAClass), "");
    EXPECT_EQ(tooLongFile("f.cpp", Lines(400, ";")), "");
}
