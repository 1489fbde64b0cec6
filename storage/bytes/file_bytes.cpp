// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/file_bytes.h"

#include <fmt/format.h>

#include <cerrno>
#include <cstdio>
#include <memory>
#include <system_error>

namespace bothways::storage {

core::Result<std::string> readWholeFile(const std::filesystem::path& file, std::uintmax_t most,
                                        std::string_view expected)
{
    const auto bad = [&](std::string message) {
        return core::Error{core::ErrorCode::badInput, std::move(message), file.string()};
    };
    std::error_code problem;
    const auto status = std::filesystem::status(file, problem);
    if (!std::filesystem::exists(status))
        return bad(fmt::format("there is no such file; expected {}", expected));
    if (std::filesystem::is_directory(status))
        return bad(fmt::format("is a directory; expected {}", expected));

    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> stream(
        std::fopen(file.c_str(), "rb"), [](std::FILE* f) { return std::fclose(f); });
    if (!stream)
        return bad(fmt::format("cannot be read: {}", std::generic_category().message(errno)));
    std::string bytes;
    char buffer[1 << 16];
    while (const std::size_t count = std::fread(buffer, 1, sizeof buffer, stream.get())) {
        if (bytes.size() + count > most)
            return bad(fmt::format("is larger than {} MB; expected {}", most >> 20, expected));
        bytes.append(buffer, count);
    }
    if (std::ferror(stream.get()))
        return bad(fmt::format("cannot be read: {}", std::generic_category().message(errno)));
    return bytes;
}

} // namespace bothways::storage
