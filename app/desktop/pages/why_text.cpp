// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/why_text.h"

#include "app/desktop/look/said.h"
#include "app/desktop/look/study_values.h"
#include "core/statistics/distributions.h"
#include "core/study/units.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace bothways::app {
namespace {

constexpr int kLogDigits = 5; // of logs: a hundred-thousandth is a thousandth of a per cent

class WhyText {
    Q_DECLARE_TR_FUNCTIONS(WhyText)

public:
    WhyText(const ResultSet& result, const Words& words)
        : m_study(result.study),
          m_analysis(result.analysis),
          m_words(words),
          m_numbers(words.numbers()),
          m_control(usesControl(result.analysis))
    {
    }

    QString html()
    {
        heading(tr("The answer"));
        paragraph(m_words.verdict());
        runs();
        pairs();
        if (m_analysis.headline) {
            model();
            noise();
            interval();
            verdictClass();
            reservations();
        }
        return m_html;
    }

private:
    // building blocks
    void heading(const QString& text)
    {
        m_html += QStringLiteral("<h3>%1</h3>\n").arg(text.toHtmlEscaped());
    }
    void paragraph(const QString& text)
    {
        if (!text.isEmpty())
            m_html += QStringLiteral("<p>%1</p>\n").arg(text.toHtmlEscaped());
    }
    void formula(const QString& text)
    {
        m_html += QStringLiteral("<p style=\"margin-left:24px\"><b>%1</b></p>\n")
                      .arg(text.toHtmlEscaped());
    }
    /// `dense`: of many columns, which a narrow page is to hold.
    void table(const QStringList& header, const QList<QStringList>& rows, bool dense = false)
    {
        m_html +=
            QStringLiteral("<table border=\"1\" cellspacing=\"0\" cellpadding=\"%1\" "
                           "style=\"border-collapse:collapse; border-color:#8a929c%2\">\n<tr>")
                .arg(QLatin1String(dense ? "1" : "4"),
                     QLatin1String(dense ? "; font-size:small" : ""));
        for (qsizetype column = 0; column < header.size(); ++column)
            m_html += QStringLiteral("<th align=\"%1\">%2</th>")
                          .arg(QLatin1String(holdsNumbers(rows, column) ? "right" : "left"),
                               header[column].toHtmlEscaped());
        m_html += QLatin1String("</tr>\n");
        for (const QStringList& row : rows) {
            m_html += QLatin1String("<tr>");
            for (const QString& cell : row) // a number stays in one piece
                m_html +=
                    QStringLiteral("<td %1>%2</td>")
                        .arg(isNumber(cell)
                                 ? QLatin1String("align=\"right\" style=\"white-space:nowrap\"")
                                 : QLatin1String("align=\"left\""),
                             cell.toHtmlEscaped());
            m_html += QLatin1String("</tr>\n");
        }
        m_html += QLatin1String("</table>\n");
    }
    static bool isNumber(const QString& cell)
    {
        return !cell.isEmpty() &&
               std::none_of(cell.begin(), cell.end(), [](QChar c) { return c.isLetter(); });
    }
    /// A heading stands where its column does.
    static bool holdsNumbers(const QList<QStringList>& rows, qsizetype column)
    {
        return std::any_of(rows.begin(), rows.end(), [&](const QStringList& row) {
            return column < row.size() && isNumber(row[column]);
        });
    }
    QString log(double value) const { return m_numbers.fixed(value, kLogDigits); }
    QString signedLog(double value) const
    {
        return m_words.units().signedNumber(value, kLogDigits);
    }
    QString pct(double value) const { return m_words.units().percentFromLog(value, 3); }
    QString whole(double value) const { return m_numbers.fixed(value, 0); }

    // the steps
    void runs()
    {
        heading(tr("1. Runs"));
        paragraph(tr("%n run(s) were driven. Each is one pass over the stretch in one direction.",
                     nullptr, m_analysis.runs));
        QList<QStringList> rows;
        for (const core::Run& run : m_study.runs)
            if (run.discard)
                rows << QStringList{
                    whole(run.number), nameShown(run.configuration),
                    m_words.units().consumptionText(run),
                    shown(wording::reasonName(m_words.language(), run.discard->reason)),
                    nameShown(run.discard->evidence)};
        if (rows.isEmpty()) {
            paragraph(tr("None was discarded."));
            return;
        }
        paragraph(tr("%n of them do(es) not count, for a reason that was written down:", nullptr,
                     static_cast<int>(rows.size())));
        table({tr("run"), tr("configuration"), m_words.units().consumptionUnit(), tr("reason"),
               tr("evidence")},
              rows);
        paragraph(m_words.discardsRestored());
    }

    double meanTime_h() const
    {
        double sum = 0.0;
        for (const core::Pair& pair : m_analysis.pairs)
            sum += pair.time_h;
        return m_analysis.pairs.empty() ? 0.0 : sum / static_cast<double>(m_analysis.pairs.size());
    }

    QString runConsumption(std::size_t index) const
    {
        return m_words.units().consumptionText(core::lPer100km(m_study.runs[index]).value_or(0.0),
                                               3);
    }

