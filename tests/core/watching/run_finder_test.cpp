// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/run_finder.h"

#include "core/recording/trace.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <random>

namespace bothways::core {
namespace {

using What = FoundBound::What;

struct Part {
    double from_s = 0.0, to_s = 0.0;
    std::optional<bool> outward;
    friend bool operator==(const Part&, const Part&) = default;
    friend void PrintTo(const Part& part, std::ostream* out)
    {
        *out << part.from_s << " to " << part.to_s
             << (part.outward ? *part.outward ? " out" : " return" : "");
    }
};

/// What is found of a drive, sample by sample. Events out of order are failures.
std::vector<Part> partsOf(const RunTrace& drive, const RunsBy& by, std::optional<double> target,
                          const std::vector<std::string>& directions)
{
    RunFinder finder(by, target, directions);
    std::multimap<double, std::function<void()>> feed;
    const auto add = [&](const char* channel, auto put) {
        if (const auto samples = drive.samples(channel))
            for (std::size_t i = 0; i < samples->size(); ++i)
                feed.emplace(samples->time_s[i],
                             [&finder, put, time_s = samples->time_s[i],
                              value = samples->value[i]] { (finder.*put)(time_s, value); });
    };
    add("lat_deg", &RunFinder::latitude);
    add("lon_deg", &RunFinder::longitude);
    add("road_speed_kmh", &RunFinder::speed);
    for (const auto& mark : drive.marks())
        feed.emplace(mark.at_s, [&finder, mark] { finder.mark(mark.at_s, mark.words); });
    std::vector<Part> parts;
    bool open = false;
    const auto take = [&] {
        for (const FoundBound& found : finder.take()) {
            EXPECT_EQ(open, found.what != What::begins) << found.at_s;
            open = found.what == What::begins;
            if (open)
                parts.push_back({found.at_s, found.at_s,
                                 found.direction.empty()
                                     ? found.outward
                                     : std::optional(found.direction == directions.front())});
            else if (found.what == What::ends)
                parts.back().to_s = found.at_s;
            else
                parts.pop_back();
        }
    };
    for (const auto& [time_s, put] : feed) {
        put();
        finder.passTime(time_s);
        take();
    }
    finder.finish(drive.last_s());
    take();
    EXPECT_FALSE(open);
    return parts;
}

std::vector<Part> partsOf(const std::vector<CutProposal>& cuts, bool withDirections)
{
    std::vector<Part> parts;
    for (const CutProposal& cut : cuts)
        parts.push_back({cut.from_s, cut.to_s, withDirections ? cut.outward : std::nullopt});
    return parts;
}

Study outAndReturn()
{
    Study study;
    Run run;
    run.direction = "out";
    study.runs = {run, run};
    study.runs.back().direction = "return";
    return study;
}

constexpr Geofence kGates{47.5, 9.4, 47.5, 9.44, 50.0};

/// To and fro about the gates at every speed, on the road and beside it, with holes.
MemoryTrace wildDrive(unsigned seed)
{
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    Samples lat, lon, speed;
    std::vector<RunTrace::TextMark> marks;
    double lon_deg = 9.39, kmh = 80.0, wanted_kmh = 90.0, way = 1.0, beside_deg = 0.0, time_s = 0.0;
    for (int i = 0; i < 4000; ++i) {
        if (share(random) < 0.02)
            wanted_kmh = share(random) < 0.6 ? 90.0 : 40.0 + 80.0 * share(random);
        if (share(random) < 0.005 || lon_deg < 9.38 || lon_deg > 9.46)
            way = lon_deg < 9.38 ? 1.0 : lon_deg > 9.46 ? -1.0 : -way;
        if (share(random) < 0.003)
            beside_deg = share(random) < 0.7 ? 0.0 : 0.002;
        if (share(random) < 0.01)
            marks.push_back({time_s, share(random) < 0.5   ? "start out"
                                     : share(random) < 0.3 ? "Begin 7, return"
                                     : share(random) < 0.5 ? "finish"
                                                           : "lorry"});
        time_s += share(random) < 0.004 ? 25.0 * share(random) : 1.0;
        kmh += std::clamp(wanted_kmh - kmh, -6.0, 6.0);
        lon_deg += way * kmh / 3.6 / 75000.0;
        lat.time_s.push_back(time_s);
        lat.value.push_back(47.5 + beside_deg);
        lon.time_s.push_back(time_s);
        lon.value.push_back(lon_deg);
        speed.time_s.push_back(time_s);
        speed.value.push_back(kmh);
    }
    MemoryTrace trace;
    trace.add("lat_deg", "deg", lat);
    trace.add("lon_deg", "deg", lon);
    trace.add("road_speed_kmh", "km/h", speed);
    for (const auto& mark : marks)
        trace.addMark(mark.at_s, mark.words);
    return trace;
}

/// Each of the live parts ends with one of those that were held, and began after 5 s of it at
/// least.
bool isLaterPartOf(const std::vector<Part>& held, const std::vector<Part>& live)
{
    const auto isOne = [&](const Part& part) {
        return std::any_of(held.begin(), held.end(), [&](const Part& one) {
            return part.to_s == one.to_s && part.from_s >= one.from_s + RunFinder::kCruised_s;
        });
    };
    // Few of the made ones keep to 3 % nowhere for five seconds.
    return std::all_of(live.begin(), live.end(), isOne) && live.size() * 10 >= held.size() * 9;
}

TEST(RunFinder, FindsWhatCuttingTheRecordingFinds)
{
    const Study study = outAndReturn();
    const auto known = directions(study);
    std::size_t byMarks = 0, byPosition = 0, bySpeed = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE(seed);
        const MemoryTrace drive = wildDrive(seed);
        const auto marked = partsOf(cutByMarks(drive, study), true);
        EXPECT_EQ(partsOf(drive, {RunsBy::Way::marks, {}}, {}, known), marked);
        const auto passed = partsOf(cutByPosition(drive, kGates), true);
        EXPECT_EQ(partsOf(drive, {RunsBy::Way::position, kGates}, {}, known), passed);
        CruiseOptions cruise;
        cruise.target_kmh = 90.0;
        const auto held = partsOf(cutBySpeed(drive, cruise), false);
        EXPECT_TRUE(isLaterPartOf(held, partsOf(drive, {RunsBy::Way::speed, {}}, 90.0, known)));
        byMarks += marked.size();
        byPosition += passed.size();
        bySpeed += held.size();
    }
    EXPECT_GT(byMarks, 100U);
    EXPECT_GT(byPosition, 100U);
    EXPECT_GT(bySpeed, 100U);
}

TEST(RunFinder, TellsABeginningAtOnceOrOnceItIsSure)
{
    RunFinder gates({RunsBy::Way::position, kGates}, {}, {"out", "return"});
    for (const auto& [time_s, lon] : std::map<double, double>{{1.0, 9.399}, {2.0, 9.401}}) {
        gates.latitude(time_s, 47.5);
        gates.longitude(time_s, lon);
    }
    const auto passed = gates.take();
    ASSERT_EQ(passed.size(), 1U);
    EXPECT_EQ(passed[0].what, What::begins);
    EXPECT_NEAR(passed[0].at_s, 1.5, 1e-6);
    EXPECT_EQ(passed[0].outward, true);

    RunFinder speed({RunsBy::Way::speed, {}}, 90.0, {});
    for (int i = 0; i < 10; ++i)
        speed.speed(i, i < 5 ? 86.0 : 90.0); // within 5 %, and within 3 % from 5 s on
    EXPECT_TRUE(speed.take().empty());
    speed.speed(10.0, 91.0);
    const auto cruised = speed.take();
    ASSERT_EQ(cruised.size(), 1U);
    EXPECT_EQ(cruised[0].at_s, 10.0);
    EXPECT_FALSE(speed.isInDoubt());
    speed.speed(11.0, 50.0);
    EXPECT_TRUE(speed.isInDoubt());
    speed.passTime(20.0);
    EXPECT_TRUE(speed.take().empty());
    speed.passTime(20.5); // nothing came since: 10.5 s after the last that was within
    const auto over = speed.take();
    ASSERT_EQ(over.size(), 1U);
    EXPECT_EQ(over[0].what, What::wasNone); // held for 10 s alone

    RunFinder marks({RunsBy::Way::marks, {}}, {}, {"out", "return"});
    marks.mark(5.0, "start: B return, calm");
    const auto begun = marks.take();
    ASSERT_EQ(begun.size(), 1U);
    EXPECT_EQ(begun[0].direction, "return");
    EXPECT_TRUE(begun[0].isMarked);
    EXPECT_THAT(begun[0].words, testing::ElementsAre("B", "calm"));
}

TEST(RunFinder, ByHandFindsNothing)
{
    const MemoryTrace drive = wildDrive(1);
    EXPECT_TRUE(partsOf(drive, {}, 90.0, {"out", "return"}).empty());
}

} // namespace
} // namespace bothways::core
