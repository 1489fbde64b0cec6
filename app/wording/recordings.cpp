// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/recordings.h"

#include "app/wording/numbers.h"
#include "app/wording/visible_text.h"
#include "core/statistics/events.h"
#include "storage/instruments/rig.h"
#include "storage/recordings/recordings.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace bothways::app::wording {
namespace {

/// Phrases about what was counted; none where there was none.
class Phrases {
public:
    explicit Phrases(const Language& in) : m_in(in) {}
    template <class... More>
    void add(std::int64_t n, core::Text<1 + sizeof...(More)> one,
             core::Text<1 + sizeof...(More)> many, const More&... more)
    {
        if (n > 0)
            m_all.push_back(
                m_in.sayCount(n, one, many, grouped(m_in, static_cast<double>(n)), more...));
    }
    void add(std::string phrase) { m_all.push_back(std::move(phrase)); }
    [[nodiscard]] std::vector<std::string> all() const { return m_all; }

private:
    const Language& m_in;
    std::vector<std::string> m_all;
};

std::string separatedByCommas(const std::vector<std::string>& parts)
{
    std::string text;
    for (const std::string& part : parts)
        text += (text.empty() ? "" : ", ") + part;
    return text;
}

/// A run that lies in it has lost something.
bool isLongGap(const storage::TraceReport& report)
{
    constexpr double kLong_s = 10.0;
    return report.longest_gap_s > std::max(kLong_s, 3.0 * report.interval_s);
}

void addGaps(const Language& in, Phrases& met, const storage::TraceReport& report)
{
    met.add(report.gaps, "{} gap, the longest {} s"_t, "{} gaps, the longest {} s"_t,
            fixed(in, report.longest_gap_s, 1));
}

} // namespace

std::string recordingForm(const Language& in, const storage::TracePreview& preview)
{
    if (preview.format == "gpx")
        return in.say("GPX track points: position, speed and distance come from them."_t);
    if (preview.format == "nmea")
        return in.say("NMEA sentences: position, speed and distance come from them."_t);
    const auto columns = static_cast<long long>(preview.columns.size());
    const auto parted = preview.separator == ';'    ? "parted by semicolons"_t
                        : preview.separator == '\t' ? "parted by tabs"_t
                                                    : "parted by commas"_t;
    return in.sayCount(columns, "CSV: {} column {}, {}."_t, "CSV: {} columns {}, {}."_t, columns,
                       parted, preview.decimalComma ? "decimal commas"_t : "decimal points"_t);
}

std::string imported(const Language& in, const std::string& recording,
                     const storage::TraceReport& report)
{
    return in.sayCount(report.rows, "imported {}: {} row, {} s, channels {}"_t,
                       "imported {}: {} rows, {} s, channels {}"_t, recording,
                       grouped(in, static_cast<double>(report.rows)), grouped(in, report.length_s),
                       separatedByCommas(report.channels));
}

std::string diskFullIn(const Language& in, double minutes)
{
    return in.say("at this pace the disk is full in {} min"_t, fixed(in, std::floor(minutes), 0));
}

std::string recordedLive(const Language& in, const std::string& rig,
                         const storage::LiveRecord& record)
{
    storage::LiveCounts all;
    for (const storage::LiveCounts& one : record.counts) {
        all.garbage_lines += one.garbage_lines;
        all.lost_bytes += one.lost_bytes;
        all.reconnects += one.reconnects;
        all.silences += one.silences;
    }
    Phrases lost(in);
    lost.add(all.reconnects, "{} reconnect"_t, "{} reconnects"_t);
    lost.add(all.silences, "{} silence"_t, "{} silences"_t);
    lost.add(all.garbage_lines, "{} line that could not be read"_t,
             "{} lines that could not be read"_t);
    lost.add(all.lost_bytes, "{} byte lost"_t, "{} bytes lost"_t);
    if (!record.ended && record.counts.empty())
        lost.add(in.say("not stopped: it ends with the last second that was kept"_t));
    const std::string words = separatedByCommas(lost.all());
    if (words.empty())
        return in.say("recorded live with the rig {}: nothing was lost"_t, visibleText(rig));
    return in.say("recorded live with the rig {}: {}"_t, visibleText(rig), words);
}

