// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_html.h"

#include "app/output/report_page.h"
#include "app/output/report_pictures.h"
#include "app/output/version.h"
#include "core/clock.h"
#include "core/properties.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace bothways::app {
namespace {

using core::Analysis;
using core::pctFromLog;

class Page {
public:
    void heading(std::string_view title) { m_text += fmt::format("<h2>{}</h2>\n", escaped(title)); }
    void paragraph(std::string_view sentence, std::string_view cls = {})
    {
        if (sentence.empty())
            return;
        m_text += cls.empty() ? fmt::format("<p>{}</p>\n", escaped(sentence))
                              : fmt::format("<p class=\"{}\">{}</p>\n", cls, escaped(sentence));
    }
    void picture(const std::string& svg, std::string_view caption)
    {
        if (!svg.empty())
            m_text += fmt::format("<figure>\n{}<figcaption>{}</figcaption>\n</figure>\n", svg,
                                  escaped(caption));
    }
    void openTable(const std::vector<std::string_view>& head)
    {
        m_text += "<div class=\"wide\"><table>\n<thead><tr>";
        for (const std::string_view cell : head)
            m_text += fmt::format("<th scope=\"col\">{}</th>", escaped(cell));
        m_text += "</tr></thead>\n<tbody>\n";
    }
    void row(const std::vector<std::string>& cells, std::string_view cls = {})
    {
        m_text += cls.empty() ? "<tr>" : fmt::format("<tr class=\"{}\">", cls);
        for (const std::string& cell : cells)
            m_text += fmt::format("<td>{}</td>", escaped(cell));
        m_text += "</tr>\n";
    }
    void closeTable() { m_text += "</tbody></table></div>\n"; }
    void openList() { m_text += "<ul>\n"; }
    void item(std::string_view words) { m_text += fmt::format("<li>{}</li>\n", escaped(words)); }
    void closeList() { m_text += "</ul>\n"; }
    void raw(std::string_view html) { m_text += html; }
    std::string take() && { return std::move(m_text); }

private:
    std::string m_text;
};

std::string signedPct(std::optional<double> log)
{
    if (!log)
        return "\u2013";
    const double pct = pctFromLog(*log);
    const std::string digits = fmt::format("{:.2f}", pct < 0.0 ? -pct : pct);
    if (digits == "0.00")
        return "0.00\u00a0%";
    return (pct < 0.0 ? "\u2212" : "+") + digits + "\u00a0%";
}

std::string pText(double p)
{
    return p < 0.0001 ? "< 0.0001" : fmt::format("{:.4f}", p);
}

std::string number(std::optional<double> value, int decimals)
{
    return value ? fmt::format("{:.{}f}", *value, decimals) : "";
}

void verdict(Page& page, const ReportInput& in)
{
    const Analysis& a = in.analysis;
    page.paragraph(english::verdictSentence(a, in.unit), "verdict");
    if (!a.verdict.qualifiers.empty()) {
        page.openList();
        for (const core::Qualifier qualifier : a.verdict.qualifiers)
            page.item(english::qualifierSentence(qualifier, a));
        page.closeList();
    }
    page.picture(
        intervalSvg(a),
        fmt::format("The effect with its {:.4g} % interval. Thick bar: the {:.4g} % interval "
                    "of the equivalence test. Grey band: the margin.",
                    100.0 * a.options.confidence, 200.0 * a.options.confidence - 100.0));
    page.paragraph(english::detectableSentence(a));
}

void pairs(Page& page, const ReportInput& in)
{
    const Analysis& a = in.analysis;
    page.heading("The pairs");
    page.paragraph(fmt::format("{} runs, {} counted, {} discarded; {} pairs in {} blocks.", a.runs,
                               a.counted, a.discarded, a.pairs.size(), a.blocks.size()));
    if (!a.unpaired.empty())
        page.paragraph(fmt::format("Counted, but without a partner in their block: runs {}.",
                                   fmt::join(a.unpaired, ", ")));
    page.picture(pairsSvg(in.study, a), "Consumption of each pair over the day.");
    if (a.pairs.empty())
        return;
    page.openTable({"pair", "runs", "block", "configuration", "hours",
                    a.electric ? "kWh/100 km" : "L/100 km", "residual"});
    for (std::size_t i = 0; i < a.pairs.size(); ++i) {
        const core::Pair& pair = a.pairs[i];
        page.row(
            {std::to_string(pair.number), fmt::format("{} and {}", pair.out_run, pair.return_run),
             std::to_string(pair.block),
             pair.configuration + (pair.mixed_setting ? " (mixed setting)" : "") +
                 (pair.fixed ? " (tied by hand)" : ""),
             fmt::format("{:.3f}", pair.time_h), fmt::format("{:.3f}", pair.l_per_100km),
             a.headline && i < a.headline->residuals.size() ? signedPct(a.headline->residuals[i])
                                                            : ""});
    }
    page.closeTable();
}

void companionRow(Page& page, core::Companion id, const std::optional<core::Interval>& interval,
                  const Analysis& a)
{
    if (!interval) {
        page.row({std::string(name(id)), "\u2013", "\u2013", "", "", "",
                  english::companionSentence(id, a)},
                 "quiet");
        return;
    }
    page.row({std::string(name(id)), signedPct(interval->effect_log),
              signedPct(interval->low_log) + " to " + signedPct(interval->high_log),
              pText(interval->p), fmt::format("{:.4g}", interval->df),
              english::classWords(interval->cls), english::companionSentence(id, a)});
}

void companions(Page& page, const ReportInput& in)
{
    const Analysis& a = in.analysis;
    if (!a.headline)
        return;
    const core::Headline& h = *a.headline;
    page.heading("Other roads to the same number");
    page.picture(forestSvg(a), "Headline, companions and settings.");
    page.openTable({"", "effect", "interval", "p", "df", "says", "what it is"});
    page.row({"headline", signedPct(h.effect_log),
              signedPct(h.low_log) + " to " + signedPct(h.high_log), pText(h.p),
              fmt::format("{:.4g}", h.df), english::classWords(a.verdict.cls),
              "least squares over the pairs, the answer of this page"},
             "strong");
    companionRow(page, core::Companion::bracket, a.companions.bracket, a);
    companionRow(page, core::Companion::runs, a.companions.runs, a);
    companionRow(page, core::Companion::blocks, a.companions.blocks, a);
    companionRow(page, core::Companion::correlated,
                 a.companions.correlated ? std::optional<core::Interval>(*a.companions.correlated)
                                         : std::nullopt,
                 a);
    if (a.companions.labels)
        page.row({"labels", "", "", pText(a.companions.labels->p), "", "",
                  english::companionSentence(core::Companion::labels, a)});
    for (const core::SettingEffect& s : a.companions.settings)
        page.row({"setting " + (s.setting.empty() ? std::string("(none noted)") : s.setting),
                  signedPct(s.effect_log), signedPct(s.low_log) + " to " + signedPct(s.high_log),
                  "", "", "",
                  fmt::format("{} pairs; Bonferroni interval {} to {}", s.pairs,
                              signedPct(s.low_bonferroni_log), signedPct(s.high_bonferroni_log))});
    page.closeTable();
}

void checks(Page& page, const Analysis& a)
{
    if (!a.headline)
        return;
    page.heading("Are the assumptions in order?");
    page.paragraph(english::checksPowerSentence(a));
    page.openTable({"check", "state", "in words"});
    const core::Checks& c = a.checks;
    const auto row = [&](const char* what, core::CheckState state, const std::string& sentence) {
        page.row(
            {what,
             std::string(state == core::CheckState::notComputed ? "not computed" : name(state)),
             sentence},
            state == core::CheckState::fails ? "alarmed" : "");
    };
    row("normal", c.normal.state, english::normalSentence(a));
    row("outlier", c.outlier.state, english::outlierSentence(a));
    row("order", c.order.state, english::orderSentence(a));
    row("curve", c.curve.state, english::curveSentence(a));
    row("spread", c.spread.state, english::spreadSentence(a));
    row("baseline", c.baseline.state, english::baselineSentence(a));
    row("direction", c.direction.state, english::directionSentence(a));
    row("resolution", c.resolution.state, english::resolutionSentence(a));
    row("air", c.air.state, english::airSentence(a));
    page.closeTable();
}

void sensitivity(Page& page, const Analysis& a)
{
    if (!a.headline)
        return;
    page.heading("How fragile is it?");
    page.paragraph(english::leaveOneOutSentence(a));
    page.picture(leaveOneOutSvg(a), "The effect with each pair left out in turn.");
    page.paragraph(english::discardsRestoredSentence(a));
    const core::DiscardsRestored& restored = a.discards_restored;
    if (restored.each.empty())
        return;
    page.openTable({"put back", "effect", "says"});
    if (restored.all)
        page.row({"all of them", signedPct(restored.all->effect_log),
                  english::classWords(restored.all->cls)},
                 "strong");
    for (const core::RestoredTurn& turn : restored.each)
        page.row({fmt::format("run {}", turn.run), signedPct(turn.effect_log),
                  turn.possible ? english::classWords(turn.cls)
                                : "cannot be put back: it has no consumption"});
    page.closeTable();
}

void runs(Page& page, const ReportInput& in)
{
    page.heading("Every run, as the day was");
    page.openTable({"run", "configuration", "setting", "direction", "start", "s", "km",
                    in.analysis.electric ? "kWh/100 km" : "L/100 km", "state",
                    "reason and evidence", "notes"});
    for (const core::Run& run : in.study.runs) {
        std::string why;
        if (run.discard)
            why = run.discard->reason +
                  (run.discard->evidence.empty() ? "" : ": " + run.discard->evidence);
        page.row({std::to_string(run.number), run.configuration, run.setting, run.direction,
                  core::formatDate(run.start) + " " + core::formatTimeOfDay(run.start),
                  number(run.duration_s, 0), number(run.distance_km, 2),
                  number(core::lPer100km(run), 3), run.discard ? "discarded" : "counted", why,
                  run.notes},
                 run.discard ? "discarded" : "");
    }
    page.closeTable();
}

void findings(Page& page, const core::Screening& screening, std::size_t runsInAll)
{
    page.heading("What screening found");
    if (screening.findings.empty())
        page.paragraph("No rule that could be checked found anything.");
    page.openList();
    for (const core::Finding& finding : screening.findings)
        page.item(
            fmt::format("[{}] {}", gradeName(finding.grade), english::findingSentence(finding)));
    page.closeList();
    if (screening.pattern)
        page.paragraph(english::patternSentence(*screening.pattern));
    // One line a rule and cause: the same for twenty runs is one fact.
    std::vector<std::pair<std::string, std::vector<int>>> unchecked;
    for (const core::NotChecked& entry : screening.not_checked) {
        const std::string why =
            fmt::format("{}: {}", ruleName(entry.rule), english::whyNotChecked(entry));
        const auto known = std::find_if(unchecked.begin(), unchecked.end(),
                                        [&](const auto& u) { return u.first == why; });
        if (known == unchecked.end())
            unchecked.push_back({why, {entry.run}});
        else
            known->second.push_back(entry.run);
    }
    if (unchecked.empty())
        return;
    page.paragraph("Not checked, which is not the same as passed:");
    page.openList();
    for (const auto& [why, numbers] : unchecked)
        page.item(numbers.size() == runsInAll
                      ? why + " (all runs)"
                      : fmt::format("{} (runs {})", why, fmt::join(numbers, ", ")));
    page.closeList();
}

void settings(Page& page, const ReportInput& in)
{
    page.heading("Settings and limits used");
    const core::AnalysisOptions& o = in.analysis.options;
    page.openTable({"name", "value"});
    page.row({"baseline (A)", in.analysis.baseline});
    page.row({"device (B)", in.analysis.device});
    page.row({"margin", fmt::format("{} %", o.margin_pct)});
    page.row({"confidence", fmt::format("{}", o.confidence)});
    page.row({"widest gap inside a pair", fmt::format("{} min", o.max_gap_min)});
    page.row({"seed of random deals", std::to_string(o.seed)});
    for (const auto& [key, value] : core::propertiesAsText(in.study.properties))
        if (key != "margin" && key != "confidence" && key != "max_gap" && key != "baseline")
            page.row({key, value});
    page.closeTable();
    for (const core::Note& note : in.analysis.notes)
        page.paragraph(english::noteSentence(note));
}

void history(Page& page, const std::vector<std::string>& lines)
{
    if (lines.empty())
        return;
    page.heading("What was changed, and when");
    page.openList();
    for (const std::string& line : lines)
        page.item(line);
    page.closeList();
}

} // namespace

