// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "storage/bytes/file_bytes.h"
#include "storage/instruments/address.h"

/// Opening a serial port, and why it does not open.
namespace bothways::storage {

struct OpenedSerial {
    FileHandle port; ///< raw, not waiting, and ours alone; none: `why` says it
    core::Message why;
};
[[nodiscard]] OpenedSerial openSerial(const Address& address);

/// Why it would not open, without opening it for long; empty: it would.
[[nodiscard]] core::Message serialTrouble(const Address& address);

/// Makes it ours alone, as far as others ask. @return  false: it is somebody else's
[[nodiscard]] bool lockSerial(int port);

/// Why the system refuses a file: no such file, no permission (with the group to join), or its own
/// word.
[[nodiscard]] core::Message openProblem(const std::string& path, int problem);

} // namespace bothways::storage
