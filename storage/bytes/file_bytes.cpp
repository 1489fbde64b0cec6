// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/file_bytes.h"

#include <cerrno>
#include <cstdio>
#include <memory>
#include <system_error>

namespace bothways::storage {

core::Result<std::string> readWholeFile(const std::filesystem::path& file, std::uintmax_t most,
                                        core::Text<0> expected)
{
    const auto bad = [&](core::Message why) {
        return core::Error{core::ErrorCode::badInput, std::move(why), file.string()};
    };
    std::error_code problem;
    const auto status = std::filesystem::status(file, problem);
    if (!std::filesystem::exists(status))
        return bad(core::message("there is no such file; expected {}"_t, expected));
    if (std::filesystem::is_directory(status))
        return bad(core::message("is a directory; expected {}"_t, expected));

    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> stream(
        std::fopen(file.c_str(), "rb"), [](std::FILE* f) { return std::fclose(f); });
    if (!stream)
        return bad(core::message("cannot be read: {}"_t, core::systemProblem(errno)));
    std::string bytes;
    char buffer[1 << 16];
    while (const std::size_t count = std::fread(buffer, 1, sizeof buffer, stream.get())) {
        if (bytes.size() + count > most)
            return bad(core::message("is larger than {} MB; expected {}"_t, most >> 20, expected));
        bytes.append(buffer, count);
    }
    if (std::ferror(stream.get()))
        return bad(core::message("cannot be read: {}"_t, core::systemProblem(errno)));
    return bytes;
}

} // namespace bothways::storage
