// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/prepared_study.h"

#include "core/effect/block_pairing.h"
#include "core/study/fuel.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <span>
#include <string_view>
#include <utility>

namespace bothways::core {
namespace {

bool usable(std::optional<double> consumption)
{
    return consumption && std::isfinite(*consumption) && *consumption > 0.0;
}

/// Everything that prepareStudy() does, a step a function.
class Preparation {
public:
    Preparation(const Study& study, const AnalysisOptions& options, const PrepareOptions& which)
        : m_study(study), m_options(options), m_which(which)
    {
        m_order.resize(study.runs.size());
        std::iota(m_order.begin(), m_order.end(), std::size_t{0});
        std::stable_sort(m_order.begin(), m_order.end(), [&](std::size_t a, std::size_t b) {
            return study.runs[a].start.us < study.runs[b].start.us;
        });
    }

    PreparedStudy run()
    {
        nameConfigurations();
        decideControl();
        codeRuns();
        tieByHand();
        matchPairs();
        numberPairs();
        listUnpaired();
        formDesign();
        return std::move(m_prepared);
    }

private:
    [[nodiscard]] bool counts(std::size_t index) const
    {
        return m_study.runs[index].counted() ||
               std::binary_search(m_which.restored.begin(), m_which.restored.end(), index);
    }

    void nameConfigurations()
    {
        m_prepared.baseline = baselineName(m_study, m_options.baseline);
        for (const std::string& name : configurations(m_study))
            if (m_prepared.device.empty() && !sameWord(name, m_prepared.baseline))
                m_prepared.device = name;
        const std::vector<std::string> both = directions(m_study);
        if (!both.empty())
            m_out = both[0];
        if (both.size() > 1)
            m_return = both[1];
    }

    void decideControl()
    {
        std::size_t counted = 0, with = 0, fuel = 0, electric = 0;
        for (const std::size_t index : m_order) {
            if (!counts(index))
                continue;
            const Run& run = m_study.runs[index];
            ++counted;
            with += usable(controlLPer100km(run)) ? 1U : 0U;
            if (run.consumption)
                ++(run.consumption->unit == ConsumptionUnit::kwhPer100km ? electric : fuel);
        }
        m_prepared.counted = static_cast<int>(counted);
        m_prepared.electric = isElectric(m_study);
        if (electric > 0 && fuel > 0)
            m_prepared.notes.push_back({NoteKind::mixedUnits, {}});
        m_prepared.control = m_which.control.value_or(counted > 0 && with == counted);
        if (m_prepared.control)
            m_prepared.notes.push_back({NoteKind::controlUsed, {}});
        else if (with > 0)
            m_prepared.notes.push_back({NoteKind::controlIncomplete, {}});
    }

    /// Days and blocks are formed over all runs, discarded ones too.
    void codeRuns()
    {
        m_blockOf.assign(m_study.runs.size(), 0);
        const Run* before = nullptr;
        for (const std::size_t index : m_order) {
            const Run& run = m_study.runs[index];
            const bool newDay = before && run.start.us - before->start.us > kNewDay_us;
            if (!before || newDay || !sameWord(run.configuration, before->configuration)) {
                Block block;
                block.block = static_cast<int>(m_prepared.blocks.size()) + 1;
                block.device = !sameWord(run.configuration, m_prepared.baseline);
                block.configuration = run.configuration;
                block.day = before ? m_prepared.blocks.back().day + (newDay ? 1 : 0) : 0;
                m_prepared.blocks.push_back(std::move(block));
            }
            before = &run;
            m_blockOf[index] = m_prepared.blocks.back().block;
            if (counts(index)) {
                ++m_prepared.blocks.back().runs;
                codeRun(index, m_prepared.blocks.back());
            }
        }
        m_prepared.days = m_prepared.blocks.empty() ? 0 : m_prepared.blocks.back().day + 1;
    }

