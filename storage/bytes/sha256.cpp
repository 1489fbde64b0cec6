// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/sha256.h"

#include "storage/bytes/sha256_instructions.h"
#include "storage/bytes/sha256_rounds.h"

#include <algorithm>
#include <bit>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <system_error>

namespace bothways::storage {
namespace {

std::uint32_t word(const unsigned char* bytes)
{
    return std::uint32_t{bytes[0]} << 24 | std::uint32_t{bytes[1]} << 16 |
           std::uint32_t{bytes[2]} << 8 | std::uint32_t{bytes[3]};
}

/// FIPS 180-4, section 6.2.2.
void takeBlock(std::array<std::uint32_t, 8>& state, const unsigned char* block)
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
    auto [a, b, c, d, e, f, g, h] = state;
    for (std::size_t t = 0; t < 64; ++t) {
        const std::uint32_t sum1 = std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25);
        const std::uint32_t t1 = h + sum1 + ((e & f) ^ (~e & g)) + kSha256Rounds[t] + w[t];
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
        state[i] += added[i];
}

} // namespace

Sha256::Sha256(By by) : m_byInstructions(by == By::fastest && hasSha256Instructions()) {}

void Sha256::takeBlocks(const unsigned char* bytes, std::size_t blocks)
{
    if (m_byInstructions) {
        takeBlocksByInstructions(m_state, bytes, blocks);
        return;
    }
    for (; blocks > 0; --blocks, bytes += kBlock)
        takeBlock(m_state, bytes);
}

void Sha256::add(std::string_view bytes)
{
    if (bytes.empty())
        return; // whose data may be null, which memcpy() may not be given
    m_bytes += bytes.size();
    if (m_filled > 0) {
        const std::size_t count = std::min(bytes.size(), kBlock - m_filled);
        std::memcpy(m_block.data() + m_filled, bytes.data(), count);
        bytes.remove_prefix(count);
        m_filled += count;
        if (m_filled < kBlock)
            return;
        takeBlocks(m_block.data(), 1);
        m_filled = 0;
    }
    const std::size_t whole = bytes.size() / kBlock;
    takeBlocks(reinterpret_cast<const unsigned char*>(bytes.data()), whole);
    bytes.remove_prefix(whole * kBlock);
    if (!bytes.empty())
        std::memcpy(m_block.data(), bytes.data(), bytes.size());
    m_filled = bytes.size();
}

std::string Sha256::hex()
{
    constexpr std::string_view kDigits = "0123456789abcdef";
    constexpr std::size_t kLength = 8; // of the length, at the end of the last block
    const std::uint64_t bits = m_bytes * 8;
    std::array<char, 2 * kBlock> end{'\x80'};
    const std::size_t rest = m_filled + 1 + kLength;
    const std::size_t size = (rest <= kBlock ? kBlock : 2 * kBlock) - m_filled;
    for (std::size_t i = 0; i < kLength; ++i)
        end.at(size - kLength + i) = static_cast<char>(bits >> (56 - 8 * i) & 0xFFU);
    add(std::string_view(end.data(), size));
    std::string text;
    for (const std::uint32_t part : m_state)
        for (int shift = 28; shift >= 0; shift -= 4)
            text += kDigits[part >> shift & 0xFU];
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