std::string reportHtml(const ReportInput& in)
{
    Page page;
    const std::string title =
        in.study.properties.name.empty() ? in.sourceName : in.study.properties.name;
    page.raw(fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        "<title>{}</title>\n<style>\n{}</style>\n</head>\n<body>\n<main>\n<h1>{}</h1>\n",
        escaped(title), report::styleSheet(), escaped(title)));
    if (!in.study.runs.empty())
        page.paragraph(
            fmt::format("Driven on {}{}. {} runs.", core::formatDate(in.study.runs.front().start),
                        in.analysis.days > 1 ? fmt::format(" and later, {} days", in.analysis.days)
                                             : "",
                        in.study.runs.size()),
            "quiet");
    if (!in.study.properties.notes.empty())
        page.paragraph(in.study.properties.notes);
    verdict(page, in);
    pairs(page, in);
    companions(page, in);
    checks(page, in.analysis);
    sensitivity(page, in.analysis);
    findings(page, in.screening, in.study.runs.size());
    runs(page, in);
    settings(page, in);
    history(page, in.historyLines);
    page.raw(report::methodPage());
    page.heading("Made from");
    page.paragraph(fmt::format("{}, SHA-256 {}", in.sourceName, in.inputSha256), "quiet");
    page.paragraph(fmt::format("Bothways {}; {}.", kVersion, report::libraryVersions()), "quiet");
    page.raw("</main>\n</body>\n</html>\n");
    return std::move(page).take();
}

} // namespace bothways::app
