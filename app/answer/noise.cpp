// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/noise.h"

#include <utility>

namespace bothways::app {

core::Result<NoiseOfStudy> noiseOf(std::string name, const core::Analysis& analysis,
                                   std::string_view file, bool mayBeTyped)
{
    if (!analysis.headline)
        return core::Error{core::ErrorCode::badInput,
                           mayBeTyped ? "there is no verdict in it, so the noise of a pair is not "
                                        "known; give it with --noise"_t
                                      : "there is no verdict in it, so the noise of a pair is not "
                                        "known; name a study that has one"_t,
                           std::string(file)};
    return NoiseOfStudy{std::move(name), {analysis.headline->s, analysis.headline->df}};
}

core::Noise pooledNoiseOf(const std::vector<NoiseOfStudy>& noises)
{
    std::vector<core::Noise> each;
    for (const NoiseOfStudy& study : noises)
        each.push_back(study.noise);
    return core::pooledNoise(each);
}

} // namespace bothways::app
