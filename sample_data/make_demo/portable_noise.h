// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace bothways::demo {

/// Random numbers that are the same on every machine: integer arithmetic, sums and products only,
/// so that neither a standard library's distributions nor its exp() has a say.
class PortableNoise {
public:
    explicit PortableNoise(std::uint64_t seed) : m_state(seed) {}

    /// Source: G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators",
    /// OOPSLA 2014 (SplitMix64; constants as in S. Vigna's public-domain C version).
    std::uint64_t bits()
    {
        m_state += 0x9e3779b97f4a7c15ULL;
        std::uint64_t z = m_state;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31);
    }
    /// In [0, 1).
    double uniform() { return static_cast<double>(bits() >> 11) * 0x1p-53; }
    /// In [low, high).
    double uniform(double low, double high) { return low + (high - low) * uniform(); }
    /// Mean 0, standard deviation 1: twelve uniforms less six. Its tails end at 6, which no sheet
    /// of forty runs can tell from a normal's.
    double bell()
    {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i)
            sum += uniform();
        return sum;
    }

private:
    std::uint64_t m_state;
};

} // namespace bothways::demo
