// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/bracket.h"

#include "core/effect/headline.h"
#include "core/effect/verdict.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace bothways::core {
namespace {

/// Weights of the block means in an estimate that is linear in them.
class BlockContrast {
public:
    explicit BlockContrast(const PreparedStudy& prepared)
        : m_blocks(prepared.design_blocks), m_weights(m_blocks.size(), 0.0)
    {
    }
    void add(std::size_t block, double weight) { m_weights[block] += weight; }

    std::optional<Interval> interval(const std::optional<WithinBlocks>& within, double terms,
                                     const AnalysisOptions& options) const
    {
        if (!within || terms == 0.0)
            return std::nullopt;
        double effect = 0.0, variance = 0.0;
        for (std::size_t b = 0; b < m_blocks.size(); ++b) {
            const double weight = m_weights[b] / terms;
            effect += weight * m_blocks[b].m;
            variance += weight * weight / static_cast<double>(m_blocks[b].pairs.size());
        }
        return intervalOf(effect, within->s * std::sqrt(variance), within->df, options);
    }

private:
    const std::vector<DesignBlock>& m_blocks;
    std::vector<double> m_weights;
};

/// Times and logs of one day's pairs about the means of their blocks.
class DayWithinBlocks {
public:
    void add(const PreparedStudy& prepared, const DesignBlock& block)
    {
        for (const std::size_t k : block.pairs) {
            const double t = prepared.pairs[k].time_h - block.t_h;
            m_tt += t * t;
            m_tm += t * (prepared.pairs[k].log - block.m);
            m_furthest = std::max(m_furthest, std::abs(prepared.pairs[k].time_h));
        }
    }
    /// What rounding alone leaves of times that are the same within each block is no spread.
    [[nodiscard]] bool hasSlope() const
    {
        constexpr double kRounding = 1e-12;
        return std::sqrt(m_tt) > kRounding * (1.0 + m_furthest);
    }
    [[nodiscard]] double slope() const { return hasSlope() ? m_tm / m_tt : 0.0; }

private:
    double m_tt = 0.0, m_tm = 0.0, m_furthest = 0.0;
};

} // namespace

std::optional<WithinBlocks> withinBlocks(const PreparedStudy& prepared)
{
    std::vector<DayWithinBlocks> days(static_cast<std::size_t>(prepared.days));
    for (const DesignBlock& block : prepared.design_blocks)
        days[static_cast<std::size_t>(block.day)].add(prepared, block);
    double squares = 0.0;
    int df = 0;
    for (const DesignBlock& block : prepared.design_blocks) {
        const double slope = days[static_cast<std::size_t>(block.day)].slope();
        df += static_cast<int>(block.pairs.size()) - 1;
        for (const std::size_t k : block.pairs) {
            const double residual =
                prepared.pairs[k].log - block.m - slope * (prepared.pairs[k].time_h - block.t_h);
            squares += residual * residual;
        }
    }
    for (const DayWithinBlocks& day : days)
        df -= day.hasSlope() ? 1 : 0;
    if (df < 1)
        return std::nullopt;
    const WithinBlocks within{std::sqrt(squares / df), df};
    return within.s >= kNoVariation ? std::optional(within) : std::nullopt;
}

std::optional<Interval> bracketOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    // Design blocks of one day alternate, so the neighbours of a B block are A blocks.
    const std::vector<DesignBlock>& blocks = prepared.design_blocks;
    BlockContrast contrast(prepared);
    double bracketed = 0.0;
    for (std::size_t b = 1; b + 1 < blocks.size(); ++b) {
        const DesignBlock &before = blocks[b - 1], &block = blocks[b], &after = blocks[b + 1];
        const double span = after.t_h - before.t_h;
        if (!block.device || before.day != block.day || after.day != block.day || !(span > 0.0))
            continue;
        const double share = (block.t_h - before.t_h) / span;
        contrast.add(b, 1.0);
        contrast.add(b - 1, share - 1.0);
        contrast.add(b + 1, -share);
        bracketed += 1.0;
    }
    return contrast.interval(withinBlocks(prepared), bracketed, options);
}

std::optional<Interval> baselineShiftOf(const PreparedStudy& prepared,
                                        const AnalysisOptions& options)
{
    const std::vector<DesignBlock>& blocks = prepared.design_blocks;
    BlockContrast contrast(prepared);
    double days = 0.0;
    for (int day = 0; day < prepared.days; ++day) {
        std::vector<std::size_t> baseline;
        for (std::size_t b = 0; b < blocks.size(); ++b)
            if (!blocks[b].device && blocks[b].day == day)
                baseline.push_back(b);
        if (baseline.size() < 2)
            continue;
        contrast.add(baseline.back(), 1.0);
        contrast.add(baseline.front(), -1.0);
        days += 1.0;
    }
    return contrast.interval(withinBlocks(prepared), days, options);
}

} // namespace bothways::core
