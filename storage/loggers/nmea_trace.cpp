// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/loggers/nmea_sentence.h"
#include "storage/loggers/point_trace.h"

#include <array>
#include <string>

namespace bothways::storage {
namespace {

using core::Done;

constexpr double kKmhPerKnot = 1.852; // a nautical mile is 1852 m, exactly
constexpr std::size_t kMaxLine = 4096;

/// Sentences RMC (position, speed, date), GGA (position) and VTG (speed) of a satellite receiver.
/// Those with one time make one point. Times are UTC; the date is that of the last RMC.
class NmeaTrace final : public PointTrace {
public:
    using PointTrace::PointTrace;
    std::string_view format() const override { return "nmea"; }
    Result<std::optional<core::Instant>> zero(const ReadTotals& totals,
                                              const std::string& date) const override;
    void findDate(std::string_view head);

protected:
    Result<ReadTotals> parse(const TakeBlock& take) override;

private:
    /// What the sentences of one time say.
    struct Epoch {
        std::optional<std::int64_t> time_us;
        std::optional<double> lat_deg, lon_deg, speed_kmh, slowSpeed_kmh;
        bool noFix = false;
    };

    Outcome takeLine(std::string_view line, const TakeBlock& take);
    Outcome at(std::optional<std::int64_t> time_us, const TakeBlock& take);
    void takePosition(const Sentence& sentence, std::size_t field);
    Outcome flush(const TakeBlock& take);