    void codeRun(std::size_t index, const Block& block)
    {
        const Run& run = m_study.runs[index];
        const auto consumption = lPer100km(run);
        const auto control = m_prepared.control ? controlLPer100km(run) : std::nullopt;
        const bool known =
            sameWord(run.configuration, block.device ? m_prepared.device : m_prepared.baseline) &&
            (sameWord(run.direction, m_out) || sameWord(run.direction, m_return));
        if (!known || !usable(consumption) || (m_prepared.control && !usable(control)))
            return;
        CodedRun coded;
        coded.index = index;
        coded.number = run.number;
        coded.out = sameWord(run.direction, m_out);
        coded.device = block.device;
        coded.day = block.day;
        coded.block = block.block;
        coded.mid_us = midTime_us(run) - m_study.runs[m_order.front()].start.us;
        coded.t_h = static_cast<double>(coded.mid_us) / kUsPerHour;
        coded.l_per_100km = *consumption;
        coded.control_l_per_100km = control;
        coded.y = std::log(*consumption) - (control ? std::log(*control) : 0.0);
        if (run.distance_km && std::isfinite(*run.distance_km) && *run.distance_km > 0.0)
            coded.distance_km = run.distance_km;
        m_prepared.runs.push_back(std::move(coded));
    }

    /// A mark on exactly two runs of the study, an out and a return of one block, ties them.
    void tieByHand()
    {
        std::map<std::string_view, std::vector<std::size_t>> marked;
        for (const std::size_t index : m_order)
            if (!m_study.runs[index].pair_mark.empty())
                marked[m_study.runs[index].pair_mark].push_back(index);
        if (marked.empty())
            return;
        std::vector<std::size_t>& tied = m_prepared.tied_with;
        tied.assign(m_study.runs.size(), kNotTied);
        for (const auto& [mark, indexes] : marked) {
            const std::size_t a = indexes.front(), b = indexes.back();
            if (indexes.size() == 2 && m_blockOf[a] == m_blockOf[b] &&
                sameWord(m_study.runs[a].direction, m_out) !=
                    sameWord(m_study.runs[b].direction, m_out)) {
                tied[a] = b;
                tied[b] = a;
            } else {
                m_prepared.notes.push_back(
                    {NoteKind::pairMarkIgnored, Message::verbatim(std::string(mark))});
            }
        }
    }

    void matchPairs()
    {
        const std::vector<CodedRun>& runs = m_prepared.runs;
        for (std::size_t first = 0, end = 0; first < runs.size(); first = end) {
            while (end < runs.size() && runs[end].block == runs[first].block)
                ++end;
            const BlockPairing pairing = pairBlock(std::span(runs).subspan(first, end - first),
                                                   m_prepared.tied_with, m_options.max_gap_min);
            for (const BlockPair& pair : pairing.pairs)
                m_matched.push_back({first + pair.out, first + pair.back, pair.fixed});
            if (!pairing.exact)
                m_prepared.notes.push_back(
                    {NoteKind::pairingNotExact, message("{}"_t, runs[first].block)});
        }
    }

    Pair makePair(const BlockPair& matched) const
    {
        const CodedRun &out = m_prepared.runs[matched.out], &back = m_prepared.runs[matched.back];
        const PairValue value = pairValue(out, back);
        Pair pair;
        pair.out_index = out.index;
        pair.return_index = back.index;
        pair.out_run = out.number;
        pair.return_run = back.number;
        pair.block = out.block;
        pair.day = out.day;
        pair.device = out.device;
        pair.configuration = out.device ? m_prepared.device : m_prepared.baseline;
        pair.time_h = value.time_h;
        pair.l_per_100km = value.l_per_100km;
        pair.log = value.log;
        pair.mixed_setting =
            !sameSetting(m_study.runs[out.index].setting, m_study.runs[back.index].setting);
        pair.fixed = matched.fixed;
        return pair;
    }

    /// By pair time, ties by the earlier run.
    void numberPairs()
    {
        std::vector<CodedRun>& runs = m_prepared.runs;
        const auto key = [&](const BlockPair& pair) {
            return std::pair(runs[pair.out].mid_us + runs[pair.back].mid_us,
                             std::min(pair.out, pair.back));
        };
        std::sort(m_matched.begin(), m_matched.end(),
                  [&](const BlockPair& a, const BlockPair& b) { return key(a) < key(b); });
        for (const BlockPair& matched : m_matched) {
            Pair pair = makePair(matched);
            pair.number = static_cast<int>(m_prepared.pairs.size()) + 1;
            runs[matched.out].pair = runs[matched.back].pair = pair.number;
            ++m_prepared.blocks[static_cast<std::size_t>(pair.block) - 1].pairs;
            m_prepared.pairs.push_back(std::move(pair));
            m_prepared.pairRuns.insert(m_prepared.pairRuns.end(), {matched.out, matched.back});
        }
    }

