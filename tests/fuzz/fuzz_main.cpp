// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// One libFuzzer program for each reader: BOTHWAYS_FUZZ_TARGET names it. At its end it says how many
// bytes it fed to the reader.

#include "tests/fuzz/targets.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace {

struct Fed {
    unsigned long long bytes = 0, inputs = 0;
    ~Fed()
    {
        std::fprintf(stderr, "fed %s: %llu bytes in %llu inputs\n", BOTHWAYS_FUZZ_TARGET, bytes,
                     inputs);
    }
};

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    static Fed fed;
    fed.bytes += size;
    ++fed.inputs;
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
