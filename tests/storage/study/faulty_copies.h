// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <utility>

namespace bothways::tests {

/// A study that is copied anew for each fault of a disk, and the place of what survives it.
class FaultyCopies {
public:
    explicit FaultyCopies(std::filesystem::path folder) : m_folder(std::move(folder)) {}
    [[nodiscard]] std::filesystem::path original() const { return m_folder / "original.bothways"; }
    void freshCopy() const
    {
        for (const auto& one : {study().parent_path(), survivor().parent_path()}) {
            std::filesystem::remove_all(one);
            std::filesystem::create_directory(one);
        }
        std::filesystem::copy_file(original(), study());
    }
    [[nodiscard]] std::filesystem::path study() const { return m_folder / "work" / "day.bothways"; }
    [[nodiscard]] std::filesystem::path survivor() const
    {
        return m_folder / "after" / "day.bothways";
    }

private:
    std::filesystem::path m_folder;
};

} // namespace bothways::tests
