// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

/// SHA-256 (FIPS 180-4): says that a file is the one that an answer was computed from. None of our
/// libraries offers it outside Qt. Checked: tests/storage/bytes/sha256_test.cpp, the standard's
/// vectors, by the processor's own instructions and by plain rounds.
namespace bothways::storage {

/// Takes bytes piece by piece.
class Sha256 {
public:
    enum class By { fastest, plainRounds };
    explicit Sha256(By by = By::fastest);
    void add(std::string_view bytes);
    /// 64 hexadecimal digits in small letters. The object is spent after it.
    [[nodiscard]] std::string hex();

private:
    static constexpr std::size_t kBlock = 64;
    void takeBlocks(const unsigned char* bytes, std::size_t blocks);

    std::array<std::uint32_t, 8> m_state = {0x6a09e667U, 0xbb67ae85U, 0x3c6ef372U, 0xa54ff53aU,
                                            0x510e527fU, 0x9b05688cU, 0x1f83d9abU, 0x5be0cd19U};
    std::array<unsigned char, kBlock> m_block{};
    std::size_t m_filled = 0;
    std::uint64_t m_bytes = 0;
    bool m_byInstructions = false;
};

[[nodiscard]] std::string sha256(std::string_view bytes);

/// Of a file's bytes, however long it is.
[[nodiscard]] core::Result<std::string> sha256OfFile(const std::filesystem::path& file);

} // namespace bothways::storage
