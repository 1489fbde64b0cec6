// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/workbook.h"

#include <string>

namespace bothways::storage {
namespace {

/// A name in the directory of an OLE container, which has it in UTF-16.
bool hasStream(std::string_view bytes, std::string_view name)
{
    std::string wide;
    for (const char c : name) {
        wide += c;
        wide += '\0';
    }
    return bytes.find(wide) != std::string_view::npos;
}

} // namespace

bool isArchive(std::string_view bytes)
{
    return bytes.starts_with("PK\x03\x04") || bytes.starts_with("PK\x05\x06");
}

std::optional<core::Message> whyNoSpreadsheet(std::string_view bytes)
{
    using namespace std::string_view_literals;
    if (bytes.starts_with("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"sv)) {
        if (hasStream(bytes, "EncryptedPackage") || hasStream(bytes, "EncryptionInfo"))
            return needsPassword();
        return "is a file of an old office program (.xls); expected .xlsx, .ods, or text with "
               "columns"_t;
    }
    for (const std::string_view picture :
         {"\x89PNG"sv, "\xFF\xD8\xFF"sv, "GIF87a"sv, "GIF89a"sv, "II*\0"sv, "MM\0*"sv})
        if (bytes.starts_with(picture))
            return "is a picture; expected .xlsx, .ods, or text with columns"_t;
    const bool riff = bytes.starts_with("RIFF") && bytes.substr(0, 12).ends_with("WEBP");
    const bool bitmap = bytes.starts_with("BM") && bytes.substr(0, 14).find('\0') != bytes.npos;
    const bool heif = bytes.size() > 12 && bytes.substr(4, 4) == "ftyp";
    if (riff || bitmap || heif)
        return "is a picture; expected .xlsx, .ods, or text with columns"_t;
    if (bytes.starts_with("%PDF"))
        return "is a PDF; expected .xlsx, .ods, or text with columns"_t;
    return std::nullopt;
}

core::Result<std::vector<Table>> readWorkbook(std::string_view bytes, const std::string& name)
{
    auto opened = Archive::open(bytes, name);
    if (!opened)
        return opened.error();
    Archive archive = std::move(opened).take();
    if (archive.has("content.xml"))
        return readOds(archive);
    if (archive.has("xl/workbook.bin"))
        return archive.fault("is a binary workbook (.xlsb); expected .xlsx, .ods, or text with "
                             "columns"_t);
    if (archive.has("[Content_Types].xml") && archive.has("_rels/.rels"))
        return readXlsx(archive);
    return archive.fault("is an archive but no workbook; expected .xlsx, .ods, or text with "
                         "columns"_t);
}

} // namespace bothways::storage
