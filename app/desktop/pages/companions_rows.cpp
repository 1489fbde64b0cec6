// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/companions_rows.h"
#include "app/desktop/look/said.h"

#include "core/companions/companions.h"
#include "core/study/units.h"

#include <algorithm>

namespace bothways::app {
namespace {

struct CompanionRows {
    Q_DECLARE_TR_FUNCTIONS(CompanionRows)
};

std::optional<double> pct(const std::optional<double>& log)
{
    return log ? std::optional(core::pctFromLog(*log)) : std::nullopt;
}

CompanionRow rowOf(const QString& id, const QString& name, const core::Interval* interval)
{
    CompanionRow row;
    row.id = id;
    row.name = name;
    if (interval == nullptr)
        return row;
    row.effect_log = interval->effect_log;
    row.low_log = interval->low_log;
    row.high_log = interval->high_log;
    row.df = interval->df;
    row.p = interval->p;
    row.cls = interval->cls;
    return row;
}

/// "+0.81 % (−0.06 to +1.69 %)"
QString numbersBeside(const std::optional<double>& effect, const std::optional<double>& low,
                      const std::optional<double>& high, const NumberWords& numbers)
{
    if (!effect)
        return {};
    if (!low || !high)
        return numbers.units().percentFromLog(*effect, 2);
    const int decimals = NumberWords::decimalsOfRange(*low, *high);
    //: an effect and its interval
    return CompanionRows::tr("%1 (%2)").arg(numbers.units().percentFromLog(*effect, decimals),
                                            numbers.signedRange(*low, *high, decimals));
}

/// Name, kind and effect of a row, as they are drawn.
template <class Row>
ForestRow lineOf(const Row& row)
{
    ForestRow line;
    line.name = row.name;
    line.kind = row.kind;
    line.effect_pct = pct(row.effect_log);
    line.low_pct = pct(row.low_log);
    line.high_pct = pct(row.high_log);
    return line;
}

} // namespace

std::vector<CompanionRow> companionRows(const core::Analysis& analysis, const Words& words)
{
    std::vector<CompanionRow> rows;
    if (!analysis.headline)
        return rows;
    const core::Headline& headline = *analysis.headline;
    CompanionRow first;
    first.id = QStringLiteral("headline");
    first.name = CompanionRows::tr("headline");
    first.effect_log = headline.effect_log;
    first.low_log = headline.low_log;
    first.high_log = headline.high_log;
    first.df = headline.df;
    first.p = headline.p;
    first.cls = analysis.verdict.cls;
    first.kind = ForestRow::Kind::headline;
    rows.push_back(first);
    const core::Companions& others = analysis.companions;
    const auto add = [&](core::Companion companion, const core::Interval* interval) {
        CompanionRow row = rowOf(QString::fromLatin1(core::name(companion).data()),
                                 words.companionName(companion), interval);
        row.differs =
            std::find(analysis.verdict.fragile_by.begin(), analysis.verdict.fragile_by.end(),
                      companion) != analysis.verdict.fragile_by.end();
        rows.push_back(row);
    };
    for (const auto& [companion, interval] : core::intervalsOf(others))
        add(companion, interval);
    add(core::Companion::labels, nullptr);
    if (others.labels)
        rows.back().p = others.labels->p;
    for (const core::SettingEffect& setting : others.settings) {
        CompanionRow row;
        row.id = QStringLiteral("setting ") + QString::fromStdString(setting.setting);
        row.name = CompanionRows::tr("setting %1, %n pair(s)", nullptr, setting.pairs)
                       .arg(setting.setting.empty() ? CompanionRows::tr("not noted")
                                                    : QString::fromStdString(setting.setting));
        row.effect_log = setting.effect_log;
        row.low_log = setting.low_log;
        row.high_log = setting.high_log;
        row.wide_low_log = setting.low_bonferroni_log;
        row.wide_high_log = setting.high_bonferroni_log;
        row.kind = ForestRow::Kind::setting;
        rows.push_back(row);
    }
    return rows;
}

QString forestAxis(const core::Analysis& analysis, const Words& words)
{
    return CompanionRows::tr("change of consumption with %1, in per cent (%2 intervals; shaded: "
                             "within the margin)")
        .arg(words.device(), words.numbers().percent(analysis.options.confidence));
}

std::vector<CompanionRow> dayRows(const ResultSet& result, const Words& words)
{
    std::vector<CompanionRow> rows;
    for (const core::DayEffect& day : result.analysis.companions.days) {
        CompanionRow row;
        row.id = QStringLiteral("day %1").arg(day.day);
        row.name = CompanionRows::tr("day %1").arg(words.units().number(day.day, 0));
        row.pairs = day.pairs;
        row.effect_log = day.effect_log;
        row.low_log = day.low_log;
        row.high_log = day.high_log;
        row.kind = ForestRow::Kind::setting;
        rows.push_back(row);
    }
    return rows;
}

std::vector<ForestRow> forestRows(const std::vector<CompanionRow>& rows, const Words& words)
{
    const NumberWords& numbers = words.numbers();
    std::vector<ForestRow> forest;
    for (const CompanionRow& row : rows) {
        ForestRow line = lineOf(row);
        line.id = row.id;
        line.differs = row.differs;
        line.wide_low_pct = pct(row.wide_low_log);
        line.wide_high_pct = pct(row.wide_high_log);
        line.text = row.effect_log
                        ? numbersBeside(row.effect_log, row.low_log, row.high_log, numbers)
                    : row.p ? numbers.p(*row.p)
                            : CompanionRows::tr("not to be had");
        //: a companion's name, and its numbers
        line.words = CompanionRows::tr("%1: %2").arg(line.name, line.text);
        if (row.cls)
            line.words += u'\n' + words.className(*row.cls);
        if (row.wide_low_log && row.wide_high_log)
            line.words +=
                u'\n' + CompanionRows::tr("thin line: corrected for several settings, %1")
                            .arg(numbers.signedRange(*row.wide_low_log, *row.wide_high_log, 2));
        forest.push_back(line);
    }
    return forest;
}

std::vector<RestoredRow> restoredRows(const ResultSet& result, const Words& words)
{
    std::vector<RestoredRow> rows;
    const core::Analysis& analysis = result.analysis;
    if (analysis.headline) {
        RestoredRow judged;
        judged.name = CompanionRows::tr("as judged");
        judged.effect_log = analysis.headline->effect_log;
        judged.low_log = analysis.headline->low_log;
        judged.high_log = analysis.headline->high_log;
        judged.cls = analysis.verdict.cls;
        judged.kind = ForestRow::Kind::headline;
        rows.push_back(judged);
    }
    const core::DiscardsRestored& restored = analysis.discards_restored;
    if (restored.all) {
        RestoredRow all;
        all.name = CompanionRows::tr("all put back");
        all.effect_log = restored.all->effect_log;
        all.low_log = restored.all->low_log;
        all.high_log = restored.all->high_log;
        all.cls = restored.all->cls;
        rows.push_back(all);
    }
    for (const core::RestoredTurn& turn : restored.each) {
        RestoredRow row;
        row.run = turn.run;
        row.name = CompanionRows::tr("run %1 put back").arg(words.units().number(turn.run, 0));
        row.effect_log = turn.effect_log;
        row.cls = turn.cls;
        row.possible = turn.possible;
        const auto run = std::find_if(result.study.runs.begin(), result.study.runs.end(),
                                      [&](const core::Run& r) { return r.number == turn.run; });
        if (run != result.study.runs.end() && run->discard) {
            row.reason = shown(wording::reasonName(words.language(), run->discard->reason));
            row.evidence = nameShown(run->discard->evidence);
        }
        rows.push_back(row);
    }
    return rows;
}

std::vector<ForestRow> forestRows(const std::vector<RestoredRow>& rows,
                                  const core::Analysis& analysis, const Words& words)
{
    const NumberWords& numbers = words.numbers();
    std::vector<ForestRow> forest;
    for (const RestoredRow& row : rows) {
        ForestRow line = lineOf(row);
        line.key = row.run;
        line.differs = row.effect_log && row.cls != analysis.verdict.cls;
        line.text = row.effect_log
                        ? numbersBeside(row.effect_log, row.low_log, row.high_log, numbers)
                    : row.possible ? words.className(core::VerdictClass::none)
                                   : CompanionRows::tr("has no consumption");
        line.words = CompanionRows::tr("%1: %2").arg(line.name, line.text) + u'\n' +
                     words.className(row.cls);
        if (!row.reason.isEmpty())
            line.words += u'\n' + CompanionRows::tr("discarded: %1").arg(row.reason);
        forest.push_back(line);
    }
    return forest;
}

} // namespace bothways::app
