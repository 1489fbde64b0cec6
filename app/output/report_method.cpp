// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_model.h"

/// The method in a page, the same in every report.
namespace bothways::app::report {
namespace {

Paragraph formula(std::string text)
{
    return {std::move(text), Tone::formula};
}

std::vector<Part> pairsAndModel(const Language& in)
{
    return {
        Heading{2, in.say("The method in a page"_t)},
        Paragraph{in.say(
            "A <b>run</b> is one pass over the stretch in one direction; a <b>block</b> is the "
            "consecutive runs in one configuration; a <b>pair</b> is one out and one return "
            "run of the same block, so that slope and a steady wind cancel. Runs are matched "
            "one to one: as many pairs as possible, then the smallest sum of time gaps."_t)},
        Paragraph{in.say(
            "Value of a pair, from consumptions <i>c</i> and distances <i>d</i> (equal weights "
            "unless both distances are known):"_t)},
        formula("m = ln( (c<sub>1</sub>d<sub>1</sub> + c<sub>2</sub>d<sub>2</sub>) / "
                "(d<sub>1</sub> + d<sub>2</sub>) )"),
        Paragraph{in.say(
            "Least squares over the <i>n</i> pairs, with <i>x</i> = 1 for the device and 0 for "
            "the baseline, <i>t</i> the time of the pair:"_t)},
        formula(in.say("m = μ + δ·x + β·(t − t<sub>mean</sub>) + ε, df = n − 3"_t)),
        Paragraph{in.say(
            "The term in <i>t</i> takes out a straight drift of the day (warming, wind, "
            "traffic). With one switch only (an open design) it cannot be told from the effect "
            "and is left out: df = n − 2, and the verdict says so. With several days each has "
            "its own intercept and, where any day has two switches, its own slope, and there is "
            "one δ."_t)},
        formula(in.say(
            "s² = RSS/df, se(δ) = s·√v, v = [(X<sup>T</sup>X)<sup>−1</sup>]<sub>δδ</sub>"_t)),
        formula(in.say("interval: δ ± t(1 − α/2, df)·se(δ)"_t)),
        Paragraph{in.say("In per cent: 100·(exp(δ) − 1). Below zero: the device used less."_t)},
    };
}

std::vector<Part> verdictAndCompanions(const Language& in)
{
    return {
        Heading{3, in.say("The verdict"_t)},
        Paragraph{in.say(
            "<b>less</b>: the whole interval is below zero. <b>more</b>: the whole interval is "
            "above zero. <b>equivalent</b>: zero is inside, and the interval at confidence "
            "1 − 2α lies between ln(1 − M/100) and ln(1 + M/100), with M the margin in per cent "
            "(two one-sided tests, Schuirmann 1987). <b>undecided</b>: anything else; these "
            "runs cannot tell. <b>none</b>: the runs allow no verdict, and the report says what "
            "is missing."_t)},
        Paragraph{
            in.say("Effect that such a day finds 80 times in 100: the smallest |δ| for which the "
                   "non-central t with ncp = δ/(s·√v) leaves ±t(1 − α/2, df) that often."_t)},
        Heading{3, in.say("Companions"_t)},
        Paragraph{in.say(
            "<b>bracket</b>: each device block against the straight line between its "
            "neighbouring baseline blocks. <b>runs</b>: all counted runs singly, with a term "
            "for the direction. <b>blocks</b>: the model on block means; the only one that "
            "stays honest when something besides the device changes at each switch. "
            "<b>correlated</b>: an interval that keeps its coverage when successive pairs "
            "resemble each other. <b>curved</b>: the model with a bend in the drift. "
            "<b>any_look</b>"
            ": "
            "an interval that holds however often one has looked (a Bayes factor of δ/σ ~ "
            "N(0, 4) is kept below 1/α). <b>borrowed</b>: with the noise of named earlier days. "
            "<b>days</b>: an effect a day. <b>labels</b>: the labels dealt again over the pairs, "
            "p alone; exact only if pairs are exchangeable when there is no effect. The verdict "
            "is called fragile when bracket, runs, blocks or curved leaves its estimate out or "
            "says another direction, or when the labels clearly disagree."_t)},
    };
}

std::vector<Part> checksAndCautions(const Language& in)
{
    return {
        Heading{3, in.say("Checks"_t)},
        Paragraph{in.say(
            "Shapiro–Wilk (Royston 1995), externally studentised residual with Bonferroni, "
            "Durbin–Watson (exact), a squared term in time, the spread of either configuration "
            "(Goldfeld–Quandt 1965), last baseline block against the first, out minus return over "
            "time and between the configurations, the first pair of each block, one effect against "
            "one a day, the step of the display against the noise, and moist-air density "
            "(CIPM-2007; Picard et al. 2008). A check fails at p &lt; 0.01 and is noted at "
            "p &lt; 0.05."_t)},
        Heading{3, in.say("Which runs count"_t)},
        Paragraph{in.say(
            "A run counts unless a person discarded it, with a reason. Rules name runs that "
            "cannot be used and say what they saw; they discard nothing themselves. Each pair "
            "is left out once, and each discarded run put back once, so that nobody can choose "
            "the result by choosing the runs."_t)},
        Heading{3, in.say("What this is not"_t)},
        Paragraph{in.say(
            "Not a certification procedure. It says what these runs show about this vehicle on "
            "this stretch on these days."_t)},
    };
}

} // namespace

std::vector<Part> methodParts(const Language& in)
{
    std::vector<Part> parts = pairsAndModel(in);
    for (auto more : {verdictAndCompanions(in), checksAndCautions(in)})
        parts.insert(parts.end(), more.begin(), more.end());
    return parts;
}

} // namespace bothways::app::report
