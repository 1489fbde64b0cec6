// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/pooled.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

namespace bothways::app::wording {

std::string pooledSentence(const Language& in, const std::optional<core::Pooled>& pooled,
                           double confidence)
{
    if (!pooled)
        return in.say("Nothing to pool: it takes two studies with an effect."_t);
    const double low = core::pctFromLog(pooled->low_log);
    const double high = core::pctFromLog(pooled->high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return in.say("Pooled, if they ask the same question: {} ({} interval: {}; {})."_t,
                  change(in, core::pctFromLog(pooled->effect_log), decimals),
                  intervalPercent(in, confidence), changeRange(in, low, high, decimals),
                  pText(in, pooled->p));
}

std::string pooledCaution(const Language& in, const std::optional<core::Pooled>& pooled)
{
    if (!pooled)
        return {};
    return in.say("Between the studies the true effect scatters by {} % (I² = {} %). With few "
                  "studies neither is known well, and a study left in the drawer is in no "
                  "table."_t,
                  significant(in, 100.0 * pooled->tau), significant(in, 100.0 * pooled->i2));
}

} // namespace bothways::app::wording
