// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

struct zip;

/// The parts of a workbook: a zip archive in memory, unpacked as far as is bearable.
namespace bothways::storage {

class Archive {
public:
    /// Of all parts that are read, once unpacked; whatever the archive says of itself.
    static constexpr std::size_t kMostUnpacked = std::size_t{128} << 20;

    /// @param bytes  outlive the archive
    /// @param name   of the file, for messages
    static core::Result<Archive> open(std::string_view bytes, std::string name);

    [[nodiscard]] bool has(const std::string& part) const;
    /// An Error where it is not there, is damaged, has a password, or is too much.
    [[nodiscard]] core::Result<std::string> read(const std::string& part);
    [[nodiscard]] const std::string& name() const { return m_name; }
    [[nodiscard]] core::Error fault(core::Message message) const;

private:
    struct Close {
        void operator()(zip* archive) const;
    };
    Archive(std::unique_ptr<zip, Close> archive, std::string name);

    std::unique_ptr<zip, Close> m_archive;
    std::string m_name;
    std::size_t m_unpacked = 0;
};

/// What is said of a workbook that only a password opens.
[[nodiscard]] core::Message needsPassword();

} // namespace bothways::storage