    std::optional<std::int64_t> m_date_us;
    std::optional<PointStream> m_points;
    std::int64_t m_base_us = 0;
    Epoch m_epoch;
    std::int64_t m_badChecksums = 0, m_noFix = 0, m_sentences = 0, m_line = 0;
};

/// The first date in the file stands for the points before it too.
void NmeaTrace::findDate(std::string_view head)
{
    while (!head.empty() && !m_date_us) {
        const std::size_t end = head.find('\n');
        const Sentence sentence = parseSentence(head.substr(0, end));
        if (sentence.fault == SentenceFault::none && sentence.type == "RMC")
            m_date_us = sentenceDate_us(sentence.field(9));
        head.remove_prefix(end == std::string_view::npos ? head.size() : end + 1);
    }
}

Result<std::optional<core::Instant>> NmeaTrace::zero(const ReadTotals& totals,
                                                     const std::string& date) const
{
    std::int64_t day_us = 0;
    if (!m_date_us) {
        if (date.empty())
            return std::optional<core::Instant>();
        const auto parsed = core::parseDate_us(date);
        if (!parsed)
            return parsed.error();
        day_us = parsed.value();
    }
    return std::optional(core::Instant{day_us + m_base_us - totals.main_shift_us, 0});
}

Outcome NmeaTrace::flush(const TakeBlock& take)
{
    const Epoch epoch = std::exchange(m_epoch, {});
    if (!epoch.time_us)
        return Done{};
    if (!epoch.lat_deg || !epoch.lon_deg) {
        m_noFix += epoch.noFix;
        return Done{};
    }
    const std::int64_t us = m_date_us.value_or(0) + *epoch.time_us;
    if (!m_points) {
        m_base_us = us;
        m_points.emplace(m_date_us ? ClockKind::utc : ClockKind::timeOfDay, m_base_us, take);
    }
    return m_points->add({us, *epoch.lat_deg, *epoch.lon_deg,
                          epoch.speed_kmh ? epoch.speed_kmh : epoch.slowSpeed_kmh, false});
}

/// A sentence with another time begins the next point.
Outcome NmeaTrace::at(std::optional<std::int64_t> time_us, const TakeBlock& take)
{
    if (!time_us || time_us == m_epoch.time_us)
        return Done{};
    Outcome flushed = m_epoch.time_us ? flush(take) : Outcome(Done{});
    m_epoch.time_us = time_us;
    return flushed;
}

void NmeaTrace::takePosition(const Sentence& sentence, std::size_t field)
{
    const auto lat = sentenceDegrees(sentence.field(field), sentence.field(field + 1));
    const auto lon = sentenceDegrees(sentence.field(field + 2), sentence.field(field + 3));
    if (lat && lon) {
        m_epoch.lat_deg = lat;
        m_epoch.lon_deg = lon;
    }
}

Outcome NmeaTrace::takeLine(std::string_view line, const TakeBlock& take)
{
    const Sentence sentence = parseSentence(line);
    if (sentence.fault == SentenceFault::notASentence)
        return Done{};
    if (sentence.fault != SentenceFault::none) {
        ++m_badChecksums;
        return Done{};
    }
    ++m_sentences;
    if (sentence.type == "RMC") {
        if (const Outcome begun = at(sentenceTime_us(sentence.field(1)), take); !begun)
            return begun;
        if (const auto date = sentenceDate_us(sentence.field(9)))
            m_date_us = date;
        if (sentence.field(2) == "A") {
            takePosition(sentence, 3);
            if (const auto knots = sentenceNumber(sentence.field(7)))
                m_epoch.speed_kmh = *knots * kKmhPerKnot;
        } else {
            m_epoch.noFix = true;
        }
    } else if (sentence.type == "GGA") {
        if (const Outcome begun = at(sentenceTime_us(sentence.field(1)), take); !begun)
            return begun;
        if (sentence.field(6).empty() || sentence.field(6) == "0")
            m_epoch.noFix = true;
        else
            takePosition(sentence, 2);
    } else if (sentence.type == "VTG") {
        if (const auto kmh = sentenceNumber(sentence.field(7)))
            m_epoch.slowSpeed_kmh = kmh;
        else if (const auto knots = sentenceNumber(sentence.field(5)))
            m_epoch.slowSpeed_kmh = *knots * kKmhPerKnot;
    }
    return Done{};
}

Result<ReadTotals> NmeaTrace::parse(const TakeBlock& take)
{
    std::array<char, std::size_t{1} << 16> buffer;
    std::string line;
    const auto endLine = [&]() -> Outcome {
        ++m_line;
        Outcome taken = takeLine(line, take);
        line.clear();
        return taken;
    };
    while (const std::size_t size = bytes(buffer.data(), buffer.size())) {
        for (std::size_t i = 0; i < size; ++i) {
            if (buffer[i] == '\n') {
                if (const Outcome taken = endLine(); !taken)
                    return taken.error();
            } else if (buffer[i] != '\r' && line.size() < kMaxLine) {
                line += buffer[i];
            }
        }
    }
    // A last line that was cut has a wrong checksum or none.
    const bool unended = !line.empty();
    const std::int64_t before = m_badChecksums;
    if (const Outcome taken = endLine(); !taken)
        return taken.error();
    const bool half = unended && m_badChecksums > before;
    m_badChecksums = before;
    if (const Outcome flushed = flush(take); !flushed)
        return flushed.error();
    if (!m_points)
        return PointTrace::at(
            1, m_sentences == 0 ? "no sentence with a right checksum; expected NMEA 0183"_t
                                : "no RMC or GGA sentence with a time and a position; expected "
                                  "what a receiver with a fix sends"_t);
    auto totals = m_points->finish();
    if (!totals)
        return totals.error();
    ReadTotals result = std::move(totals).take();
    result.bad_checksums = m_badChecksums;
    result.no_fix = m_noFix;
    result.half_last_line = half;
    result.lines = m_line;
    return result;
}

} // namespace

bool looksLikeNmea(std::string_view head)
{
    for (int line = 0; line < 20 && !head.empty(); ++line) {
        const std::size_t end = head.find('\n');
        std::string_view text = head.substr(0, end);
        if (text.starts_with('$') && text.size() > 6 && text[6] == ',' &&
            text.substr(1, 5).find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789") ==
                std::string_view::npos)
            return true;
        head.remove_prefix(end == std::string_view::npos ? head.size() : end + 1);
    }
    return false;
}

Result<std::unique_ptr<TraceFile>> openNmeaTrace(TraceSource&& source, std::string name)
{
    const std::string head(source.head());
    auto trace = std::make_unique<NmeaTrace>(std::move(source), std::move(name));
    trace->findDate(head);
    return std::unique_ptr<TraceFile>(std::move(trace));
}

} // namespace bothways::storage
