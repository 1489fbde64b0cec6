// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/pooled.h"

#include "app/wording/numbers.h"
#include "app/wording/verdict.h"
#include "core/study/units.h"

namespace bothways::app::wording {
namespace {

/// "1.2 % less (95 % interval: 0.8 to 1.6 % less; p = 0.003)"
template <class Effect>
std::string effectWords(const Language& in, const Effect& effect, double confidence)
{
    const double low = core::pctFromLog(effect.low_log);
    const double high = core::pctFromLog(effect.high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return in.say(
        "{} ({} interval: {}; {})"_t, change(in, core::pctFromLog(effect.effect_log), decimals),
        intervalPercent(in, confidence), changeRange(in, low, high, decimals), pText(in, effect.p));
}

std::string agreementSentence(const Language& in, const core::Agreement& agreement)
{
    const std::string numbers = in.say(
        "({} = {}, {})"_t, "F", significant(in, agreement.statistic, 3), pText(in, agreement.p));
    switch (agreement.state) {
    case core::CheckState::holds: return in.say("The studies agree with that {}."_t, numbers);
    case core::CheckState::note:
        return in.say("The studies perhaps do not agree on one effect {}."_t, numbers);
    case core::CheckState::fails:
        return in.say("The studies do not agree on one effect {}: read each for itself."_t,
                      numbers);
    case core::CheckState::notComputed: break;
    }
    return {};
}

std::string commonSentence(const Language& in, const core::Pooled& pooled, double confidence)
{
    if (!pooled.common)
        return {};
    const std::string one = in.say("One effect for all studies, if the device did the same to "
                                   "each: {}."_t,
                                   effectWords(in, *pooled.common, confidence));
    const std::string agreement = agreementSentence(in, pooled.agreement);
    return agreement.empty() ? one : in.say("{} {}##two sentences"_t, one, agreement);
}

} // namespace

std::string pooledSentence(const Language& in, const std::optional<core::Pooled>& pooled,
                           double confidence)
{
    if (!pooled)
        return in.say("Nothing to pool: it takes two studies with an effect."_t);
    const double low = core::pctFromLog(pooled->low_log);
    const double high = core::pctFromLog(pooled->high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    const std::string common = commonSentence(in, *pooled, confidence);
    if (!common.empty() && core::commonLeads(*pooled))
        return in.say("{} {}##two sentences"_t, common,
                      in.say("The mean, if each has an effect of its own: {}."_t,
                             effectWords(in, *pooled, confidence)));
    const std::string mean = in.say(
        "Pooled, if they ask the same question: {} ({} interval: {}; {})."_t,
        change(in, core::pctFromLog(pooled->effect_log), decimals), intervalPercent(in, confidence),
        changeRange(in, low, high, decimals), pText(in, pooled->p));
    return common.empty() ? mean : in.say("{} {}##two sentences"_t, mean, common);
}

std::string pooledVerdict(const Language& in, const std::optional<core::Pooled>& pooled,
                          double confidence, double margin_pct)
{
    if (!pooled)
        return {};
    return in.say("Together they say: {} (margin {} %)."_t,
                  classWords(in, core::classOfPooled(*pooled, confidence, margin_pct)),
                  shortest(in, margin_pct));
}

std::string commonEffectName(const Language& in)
{
    return in.say("one effect for all"_t);
}

std::string meanEffectName(const Language& in, const core::Pooled& pooled)
{
    return in.say(pooled.common ? "mean of their effects"_t : "together"_t);
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