    void pairs()
    {
        heading(tr("2. Pairs"));
        paragraph(tr("An out run and a return run of one block make a pair: what the wind and the "
                     "slope take one way they give back the other way, nearly. A pair's "
                     "consumption is its fuel over its distance, and m is the natural logarithm of "
                     "it in L/100 km (kWh/100 km for electric drive), so that a difference of m is "
                     "a ratio of consumption."));
        if (m_control)
            paragraph(tr("Here m is the logarithm of the pair's consumption over that of the "
                         "control vehicle, which drove in step."));
        if (m_analysis.pairs.empty()) {
            paragraph(tr("These runs make no pair."));
            return;
        }
        const bool fitted =
            m_analysis.headline && m_analysis.headline->fitted.size() == m_analysis.pairs.size();
        QStringList header{
            tr("pair"),      tr("runs"),    tr("block"), tr("with", "a configuration"),
            tr("x"),         tr("time, h"), tr("out"),   tr("return"),
            tr("both ways"), tr("m")};
        if (fitted)
            header << tr("fitted") << tr("residual");
        QList<QStringList> rows;
        for (std::size_t i = 0; i < m_analysis.pairs.size(); ++i) {
            const core::Pair& pair = m_analysis.pairs[i];
            QStringList row{
                whole(pair.number),
                tr("%1, %2", "two runs").arg(whole(pair.out_run), whole(pair.return_run)),
                whole(pair.block),
                nameShown(pair.configuration),
                pair.device ? whole(1) : whole(0),
                m_numbers.fixed(pair.time_h, 3),
                runConsumption(pair.out_index),
                runConsumption(pair.return_index),
                m_words.units().consumptionText(pair.l_per_100km, 3),
                log(pair.log)};
            if (fitted)
                row << log(m_analysis.headline->fitted[i])
                    << signedLog(m_analysis.headline->residuals[i]);
            rows << row;
        }
        table(header, rows, true);
        paragraph(
            tr("Consumption is in %1, time in hours since the first run's start; x is 1 with "
               "%2 and 0 with %3.")
                .arg(m_words.units().consumptionUnit(), m_words.device(), m_words.baseline()));
        if (!m_analysis.unpaired.empty()) {
            QStringList numbers;
            for (const int run : m_analysis.unpaired)
                numbers << whole(run);
            paragraph(tr("Counted runs without a partner within %1 minutes: %2.")
                          .arg(m_numbers.shortest(m_analysis.options.max_gap_min),
                               listed(m_words.language(), numbers)));
        }
    }

    void model()
    {
        const core::Headline& headline = *m_analysis.headline;
        const bool closed = m_analysis.design == core::Design::closed;
        heading(tr("3. Effect and drift"));
        if (closed && m_analysis.days <= 1) {
            paragraph(tr("The day drifts: engine, tyres and road grow warmer, the wind changes. "
                         "Because the baseline was driven before and after, a straight drift can "
                         "be told from the effect. Least squares finds the three numbers that "
                         "leave the smallest sum of squared residuals:"));
            formula(tr("m = μ + δ·x + β·(t − %1 h)").arg(m_numbers.fixed(meanTime_h(), 3)));
        } else if (closed) {
            paragraph(tr("Each day has a level of its own and, where the baseline was driven "
                         "before and after, a straight drift of its own; the effect δ is common to "
                         "all days. Least squares finds the numbers that leave the smallest sum of "
                         "squared residuals."));
        } else {
            paragraph(tr("There was one switch only, so a drift cannot be told from the effect, "
                         "and none is estimated. Least squares is then the difference of the two "
                         "means:"));
            formula(tr("m = μ + δ·x"));
        }
        if (!m_control && m_analysis.days <= 1)
            paragraph(
                tr("μ = %1: the baseline, %2 at the mean pair time.")
                    .arg(log(std::log(headline.baseline_l_per_100km)),
                         m_words.units().consumptionWithUnit(headline.baseline_l_per_100km, 3)));
        paragraph(tr("δ = %1: the effect. 100·(exp(δ) − 1) = %2.")
                      .arg(signedLog(headline.effect_log), pct(headline.effect_log)));
        if (headline.drift_log_per_h)
            paragraph(
                tr("β = %1 an hour: the drift, %2 an hour.")
                    .arg(signedLog(*headline.drift_log_per_h), pct(*headline.drift_log_per_h)));
    }

