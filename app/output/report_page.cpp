// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_page.h"

#include "app/output/report_picture.h"

#include <fmt/format.h>

namespace bothways::app::report {
namespace {

constexpr std::string_view kStyle = R"css(
:root { color-scheme: light; }
html { font-size: 16px; }
body { margin: 0; background: #fff; color: #1a1a1a; font: 1rem/1.5 system-ui, "DejaVu Sans", sans-serif; }
main { max-width: 58rem; margin: 0 auto; padding: 1rem; overflow-wrap: break-word; }
h1 { font-size: 1.6rem; line-height: 1.3; margin: 0.5rem 0; }
h2 { font-size: 1.2rem; margin: 2rem 0 0.5rem; border-bottom: 1px solid #bbb; }
h3 { font-size: 1rem; margin: 1.2rem 0 0.3rem; }
p.verdict { font-size: 1.25rem; font-weight: 600; margin: 1rem 0; }
p.formula { font-family: "DejaVu Serif", Cambria, serif; font-style: italic; margin: 0.4rem 0 0.4rem 1.5rem; }
.quiet, tr.quiet td { color: #5a5a5a; }
figure { margin: 1rem 0; }
figcaption { color: #555; font-size: 0.85rem; max-width: 46rem; }
svg { display: block; width: 100%; max-width: 46rem; height: auto; overflow: visible; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; font-size: 0.85rem; width: 100%; margin: 0.5rem 0 1rem; }
th, td { text-align: left; vertical-align: top; padding: 0.2rem 0.75rem 0.2rem 0; border-bottom: 1px solid #ddd; white-space: nowrap; }
th.n, td.n { text-align: right; font-variant-numeric: tabular-nums; }
th.w, td.w { white-space: normal; min-width: 14rem; width: 99%; }
tr.strong td { font-weight: 600; }
tr.alarmed td:nth-child(2) { font-weight: 700; color: #a33c00; }
@media screen and (max-width: 36rem) { /* a phone: pictures whole, with larger letters; long words beside few columns */
  svg text.label { font-size: 16px; }
  figure:first-of-type svg text.label { font-size: 19px; }
  th.w, td.w { min-width: 11rem; }
  th.n ~ th.w, td.n ~ td.w { min-width: 24rem; }
}
@page { margin: 15mm; }
@media print {
  html { font-size: 9.5pt; }
  main { max-width: none; padding: 0; }
  h1, h2, h3 { break-after: avoid; }
  figure, tr, li { break-inside: avoid; }
  svg { max-width: 140mm; }
  .wide { overflow: visible; }
  th, td { padding-right: 0.5rem; }
  th.w, td.w { min-width: 0; }
}
)css";

} // namespace

std::string styleSheet()
{
    std::string css = fmt::format(
        "svg text.label {{ font: {}px system-ui, \"DejaVu Sans\", sans-serif; fill: {}; }}\n"
        "svg text.strong {{ font-weight: 700; }}\n",
        kLabelSize, kLabelColour);
    for (const Ink ink : kInks) {
        const Look look = lookOf(ink);
        css += fmt::format("svg .{} {{ fill: {};", look.name, look.fill ? look.fill : "none");
        if (look.stroke)
            css += fmt::format(" stroke: {}; stroke-width: {};", look.stroke, look.width);
        css += " }\n";
    }
    // After the general rules: a phone's and the printer's are the last word.
    return std::string(kStyle.substr(0, kStyle.find("@media"))) + css +
           std::string(kStyle.substr(kStyle.find("@media")));
}

} // namespace bothways::app::report
