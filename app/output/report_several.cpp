// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"
#include "app/output/report_builder.h"
#include "app/output/report_html.h"
#include "app/output/report_model.h"
#include "app/output/report_pictures.h"
#include "app/wording/numbers.h"
#include "app/wording/pooled.h"
#include "app/wording/verdict.h"
#include "core/answer/pooled.h"

namespace bothways::app::report {
namespace {

Table studiesTable(const Language& in, const SeveralInput& given)
{
    Table table{in.say("The studies"_t),
                {{in.say("study"_t), Column::words},
                 {in.say("device"_t), Column::words},
                 {in.say("baseline"_t), Column::words},
                 {in.say("effect"_t), Column::number},
                 {in.say("interval"_t)},
                 {in.say("df##degrees of freedom"_t), Column::number},
                 {in.say("without##the device"_t), Column::number},
                 {in.say("with##the device"_t), Column::number},
                 {in.say("says##verdict"_t)},
                 {"SHA-256"}},
                {}};
    for (std::size_t i = 0; i < given.together.studies.size(); ++i) {
        const StudyRow& study = given.together.studies[i];
        const std::string sum = i < given.checksums.size() ? given.checksums[i].substr(0, 12) : "";
        if (!study.effect) {
            addRow(table,
                   {study.name, study.device, study.baseline, "-", "-", "-", "-", "-",
                    wording::classWords(in, study.cls), sum},
                   RowTone::quiet);
            continue;
        }
        const auto [without, with] = consumptionsOf(in, study, given.unit);
        const core::StudyEffect& effect = *study.effect;
        const core::EffectRange range = core::rangeOf(effect, given.together.confidence);
        const double low = core::pctFromLog(range.low_log);
        const double high = core::pctFromLog(range.high_log);
        const int decimals = decimalsFor(0.5 * (high - low));
        addRow(table, {study.name, study.device, study.baseline,
                       change(in, core::pctFromLog(effect.effect_log), decimals),
                       changeRange(in, low, high, decimals), shortest(in, effect.df), without, with,
                       wording::classWords(in, study.cls), sum});
    }
    return table;
}

} // namespace

Report makeReportOfSeveral(const SeveralInput& given)
{
    const Language& in = given.language;
    Builder page(in);
    page.paragraph(wording::pooledSentence(in, given.together.pooled, given.together.confidence),
                   Tone::verdict);
    page.paragraph(wording::pooledVerdict(in, given.together.pooled, given.together.confidence,
                                          given.together.margin_pct));
    page.paragraph(wording::pooledCaution(in, given.together.pooled));
    for (const std::string& remark : given.remarks)
        page.paragraph(remark);
    page.figure(studiesPicture(in, given.together),
                in.say("Each study with its {} interval, and what they say together. Grey band: "
                       "the margin. Line: no effect."_t,
                       intervalPercent(in, given.together.confidence)));
    page.heading(in.say("The studies"_t));
    page.table(studiesTable(in, given));
    page.heading(in.say("How they are pooled"_t));
    page.paragraph(in.say(
        "One effect for all: weighted by what each design can tell, whatever its noise came out "
        "as; interval by Welch and Satterthwaite. Whether they agree: Welch's F (1951). The mean "
        "of effects of their own: DerSimonian and Laird's mean; its interval allows for noise "
        "that is known from few pairs."_t));
    page.heading(in.say("Made from"_t));
    page.paragraph(given.madeBy + ".", Tone::quiet);
    return {escaped(in.say("{} studies together"_t, given.together.studies.size())),
            {},
            std::move(page).take()};
}

} // namespace bothways::app::report
