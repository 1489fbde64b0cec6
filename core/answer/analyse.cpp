// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/analyse.h"
#include "core/effect/answer.h"

#include "core/answer/sensitivity.h"
#include "core/checks/checks.h"
#include "core/companions/companions.h"
#include "core/effect/headline.h"
#include "core/effect/prepared_study.h"
#include "core/effect/verdict.h"
#include "core/planning/plan.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

/// The blocks as plannedDesign() reads them: "ABA", days parted by '/'.
std::string sequenceOf(const PreparedStudy& prepared)
{
    std::string sequence;
    int day = -1;
    for (const DesignBlock& block : prepared.design_blocks) {
        if (day >= 0 && block.day != day)
            sequence += '/';
        day = block.day;
        sequence += block.device ? 'B' : 'A';
    }
    return sequence;
}

/// How many pairs every block would need on top of what the smallest one has, for the plan to
/// detect the margin: 0 where the design at hand could show it, so that driving it once more is
/// worth while; empty where no total up to a thousand would do.
std::optional<int> morePairsPerBlock(const PreparedStudy& prepared, const Headline& headline,
                                     const Detectable& detectable, const AnalysisOptions& options)
{
    const double margin = logFromPct(options.margin_pct);
    if (detectable.log <= margin)
        return 0;
    std::size_t fewest = prepared.pairs.size();
    for (const DesignBlock& block : prepared.design_blocks)
        fewest = std::min(fewest, block.pairs.size());
    const int now = static_cast<int>(fewest);
    const auto needed = pairsPerBlockToDetect(sequenceOf(prepared), headline.s, margin,
                                              options.confidence, now + 1);
    return needed ? std::optional(*needed - now) : std::nullopt;
}

/// The plan of now, and each that stood at a look: a smaller one afterwards ends nothing.
bool isInterim(const Study& study, const PreparedStudy& prepared, const PlanRecord& record)
{
    const auto open = [&](const PlannedStudy& plan) {
        return !fulfils(plan, prepared.design_blocks);
    };
    return (study.properties.plan && open(*study.properties.plan)) ||
           std::ranges::any_of(record.looked_at, open);
}

/// Looks at fewer pairs than now.
int earlierLooks(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    const auto now = static_cast<int>(prepared.pairs.size());
    return static_cast<int>(
        std::ranges::count_if(options.looked_at_pairs, [now](int pairs) { return pairs < now; }));
}

/// In the order of method, section 6.
std::vector<Qualifier> qualifiersOf(const Study& study, const PreparedStudy& prepared,
                                    const Analysis& analysis)
{
    std::vector<Qualifier> qualifiers;
    const auto add = [&](bool applies, Qualifier qualifier) {
        if (applies)
            qualifiers.push_back(qualifier);
    };
    const Headline& headline = *analysis.headline;
    const VerdictClass cls = analysis.verdict.cls;
    add(analysis.design == Design::open, Qualifier::openDesign);
    add(!analysis.verdict.fragile_by.empty(), Qualifier::fragile);
    add(needsIndependence(cls, analysis.companions), Qualifier::needsIndependence);
    add(analysis.leave_one_out && analysis.leave_one_out->changes_class, Qualifier::sensitive);
    add(anyFails(analysis.checks), Qualifier::assumptions);
    add((cls == VerdictClass::less || cls == VerdictClass::more) &&
            insideMargins(headline.low_equivalence_log, headline.high_equivalence_log,
                          analysis.options.margin_pct),
        Qualifier::smallerThanMargin);
    const auto& anyLook = analysis.companions.any_look;
    add(analysis.verdict.looks > 0 && cls != VerdictClass::undecided &&
            (!anyLook || anyLook->cls != cls),
        Qualifier::looked);
    const PlanRecord& record = analysis.options.plan_record;
    add(isInterim(study, prepared, record), Qualifier::interim);
    add(record.after_runs || record.after_look, Qualifier::planLate);
    return qualifiers;
}

void describe(const Study& study, const PreparedStudy& prepared, Analysis& analysis)
{
    analysis.baseline = prepared.baseline;
    analysis.device = prepared.device;
    analysis.runs = static_cast<int>(study.runs.size());
    analysis.counted = prepared.counted;
    analysis.discarded = analysis.runs - analysis.counted;
    analysis.unpaired = prepared.unpaired;
    analysis.design = prepared.design;
    analysis.days = prepared.days;
    analysis.electric = prepared.electric;
    analysis.blocks = prepared.blocks;
    analysis.pairs = prepared.pairs;
    analysis.notes = prepared.notes;
}

void judge(const Study& study, const PreparedStudy& prepared, const HeadlineFit& fit,
           Analysis& analysis)
{
    const AnalysisOptions& options = analysis.options;
    analysis.headline = fit.headline;
    analysis.verdict.cls = fit.cls;
    analysis.companions = companionsOf(study, prepared, fit.headline, options);
    analysis.checks = checksOf(study, prepared, fit.headline, options);
    Detectable detectable;
    detectable.log = detectableEffect_log(fit.headline.s, fit.headline.sqrt_v, fit.headline.df,
                                          options.confidence, detectable.power);
    analysis.detectable = detectable;
    analysis.leave_one_out = leaveOneOut(prepared, fit, options);
    analysis.verdict.fragile_by = disagreeing(fit.headline, fit.cls, analysis.companions);
    analysis.verdict.qualifiers = qualifiersOf(study, prepared, analysis);
    if (options.claim_pct)
        analysis.verdict.claim = answerToClaim(*options.claim_pct, fit.headline);
    if (fit.cls == VerdictClass::undecided)
        analysis.verdict.more_pairs_per_block =
            morePairsPerBlock(prepared, fit.headline, detectable, options);
}

} // namespace

Analysis analyse(const Study& study, const AnalysisOptions& options)
{
    const PreparedStudy prepared = prepareStudy(study, options);
    const HeadlineOrReason answer = headlineOf(prepared, options);
    Analysis analysis;
    analysis.options = options;
    analysis.verdict.margin_pct = options.margin_pct;
    analysis.verdict.looks = earlierLooks(prepared, options);
    describe(study, prepared, analysis);
    const HeadlineFit* fit = std::get_if<HeadlineFit>(&answer);
    if (fit)
        judge(study, prepared, *fit, analysis);
    else
        analysis.verdict.reason = std::get<NoVerdict>(answer);
    analysis.discards_restored =
        discardsRestored(study, prepared, fit ? &fit->headline : nullptr, options);
    return analysis;
}

} // namespace bothways::core
