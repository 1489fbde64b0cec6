// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/prepared_study.h"

#include "core/pairing.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace bothways::core {
namespace {

constexpr double kUsPerHour = 3.6e9;
constexpr double kUsPerMs = 1e3;
constexpr double kMsPerMin = 60e3;

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
        std::size_t counted = 0, with = 0, electric = 0;
        for (const std::size_t index : m_order) {
            if (!counts(index))
                continue;
            const Run& run = m_study.runs[index];
            ++counted;
            with += usable(controlLPer100km(run)) ? 1U : 0U;
            electric +=
                run.consumption && run.consumption->unit == ConsumptionUnit::kwhPer100km ? 1U : 0U;
        }
        m_prepared.counted = static_cast<int>(counted);
        m_prepared.electric =
            counted > 0 ? electric == counted : m_study.properties.fuel == Fuel::electric;
        if (electric > 0 && electric < counted)
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

    void matchPairs()
    {
        m_mate.assign(m_prepared.runs.size(), kAlone);
        m_fixed.assign(m_prepared.runs.size(), false);
        tieFixedPairs();
        std::size_t first = 0;
        while (first < m_prepared.runs.size()) {
            std::size_t end = first;
            while (end < m_prepared.runs.size() &&
                   m_prepared.runs[end].block == m_prepared.runs[first].block)
                ++end;
            matchBlock(first, end);
            first = end;
        }
    }

    void tie(std::size_t a, std::size_t b)
    {
        m_mate[a] = b;
        m_mate[b] = a;
    }

    /// A mark on exactly two runs of the study, an out and a return of one block, ties them. While
    /// one of them does not count the mark rests.
    void tieFixedPairs()
    {
        std::map<std::string_view, std::vector<std::size_t>> marked;
        for (std::size_t index = 0; index < m_study.runs.size(); ++index)
            if (!m_study.runs[index].pair_mark.empty())
                marked[m_study.runs[index].pair_mark].push_back(index);
        if (marked.empty())
            return;
        std::map<std::size_t, std::size_t> coded;
        for (std::size_t k = 0; k < m_prepared.runs.size(); ++k)
            coded[m_prepared.runs[k].index] = k;
        for (const auto& [mark, indexes] : marked) {
            if (indexes.size() == 2 && (!counts(indexes[0]) || !counts(indexes[1])))
                continue;
            if (indexes.size() == 2 && coded.contains(indexes[0]) && coded.contains(indexes[1])) {
                const std::size_t a = coded[indexes[0]], b = coded[indexes[1]];
                const CodedRun &one = m_prepared.runs[a], &other = m_prepared.runs[b];
                if (one.block == other.block && one.out != other.out) {
                    tie(a, b);
                    m_fixed[a] = m_fixed[b] = true;
                    continue;
                }
            }
            m_prepared.notes.push_back({NoteKind::pairMarkIgnored, std::string(mark)});
        }
    }

    void matchBlock(std::size_t first, std::size_t end)
    {
        std::vector<PairingPoint> outs, returns;
        for (std::size_t k = first; k < end; ++k) {
            if (m_mate[k] != kAlone)
                continue;
            const auto mid_ms = static_cast<std::int64_t>(
                std::llround(static_cast<double>(m_prepared.runs[k].mid_us) / kUsPerMs));
            (m_prepared.runs[k].out ? outs : returns).push_back({mid_ms, k});
        }
        const double widest = std::min(m_options.max_gap_min * kMsPerMin, 1e15);
        const Matching matching =
            matchRuns(std::move(outs), std::move(returns),
                      widest > 0.0 ? static_cast<std::int64_t>(std::llround(widest)) : 0);
        for (const MatchedPair& pair : matching.pairs)
            tie(pair.out, pair.back);
        if (!matching.exact)
            m_prepared.notes.push_back(
                {NoteKind::pairingNotExact, std::to_string(m_prepared.runs[first].block)});
    }

    Pair makePair(std::size_t k, std::size_t l) const
    {
        const CodedRun &out = m_prepared.runs[k], &back = m_prepared.runs[l];
        Pair pair;
        pair.out_index = out.index;
        pair.return_index = back.index;
        pair.out_run = out.number;
        pair.return_run = back.number;
        pair.block = out.block;
        pair.day = out.day;
        pair.device = out.device;
        pair.configuration = out.device ? m_prepared.device : m_prepared.baseline;
        pair.time_h = static_cast<double>(out.mid_us + back.mid_us) / 2.0 / kUsPerHour;
        const bool weighed = out.distance_km && back.distance_km;
        const double d1 = weighed ? *out.distance_km : 1.0;
        const double d2 = weighed ? *back.distance_km : 1.0;
        const auto together = [&](double c1, double c2) { return (c1 * d1 + c2 * d2) / (d1 + d2); };
        pair.l_per_100km = together(out.l_per_100km, back.l_per_100km);
        pair.log = std::log(pair.l_per_100km);
        if (m_prepared.control)
            pair.log -= std::log(together(*out.control_l_per_100km, *back.control_l_per_100km));
        pair.mixed_setting =
            !sameSetting(m_study.runs[out.index].setting, m_study.runs[back.index].setting);
        pair.fixed = m_fixed[k];
        return pair;
    }

    /// By pair time, ties by the earlier run.
    void numberPairs()
    {
        struct Place {
            std::int64_t twice_us;
            std::size_t earlier, out, back;
        };
        std::vector<Place> places;
        for (std::size_t k = 0; k < m_mate.size(); ++k)
            if (m_prepared.runs[k].out && m_mate[k] != kAlone)
                places.push_back({m_prepared.runs[k].mid_us + m_prepared.runs[m_mate[k]].mid_us,
                                  std::min(k, m_mate[k]), k, m_mate[k]});
        std::sort(places.begin(), places.end(), [](const Place& a, const Place& b) {
            return a.twice_us != b.twice_us ? a.twice_us < b.twice_us : a.earlier < b.earlier;
        });
        for (const Place& place : places) {
            Pair pair = makePair(place.out, place.back);
            pair.number = static_cast<int>(m_prepared.pairs.size()) + 1;
            m_prepared.runs[place.out].pair = m_prepared.runs[place.back].pair = pair.number;
            ++m_prepared.blocks[static_cast<std::size_t>(pair.block) - 1].pairs;
            m_prepared.pairs.push_back(std::move(pair));
            m_prepared.pairRuns.insert(m_prepared.pairRuns.end(), {place.out, place.back});
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
        for (const int blocks : blocksOfDay) {
            m_prepared.day_closed.push_back(blocks >= 3);
            closed = closed || blocks >= 3;
        }
        if (m_prepared.pairsOf(false) > 0 && m_prepared.pairsOf(true) > 0)
            m_prepared.design = closed ? Design::closed : Design::open;
    }

    static constexpr std::size_t kAlone = static_cast<std::size_t>(-1);

    const Study& m_study;
    const AnalysisOptions& m_options;
    const PrepareOptions& m_which;
    std::vector<std::size_t> m_order; ///< places in Study::runs, in order of start
    std::string m_out, m_return;
    std::vector<std::size_t> m_mate; ///< a coded run each
    std::vector<bool> m_fixed;
    PreparedStudy m_prepared;
};

} // namespace

int PreparedStudy::pairsOf(bool ofDevice) const
{
    return static_cast<int>(std::count_if(
        pairs.begin(), pairs.end(), [&](const Pair& pair) { return pair.device == ofDevice; }));
}

PreparedStudy prepareStudy(const Study& study, const AnalysisOptions& options,
                           const PrepareOptions& which)
{
    return Preparation(study, options, which).run();
}

} // namespace bothways::core
