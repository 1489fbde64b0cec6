// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/bytes/xml_pull.h"
#include "storage/loggers/nmea_sentence.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/trace_import.h"
#include "tests/storage/recordings/trace_builders.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <cmath>
#include <cstring>

namespace bothways::storage {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using tests::taken;
using tests::TraceBench;

/// GPX 1.1 as its schema has it (TopoGrafix, http://www.topografix.com/GPX/1/1/gpx.xsd): one degree
/// of longitude at the equator is 111319.490793 m, so 0.001 deg in 4 s are 100.19 km/h.
std::string gpx(const std::string& points)
{
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
           "<gpx version=\"1.1\" creator=\"a receiver\" xmlns=\"http://www.topografix.com/GPX/1/1\""
           " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\">\n"
           "<metadata><time>2026-05-09T05:00:00Z</time></metadata>\n"
           "<wpt lat=\"1\" lon=\"2\"><name>A &amp; B</name></wpt>\n"
           "<trk><name>Morning</name><trkseg>\n" +
           points + "</trkseg></trk></gpx>\n";
}

std::string point(double lat, double lon, const std::string& time, const std::string& more = {})
{
    return fmt::format("<trkpt lat=\"{}\" lon=\"{}\"><ele>4.46</ele><time>{}</time>{}</trkpt>\n",
                       lat, lon, time, more);
}

TEST(Gpx, GivesSpeedAndDistanceFromPositions)
{
    TraceBench bench(gpx(point(0, 0, "2026-05-09T05:40:00Z") +
                         point(0, 0.001, "2026-05-09T05:40:04Z") +
                         point(0, 0.002, "2026-05-09T05:40:08.000Z") +
                         point(0, 0.003, "2026-05-09T07:40:12+02:00")),
                     "drive.gpx");
    const TraceReport report = bench.import();
    EXPECT_EQ(report.format, "gpx");
    EXPECT_EQ(report.rows, 4);
    EXPECT_EQ(core::formatDateTime(report.first.value()), "2026-05-09T05:40:00Z");
    EXPECT_THAT(report.channels, ElementsAre("lat_deg", "lon_deg", "road_speed_kmh", "distance_m"));
    EXPECT_THAT(bench.channel("lon_deg").value, ElementsAre(0, 0.001, 0.002, 0.003));
    EXPECT_THAT(bench.channel("distance_m").value, ElementsAre(0, 111.319, 222.639, 333.958));
    for (const double speed : bench.channel("road_speed_kmh").value)
        EXPECT_NEAR(speed, 111.319490793 * 0.9, 0.0011); // rounded to 0.001
    EXPECT_THAT(bench.times("distance_m"), ElementsAre(0, 4, 8, 12));
}

TEST(Gpx, DoesNotMeasureAcrossABreak)
{
    TraceBench bench(
        gpx(point(0, 0, "2026-05-09T05:40:00Z") + point(0, 0.001, "2026-05-09T05:40:04Z") +
            "</trkseg><trkseg>" + point(0, 1.0, "2026-05-09T05:50:00Z") + "</trkseg><trkseg>" +
            point(0, 2.0, "2026-05-09T06:00:00Z") + point(0, 2.001, "2026-05-09T06:00:04Z")));
    bench.import();
    EXPECT_THAT(bench.channel("distance_m").value,
                ElementsAre(0, 111.319, 111.319, 111.319, 222.639));
    EXPECT_THAT(bench.times("road_speed_kmh"),
                ElementsAre(0, 4, 1200, 1204)); // a point alone: none
}

TEST(Gpx, TakesTheReceiversOwnSpeedWhereItSaysOne)
{
    const auto speed = [](const char* ms) {
        return fmt::format("<extensions><x:TrackPointExtension xmlns:x=\"urn:x\"><x:speed>{}"
                           "</x:speed></x:TrackPointExtension></extensions>",
                           ms);
    };
    TraceBench bench(gpx(point(0, 0, "2026-05-09T05:40:00Z", speed("25")) +
                         point(0, 0.001, "2026-05-09T05:40:04Z", speed(" 25.5 "))));
    bench.import();
    EXPECT_THAT(bench.channel("road_speed_kmh").value.front(), 90.0);
}

TEST(Gpx, CountsPointsWithoutATimeOrOffTheEarth)
{
    TraceBench bench(gpx(point(0, 0, "2026-05-09T05:40:00Z") + point(0, 0, "soon") +
                         "<trkpt lat=\"1\" lon=\"1\"/>" + point(91, 0, "2026-05-09T05:40:01Z") +
                         point(0, 0, "2026-05-09T05:40:02Z") + point(0, 0, "2026-05-09T05:40:02Z") +
                         point(0, 0, "2026-05-09T05:40:03Z")));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.rows, 3);
    EXPECT_EQ(report.bad_times, 2);
    EXPECT_EQ(report.bad_positions, 1);
    EXPECT_EQ(report.repeated_times, 1);
}

