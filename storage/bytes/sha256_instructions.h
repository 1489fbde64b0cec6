// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

/// SHA-256 by the processor's own instructions, where it has them: several times as fast, and the
/// seal, the recordings' sums and a sheet's digest are little else.
namespace bothways::storage {

/// False on a processor without them, and where we know none.
[[nodiscard]] bool hasSha256Instructions();
/// Takes `blocks` of 64 bytes into the state. Only where there are the instructions.
void takeBlocksByInstructions(std::array<std::uint32_t, 8>& state, const unsigned char* bytes,
                              std::size_t blocks);

} // namespace bothways::storage