core::Result<std::vector<std::string>> liveRecordings(const Language& in,
                                                      const storage::StudyFile& study)
{
    const auto all = storage::recordings(study);
    if (!all)
        return all.error();
    std::vector<std::string> lines;
    for (const storage::RecordingInfo& recording : all.value()) {
        const auto record = storage::liveRecord(study, recording.id);
        if (!record)
            return record.error();
        if (!record.value())
            continue;
        const auto rig = storage::rigFromText(record.value()->rig, recording.name);
        lines.push_back(
            in.say("{}: {}"_t, recording.name,
                   recordedLive(in, rig ? rig.value().name : std::string(), *record.value())));
    }
    return lines;
}

std::vector<std::string> whatWasMet(const Language& in, const storage::TraceReport& report)
{
    Phrases met(in);
    if (isLongGap(report))
        addGaps(in, met, report);
    met.add(report.missing_cells, "{} empty cell"_t, "{} empty cells"_t);
    met.add(report.repeated_times, "{} time given twice"_t, "{} times given twice"_t);
    met.add(report.backward_times, "{} time that went backwards"_t,
            "{} times that went backwards"_t);
    met.add(report.clock_changes, "{} change of the clock"_t, "{} changes of the clock"_t);
    if (report.half_last_line)
        met.add(in.say("the last line is cut short and was left out"_t));
    return met.all();
}

std::vector<std::string> whatElseWasMet(const Language& in, const storage::TraceReport& report)
{
    Phrases met(in);
    if (report.mapping_kept)
        met.add(in.say("the mapping kept for this header was used"_t));
    if (!report.clock_note.empty())
        met.add(in.say("clocks: {}"_t, report.clock_note));
    met.add(report.bad_times, "{} row without a readable time left out"_t,
            "{} rows without a readable time left out"_t);
    met.add(report.rate_changes, "{} change of the rate of rows"_t,
            "{} changes of the rate of rows"_t);
    met.add(report.no_fix, "{} time without a position"_t, "{} times without a position"_t);
    met.add(report.bad_positions, "{} track point that is nowhere on Earth left out"_t,
            "{} track points that are nowhere on Earth left out"_t);
    met.add(report.bad_checksums, "{} sentence with a wrong checksum left out"_t,
            "{} sentences with a wrong checksum left out"_t);
    met.add(report.bad_cells, "{} cell that is no number, taken as empty"_t,
            "{} cells that are no number, taken as empty"_t);
    met.add(report.short_rows, "{} row with too few cells"_t, "{} rows with too few cells"_t);
    met.add(report.long_rows, "{} row with too many cells"_t, "{} rows with too many cells"_t);
    if (!isLongGap(report))
        addGaps(in, met, report);
    if (!report.left_out.empty())
        met.add(
            in.say("left out, as it holds no number: {}"_t, separatedByCommas(report.left_out)));
    return met.all();
}

core::Message gapOfPart(const Language& in, const core::Message& whose,
                        const core::CutProposal& part, const core::RecordingGap& gap)
{
    const std::string length = fixed(in, gap.to_s - gap.from_s, 0);
    const std::string from = fixed(in, gap.from_s, 1), to = fixed(in, gap.to_s, 1);
    if (gap.from_s >= part.to_s - core::kTimeGrace_s)
        return core::message(
            "{}: ends where the recording has a gap of {} s, from {} s to {} s; it "
            "may have been longer"_t,
            whose, length, from, to);
    if (gap.to_s <= part.from_s + core::kTimeGrace_s)
        return core::message(
            "{}: begins where a gap of {} s in the recording ends, from {} s to {} "
            "s; it may have been longer"_t,
            whose, length, from, to);
    return core::message("{}: the recording has a gap of {} s in it, from {} s to {} s"_t, whose,
                         length, from, to);
}

core::Message whyNoCut(NoCut why)
{
    switch (why) {
    case NoCut::noMarks: return "the recording has no mark that begins with \"start\""_t;
    case NoCut::noPositions:
        return "the recording has no positions; expected channels lat_deg and lon_deg"_t;
    case NoCut::gatesNotPassed:
        return "the drive never leads through one of the gates and on to the other"_t;
    case NoCut::noSpeed: return "the recording has no speed; expected a channel road_speed_kmh"_t;
    case NoCut::noSpeedHeld: return "no speed was held for a minute"_t;
    }
    return {};
}

} // namespace bothways::app::wording
