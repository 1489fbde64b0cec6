// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

/// What both programs answer to an order about the run under way.
namespace bothways::app::wording {

[[nodiscard]] core::Message noRunUnderWay();
[[nodiscard]] core::Message noRunToDiscard();
/// One that was begun by what is recorded, and is none.
[[nodiscard]] core::Message wasNoRun();

} // namespace bothways::app::wording
