// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions.h"

namespace bothways::core {

Companions companionsOf(const PreparedStudy&, const Headline&, const AnalysisOptions&)
{
    return {};
}

} // namespace bothways::core
