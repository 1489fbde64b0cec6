// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/program.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>
#include <stdexcept>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace bothways::tests {
namespace {

/// What the child sees in place of our streams and environment.
void surround(const char* out, const char* err, const Environment& environment)
{
    constexpr int kFlags = O_WRONLY | O_CREAT | O_TRUNC;
    dup2(open("/dev/null", O_RDONLY), STDIN_FILENO);
    dup2(open(out, kFlags, 0600), STDOUT_FILENO);
    dup2(open(err, kFlags, 0600), STDERR_FILENO);
    for (const auto& [name, value] : environment)
        setenv(name.c_str(), value.c_str(), 1);
}

/// English whatever this machine speaks; a test that names a language has just what it names.
Environment withoutOurLanguage(const Environment& asked)
{
    constexpr std::array<const char*, 3> kLanguage{"LC_ALL", "LC_MESSAGES", "LANG"};
    const bool named = std::any_of(asked.begin(), asked.end(), [&](const auto& variable) {
        return std::find(kLanguage.begin(), kLanguage.end(), variable.first) != kLanguage.end();
    });
    Environment environment;
    for (const char* variable : kLanguage)
        environment.emplace_back(variable, "");
    if (!named)
        environment.front().second = "C";
    environment.insert(environment.end(), asked.begin(), asked.end());
    return environment;
}

} // namespace

TempFolder::TempFolder()
{
    std::string form = (std::filesystem::temp_directory_path() / "bothways_XXXXXX").string();
    if (mkdtemp(form.data()) == nullptr)
        throw std::runtime_error("no temporary folder");
    m_path = form;
}

TempFolder::~TempFolder()
{
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

std::string TempFolder::write(const std::string& name, const std::string& text) const
{
    std::ofstream(m_path / name, std::ios::binary) << text;
    return *this / name;
}

std::string readFile(const std::filesystem::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        throw std::runtime_error("cannot read " + file.string());
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

namespace {

/// `work` with the words as main() has them, in a child; it gives the exit code, if it returns.
Ran runChild(std::vector<std::string> words, const Environment& asked,
             const std::function<int(int, char**)>& work)
{
    const Environment environment = withoutOurLanguage(asked);
    const TempFolder folder;
    const std::string out = folder / "out", err = folder / "err";
    std::vector<char*> pointers;
    for (std::string& word : words)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    std::fflush(nullptr); // what is in our buffers is not the child's to write
    const pid_t child = fork();
    if (child < 0)
        throw std::runtime_error("cannot fork");
    if (child == 0) {
        surround(out.c_str(), err.c_str(), environment);
        const int code = work(static_cast<int>(words.size()), pointers.data());
        std::cout.flush();
        std::cerr.flush();
        std::fflush(nullptr);
        _exit(code);
    }
    int status = 0;
    while (waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    Ran ran;
    ran.code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    ran.out = readFile(out);
    ran.err = readFile(err);
    return ran;
}

std::vector<std::string> withName(const std::string& program, std::vector<std::string> arguments)
{
    arguments.insert(arguments.begin(), program);
    return arguments;
}

} // namespace

Ran run(const std::string& program, const std::vector<std::string>& arguments,
        const Environment& environment)
{
    return runChild(withName(program, arguments), environment, [&](int, char** words) {
        execv(program.c_str(), words);
        return 127;
    });
}

Ran runMain(const std::function<int(int, char**)>& entry, const std::vector<std::string>& arguments,
            const Environment& environment)
{
    return runChild(withName("bothways", arguments), environment, entry);
}

} // namespace bothways::tests
