// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/binomial.h"

#include <boost/math/special_functions/beta.hpp>

#include <cassert>

namespace bothways::core {

ShareInterval clopperPearson(int hits, int trials, double confidence)
{
    assert(trials >= 1 && hits >= 0 && hits <= trials);
    assert(confidence > 0.0 && confidence < 1.0);
    using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    const double tail = (1.0 - confidence) / 2.0;
    const double misses = static_cast<double>(trials - hits);
    ShareInterval interval;
    if (hits > 0)
        interval.low =
            boost::math::ibeta_inv(static_cast<double>(hits), misses + 1.0, tail, Policy());
    if (hits < trials)
        interval.high =
            boost::math::ibetac_inv(static_cast<double>(hits) + 1.0, misses, tail, Policy());
    return interval;
}

} // namespace bothways::core
