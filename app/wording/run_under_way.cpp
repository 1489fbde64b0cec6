// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/run_under_way.h"

namespace bothways::app::wording {

core::Message noRunUnderWay()
{
    return "no run is under way; start one first"_t;
}

core::Message noRunToDiscard()
{
    return "there is no run to discard"_t;
}

core::Message wasNoRun()
{
    return "that was no run; what was recorded stays"_t;
}

} // namespace bothways::app::wording
