// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/large_pages.h"

#include <sys/mman.h>

#include <cstdint>

namespace bothways::storage {

void reserveInLargePages(std::vector<double>& values, std::size_t count)
{
    values.reserve(count);
#ifdef MADV_HUGEPAGE
    constexpr std::uintptr_t kPage = std::uintptr_t{1} << 21;
    constexpr std::uintptr_t kWorthIt = 2 * kPage;
    const auto begin = reinterpret_cast<std::uintptr_t>(values.data());
    const std::uintptr_t end = begin + values.capacity() * sizeof(double);
    if (end - begin < kWorthIt)
        return;
    // Whole pages alone: what shares a page with others stays as it is. Refusal is no loss.
    const std::uintptr_t first = (begin + kPage - 1) / kPage * kPage;
    const std::uintptr_t last = end / kPage * kPage;
    if (first < last)
        (void)::madvise(reinterpret_cast<void*>(first), last - first, MADV_HUGEPAGE);
#endif
}

} // namespace bothways::storage
