// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <optional>

#include <sys/types.h>

namespace bothways::storage {

/// "bothways-desktop (process 4711, since 2026-05-09T05:40:00Z)", as the system tells; nothing
/// where it does not, as of processes of another computer or container.
[[nodiscard]] std::optional<core::Message> nameOfProcess(pid_t process);

/// The process that has an open file description lock on the file behind our descriptor. The system
/// shows it of processes of one's own.
[[nodiscard]] std::optional<core::Message> nameOfHolder(int descriptor);

} // namespace bothways::storage
