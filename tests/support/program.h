// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <utility>
#include <vector>

/// For tests that run a built program whole.
namespace bothways::tests {

/// A folder of its own, gone with the object.
class TempFolder {
public:
    TempFolder();
    ~TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }
    [[nodiscard]] std::string operator/(const std::string& name) const
    {
        return (m_path / name).string();
    }
    /// Writes a file and gives its path.
    std::string write(const std::string& name, const std::string& text) const;

private:
    std::filesystem::path m_path;
};

[[nodiscard]] std::string readFile(const std::filesystem::path& file);

struct Ran {
    int code = -1; ///< exit code; 128 + signal where one ended it
    std::string out, err;
};

using Environment = std::vector<std::pair<std::string, std::string>>;

/// Runs a program to its end, without a shell; `environment` is added to ours, whose language is
/// left out: without one in `environment` it is English.
[[nodiscard]] Ran run(const std::string& program, const std::vector<std::string>& arguments,
                      const Environment& environment = {});

/// The same of a program's main(), in a child of this process: nothing has to be loaded, which
/// under the sanitizers takes longer than most of what is asked of it.
[[nodiscard]] Ran runMain(const std::function<int(int, char**)>& entry,
                          const std::vector<std::string>& arguments,
                          const Environment& environment = {});

} // namespace bothways::tests
