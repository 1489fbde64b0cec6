// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <memory>
#include <string>

namespace bothways::storage {

/// Says to other programs on this computer that we write a file. The note (program, process, since
/// when) lies in the user's runtime folder under the kernel's lock, so that it ends with the
/// process, however that ends, and leaves neither the study nor its folder touched.
///
/// It serves to name the holder and to refuse early. What keeps the file whole is SQLite's own
/// locking, which also covers other users and other computers.
class Hold {
public:
    /// Waits half a second at most. An Error (studyFile) names the holder. Null where no note can
    /// be kept (no folder for it): not an error.
    static core::Result<std::shared_ptr<Hold>> take(const std::filesystem::path& file,
                                                    const std::string& since);
    ~Hold();
    Hold(const Hold&) = delete;
    Hold& operator=(const Hold&) = delete;

private:
    Hold(int descriptor, std::filesystem::path note);
    int m_descriptor;
    std::filesystem::path m_note;
};

} // namespace bothways::storage
