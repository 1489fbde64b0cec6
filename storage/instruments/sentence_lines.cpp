// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/decimal.h"
#include "storage/instruments/line_parser.h"
#include "storage/loggers/nmea_sentence.h"

#include <cmath>

namespace bothways::storage {
namespace {

constexpr int kDegreeDecimals = 9; // as sentenceDegrees() rounds

/// Sentences RMC (position, speed), GGA (position, altitude) and VTG (speed) of a receiver, by any
/// talker. What two of them say is taken from RMC once it has come.
class SentenceParser final : public LineParser {
public:
    explicit SentenceParser(FindChannels find) : m_find(std::move(find)) {}
    void take(std::string_view line, bool suspect, ParsedLine& parsed) override;
    core::Message notice() const override { return m_notice; }

private:
    using Channels = std::optional<std::vector<std::uint32_t>>;
    void put(Channels& channels, const char* source, const char* unit,
             const std::optional<TypedNumber>& number, ParsedLine& parsed);
    bool putPosition(const Sentence& sentence, std::size_t field, ParsedLine& parsed);
    void putTime(const Sentence& sentence, ParsedLine& parsed);
    void takeRmc(const Sentence& sentence, ParsedLine& parsed);
    void takeGga(const Sentence& sentence, ParsedLine& parsed);
    void takeVtg(const Sentence& sentence, ParsedLine& parsed);

    FindChannels m_find;
    Channels m_lat, m_lon, m_speed, m_altitude, m_time;
    bool m_rmcPlaces = false, m_rmcSpeeds = false; ///< RMC has said it
    std::optional<std::int64_t> m_time_us;
    double m_days_s = 0.0;
    core::Message m_notice;
};

std::optional<TypedNumber> degrees(std::string_view field, std::string_view hemisphere)
{
    const auto value = sentenceDegrees(field, hemisphere);
    if (!value)
        return std::nullopt;
    return typedNumber(std::llround(*value * 1e9), kDegreeDecimals);
}

/// Knots as km/h, digit for digit: a nautical mile is 1852 m.
std::optional<TypedNumber> kmhFromKnots(std::string_view field)
{
    const auto knots = typedNumber(field);
    if (!knots || knots->decimals < 0 || knots->integer > kMaxScaled / 1852 ||
        knots->integer < -kMaxScaled / 1852 || knots->decimals > 19)
        return knots ? std::optional(oddNumber(knots->value() * 1.852)) : std::nullopt;
    return typedNumber(knots->integer * 1852, knots->decimals + 3);
}

void SentenceParser::put(Channels& channels, const char* source, const char* unit,
                         const std::optional<TypedNumber>& number, ParsedLine& parsed)
{
    if (!number)
        return;
    if (!channels)
        channels = m_find(source, source, unit);
    for (const std::uint32_t channel : *channels)
        parsed.values.push_back({channel, *number});
}

bool SentenceParser::putPosition(const Sentence& sentence, std::size_t field, ParsedLine& parsed)
{
    const auto lat = degrees(sentence.field(field), sentence.field(field + 1));
    const auto lon = degrees(sentence.field(field + 2), sentence.field(field + 3));
    if (!lat || !lon)
        return false;
    put(m_lat, "lat_deg", "°", lat, parsed);
    put(m_lon, "lon_deg", "°", lon, parsed);
    return true;
}

/// The first sentence of each time has it; the clock goes on over midnight.
void SentenceParser::putTime(const Sentence& sentence, ParsedLine& parsed)
{
    const auto time_us = sentenceTime_us(sentence.field(1));
    if (!time_us || time_us == m_time_us)
        return;
    if (m_time_us && *time_us < *m_time_us - 43'200'000'000)
        m_days_s += 86'400.0;
    m_time_us = time_us;
    put(m_time, "utc_s", "s", typedNumber(*time_us, 6), parsed);
    parsed.own = static_cast<double>(*time_us) / 1e6 + m_days_s;
    parsed.unit_s = 1.0;
}

void SentenceParser::takeRmc(const Sentence& sentence, ParsedLine& parsed)
{
    putTime(sentence, parsed);
    if (sentence.field(2) != "A") {
        m_notice = "the receiver has no position yet"_t;
        return;
    }
    m_notice = {};
    m_rmcPlaces |= putPosition(sentence, 3, parsed);
    const auto speed = kmhFromKnots(sentence.field(7));
    m_rmcSpeeds |= speed.has_value();
    put(m_speed, "road_speed_kmh", "km/h", speed, parsed);
}

void SentenceParser::takeGga(const Sentence& sentence, ParsedLine& parsed)
{
    putTime(sentence, parsed);
    if (sentence.field(6).empty() || sentence.field(6) == "0") {
        m_notice = "the receiver has no position yet"_t;
        return;
    }
    m_notice = {};
    if (!m_rmcPlaces)
        putPosition(sentence, 2, parsed);
    put(m_altitude, "altitude_m", "m", typedNumber(sentence.field(9)), parsed);
}

void SentenceParser::takeVtg(const Sentence& sentence, ParsedLine& parsed)
{
    if (m_rmcSpeeds)
        return;
    auto speed = typedNumber(sentence.field(7));
    if (!speed)
        speed = kmhFromKnots(sentence.field(5));
    put(m_speed, "road_speed_kmh", "km/h", speed, parsed);
}

void SentenceParser::take(std::string_view line, bool suspect, ParsedLine& parsed)
{
    parsed.clear();
    const Sentence sentence = parseSentence(line);
    if (sentence.fault != SentenceFault::none) {
        // Another protocol's message ("!AIVDM") is none of ours, nor is the end of a sentence.
        if (!suspect && !line.starts_with('!'))
            parsed.is = ParsedLine::Is::garbage;
        return;
    }
    if (sentence.type == "RMC")
        takeRmc(sentence, parsed);
    else if (sentence.type == "GGA")
        takeGga(sentence, parsed);
    else if (sentence.type == "VTG")
        takeVtg(sentence, parsed);
    else
        return;
    parsed.is = ParsedLine::Is::values;
}

} // namespace

std::unique_ptr<LineParser> makeSentenceParser(FindChannels find)
{
    return std::make_unique<SentenceParser>(std::move(find));
}

} // namespace bothways::storage
