// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_drawing.h"
#include "app/output/report_pictures.h"
#include "app/wording/findings.h"

#include <cstdint>
#include <limits>

namespace bothways::app::report {
namespace {

using core::Analysis;

/// Where a time stands along the bottom: hours of one day; with several days the number of the
/// pair, for a night between two mornings would leave nothing to see of either.
class Along {
public:
    Along(const core::Study& study, const Analysis& analysis)
        : m_pairs(analysis.pairs),
          m_origin_us(study.runs.front().start.us),
          m_byNumber(analysis.days > 1)
    {
    }
    bool byNumber() const { return m_byNumber; }
    double of(const core::Pair& pair) const { return m_byNumber ? pair.number : pair.time_h; }
    double of(const core::Run& run) const
    {
        const double time_h = static_cast<double>(core::midTime_us(run) - m_origin_us) / 3.6e9;
        if (!m_byNumber)
            return time_h;
        std::size_t before = 0; // pairs are in order of time
        while (before < m_pairs.size() && m_pairs[before].time_h <= time_h)
            ++before;
        return static_cast<double>(before) + 0.5;
    }

private:
    const std::vector<core::Pair>& m_pairs;
    std::int64_t m_origin_us;
    bool m_byNumber;
};

struct Extent {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    void take(double value)
    {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

class PairsDrawing {
public:
    PairsDrawing(const Language& in, const core::Study& study, const Analysis& analysis,
                 wording::ShownUnit unit)
        : m_in(in), m_study(study), m_analysis(analysis), m_unit(unit), m_along(study, analysis)
    {
        for (const core::Note& note : analysis.notes)
            m_control = m_control || note.kind == core::NoteKind::controlUsed;
    }

    Picture take()
    {
        measure();
        const Axis x(m_x.low, m_x.high, kLeft, kRight);
        const Axis y(m_y.low, m_y.high, kBottom, kTop);
        Drawing picture(m_in, kBottom + kAxisHeight,
                        m_in.say("Consumption of {} pairs in {} blocks, {} discarded runs"_t,
                                 m_analysis.pairs.size(), m_analysis.blocks.size(),
                                 m_analysis.discarded));
        shadeBlocks(picture, x);
        picture.leftAxis(y, kTop, kBottom);
        picture.words(4.0, 14.0, Anchor::start,
                      wording::unitText(m_in, m_unit, m_analysis.electric));
        drawDiscards(picture, x, y);
        drawFit(picture, x, y);
        drawPairs(picture, x, y);
        picture.bottomAxis(x, kLeft, kRight,
                           m_in.say(m_along.byNumber()
                                        ? "pairs in order of time, days side by side"_t
                                        : "hours since the first run began"_t));
        return std::move(picture).take();
    }

private:
    static constexpr double kTop = 24.0, kBottom = 282.0;

    double shown(double l_per_100km) const
    {
        return wording::shownConsumption(l_per_100km, m_unit, m_analysis.electric);
    }

    void measure()
    {
        for (const core::Pair& pair : m_analysis.pairs) {
            m_x.take(m_along.of(pair));
            m_y.take(shown(pair.l_per_100km));
        }
        // Discards are shown at the consumption they had; one far off must not flatten the rest.
        const double span = std::max(m_y.high - m_y.low, 0.02 * m_y.high);
        const Extent pairs = m_y;
        for (const core::Run& run : m_study.runs)
            if (const auto c = core::lPer100km(run); run.discard && c) {
                m_x.take(m_along.of(run));
                m_y.take(std::clamp(shown(*c), pairs.low - span, pairs.high + span));
            }
    }

    void shadeBlocks(Drawing& picture, const Axis& x) const
    {
        for (const core::Block& block : m_analysis.blocks) {
            Extent wide;
            for (const core::Pair& pair : m_analysis.pairs)
                if (pair.block == block.block)
                    wide.take(x.at(m_along.of(pair)));
            if (wide.low > wide.high)
                continue;
            const double room = m_along.byNumber() ? 6.0 : 12.0;
            const double from = std::max(wide.low - room, kLeft);
            const double to = std::min(wide.high + room, kRight);
            picture.box(from, kTop, to - from, kBottom - kTop,
                        block.device ? Ink::shadeDevice : Ink::shadeBaseline);
            picture.words(0.5 * (from + to), kTop - 6.0, Anchor::middle, block.configuration);
        }
    }

    void drawDiscards(Drawing& picture, const Axis& x, const Axis& y) const
    {
        for (const core::Run& run : m_study.runs) {
            const auto c = core::lPer100km(run);
            if (!run.discard || !c)
                continue;
            const double across = x.at(m_along.of(run));
            const double value = shown(*c);
            const double up = y.at(std::clamp(value, m_y.low, m_y.high));
            if (value < m_y.low || value > m_y.high)
                picture.arrowhead(across, value > m_y.high ? up - 13.0 : up + 13.0, 0.0,
                                  value > m_y.high ? -1.0 : 1.0, Ink::thin);
            std::string says = m_in.say("run {}, discarded: {}"_t, run.number,
                                        wording::reasonWord(m_in, run.discard->reason));
            if (core::sameWord(run.configuration, m_analysis.baseline))
                picture.dot(across, up, Ink::discardedBaseline, std::move(says));
            else
                picture.square(across, up, Ink::discardedDevice, std::move(says));
        }
    }

    /// The model through the pairs of each block. With a control vehicle it is about ratios.
    void drawFit(Drawing& picture, const Axis& x, const Axis& y) const
    {
        if (!m_analysis.headline || m_control)
            return;
        const std::vector<double>& fitted = m_analysis.headline->fitted;
        for (std::size_t i = 1; i < m_analysis.pairs.size() && i < fitted.size(); ++i) {
            const core::Pair& from = m_analysis.pairs[i - 1];
            const core::Pair& to = m_analysis.pairs[i];
            if (from.block == to.block)
                picture.line(x.at(m_along.of(from)), y.at(shown(std::exp(fitted[i - 1]))),
                             x.at(m_along.of(to)), y.at(shown(std::exp(fitted[i]))), Ink::fit);
        }
    }

    void drawPairs(Drawing& picture, const Axis& x, const Axis& y) const
    {
        for (const core::Pair& pair : m_analysis.pairs) {
            const double across = x.at(m_along.of(pair)), up = y.at(shown(pair.l_per_100km));
            std::string says = m_in.say("pair {}: runs {} and {}, {}"_t, pair.number, pair.out_run,
                                        pair.return_run, fixed(m_in, shown(pair.l_per_100km), 3));
            if (pair.device)
                picture.square(across, up, Ink::device, std::move(says));
            else
                picture.dot(across, up, Ink::baseline, std::move(says));
        }
    }

    const Language& m_in;
    const core::Study& m_study;
    const Analysis& m_analysis;
    wording::ShownUnit m_unit;
    Along m_along;
    bool m_control = false;
    Extent m_x, m_y;
};

} // namespace

Picture pairsPicture(const Language& in, const core::Study& study, const Analysis& analysis,
                     wording::ShownUnit unit)
{
    if (analysis.pairs.empty() || study.runs.empty())
        return {};
    return PairsDrawing(in, study, analysis, unit).take();
}

} // namespace bothways::app::report
