// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/sha256_instructions.h"

#include "storage/bytes/sha256_rounds.h"

#include <cassert>

#if defined(__x86_64__)
#include <cpuid.h>
#include <immintrin.h>
#endif

namespace bothways::storage {

#if defined(__x86_64__)

bool hasSha256Instructions()
{
    static const bool has = [] {
        constexpr unsigned kSsse3 = 1U << 9, kSse41 = 1U << 19, kSha = 1U << 29;
        unsigned a = 0, b = 0, c = 0, d = 0;
        if (__get_cpuid(1, &a, &b, &c, &d) == 0 || (c & kSsse3) == 0 || (c & kSse41) == 0)
            return false;
        return __get_cpuid_count(7, 0, &a, &b, &c, &d) != 0 && (b & kSha) != 0;
    }();
    return has;
}

// The instructions hold the state as ABEF and CDGH and do two rounds at once (Intel, "SHA
// Extensions", 2013). Checked beside the plain rounds in the tests.
__attribute__((target("sha,sse4.1,ssse3"))) void
takeBlocksByInstructions(std::array<std::uint32_t, 8>& state, const unsigned char* bytes,
                         std::size_t blocks)
{
    const auto load = [](const void* from) {
        return _mm_loadu_si128(static_cast<const __m128i*>(from));
    };
    const __m128i bigEndian = _mm_set_epi64x(0x0c0d0e0f08090a0bLL, 0x0405060700010203LL);
    const __m128i cdab = _mm_shuffle_epi32(load(state.data()), 0xB1);
    const __m128i efgh = _mm_shuffle_epi32(load(state.data() + 4), 0x1B);
    __m128i abef = _mm_alignr_epi8(cdab, efgh, 8);
    __m128i cdgh = _mm_blend_epi16(efgh, cdab, 0xF0);
    for (; blocks > 0; --blocks, bytes += 64) {
        const __m128i abefBefore = abef;
        const __m128i cdghBefore = cdgh;
        __m128i w[4]; // four words each; the sixteen that the schedule looks back on
        for (std::size_t i = 0; i < 16; ++i) {
            __m128i& now = w[i % 4];
            if (i < 4) {
                now = _mm_shuffle_epi8(load(bytes + 16 * i), bigEndian);
            } else {
                const __m128i last = w[(i + 3) % 4];
                const __m128i sum = _mm_add_epi32(_mm_sha256msg1_epu32(now, w[(i + 1) % 4]),
                                                  _mm_alignr_epi8(last, w[(i + 2) % 4], 4));
                now = _mm_sha256msg2_epu32(sum, last);
            }
            const __m128i two = _mm_add_epi32(now, load(kSha256Rounds.data() + 4 * i));
            cdgh = _mm_sha256rnds2_epu32(cdgh, abef, two);
            abef = _mm_sha256rnds2_epu32(abef, cdgh, _mm_shuffle_epi32(two, 0x0E));
        }
        abef = _mm_add_epi32(abef, abefBefore);
        cdgh = _mm_add_epi32(cdgh, cdghBefore);
    }
    const __m128i feba = _mm_shuffle_epi32(abef, 0x1B);
    const __m128i dchg = _mm_shuffle_epi32(cdgh, 0xB1);
    auto* to = reinterpret_cast<__m128i*>(state.data());
    _mm_storeu_si128(to, _mm_blend_epi16(feba, dchg, 0xF0));
    _mm_storeu_si128(to + 1, _mm_alignr_epi8(dchg, feba, 8));
}

#else

bool hasSha256Instructions()
{
    return false;
}

void takeBlocksByInstructions(std::array<std::uint32_t, 8>&, const unsigned char*, std::size_t)
{
    assert(false);
}

#endif

} // namespace bothways::storage
