// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/run_card.h"

#include "app/output/markup.h"
#include "app/output/role_colours.h"
#include "app/wording/numbers.h"
#include "app/wording/units.h"
#include "core/study/clock.h"
#include "core/study/limits.h"
#include "core/study/walk_round.h"

#include <fmt/format.h>

#include <cmath>

namespace bothways::app {
namespace {

constexpr std::string_view kStyle = R"css(
body { margin: 1rem auto; max-width: 48rem; background: #fff; color: #000; font: 15px/1.4 system-ui, "DejaVu Sans", sans-serif; }
h1 { font-size: 1.4rem; margin: 0 0 0.3rem; }
h2 { font-size: 1.05rem; margin: 1.2rem 0 0.3rem; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 1px solid #555; padding: 0.35rem 0.4rem; text-align: left; }
td.write { min-width: 5rem; }
tr.switch td { background: #ddd; font-weight: 700; }
tr.device td:nth-child(3) { font-weight: 700; }
.box { display: inline-block; width: 0.9em; height: 0.9em; border: 1px solid #000; }
@page { margin: 12mm; }
@media print { /* 24 runs on a page of A4, and of Letter, with room to write */
  body { font-size: 10.5px; line-height: 1.3; margin: 0; max-width: none; }
  h1 { font-size: 16px; margin: 0 0 2px; }
  h2 { font-size: 12.5px; margin: 5px 0 2px; }
  p { margin: 0 0 3px; }
  ul { columns: 2; margin: 0; padding-left: 14px; }
  li, tr { break-inside: avoid; }
  th, td { padding: 3.5px 6px; }
  tr.switch td { padding: 2px 6px; }
}
)css";

/// With the marks of the two configurations: a disc and a square, as everywhere.
std::string styleOfCard()
{
    return std::string(kStyle) +
           fmt::format(
               "tr.baseline td:nth-child(3)::before {{ content: \"\\25CF\\A0\"; color: {}; }}\n"
               "tr.device td:nth-child(3)::before {{ content: \"\\25A0\\A0\"; color: {}; }}\n",
               roles::kBaseline.light, roles::kDevice.light);
}

std::string clockText(double minutes)
{
    const auto whole = static_cast<long long>(std::floor(minutes + 1e-9));
    return fmt::format("{:02}:{:02}", whole / 60 % 24, whole % 60);
}

class Card {
public:
    Card(const RunCardInput& input, double begin_min) : m_in(input), m_begin_min(begin_min) {}

    std::string html()
    {
        head();
        before();
        walkRound();
        runs();
        accessories();
        limits();
        cautions();
        m_text += "</body>\n</html>\n";
        return std::move(m_text);
    }

private:
    const core::PlanOptions& plan() const { return m_in.plan.options; }
    template <int Places, class... Values>
    std::string say(core::Text<Places> text, const Values&... values) const
    {
        return m_in.language.say(text, values...);
    }
    std::string number(const char* format, double value) const
    {
        return localised(m_in.language, fmt::format(fmt::runtime(format), value));
    }
    void section(core::Text<0> title)
    {
        m_text += fmt::format("<h2>{}</h2>\n<ul>\n", escaped(say(title)));
    }
    void item(std::string_view words)
    {
        m_text += fmt::format("<li><span class=\"box\"></span> {}</li>\n", escaped(words));
    }

    void head()
    {
        const std::string title = m_in.properties.name.empty()
                                      ? say("Run card"_t)
                                      : say("Run card: {}"_t, m_in.properties.name);
        m_text = fmt::format(
            "<!DOCTYPE html>\n<html lang=\"{2}\">\n<head>\n<meta charset=\"utf-8\">\n{3}\n"
            "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
            "<title>{0}</title>\n<style>{1}</style>\n</head>\n<body>\n<h1>{0}</h1>\n",
            escaped(title), styleOfCard(), m_in.language.tag(), kRunCardMark);
        m_text += fmt::format(
            "<p>{}</p>\n",
            escaped(say("{} with {} pairs a block: {} pairs, {} h on the road, {} km. With a noise "
                        "of {} % a pair this day can show {} % or more."_t,
                        m_in.plan.sequence, m_in.plan.pairs_per_block, m_in.plan.pairs,
                        number("{:.1f}", m_in.plan.road_hours),
                        number("{:.0f}", m_in.plan.distance_km), number("{:.2g}", 100.0 * plan().s),
                        number("{:.2g}", core::pctFromLog(m_in.plan.detectable_log)))));
    }

    void before()
    {
        section("Before the first run"_t);
        item(say("Engine and tyres warm; time of the cold start: ________"_t));
        item(say("Tyre pressures: ________   Fuel: ________   Load: ________"_t));
        item(say("Windows and vents set, and left alone"_t));
        item(say("Temperature ________   Pressure at the place ________   Wind ________"_t));
        item(say("Logger runs, memory card empty, clock right"_t));
        m_text += "</ul>\n";
    }

    /// What the study's walk-round asks for, once for each block of the plan.
    void walkRound()
    {
        const auto lines = core::walkLines(m_in.properties.walk_round);
        if (!lines || lines.value().empty())
            return;
        section("Walk-round before each block"_t);
        std::string boxes;
        for (std::size_t block = 1; block < m_in.plan.sequence.size(); ++block)
            boxes += "<span class=\"box\"></span> ";
        for (const core::WalkLine& line : lines.value())
            m_text += fmt::format(
                "<li><span class=\"box\"></span> {}{}{}</li>\n", boxes, escaped(line.words),
                line.unit.empty() ? std::string()
                                  : escaped(fmt::format(": ________ {}", line.unit)));
        m_text += "</ul>\n";
    }

    void runRow(int number, double at_min, const core::PlannedPair& pair,
                const std::string& direction)
    {
        m_text += fmt::format(
            "<tr{}><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td class=\"write\"></td>"
            "<td class=\"write\"></td><td class=\"write\"></td></tr>\n",
            pair.device ? " class=\"device\"" : " class=\"baseline\"", number, clockText(at_min),
            escaped(pair.device ? m_in.device : m_in.baseline), escaped(direction));
    }

    void runs()
    {
        m_text +=
            fmt::format("<h2>{}</h2>\n<p>{}</p>\n<table>\n<thead><tr>", escaped(say("The runs"_t)),
                        escaped(say("Reset the meter only when already cruising. Note what "
                                    "happens when it happens."_t)));
        for (const core::Text<0> head :
             {"run"_t, "about##a time"_t, "configuration"_t, "direction"_t, "setting"_t,
              "consumption"_t, "what happened"_t})
            m_text += fmt::format("<th>{}</th>", escaped(say(head)));
        m_text += "</tr></thead>\n<tbody>\n";
        int run = 0;
        int block = 0;
        for (const core::PlannedPair& pair : core::plannedPairs(
                 plan().sequence, plan().pairs_per_block, plan().pair_min, plan().switch_min)) {
            const double begin_min = m_begin_min + 60.0 * pair.begin_h;
            if (pair.block != block) {
                block = pair.block;
                m_text += fmt::format(
                    "<tr class=\"switch\"><td colspan=\"7\"><span class=\"box\"></span> "
                    "{}</td></tr>\n",
                    escaped(say("Switch to {}: {} min, until {}. Note what was changed."_t,
                                pair.device ? m_in.device : m_in.baseline,
                                number("{:.4g}", plan().switch_min), clockText(begin_min))));
            }
            runRow(++run, begin_min, pair, m_in.out.empty() ? say("out##direction"_t) : m_in.out);
            runRow(++run, begin_min + plan().pair_min / 2.0, pair,
                   m_in.back.empty() ? say("return##direction"_t) : m_in.back);
        }
        m_text += "</tbody>\n</table>\n";
    }

    void accessories()
    {
        if (m_in.properties.timed_accessories.empty())
            return;
        section("Accessories on a timer"_t);
        for (const core::TimedAccessory& accessory : m_in.properties.timed_accessories) {
            std::string name = accessory.name;
            for (char& c : name)
                if (c == '_')
                    c = ' ';
            item(say(
                "{} ({} W, {} min): leave it off. Switched on at {} it would drop out at {}. On "
                "at ________, off at ________"_t,
                name, number("{:.4g}", accessory.watts), number("{:.4g}", accessory.minutes),
                clockText(m_begin_min), clockText(m_begin_min + accessory.minutes)));
        }
        m_text += "</ul>\n";
    }

    void limits()
    {
        if (m_in.properties.limits.empty())
            return;
        section("Limits of this study"_t);
        for (const auto& [name, value] : m_in.properties.limits) {
            const core::LimitInfo* info = core::findLimit(name);
            m_text +=
                fmt::format("<li>{}: {} {}</li>\n", escaped(name), number("{}", value),
                            info ? escaped(wording::signText(m_in.language, info->unit)) : "");
        }
        m_text += "</ul>\n";
    }

    void cautions()
    {
        m_text += fmt::format(
            "<h2>{}</h2>\n<p>{}</p>\n", escaped(say("Cautions"_t)),
            escaped(say("The driver drives, the companion writes. Obey traffic law; let faster "
                        "traffic pass. Nobody stands in the plane of a rotor; stop at once on "
                        "strange vibration or noise. What is fitted to the vehicle may touch its "
                        "insurance and inspection: ask first. This is not a certification "
                        "procedure."_t)));
    }

    const RunCardInput& m_in;
    double m_begin_min;
    std::string m_text;
};

} // namespace

RunCardInput runCardOf(const core::Study& study, const core::Plan& plan)
{
    RunCardInput card{study.properties, plan};
    if (const auto names = core::configurations(study); names.size() == 2) {
        card.baseline = core::baselineName(study);
        card.device = core::sameWord(names[0], card.baseline) ? names[1] : names[0];
    }
    if (const auto names = core::directions(study); names.size() == 2) {
        card.out = names[0];
        card.back = names[1];
    }
    return card;
}

core::Result<std::string> runCardHtml(const RunCardInput& input)
{
    const core::Result<std::int64_t> begin = core::parseTimeOfDay_us(input.begin);
    if (!begin)
        return core::Error{core::ErrorCode::wrongUse, begin.error().message, {}};
    return Card(input, static_cast<double>(begin.value()) / 60e6).html();
}

} // namespace bothways::app
