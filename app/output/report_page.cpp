// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_page.h"

#include <Eigen/Core>
#include <boost/version.hpp>
#include <fmt/format.h>

namespace bothways::app::report {

// Series colours: Okabe, Ito (2008), Color Universal Design. Shape and text say the same.
std::string_view styleSheet()
{
    return R"css(
:root { color-scheme: light; }
body { margin: 0; background: #fff; color: #1a1a1a; font: 16px/1.5 system-ui, "DejaVu Sans", sans-serif; }
main { max-width: 52rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.6rem; margin: 0.5rem 0; }
h2 { font-size: 1.2rem; margin: 2rem 0 0.5rem; border-bottom: 1px solid #bbb; }
h3 { font-size: 1rem; margin: 1.2rem 0 0.3rem; }
p.verdict { font-size: 1.25rem; font-weight: 600; margin: 1rem 0; }
.quiet { color: #555; }
figure { margin: 1rem 0; }
figcaption { color: #555; font-size: 0.85rem; }
svg { width: 100%; height: auto; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; font-size: 0.85rem; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.2rem 0.6rem 0.2rem 0; border-bottom: 1px solid #ddd; }
tr.strong td { font-weight: 600; }
tr.discarded td { color: #777; }
tr.discarded td:first-child, tr.discarded td:nth-child(8) { text-decoration: line-through; }
tr.alarmed td:nth-child(2) { font-weight: 700; color: #a33c00; }
.formula { font-family: "DejaVu Serif", Cambria, serif; font-style: italic; margin: 0.4rem 0 0.4rem 1.5rem; }
svg text.label { font: 12px system-ui, "DejaVu Sans", sans-serif; fill: #333; }
svg text.strong { font-weight: 700; font-size: 14px; }
svg .axis { stroke: #888; stroke-width: 1; }
svg .zero { stroke: #000; stroke-width: 1.5; }
svg .margin { fill: #e4e4e4; }
svg .interval { stroke: #0072b2; stroke-width: 2.5; }
svg .inner { fill: #0072b2; fill-opacity: 0.45; }
svg .thin { stroke: #56b4e9; stroke-width: 1; }
svg .shade-a { fill: #f3f3f3; }
svg .shade-b { fill: #e3f0fa; }
svg .a { fill: #555; }
svg .b { fill: #0072b2; }
svg .alarm { fill: #d55e00; }
svg .discarded { fill: none; stroke: #d55e00; stroke-width: 1.5; }
@page { margin: 15mm; }
@media print {
  body { font-size: 11px; }
  main { max-width: none; padding: 0; }
  h2 { break-after: avoid; }
  figure, tr { break-inside: avoid; }
}
)css";
}

std::string_view methodPage()
{
    return R"html(<h2>The method in a page</h2>
<p>A <b>run</b> is one pass over the stretch in one direction; a <b>block</b> is the consecutive runs in one
configuration; a <b>pair</b> is one out and one return run of the same block, so that slope and a steady wind
cancel. Runs are matched one to one: as many pairs as possible, then the smallest sum of time gaps.</p>
<p>Value of a pair, from consumptions <i>c</i> and distances <i>d</i> (equal weights unless both distances are known):</p>
<p class="formula">m = ln( (c&#8321;d&#8321; + c&#8322;d&#8322;) / (d&#8321; + d&#8322;) )</p>
<p>Least squares over the <i>n</i> pairs, with <i>x</i> = 1 for the device and 0 for the baseline, <i>t</i> the time of the pair:</p>
<p class="formula">m = &#956; + &#948;&#183;x + &#946;&#183;(t &#8722; t&#772;) + &#949;, df = n &#8722; 3</p>
<p>The term in <i>t</i> takes out a straight drift of the day (warming, wind, traffic). With one switch only (an open
design) it cannot be told from the effect and is left out: df = n &#8722; 2, and the verdict says so. With several
days each has its own intercept and slope, and there is one &#948;.</p>
<p class="formula">s&#178; = RSS/df, se(&#948;) = s&#183;&#8730;v with v = [(X&#7488;X)&#8315;&#185;]&#8336;, interval &#948; &#177; t(1 &#8722; &#945;/2, df)&#183;se</p>
<p>In per cent: 100&#183;(exp(&#948;) &#8722; 1). Below zero: the device used less.</p>
<h3>The verdict</h3>
<p><b>less</b>: the whole interval is below zero. <b>more</b>: the whole interval is above zero. <b>equivalent</b>:
zero is inside, and the interval at confidence 1 &#8722; 2&#945; lies inside the margin (two one-sided tests, Schuirmann 1987).
<b>undecided</b>: anything else; these runs cannot tell. <b>none</b>: the runs allow no verdict, and the report says what is missing.</p>
<h3>Companions</h3>
<p><b>bracket</b>: each device block against the straight line between its neighbouring baseline blocks.
<b>runs</b>: all counted runs singly, with a term for the direction. <b>blocks</b>: the model on block means; the only one that stays
honest when something besides the device changes at each switch. <b>correlated</b>: an interval that keeps its coverage when
successive pairs resemble each other. <b>labels</b>: the labels dealt again over the pairs, p alone; exact only if pairs are
exchangeable when there is no effect.</p>
<h3>Checks</h3>
<p>Shapiro&#8211;Wilk (Royston 1995), externally studentised residual with Bonferroni, Durbin&#8211;Watson (exact), a squared term in
time, Brown&#8211;Forsythe, last baseline block against the first, out minus return over time, the step of the display against the noise,
and moist-air density (CIPM-2007; Picard et al. 2008). A check fails at p &lt; 0.01 and is noted at p &lt; 0.05.</p>
<h3>What this is not</h3>
<p>Not a certification procedure. It says what these runs show about this vehicle on this stretch on these days. Discarded runs are
listed with their reason and put back in turn above, so that nobody can choose the result by choosing the discards.</p>
)html";
}

std::string libraryVersions()
{
    return fmt::format("Boost {}.{}.{}, Eigen {}.{}.{}, fmt {}.{}.{}", BOOST_VERSION / 100000,
                       BOOST_VERSION / 100 % 1000, BOOST_VERSION % 100, EIGEN_WORLD_VERSION,
                       EIGEN_MAJOR_VERSION, EIGEN_MINOR_VERSION, FMT_VERSION / 10000,
                       FMT_VERSION / 100 % 100, FMT_VERSION % 100);
}

} // namespace bothways::app::report
