// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <optional>

/// Decimal numbers as integers of value * 10^decimals. Where the integer is at most 2^53 and
/// decimals at most 22, both sides of the division integer / 10^decimals are exact doubles, so its
/// one rounding gives the double nearest to the decimal text (Clinger 1990, "How to read floating
/// point numbers accurately", the fast path).
namespace bothways::storage {

inline constexpr std::int64_t kMaxScaled = std::int64_t{1} << 53;

inline constexpr std::array<double, 23> kPowersOfTen = {
    1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
    1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

inline constexpr std::array<std::int64_t, 19> kIntegerPowersOfTen = [] {
    std::array<std::int64_t, 19> powers{};
    std::int64_t power = 1;
    for (auto& p : powers) {
        p = power;
        if (power < 1'000'000'000'000'000'000)
            power *= 10;
    }
    return powers;
}();

/// The integer that gives back exactly `value` at so many decimals; nothing where there is none
/// (minus zero, not a number, infinite, too many digits).
/// @param decimals  0 to 15
[[nodiscard]] inline std::optional<std::int64_t> scaledFrom(double value, int decimals)
{
    const double power = kPowersOfTen[static_cast<std::size_t>(decimals)];
    const double scaled = std::nearbyint(value * power);
    if (!(std::abs(scaled) <= static_cast<double>(kMaxScaled)))
        return std::nullopt;
    const auto integer = static_cast<std::int64_t>(scaled);
    if (std::bit_cast<std::uint64_t>(static_cast<double>(integer) / power) !=
        std::bit_cast<std::uint64_t>(value))
        return std::nullopt;
    return integer;
}

/// `scaled` with `more` further decimals; nothing where it would pass 2^53.
[[nodiscard]] inline std::optional<std::int64_t> withMoreDecimals(std::int64_t scaled, int more)
{
    std::int64_t result = 0;
    if (more > 18 ||
        __builtin_mul_overflow(scaled, kIntegerPowersOfTen[static_cast<std::size_t>(more)],
                               &result) ||
        result > kMaxScaled || result < -kMaxScaled)
        return std::nullopt;
    return result;
}

} // namespace bothways::storage
