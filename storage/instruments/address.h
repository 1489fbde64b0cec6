// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

/// Where an instrument is.
namespace bothways::storage {

struct Address {
    enum class Kind { serial, tcp, udp, file };
    enum class Parity { none, even, odd };
    Kind kind = Kind::file;
    std::string path; ///< of a serial port or a file
    int baud = 0;
    Parity parity = Parity::none;
    int stop_bits = 1;
    std::string host; ///< of UDP: what is listened on, "*" for all
    std::uint16_t port = 0;
};

/// "serial:/dev/ttyUSB0,115200" (",8E1" behind it where the device wants parity),
/// "tcp:192.168.1.7:2000", "udp:*:2000", "file:PATH".
[[nodiscard]] core::Result<Address> parseAddress(std::string_view text);
/// The same address from wherever it is read later: the path of a file or a port that is relative
/// is one in `folder`.
[[nodiscard]] std::string withWholePath(std::string_view address,
                                        const std::filesystem::path& folder);

} // namespace bothways::storage
