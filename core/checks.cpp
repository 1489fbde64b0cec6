// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks.h"

namespace bothways::core {

Checks checksOf(const Study&, const PreparedStudy&, const Headline&, const AnalysisOptions&)
{
    return {};
}

} // namespace bothways::core
