// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/row_hash.h"

#include <array>
#include <bit>

namespace bothways::storage {
namespace {

std::array<char, 8> bytesOfWord(std::uint64_t word)
{
    std::array<char, 8> bytes{};
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<char>(word >> (8 * i) & 0xFFU);
    return bytes;
}

void addBits(Sha256& hash, char type, std::uint64_t bits)
{
    const auto bytes = bytesOfWord(bits);
    addValue(hash, type, std::string_view(bytes.data(), bytes.size()));
}

} // namespace

void addValue(Sha256& hash, char type, std::string_view value)
{
    const auto length = bytesOfWord(value.size());
    std::array<char, 1 + 8> head{};
    head[0] = type;
    std::copy(length.begin(), length.end(), head.begin() + 1);
    hash.add(std::string_view(head.data(), head.size()));
    hash.add(value);
}

void addWord(Sha256& hash, std::uint64_t word)
{
    const auto bytes = bytesOfWord(word);
    hash.add(std::string_view(bytes.data(), bytes.size()));
}

void addRow(Sha256& hash, const Query& row)
{
    for (int i = 0; i < row.columns(); ++i) {
        if (row.isInteger(i))
            addBits(hash, 'i', static_cast<std::uint64_t>(row.integer(i)));
        else if (row.isReal(i))
            addBits(hash, 'f', std::bit_cast<std::uint64_t>(row.real(i)));
        else if (row.isNull(i))
            addValue(hash, 'n', {});
        else
            addValue(hash, 't', row.bytes(i));
    }
}

} // namespace bothways::storage
