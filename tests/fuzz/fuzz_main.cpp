// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// One libFuzzer program for each reader: BOTHWAYS_FUZZ_TARGET names it.

#include "tests/fuzz/targets.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    for (const auto& target : bothways::tests::fuzzTargets()) {
        if (target.name != BOTHWAYS_FUZZ_TARGET)
            continue;
        const auto fault = target.feed({reinterpret_cast<const char*>(bytes), size});
        if (!fault.empty()) {
            std::fprintf(stderr, "%.*s\n", static_cast<int>(fault.size()), fault.data());
            std::abort();
        }
    }
    return 0;
}