TEST(Gpx, RefusesWhatIsCutOrHasNoRecordedTrack)
{
    const auto refusal = [](const std::string& text) {
        TraceBench bench(text);
        const auto report = bench.tryImport();
        return report ? std::string() : core::describe(report.error());
    };
    const std::string whole = gpx(point(0, 0, "2026-05-09T05:40:00Z"));
    EXPECT_THAT(refusal(whole.substr(0, whole.find("</trkseg>"))),
                HasSubstr("the file ends within"));
    EXPECT_THAT(refusal(gpx("")), HasSubstr("no track point"));
    EXPECT_THAT(refusal(gpx("<trkpt lat=\"1\" lon=\"1\"/>")),
                HasSubstr("1 track points and none with a time"));
    EXPECT_THAT(refusal("<gpx><trk></gpx>"), HasSubstr(":1: is no well-formed GPX"));
    EXPECT_THAT(refusal(gpx("") + "<gpx/>"), HasSubstr("a second root element"));
}

TEST(Gpx, ReadsManyBlocksAsOne)
{
    std::string points;
    for (int i = 0; i < 40'000; ++i)
        points +=
            point(0, 1e-4 * i,
                  fmt::format("2026-05-09T{:02}:{:02}:{:02}Z", i / 3600, i / 60 % 60, i % 60));
    TraceBench bench(gpx(points));
    EXPECT_EQ(bench.import().rows, 40'000);
    const auto distance = bench.channel("distance_m"), speed = bench.channel("road_speed_kmh");
    ASSERT_EQ(distance.size(), 40'000U);
    ASSERT_EQ(speed.size(), 40'000U);
    for (std::size_t i = 0; i < distance.size(); ++i) {
        ASSERT_NEAR(distance.value[i], 11.1319490793 * static_cast<double>(i), 2e-3);
        ASSERT_NEAR(speed.value[i], 11.1319490793 * 3.6, 1.1e-3);
    }
}

TEST(XmlPull, ReadsElementsTextsAndReferences)
{
    const std::string text = "<!DOCTYPE g [<!ENTITY x \"y>\">]><!-- - <> --><?pi ?>\n"
                             "<a:g b='1 &lt; 2'><c/>t&#65;&#x20AC;&amp;<![CDATA[<x>&]]]></a:g>";
    std::size_t at = 0;
    XmlPull xml([&](char* buffer, std::size_t size) {
        const std::size_t count = std::min<std::size_t>({size, text.size() - at, 3});
        std::memcpy(buffer, text.data() + at, count);
        at += count;
        return count;
    });
    EXPECT_EQ(xml.next(), XmlPull::Event::start);
    EXPECT_EQ(xml.name(), "g");
    EXPECT_EQ(xml.attribute("b"), "1 < 2");
    EXPECT_EQ(xml.line(), 2);
    EXPECT_EQ(xml.next(), XmlPull::Event::start);
    EXPECT_EQ(xml.next(), XmlPull::Event::end);
    EXPECT_EQ(xml.next(), XmlPull::Event::text);
    EXPECT_EQ(xml.text(), "tA\u20ac&");
    EXPECT_EQ(xml.next(), XmlPull::Event::text);
    EXPECT_EQ(xml.text(), "<x>&]");
    EXPECT_EQ(xml.next(), XmlPull::Event::end);
    EXPECT_EQ(xml.next(), XmlPull::Event::finished);
    EXPECT_EQ(xml.next(), XmlPull::Event::finished);
}

TEST(XmlPull, FindsWhatIsBroken)
{
    for (const std::string text : {"",
                                   "x",
                                   "<",
                                   "<a",
                                   "<a>",
                                   "<a></b>",
                                   "<a b></a>",
                                   "<a b=c/>",
                                   "<a b='<'/>",
                                   "<a/><a/>",
                                   "<a>&#0;</a>",
                                   "<a>&nbsp</a>",
                                   "<!-- ",
                                   "<a><![CDATA[ </a>",
                                   "</a>",
                                   "<a/>x",
                                   "<!x",
                                   "<a>&#x110000;</a>",
                                   "<?x",
                                   "<a>&unknown;</a>",
                                   "<a b='1' b='2'/>",
                                   "<a>\xff</a>",
                                   "<!-- -- --><a/>"}) { // (the last: XML 1.0, 2.5)
        std::size_t at = 0;
        XmlPull xml([&](char* buffer, std::size_t size) {
            const std::size_t count = std::min(size, text.size() - at);
            std::memcpy(buffer, text.data() + at, count);
            at += count;
            return count;
        });
        XmlPull::Event event{};
        for (int i = 0; i < 10; ++i)
            event = xml.next();
        EXPECT_EQ(event, XmlPull::Event::broken) << text;
        EXPECT_FALSE(xml.fault().empty());
    }
}

/// A sentence with its checksum.
std::string sentence(const std::string& body)
{
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return fmt::format("${}*{:02X}\r\n", body, sum);
}

TEST(NmeaSentence, KnowsTheChecksumsOfPublishedSentences)
{
    // Sentences with their checksums as receivers' manuals and tutorials print them (from memory;
    // the checksum proves them).
    for (const char* line : {"$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A",
                             "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47",
                             "$GPVTG,054.7,T,034.4,M,005.5,N,010.2,K*48"})
        EXPECT_EQ(parseSentence(line).fault, SentenceFault::none) << line;
    EXPECT_EQ(parseSentence("$GPVTG,054.7,T,034.4,M,005.5,N,010.3,K*48").fault,
              SentenceFault::wrongChecksum);
    EXPECT_EQ(parseSentence("$GPVTG,054.7,T,034.4,M,005.5,N,010.2,K").fault,
              SentenceFault::noChecksum);
    EXPECT_EQ(parseSentence("$GPVTG,1*4").fault, SentenceFault::wrongChecksum);
    EXPECT_EQ(parseSentence("speed,rpm").fault, SentenceFault::notASentence);
    EXPECT_EQ(parseSentence("12:00:01 $GPVTG,054.7,T,034.4,M,005.5,N,010.2,K*48").type, "VTG");
}

TEST(NmeaSentence, ReadsTimesDatesAndDegrees)
{
    EXPECT_EQ(sentenceTime_us("123519"), 45'319'000'000);
    EXPECT_EQ(sentenceTime_us("123519.250"), 45'319'250'000);
    EXPECT_EQ(sentenceDate_us("230394"), 764'380'800'000'000); // 1994-03-23
    EXPECT_EQ(sentenceDate_us("090526"), 1'778'284'800'000'000);
    EXPECT_DOUBLE_EQ(sentenceDegrees("4807.038", "N").value(), 48.1173);
    EXPECT_DOUBLE_EQ(sentenceDegrees("01131.000", "W").value(), -11.516666667);
    EXPECT_FALSE(sentenceDegrees("4860.000", "N"));
    EXPECT_FALSE(sentenceDegrees("9100.000", "N"));
    EXPECT_FALSE(sentenceDegrees("4807.038", "X"));
    EXPECT_FALSE(sentenceDegrees("", "N"));
    EXPECT_FALSE(sentenceTime_us("246000"));
    EXPECT_FALSE(sentenceTime_us("12351"));
    EXPECT_FALSE(sentenceDate_us("310299"));
}

TEST(Nmea, MakesAPointOfTheSentencesOfOneTime)
{
    std::string text;
    for (int i = 0; i < 5; ++i) {
        text += sentence(fmt::format("GPGGA,05400{}.00,0000.0000,N,0000{}.0000,E,1,08,0.9,545,M,47,"
                                     "M,,",
                                     i, i));
        text += sentence(fmt::format(
            "GPRMC,05400{}.00,A,0000.0000,N,0000{}.0000,E,050.0,084.4,090526,003.1,W", i, i));
        text += sentence("GPVTG,090.0,T,,M,049.0,N,090.7,K");
        text += sentence("GPGSV,1,1,00");
        text += sentence("PSRF103,00,6,00,0");
    }
    TraceBench bench(text, "drive.nmea");
    const TraceReport report = bench.import();
    EXPECT_EQ(report.format, "nmea");
    EXPECT_EQ(report.rows, 5);
    EXPECT_EQ(report.bad_checksums, 0);
    EXPECT_EQ(core::formatDateTime(report.first.value()), "2026-05-09T05:40:00Z");
    EXPECT_THAT(bench.channel("road_speed_kmh").value, ElementsAre(92.6, 92.6, 92.6, 92.6, 92.6));
    // A minute of longitude at the equator: 111319.490793 / 60 m.
    EXPECT_NEAR(bench.channel("distance_m").value[4], 4 * 111319.490793 / 60, 2e-3);
}

TEST(Nmea, CountsBadChecksumsTimesWithoutAFixAndACutLastSentence)
{
    const std::string good = sentence("GPRMC,054000,A,4807.038,N,01131.000,E,022.4,084.4,090526,,");
    std::string bad = sentence("GPRMC,054001,A,4807.038,N,01131.000,E,022.4,084.4,090526,,");
    bad[20] = '9';
    TraceBench bench(good + bad + sentence("GPRMC,054002,V,,,,,,,090526,,") +
                     sentence("GPRMC,054003,A,4807.039,N,01131.000,E,,084.4,090526,,") +
                     "$GPRMC,054004,A,4807.03");
    const TraceReport report = bench.import();
    EXPECT_EQ(report.rows, 2);
    EXPECT_EQ(report.bad_checksums, 1);
    EXPECT_EQ(report.no_fix, 1);
    EXPECT_TRUE(report.half_last_line);
}

TEST(Nmea, GoesOnPastMidnight)
{
    const auto rmc = [](const char* time, const char* date) {
        return sentence(
            fmt::format("GNRMC,{},A,4807.038,N,01131.000,E,022.4,084.4,{},,", time, date));
    };
    TraceBench bench(rmc("235958", "080526") + rmc("235959", "080526") + rmc("000000", "090526") +
                     rmc("000001", "090526"));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.length_s, 3.0);
    EXPECT_EQ(report.clock_changes, 0);
    std::string gga; // no date in them
    for (const char* time : {"235958", "235959", "000000"})
        gga += sentence(fmt::format("GPGGA,{},4807.038,N,01131.000,E,1,08,0.9,545,M,47,M,,", time));
    bench.write(gga, "gga.nmea");
    const TraceReport undated = bench.import();
    EXPECT_EQ(undated.length_s, 2.0);
    EXPECT_FALSE(undated.first);
}

TEST(Nmea, RefusesSentencesThatAllFail)
{
    TraceBench bench("$GPRMC,054000,A,4807.038,N,01131.000,E,022.4,084.4,090526,,\n");
    EXPECT_THAT(bench.tryImport().error().message.english(),
                HasSubstr("no sentence with a right checksum"));
}

TEST(Positions, FindTheLocalTimesOffsetFromUtcWhereOneAloneFits)
{
    std::string text; // 03:38 UTC to 03:54 UTC; the runs are at 05:40 and 05:47 local
    for (int i = 0; i < 960; ++i)
        text += sentence(fmt::format("GPRMC,03{:02}{:02},A,4807.038,N,01131.000,E,022.4,,090526,,",
                                     38 + i / 60, i % 60));
    TraceBench bench(text);
    TraceImportOptions options;
    options.run = 2;
    options.clock.utc_offset_min = 120;
    EXPECT_EQ(bench.import(options).offset_s, 540.0);
    options.clock.utc_offset_min.reset(); // 16 minutes: two quarters may fit
    options.run = 1;
    const TraceReport report = bench.import(options);
    EXPECT_EQ(report.offset_s, 120.0);
    EXPECT_EQ(report.clock_note.english(), "local time taken to be UTC+02:00");
}

} // namespace
} // namespace bothways::storage
