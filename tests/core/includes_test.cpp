// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <array>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

// Whole builds compile the files of a room as one, where a file may live on what another one
// includes; by itself, in `debug`, it then does not compile. So: what a file names of core, storage
// or wording, "core::formatDate", has to be declared in a header that it includes, or that one of
// these includes.
namespace {

namespace fs = std::filesystem;

struct Space {
    std::string_view name;   ///< as it stands before "::"
    std::string_view folder; ///< of its headers
};
constexpr std::array kSpaces = {Space{"core", "core/"}, Space{"storage", "storage/"},
                                Space{"wording", "app/wording/"}};

struct Source {
    std::vector<std::string> includes; ///< of ours
    std::vector<std::string> tokens;   ///< names, "::", other signs; no comment, no text in quotes
};
using Sources = std::map<std::string, Source>;

bool isNameSign(char c)
{
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

/// Where the comment or the quoted text that begins at `at` ends; `at` where there is none.
std::size_t afterWords(std::string_view text, std::size_t at)
{
    const auto upTo = [&](std::string_view end, std::size_t from) {
        const std::size_t found = text.find(end, from);
        return found == std::string_view::npos ? text.size() : found + end.size();
    };
    if (text.substr(at, 2) == "//")
        return upTo("\n", at);
    if (text.substr(at, 2) == "/*")
        return upTo("*/", at + 2);
    if (text.substr(at, 2) == "R\"") {
        const std::size_t open = text.find('(', at);
        return upTo(")" + std::string(text.substr(at + 2, open - at - 2)) + "\"", open);
    }
    if (text[at] != '"')
        return at;
    for (++at; at < text.size() && text[at] != '"' && text[at] != '\n'; ++at)
        if (text[at] == '\\')
            ++at;
    return at + 1;
}

Source sourceOf(std::string_view text)
{
    Source source;
    for (std::size_t at = 0; at < text.size();) {
        constexpr std::string_view include = "#include \"";
        if (text.substr(at, include.size()) == include) {
            const std::size_t begin = at + include.size();
            at = text.find('"', begin);
            source.includes.emplace_back(text.substr(begin, at - begin));
            ++at;
        } else if (const std::size_t after = afterWords(text, at); after != at) {
            at = after;
        } else if (isNameSign(text[at])) {
            const std::size_t begin = at;
            while (at < text.size() && isNameSign(text[at]))
                ++at;
            source.tokens.emplace_back(text.substr(begin, at - begin));
        } else if (text.substr(at, 2) == "::") {
            source.tokens.emplace_back("::");
            at += 2;
        } else {
            if (std::isspace(static_cast<unsigned char>(text[at])) == 0)
                source.tokens.emplace_back(1, text[at]);
            ++at;
        }
    }
    return source;
}

/// Names that a header declares, as far as one sees from the sign behind or the word before.
std::set<std::string> declaredIn(const Source& header)
{
    static const std::set<std::string> before = {"class", "struct", "enum", "using", "concept"};
    static const std::set<std::string> behind = {"(", "=", "{", "["};
    std::set<std::string> names;
    for (std::size_t i = 0; i + 1 < header.tokens.size(); ++i)
        if (behind.contains(header.tokens[i + 1]) ||
            (i > 0 && before.contains(header.tokens[i - 1])))
            names.insert(header.tokens[i]);
    return names;
}

void reach(const Sources& all, const std::string& file, std::set<std::string>& reached)
{
    const auto found = all.find(file);
    if (found == all.end() || !reached.insert(file).second)
        return;
    for (const std::string& next : found->second.includes)
        reach(all, next, reached);
}

/// "app/cli/x.cpp: core::formatDate is declared in core/study/clock.h, which it does not include",
/// a line each.
std::string notIncluded(const Sources& all)
{
    std::map<std::pair<std::string, std::string>, std::set<std::string>> headers;
    for (const auto& [file, source] : all)
        for (const Space& space : kSpaces)
            if (file.starts_with(space.folder) && file.ends_with(".h"))
                for (const std::string& name : declaredIn(source))
                    headers[{std::string(space.name), name}].insert(file);
    std::string found;
    for (const auto& [file, source] : all) {
        std::set<std::string> reached;
        reach(all, file, reached);
        std::set<std::string> said;
        for (std::size_t i = 0; i + 2 < source.tokens.size(); ++i) {
            if (source.tokens[i + 1] != "::")
                continue;
            const std::string& name = source.tokens[i + 2];
            const auto known = headers.find({source.tokens[i], name});
            if (name == "operator" || known == headers.end() || !said.insert(name).second)
                continue;
            bool has = false;
            for (const std::string& header : known->second)
                has = has || reached.contains(header);
            if (!has)
                found += file + ": " + source.tokens[i] + "::" + name + " is declared in " +
                         *known->second.begin() + ", which it does not include\n";
        }
    }
    return found;
}

Sources allSources()
{
    Sources all;
    const fs::path root = BOTHWAYS_SOURCE_DIR;
    for (const char* part : {"core", "storage", "app", "tests"})
        for (const fs::directory_entry& entry : fs::recursive_directory_iterator(root / part)) {
            const fs::path& path = entry.path();
            if (!entry.is_regular_file() ||
                (path.extension() != ".h" && path.extension() != ".cpp"))
                continue;
            std::ostringstream text;
            text << std::ifstream(path).rdbuf();
            all[fs::relative(path, root).string()] = sourceOf(text.str());
        }
    return all;
}

TEST(Includes, ANameWhoseHeaderIsMissingIsFound)
{
    Sources all;
    all["core/a.h"] = sourceOf("namespace core { int counted(int); struct Kept { int n; }; }");
    all["core/b.h"] = sourceOf("#include \"core/a.h\"\n");
    all["app/good.cpp"] =
        sourceOf("#include \"core/b.h\"\nint x = core::counted(1); core::Kept k;");
    EXPECT_EQ(notIncluded(all), "");
    all["app/bad.cpp"] = sourceOf("// core::Kept\nconst char* t = \"core::Kept\";\n"
                                  "int x = core::counted(1);");
    EXPECT_EQ(notIncluded(all),
              "app/bad.cpp: core::counted is declared in core/a.h, which it does not include\n");
}

TEST(Includes, EveryFileHasThoseOfTheNamesThatItUses)
{
    const Sources all = allSources();
    ASSERT_GT(all.size(), 800U);
    EXPECT_EQ(notIncluded(all), "");
}

} // namespace
