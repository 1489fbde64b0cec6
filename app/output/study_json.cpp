// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_json.h"

#include "app/output/json_text.h"
#include "app/output/version.h"
#include "core/screening/odd_runs.h"
#include "core/study/clock.h"
#include "core/study/properties.h"
#include "storage/study/history_message.h"

#include <algorithm>
#include <iterator>
#include <map>

namespace bothways::app {
namespace {

/// Puts a key in only where there is a value: a run has some thirty columns, mostly empty.
template <class T>
void put(Json& json, const char* key, const std::optional<T>& value)
{
    if (value)
        json[key] = *value;
}

void put(Json& json, const char* key, const std::string& value)
{
    if (!value.empty())
        json[key] = value;
}

Json marksJson(const std::vector<core::Mark>& marks)
{
    Json json = Json::array();
    for (const core::Mark& mark : marks)
        json.push_back({{"at_s", mark.at_s}, {"word", mark.word}, {"words", mark.words}});
    return json;
}

void putConsumption(Json& json, const core::Run& run)
{
    if (!run.consumption)
        return;
    json[std::string(core::unitName(run.consumption->unit))] = run.consumption->value;
    if (run.consumption->from_trace)
        json["consumption_from_trace"] = true;
}

Json runJson(const core::Run& run)
{
    Json json;
    json["run"] = run.number;
    json["configuration"] = run.configuration;
    put(json, "setting", run.setting);
    json["direction"] = run.direction;
    json["start"] = core::formatDateTime(run.start);
    put(json, "duration_s", run.duration_s);
    put(json, "distance_km", run.distance_km);
    put(json, "speed_kmh", run.speed_kmh);
    putConsumption(json, run);
    json["status"] = run.counted() ? "counted" : "discarded";
    if (run.discard) {
        put(json, "reason", run.discard->reason);
        put(json, "evidence", run.discard->evidence);
    }
    put(json, "pair", run.pair_mark);
    put(json, "control", run.control);
    if (!run.marks.empty())
        json["marks"] = marksJson(run.marks);
    put(json, "accessory_w", run.accessory_w);
    put(json, "accessories", run.accessories);
    for (const auto& [accessory, on_s] : run.accessory_on_s)
        json[accessory + "_on_s"] = on_s;
    put(json, "output_w", run.output_w);
    put(json, "rotor_rpm_max", run.rotor_rpm_max);
    put(json, "battery_v_start", run.battery_v_start);
    put(json, "battery_v_end", run.battery_v_end);
    put(json, "wind_ms", run.wind_ms);
    put(json, "wind_from_deg", run.wind_from_deg);
    put(json, "temperature_c", run.temperature_c);
    put(json, "pressure_hpa", run.pressure_hpa);
    put(json, "humidity_pct", run.humidity_pct);
    put(json, "trace", run.trace);
    put(json, "notes", run.notes);
    for (const auto& [column, value] : run.extra)
        put(json, column.c_str(), value);
    return json;
}

} // namespace

std::string studyJson(const core::Study& study)
{
    Json json;
    json["schema"] = "bothways.study/1";
    json["made_by"] = {{"version", kVersion}};
    json["properties"] = Json::object();
    for (const auto& [property, value] : core::propertiesAsText(study.properties))
        json["properties"][property] = value;
    json["runs"] = Json::array();
    for (const core::Run& run : study.runs)
        json["runs"].push_back(runJson(run));
    return jsonText(json);
}

std::string runsJson(const core::Study& study, const core::Analysis& analysis,
                     const core::Screening& screening)
{
    std::map<int, int> pairs;
    for (const core::Pair& pair : analysis.pairs)
        pairs[pair.out_run] = pairs[pair.return_run] = pair.number;
    const std::vector<core::OddRun> odd = core::oddRuns(study);
    Json json;
    json["schema"] = "bothways.runs/1";
    json["runs"] = Json::array();
    for (const core::Run& run : study.runs) {
        Json one = runJson(run);
        one["consumption_l_per_100km"] = orNull(core::lPer100km(run));
        const auto pair = pairs.find(run.number);
        one["pair_number"] = pair == pairs.end() ? Json(nullptr) : Json(pair->second);
        std::vector<core::Finding> findings;
        std::copy_if(screening.findings.begin(), screening.findings.end(),
                     std::back_inserter(findings),
                     [&](const core::Finding& finding) { return finding.run == run.number; });
        one["findings"] = findingsArray(findings);
        one["to_look_at_again"] =
            std::any_of(odd.begin(), odd.end(),
                        [&](const core::OddRun& other) { return other.run == run.number; });
        json["runs"].push_back(std::move(one));
    }
    return jsonText(json);
}

std::string historyJson(const std::vector<storage::HistoryEntry>& history)
{
    const Language in = Language::english();
    Json json;
    json["schema"] = "bothways.history/1";
    json["history"] = Json::array();
    for (const storage::HistoryEntry& entry : history)
        json["history"].push_back({{"id", entry.id},
                                   {"at", entry.at},
                                   {"kind", entry.kind},
                                   {"detail", in.say(storage::historyDetail(entry))},
                                   {"undone", entry.undone}});
    return jsonText(json);
}

} // namespace bothways::app
