// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/study_digest.h"

#include "core/study/properties.h"
#include "storage/bytes/sha256.h"
#include "storage/sheet/run_sheet.h"

#include <fmt/format.h>

namespace bothways::storage {

std::string sha256OfStudy(const core::Study& study)
{
    Sha256 hash;
    for (const auto& [name, value] : core::propertiesAsText(study.properties))
        hash.add(fmt::format("{}={}:{}\n", name, value.size(), value));
    hash.add(writeRunSheet(study));
    return hash.hex();
}

} // namespace bothways::storage
