// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/rigs.h"

#include "storage/instruments/folder_entries.h"

#include <algorithm>
#include <cstdlib>
#include <set>
#include <system_error>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kRigEnding = ".json";

bool namesAFile(std::string_view word)
{
    return word.find('/') != std::string_view::npos || word.ends_with(kRigEnding);
}

std::string rigsThere(const fs::path& folder)
{
    std::string list;
    for (const std::string& name : rigNames(folder))
        list += (list.empty() ? "" : ", ") + name;
    return list;
}

} // namespace

fs::path rigsFolder()
{
    const char* settings = std::getenv("XDG_CONFIG_HOME");
    const char* home = std::getenv("HOME");
    if (settings && *settings == '/') // what is not absolute is to be ignored
        return fs::path(settings) / "bothways" / "rigs";
    if (home && *home)
        return fs::path(home) / ".config" / "bothways" / "rigs";
    return {};
}

std::vector<std::string> rigNames(const fs::path& folder)
{
    std::vector<std::string> names;
    eachEntry(folder, [&](const fs::directory_entry& entry) {
        std::error_code problem;
        if (entry.path().extension() == kRigEnding && entry.is_regular_file(problem))
            names.push_back(entry.path().stem().string());
    });
    std::sort(names.begin(), names.end());
    return names;
}

core::Result<fs::path> rigFile(const fs::path& folder, std::string_view name)
{
    const bool wrong = name.empty() || name.front() == '.' || name.size() > 200 ||
                       std::any_of(name.begin(), name.end(), [](char c) {
                           return c == '/' || static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
                       });
    if (wrong)
        return core::Error{core::ErrorCode::wrongUse,
                           core::message("'{}' is no name for a rig; expected a name without '/' "
                                         "that does not begin with a point"_t,
                                         name),
                           {}};
    if (folder.empty())
        return core::Error{core::ErrorCode::badInput,
                           "there is no folder for settings; expected HOME to be set"_t,
                           {}};
    return folder / (std::string(name) + std::string(kRigEnding));
}

core::Result<fs::path> rigFileByWord(const fs::path& folder, std::string_view word)
{
    if (namesAFile(word))
        return fs::path(word);
    return rigFile(folder, word);
}

core::Result<Rig> rigByWord(const fs::path& folder, std::string_view word)
{
    const auto file = rigFileByWord(folder, word);
    if (!file)
        return file.error();
    std::error_code problem;
    if (namesAFile(word) || fs::exists(file.value(), problem))
        return readRig(file.value());
    const std::string known = rigsThere(folder);
    return core::Error{
        core::ErrorCode::wrongUse,
        known.empty()
            ? core::message(
                  "there is no rig '{}'; make one with: bothways rig new {} KIND:ADDRESS"_t, word,
                  word)
            : core::message("there is no rig '{}'; expected one of {}, or a file NAME.json"_t, word,
                            known),
        {}};
}

core::Outcome saveRig(const fs::path& file, const Rig& rig, bool replace)
{
    std::error_code problem;
    if (file.has_parent_path())
        fs::create_directories(file.parent_path(), problem);
    if (problem)
        return core::Error{
            core::ErrorCode::studyFile,
            core::message("this folder cannot be made: {}"_t, core::systemProblem(problem.value())),
            file.parent_path().string()};
    return writeRig(file, rig, replace);
}

std::vector<SerialPortName> serialPorts(const fs::path& devices)
{
    std::vector<SerialPortName> ports;
    std::set<fs::path> named;
    eachEntry(devices / "serial" / "by-id", [&](const fs::directory_entry& link) {
        std::error_code broken;
        const fs::path device = fs::canonical(link.path(), broken);
        if (!broken && named.insert(device).second)
            ports.push_back({link.path().string(), device.string()});
    });
    eachEntry(devices, [&](const fs::directory_entry& device) {
        const std::string name = device.path().filename().string();
        std::error_code broken;
        if ((name.starts_with("ttyUSB") || name.starts_with("ttyACM")) &&
            !named.contains(fs::canonical(device.path(), broken)))
            ports.push_back({device.path().string(), device.path().string()});
    });
    std::sort(ports.begin(), ports.end(),
              [](const auto& a, const auto& b) { return a.path < b.path; });
    return ports;
}

} // namespace bothways::storage