    void listUnpaired()
    {
        std::size_t k = 0; // next coded run; both go in order of start
        for (const std::size_t index : m_order) {
            const bool coded = k < m_prepared.runs.size() && m_prepared.runs[k].index == index;
            const bool paired = coded && m_prepared.runs[k].pair != 0;
            k += coded ? 1U : 0U;
            if (counts(index) && !paired)
                m_prepared.unpaired.push_back(m_study.runs[index].number);
        }
    }

    void formDesign()
    {
        std::vector<std::vector<std::size_t>> pairsOfBlock(m_prepared.blocks.size());
        for (std::size_t k = 0; k < m_prepared.pairs.size(); ++k)
            pairsOfBlock[static_cast<std::size_t>(m_prepared.pairs[k].block) - 1].push_back(k);
        std::vector<DesignBlock>& merged = m_prepared.design_blocks;
        for (const Block& block : m_prepared.blocks) {
            const auto& pairs = pairsOfBlock[static_cast<std::size_t>(block.block) - 1];
            if (pairs.empty())
                continue;
            if (merged.empty() || merged.back().day != block.day ||
                merged.back().device != block.device) {
                merged.emplace_back();
                merged.back().device = block.device;
                merged.back().day = block.day;
            }
            merged.back().blocks.push_back(block.block);
            merged.back().pairs.insert(merged.back().pairs.end(), pairs.begin(), pairs.end());
        }
        std::vector<int> blocksOfDay(static_cast<std::size_t>(m_prepared.days), 0);
        for (DesignBlock& block : merged) {
            std::sort(block.pairs.begin(), block.pairs.end());
            for (const std::size_t k : block.pairs) {
                block.m += m_prepared.pairs[k].log;
                block.t_h += m_prepared.pairs[k].time_h;
            }
            block.m /= static_cast<double>(block.pairs.size());
            block.t_h /= static_cast<double>(block.pairs.size());
            ++blocksOfDay[static_cast<std::size_t>(block.day)];
        }
        bool closed = false;
        for (std::size_t day = 0; day < blocksOfDay.size(); ++day) {
            if (blocksOfDay[day] > 0)
                m_prepared.days_with_pairs.push_back(static_cast<int>(day));
            closed = closed || blocksOfDay[day] >= kClosedBlocks;
        }
        if (m_prepared.pairsOf(false) > 0 && m_prepared.pairsOf(true) > 0)
            m_prepared.design = closed ? Design::closed : Design::open;
    }

    const Study& m_study;
    const AnalysisOptions& m_options;
    const PrepareOptions& m_which;
    std::vector<std::size_t> m_order; ///< places in Study::runs, in order of start
    std::string m_out, m_return;
    std::vector<int> m_blockOf;       ///< a run each of Study::runs
    std::vector<BlockPair> m_matched; ///< places in PreparedStudy::runs
    PreparedStudy m_prepared;
};

} // namespace

int PreparedStudy::pairsOf(bool ofDevice) const
{
    return static_cast<int>(std::count_if(
        pairs.begin(), pairs.end(), [&](const Pair& pair) { return pair.device == ofDevice; }));
}

std::vector<std::size_t> PreparedStudy::runsOfDaysWithPairs() const
{
    std::vector<std::size_t> places;
    places.reserve(runs.size());
    for (std::size_t k = 0; k < runs.size(); ++k)
        if (std::binary_search(days_with_pairs.begin(), days_with_pairs.end(), runs[k].day))
            places.push_back(k);
    return places;
}

PreparedStudy prepareStudy(const Study& study, const AnalysisOptions& options,
                           const PrepareOptions& which)
{
    return Preparation(study, options, which).run();
}

} // namespace bothways::core