    void noise()
    {
        const core::Headline& headline = *m_analysis.headline;
        const double rss =
            std::accumulate(headline.residuals.begin(), headline.residuals.end(), 0.0,
                            [](double sum, double residual) { return sum + residual * residual; });
        heading(tr("4. Noise"));
        paragraph(tr("What the model leaves over is the noise of a pair. With %1 pairs and %2 "
                     "numbers found from them, %3 degrees of freedom are left to judge it by:")
                      .arg(whole(static_cast<double>(m_analysis.pairs.size())),
                           whole(static_cast<double>(m_analysis.pairs.size()) - headline.df),
                           m_numbers.shortest(headline.df)));
        formula(tr("s = √(sum of squared residuals ÷ degrees of freedom) = √(%1 ÷ %2) = %3")
                    .arg(m_numbers.significant(rss, 5), m_numbers.shortest(headline.df),
                         m_numbers.significant(headline.s, 5)));
        paragraph(tr("One pair scatters by %1\u00a0%.")
                      .arg(m_numbers.significant(core::pctFromLog(headline.s), 3)));
        formula(tr("standard error of δ = s·√v = %1 × %2 = %3")
                    .arg(m_numbers.significant(headline.s, 5),
                         m_numbers.significant(headline.sqrt_v, 5),
                         m_numbers.significant(headline.se_log, 5)));
        paragraph(tr("√v says how well this sequence of pairs can see an effect: it comes from "
                     "their configurations and times alone."));
    }

    void interval()
    {
        const core::Headline& headline = *m_analysis.headline;
        const double alpha = 1.0 - headline.confidence;
        const double wide = core::tQuantile(1.0 - 0.5 * alpha, headline.df);
        const double narrow = core::tQuantile(1.0 - alpha, headline.df);
        heading(tr("5. Intervals"));
        const QString se = m_numbers.significant(headline.se_log, 5);
        formula(tr("%1 interval: δ ± t·se = %2 ± %3 × %4 = %5 to %6, that is %7 to %8")
                    .arg(m_numbers.percent(headline.confidence), signedLog(headline.effect_log),
                         m_numbers.fixed(wide, 4), se, signedLog(headline.low_log),
                         signedLog(headline.high_log), pct(headline.low_log),
                         pct(headline.high_log)));
        formula(tr("%1 interval: δ ± t·se = %2 ± %3 × %4 = %5 to %6, that is %7 to %8")
                    .arg(m_numbers.percent(1.0 - 2.0 * alpha), signedLog(headline.effect_log),
                         m_numbers.fixed(narrow, 4), se, signedLog(headline.low_equivalence_log),
                         signedLog(headline.high_equivalence_log),
                         pct(headline.low_equivalence_log), pct(headline.high_equivalence_log)));
        paragraph(tr("t is the quantile of Student's distribution for %1 degrees of freedom, the "
                     "price for not knowing the noise beforehand. The second interval is that of "
                     "the two one-sided tests for “no difference as large as the margin” "
                     "(Schuirmann 1987).")
                      .arg(m_numbers.shortest(headline.df)));
        formula(
            tr("t = δ ÷ se = %1, %2").arg(m_numbers.fixed(headline.t, 3), m_numbers.p(headline.p)));
    }

    void verdictClass()
    {
        const core::Headline& headline = *m_analysis.headline;
        const QString margin = m_numbers.shortest(m_analysis.verdict.margin_pct);
        const QString wide = m_numbers.percent(headline.confidence);
        const QString narrow = m_numbers.percent(1.0 - 2.0 * (1.0 - headline.confidence));
        heading(tr("6. Verdict"));
        switch (m_analysis.verdict.cls) {
        case core::VerdictClass::less:
            paragraph(tr("The whole %1 interval lies below zero: %2 used less.")
                          .arg(wide, m_words.device()));
            break;
        case core::VerdictClass::more:
            paragraph(tr("The whole %1 interval lies above zero: %2 used more.")
                          .arg(wide, m_words.device()));
            break;
        case core::VerdictClass::equivalent:
            paragraph(tr("Zero lies inside the %1 interval, and the whole %2 interval lies inside "
                         "the margin of ±%3\u00a0%: no difference as large as that.")
                          .arg(wide, narrow, margin));
            break;
        case core::VerdictClass::undecided:
            paragraph(tr("Zero lies inside the %1 interval, and the %2 interval reaches beyond the "
                         "margin of ±%3\u00a0%: these runs cannot tell.")
                          .arg(wide, narrow, margin));
            break;
        case core::VerdictClass::none: break;
        }
        paragraph(m_words.whatItWouldTake());
        if (m_analysis.detectable)
            paragraph(m_words.detectable());
    }

    void reservations()
    {
        heading(tr("7. Reservations"));
        if (m_analysis.verdict.qualifiers.empty())
            paragraph(tr("The verdict carries no reservation: the companions that these runs allow "
                         "agree, no single pair decides it, and no check fails."));
        for (const core::Qualifier qualifier : m_analysis.verdict.qualifiers)
            paragraph(m_words.qualifier(qualifier));
        for (const core::Companion companion : wording::kCompanions)
            paragraph(m_words.companion(companion));
        if (m_analysis.leave_one_out)
            paragraph(m_words.leaveOneOut());
        for (const core::Note& note : m_analysis.notes)
            paragraph(m_words.note(note));
    }

    const core::Study& m_study;
    const core::Analysis& m_analysis;
    const Words& m_words;
    const NumberWords& m_numbers;
    bool m_control;
    QString m_html;
};

} // namespace

QString whyHtml(const ResultSet& result, const Words& words)
{
    return WhyText(result, words).html();
}

} // namespace bothways::app
