// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/result.h"

namespace bothways::core {

std::string describe(const Error& error)
{
    std::string text = error.where.empty() ? error.message : error.where + ": " + error.message;
    for (const Error& other : error.others)
        text += '\n' + describe(other);
    return text;
}

} // namespace bothways::core
