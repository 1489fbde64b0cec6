// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/numbers.h"
#include "app/wording/verdict.h"

// What weakens a verdict, a sentence each. Read one after another they are one paragraph.
namespace bothways::app::wording {
namespace {

using core::Analysis;
using core::VerdictClass;

constexpr std::size_t kPairsNamed = 4; // more would be a list, not a sentence

std::string fragileBy(const Language& in, core::Companion companion, const Analysis& analysis)
{
    const core::Companions& others = analysis.companions;
    const std::string name = companionName(in, companion);
    const auto says = [&](const std::optional<core::Interval>& interval, bool several) {
        if (!interval)
            return name;
        const double effect = analysis.headline ? analysis.headline->effect_log : 0.0;
        if (effect >= interval->low_log && effect <= interval->high_log)
            return in.say("{} ({})"_t, name, classWords(in, interval->cls));
        return in.say(several ? "{} (their interval leaves the estimate out)"_t
                              : "{} (its interval leaves the estimate out)"_t,
                      name);
    };
    switch (companion) {
    case core::Companion::bracket: return says(others.bracket, false);
    case core::Companion::runs: return says(others.runs, true);
    case core::Companion::blocks: return says(others.blocks, true);
    case core::Companion::curved: return says(others.curved, false);
    case core::Companion::labels:
        return others.labels ? in.say("{} ({})"_t, name, pText(in, others.labels->p)) : name;
    case core::Companion::correlated:
    case core::Companion::anyLook:
    case core::Companion::borrowed:
    case core::Companion::days: break; // never make it fragile
    }
    return name;
}

std::string fragile(const Language& in, const Analysis& analysis)
{
    std::vector<std::string> parts;
    for (const core::Companion companion : analysis.verdict.fragile_by)
        parts.push_back(fragileBy(in, companion, analysis));
    return in.say("Fragile: another honest way to the same number disagrees: {}."_t,
                  joined(in, parts));
}

std::string sensitive(const Language& in, const Analysis& analysis)
{
    std::vector<std::string> pairs;
    if (analysis.leave_one_out)
        for (const core::LeaveOneOutTurn& turn : analysis.leave_one_out->turns)
            if (turn.effect_log && turn.cls != analysis.verdict.cls)
                pairs.push_back(in.say("{} ({})"_t, turn.pair, classWords(in, turn.cls)));
    if (pairs.empty())
        return in.say("Sensitive: leaving out a single pair changes the verdict."_t);
    if (pairs.size() > kPairsNamed)
        return in.say("Sensitive: leaving out a single pair changes the verdict for {} of the {} "
                      "pairs."_t,
                      pairs.size(), analysis.pairs.size());
    return in.say("Sensitive: the verdict hangs on single pairs. It changes when pair {} is left "
                  "out."_t,
                  anyOf(in, pairs));
}

std::string needsIndependence(const Language& in, const Analysis& analysis)
{
    const auto& correlated = analysis.companions.correlated;
    if (!correlated || correlated->cls == VerdictClass::undecided)
        return in.say("It holds if each pair's error is its own; if neighbours resemble each "
                      "other, these runs cannot tell."_t);
    return in.say("It holds if each pair's error is its own; if neighbours resemble each other, "
                  "the verdict would be: {}."_t,
                  classWords(in, correlated->cls));
}

std::string looked(const Language& in, const Analysis& analysis)
{
    const auto& anyLook = analysis.companions.any_look;
    const int looks = analysis.verdict.looks;
    const std::string times =
        looks == 1 ? in.say("It was looked at once before, at fewer pairs: whoever may stop when "
                            "the answer suits is wrong more often than promised."_t)
                   : in.say("It was looked at {} times before, at fewer pairs: whoever may stop "
                            "when the answer suits is wrong more often than promised."_t,
                            grouped(in, looks));
    if (!anyLook)
        return in.say("{} {}##two sentences"_t, times,
                      in.say("An interval that allows for looking cannot be had from so few "
                             "pairs."_t));
    return in.say(
        "{} {}##two sentences"_t, times,
        in.say("The interval that allows for looking says: {}."_t, classWords(in, anyLook->cls)));
}

std::string failingChecks(const Language& in, const Analysis& analysis)
{
    std::vector<std::string> names;
    for (const CheckKind kind : kCheckKinds)
        if (kind != CheckKind::baseline && // no assumption
            stateOf(analysis.checks, kind) == core::CheckState::fails)
            names.push_back(in.say("{}: {}"_t, checkWord(in, kind), checkName(in, kind)));
    return joined(in, names);
}

} // namespace

std::string qualifierName(const Language& in, core::Qualifier qualifier)
{
    switch (qualifier) {
    case core::Qualifier::openDesign: return in.say("one switch only"_t);
    case core::Qualifier::fragile: return in.say("fragile"_t);
    case core::Qualifier::needsIndependence: return in.say("needs independent pairs"_t);
    case core::Qualifier::sensitive: return in.say("sensitive"_t);
    case core::Qualifier::assumptions: return in.say("assumption not met"_t);
    case core::Qualifier::smallerThanMargin: return in.say("smaller than the margin"_t);
    case core::Qualifier::looked: return in.say("looked at before"_t);
    case core::Qualifier::interim: return in.say("interim"_t);
    case core::Qualifier::planLate: return in.say("planned late"_t);
    }
    return {};
}

std::string qualifierSentence(const Language& in, core::Qualifier qualifier,
                              const Analysis& analysis)
{
    switch (qualifier) {
    case core::Qualifier::openDesign:
        return in.say("One switch only: whatever else changed over the day (wind, warmth, traffic) "
                      "cannot be told from the effect. Go back to the first configuration and "
                      "drive it again."_t);
    case core::Qualifier::fragile: return fragile(in, analysis);
    case core::Qualifier::needsIndependence: return needsIndependence(in, analysis);
    case core::Qualifier::sensitive: return sensitive(in, analysis);
    case core::Qualifier::assumptions:
        return in.say("An assumption is not met ({}): read that check before you trust the "
                      "interval."_t,
                      failingChecks(in, analysis));
    case core::Qualifier::smallerThanMargin:
        return in.say("There is an effect, but it is smaller than the {} % that you care about."_t,
                      shortest(in, analysis.verdict.margin_pct));
    case core::Qualifier::looked: return looked(in, analysis);
    case core::Qualifier::interim:
        return in.say("Interim: the plan is not driven to its end. Stopping at the first 'less' or "
                      "'more' gives some 15 % false alarms where 5 % are promised."_t);
    case core::Qualifier::planLate:
        return in.say(analysis.options.plan_record.after_look
                          ? "The plan was tied or changed after a look at the verdict: it does not "
                            "protect from stopping when the answer suits."_t
                          : "The plan was tied or changed when there were runs already: do not "
                            "report it as one that was made before."_t);
    }
    return {};
}

QualifierWords qualifierWords(const Language& in, const Analysis& analysis)
{
    QualifierWords words;
    for (const core::Qualifier qualifier : analysis.verdict.qualifiers)
        (words.first.size() < kQualifiersShown ? words.first : words.more)
            .push_back(qualifierSentence(in, qualifier, analysis));
    return words;
}

} // namespace bothways::app::wording
