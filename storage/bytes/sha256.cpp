// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/sha256.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <system_error>

namespace bothways::storage {
namespace {

// FIPS 180-4, section 4.2.2: the first 32 bits of the fractional parts of the cube roots of the
// first 64 primes. (Checked by the standard's vectors in the tests.)
constexpr std::array<std::uint32_t, 64> kRound = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

std::uint32_t word(const unsigned char* bytes)
{
    return std::uint32_t{bytes[0]} << 24 | std::uint32_t{bytes[1]} << 16 |
           std::uint32_t{bytes[2]} << 8 | std::uint32_t{bytes[3]};
}

} // namespace

/// FIPS 180-4, section 6.2.2.
void Sha256::takeBlock(const unsigned char* block)
{
    std::array<std::uint32_t, 64> w{};
    for (std::size_t t = 0; t < 16; ++t)
        w[t] = word(block + 4 * t);
    for (std::size_t t = 16; t < 64; ++t) {
        const std::uint32_t s0 =
            std::rotr(w[t - 15], 7) ^ std::rotr(w[t - 15], 18) ^ (w[t - 15] >> 3);
        const std::uint32_t s1 =
            std::rotr(w[t - 2], 17) ^ std::rotr(w[t - 2], 19) ^ (w[t - 2] >> 10);
        w[t] = w[t - 16] + s0 + w[t - 7] + s1;
    }
    auto [a, b, c, d, e, f, g, h] = m_state;
    for (std::size_t t = 0; t < 64; ++t) {
        const std::uint32_t sum1 = std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25);
        const std::uint32_t t1 = h + sum1 + ((e & f) ^ (~e & g)) + kRound[t] + w[t];
        const std::uint32_t sum0 = std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22);
        const std::uint32_t t2 = sum0 + ((a & b) ^ (a & c) ^ (b & c));
        h = g;
        g = f;
        f = e;
        e = d + t1;
        d = c;
        c = b;
        b = a;
        a = t1 + t2;
    }
    const std::array<std::uint32_t, 8> added = {a, b, c, d, e, f, g, h};
    for (std::size_t i = 0; i < added.size(); ++i)
        m_state[i] += added[i];
}

void Sha256::add(std::string_view bytes)
{
    m_bytes += bytes.size();
    while (!bytes.empty()) {
        const std::size_t count = std::min(bytes.size(), m_block.size() - m_filled);
        std::memcpy(m_block.data() + m_filled, bytes.data(), count);
        bytes.remove_prefix(count);
        m_filled += count;
        if (m_filled == m_block.size()) {
            takeBlock(m_block.data());
            m_filled = 0;
        }
    }
}

std::string Sha256::hex()
{
    const std::uint64_t bits = m_bytes * 8;
    add(std::string_view("\x80", 1));
    while (m_filled != 56)
        add(std::string_view("\0", 1));
    std::array<char, 8> length{};
    for (std::size_t i = 0; i < length.size(); ++i)
        length[i] = static_cast<char>(bits >> (56 - 8 * i) & 0xFFU);
    add(std::string_view(length.data(), length.size()));
    std::string text;
    for (const std::uint32_t part : m_state)
        text += fmt::format("{:08x}", part);
    return text;
}

std::string sha256(std::string_view bytes)
{
    Sha256 hash;
    hash.add(bytes);
    return hash.hex();
}

core::Result<std::string> sha256OfFile(const std::filesystem::path& file)
{
    const auto bad = [&] {
        return core::Error{core::ErrorCode::badInput,
                           core::message("cannot be read: {}"_t, core::systemProblem(errno)),
                           file.string()};
    };
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> stream(
        std::fopen(file.c_str(), "rb"), [](std::FILE* f) { return std::fclose(f); });
    if (!stream)
        return bad();
    Sha256 hash;
    char buffer[1 << 16];
    while (const std::size_t count = std::fread(buffer, 1, sizeof buffer, stream.get()))
        hash.add(std::string_view(buffer, count));
    if (std::ferror(stream.get()))
        return bad();
    return hash.hex();
}

} // namespace bothways::storage
