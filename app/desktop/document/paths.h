// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFile>
#include <QString>

#include <filesystem>

/// File names between Qt and the standard library, in the file system's own encoding.
namespace bothways::app {

[[nodiscard]] inline std::filesystem::path toPath(const QString& file)
{
    return QFile::encodeName(file).toStdString();
}

[[nodiscard]] inline QString fromPath(const std::filesystem::path& file)
{
    return QFile::decodeName(QByteArray::fromStdString(file.string()));
}

} // namespace bothways::app
