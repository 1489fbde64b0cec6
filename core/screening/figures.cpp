// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/over_time.h"
#include "core/screening/pattern.h"
#include "core/screening/rules.h"
#include "core/study/parts.h"

#include <algorithm>
#include <cmath>

// What a setting is chosen by: the device's output and speed at road speed.
namespace bothways::core::rules {
namespace {

/// Samples of a channel while the vehicle drove at its target, with the time that each stands for.
struct AtRoadSpeed {
    double mean = 0.0, highest = 0.0, highest_second = 0.0;
};

std::optional<AtRoadSpeed> atRoadSpeed(RunContext& context, const Channel& channel)
{
    const Channel* road = context.channels.find("road_speed_kmh");
    const auto target_kmh = context.limit("road_speed.target_kmh");
    const double pct = context.limitWithDefault("road_speed.pct");
    std::optional<Held> road_kmh;
    if (road && target_kmh)
        road_kmh.emplace(*road);
    const auto time_s = channel.time_s();
    const auto values = channel.value();
    const std::vector<double> weights = weightsOverTime(time_s, longestGap_s(channel.interval_s));
    double sum = 0.0, weight = 0.0;
    double second = -1.0, second_sum = 0.0, second_weight = 0.0;
    std::optional<AtRoadSpeed> found;
    const auto take = [&](std::size_t i) {
        if (!found)
            found = {0.0, values[i], -1e100};
        found->highest = std::max(found->highest, values[i]);
        sum += weights[i] * values[i];
        weight += weights[i];
        if (const double its = std::floor(time_s[i] + kTimeGrace_s); its != second) {
            second = its;
            second_sum = second_weight = 0.0;
        }
        second_sum += weights[i] * values[i];
        second_weight += weights[i];
        // A second that is hardly begun says little of itself.
        if (second_weight >= 0.5 || second_weight >= channel.interval_s)
            found->highest_second = std::max(found->highest_second, second_sum / second_weight);
    };
    for (std::size_t i = 0; i < values.size(); ++i)
        if (!road_kmh || std::abs(road_kmh->at(time_s[i]) / *target_kmh - 1.0) <= pct / 100.0)
            take(i);
    if (!found || weight <= 0.0)
        return std::nullopt;
    found->mean = sum / weight;
    if (found->highest_second < -1e99)
        found->highest_second = found->highest;
    return found;
}

/// Of a part; of the whole device where `part` is empty.
DeviceFigures recordedFigures(RunContext& context, const std::string& part)
{
    DeviceFigures figures;
    if (const Channel* output = context.channels.find(ofPart("output_w", part)))
        if (const auto found = atRoadSpeed(context, *output)) {
            figures.mean_output_w = found->mean;
            figures.highest_output_w = found->highest_second;
        }
    if (const Channel* rotor = context.channels.find(ofPart("rotor_rpm", part)))
        if (const auto found = atRoadSpeed(context, *rotor)) {
            figures.mean_rotor_rpm = found->mean;
            figures.highest_rotor_rpm = found->highest;
        }
    return figures;
}

/// What the sheet says, where the recording does not.
void fillFromSheet(const Run& run, std::map<std::string, DeviceFigures, std::less<>>& figures)
{
    const auto fill = [](std::optional<double>& figure, const std::optional<double>& noted) {
        if (!figure)
            figure = noted;
    };
    fill(figures[""].mean_output_w, run.output_w);
    fill(figures[""].highest_rotor_rpm, run.rotor_rpm_max);
    for (const NotedPart& noted : notedParts(run, "output_w"))
        fill(figures[noted.part].mean_output_w, noted.value);
    for (const NotedPart& noted : notedParts(run, "rotor_rpm_max"))
        fill(figures[noted.part].highest_rotor_rpm, noted.value);
}

/// Adds up means and takes the highest.
class Gathered {
public:
    void add(const DeviceFigures& run)
    {
        ++m_runs;
        const auto sum = [](std::pair<double, int>& all, const std::optional<double>& one) {
            all.first += one.value_or(0.0);
            all.second += one ? 1 : 0;
        };
        sum(m_output, run.mean_output_w);
        sum(m_rotor, run.mean_rotor_rpm);
        m_highest_w = std::max(m_highest_w, run.highest_output_w);
        m_highest_rpm = std::max(m_highest_rpm, run.highest_rotor_rpm);
    }
    [[nodiscard]] int runs() const { return m_runs; }
    [[nodiscard]] DeviceFigures figures() const
    {
        const auto mean = [](const std::pair<double, int>& all) {
            return all.second > 0 ? std::optional(all.first / all.second) : std::nullopt;
        };
        return {mean(m_output), m_highest_w, mean(m_rotor), m_highest_rpm};
    }

private:
    int m_runs = 0;
    std::pair<double, int> m_output{0.0, 0}, m_rotor{0.0, 0};
    std::optional<double> m_highest_w, m_highest_rpm;
};

} // namespace

void deviceFigures(RunContext& context)
{
    auto& figures = context.leftover.figures;
    if (context.channels.hasTrace()) {
        figures[""] = recordedFigures(context, "");
        for (const std::string& part : context.channels.partsOf({"output_w", "rotor_rpm"}))
            figures[part] = recordedFigures(context, part);
    }
    fillFromSheet(context.run(), figures);
    std::erase_if(figures, [](const auto& one) { return one.second == DeviceFigures{}; });
}

std::vector<SettingFigures> figuresBySetting(const Study& study,
                                             const std::vector<Leftover>& leftovers)
{
    struct Group {
        const Run* first;
        std::map<std::string, Gathered> parts;
    };
    std::vector<Group> groups;
    for (std::size_t i = 0; i < study.runs.size(); ++i) {
        const Run& run = study.runs[i];
        if (!run.counted() || leftovers[i].figures.empty())
            continue;
        auto its = std::find_if(groups.begin(), groups.end(), [&](const Group& group) {
            return sameWord(group.first->configuration, run.configuration) &&
                   sameSetting(group.first->setting, run.setting);
        });
        if (its == groups.end())
            its = groups.insert(groups.end(), Group{&run, {}});
        for (const auto& [part, figures] : leftovers[i].figures)
            its->parts[part].add(figures);
    }
    std::vector<SettingFigures> all;
    for (const Group& group : groups)
        for (const auto& [part, gathered] : group.parts)
            all.push_back({group.first->configuration, group.first->setting, part, gathered.runs(),
                           gathered.figures()});
    return all;
}

} // namespace bothways::core::rules
