// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/archive.h"

#include <zip.h>

#include <array>
#include <utility>

namespace bothways::storage {

using core::Error;
using core::ErrorCode;
using core::Result;

void Archive::Close::operator()(zip* archive) const
{
    zip_discard(archive);
}

Archive::Archive(std::unique_ptr<zip, Close> archive, std::string name)
    : m_archive(std::move(archive)), m_name(std::move(name))
{
}

core::Message needsPassword()
{
    return "is protected by a password; expected a workbook saved without one"_t;
}

Error Archive::fault(core::Message message) const
{
    return Error{ErrorCode::badInput, std::move(message), m_name};
}

Result<Archive> Archive::open(std::string_view bytes, std::string name)
{
    zip_error_t problem;
    zip_error_init(&problem);
    zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &problem);
    zip_t* opened = source ? zip_open_from_source(source, ZIP_RDONLY, &problem) : nullptr;
    zip_error_fini(&problem);
    if (!opened) {
        if (source)
            zip_source_free(source);
        return Error{ErrorCode::badInput,
                     "is a damaged or unfinished workbook; expected .xlsx, .ods, or text with "
                     "columns"_t,
                     std::move(name)};
    }
    return Archive(std::unique_ptr<zip, Close>(opened), std::move(name));
}

bool Archive::has(const std::string& part) const
{
    return zip_name_locate(m_archive.get(), part.c_str(), 0) >= 0;
}

Result<std::string> Archive::read(const std::string& part)
{
    const auto damaged = [&] {
        return fault(core::message("is damaged: its part '{}' cannot be unpacked"_t, part));
    };
    zip_stat_t about;
    zip_stat_init(&about);
    if (zip_stat(m_archive.get(), part.c_str(), 0, &about) != 0)
        return fault(
            core::message("is no workbook that we know: its part '{}' is missing"_t, part));
    if ((about.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && about.encryption_method != ZIP_EM_NONE)
        return fault(needsPassword());
    const std::unique_ptr<zip_file_t, int (*)(zip_file_t*)> file(
        zip_fopen_index(m_archive.get(), about.index, 0), zip_fclose);
    if (!file)
        return damaged();
    std::string text;
    std::array<char, std::size_t{1} << 16> buffer;
    for (;;) {
        const zip_int64_t count = zip_fread(file.get(), buffer.data(), buffer.size());
        if (count < 0)
            return damaged();
        if (count == 0)
            return text;
        m_unpacked += static_cast<std::size_t>(count);
        if (m_unpacked > kMostUnpacked)
            return fault(core::message("unpacks to more than {} MB; expected a run sheet"_t,
                                       kMostUnpacked >> 20));
        text.append(buffer.data(), static_cast<std::size_t>(count));
    }
}

} // namespace bothways::storage
