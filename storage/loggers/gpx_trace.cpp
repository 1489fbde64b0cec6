// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number_text.h"
#include "storage/bytes/csv.h"
#include "storage/bytes/xml_pull.h"
#include "storage/loggers/point_trace.h"
#include "storage/loggers/trace_clock.h"

#include <cmath>

namespace bothways::storage {
namespace {

constexpr std::size_t kMaxTimeText = 64;

std::optional<double> degrees(std::optional<std::string_view> text, double largest)
{
    if (!text)
        return std::nullopt;
    std::string_view digits = csv::trimmed(*text);
    if (digits.starts_with('+'))
        digits.remove_prefix(1);
    const auto value = core::finiteNumber(digits);
    return value && std::abs(*value) <= largest ? value : std::nullopt;
}

/// Track points of GPX 1.1 (TopoGrafix, "GPX 1.1 Schema Documentation"; 1.0 has the same ones): the
/// attributes lat and lon, the element time, and the element speed (m/s) where an extension, or
/// GPX 1.0, has it. Routes and way points have no place in a recording.
class GpxTrace final : public PointTrace {
public:
    using PointTrace::PointTrace;
    std::string_view format() const override { return "gpx"; }
    Result<std::optional<core::Instant>> zero(const ReadTotals& totals,
                                              const std::string&) const override
    {
        return std::optional(core::Instant{m_base_us - totals.main_shift_us, 0});
    }

protected:
    Result<ReadTotals> parse(const TakeBlock& take) override;

private:
    void begin(const XmlPull& xml);
    void addText(const std::string& text);
    Outcome end(const std::string& name, std::int64_t line, const TakeBlock& take);
    Outcome endPoint(std::int64_t line, const TakeBlock& take);

    enum class Reading { nothing, time, speed };

    std::optional<PointStream> m_points;
    std::int64_t m_base_us = 0;
    std::int64_t m_timeless = 0, m_timelessLine = 0, m_misplaced = 0;
    ClockParser m_clock;
    bool m_inPoint = false;
    bool m_newSegment = true;
    std::optional<double> m_lat, m_lon;
    Reading m_reading = Reading::nothing;
    std::string m_timeText, m_speedText;
};

void GpxTrace::begin(const XmlPull& xml)
{
    const std::string& name = xml.name();
    if (name == "trkseg") {
        m_newSegment = true;
    } else if (name == "trkpt") {
        m_inPoint = true;
        m_lat = degrees(xml.attribute("lat"), 90.0);
        m_lon = degrees(xml.attribute("lon"), 180.0);
        m_timeText.clear();
        m_speedText.clear();
    } else if (m_inPoint && name == "time") {
        m_reading = Reading::time;
    } else if (m_inPoint && name == "speed") {
        m_reading = Reading::speed;
    }
}

void GpxTrace::addText(const std::string& text)
{
    std::string* const into = m_reading == Reading::time    ? &m_timeText
                              : m_reading == Reading::speed ? &m_speedText
                                                            : nullptr;
    if (into && into->size() < kMaxTimeText)
        *into += text;
}

Outcome GpxTrace::endPoint(std::int64_t line, const TakeBlock& take)
{
    m_inPoint = false;
    std::string_view text = m_timeText;
    while (!text.empty() && (text.front() == '\n' || text.front() == '\r' || text.front() == ' '))
        text.remove_prefix(1);
    const auto time =
        m_clock.parse(text.substr(0, text.find_last_not_of(" \r\n\t") + 1), ClockForm::dateTime);
    if (!time) {
        if (m_timeless++ == 0)
            m_timelessLine = line;
        return core::Done{};
    }
    if (!m_lat || !m_lon) {
        ++m_misplaced;
        return core::Done{};
    }
    if (!m_points) {
        m_base_us = time->us;
        m_points.emplace(ClockKind::utc, m_base_us, take);
    }
    TrackPoint point{time->us, *m_lat, *m_lon, std::nullopt, m_newSegment};
    if (const auto speed_ms = degrees(m_speedText, 1e4); speed_ms && *speed_ms >= 0.0)
        point.speed_kmh = *speed_ms * 3.6;
    m_newSegment = false;
    return m_points->add(point);
}

Outcome GpxTrace::end(const std::string& name, std::int64_t line, const TakeBlock& take)
{
    if (name == "trkpt" && m_inPoint)
        return endPoint(line, take);
    if (name == "time" || name == "speed")
        m_reading = Reading::nothing;
    return core::Done{};
}

Result<ReadTotals> GpxTrace::parse(const TakeBlock& take)
{
    XmlPull xml([this](char* buffer, std::size_t size) { return bytes(buffer, size); });
    bool isGpx = false;
    for (auto event = xml.next(); event != XmlPull::Event::finished; event = xml.next()) {
        switch (event) {
        case XmlPull::Event::start:
            if (!isGpx && xml.name() != "gpx")
                return at(xml.line(), core::message("is XML with <{}> outermost; expected <gpx>"_t,
                                                    xml.name()));
            isGpx = true;
            begin(xml);
            break;
        case XmlPull::Event::text: addText(xml.text()); break;
        case XmlPull::Event::end:
            if (const Outcome taken = end(xml.name(), xml.line(), take); !taken)
                return taken.error();
            break;
        case XmlPull::Event::broken:
            return at(xml.line(), core::message("is no well-formed GPX: {}"_t, xml.fault()));
        case XmlPull::Event::finished: break;
        }
    }
    if (!m_points)
        return at(std::max<std::int64_t>(m_timelessLine, 1),
                  m_timeless + m_misplaced > 0
                      ? core::message("{} track points and none with a time and a place; expected "
                                      "a recorded track"_t,
                                      m_timeless + m_misplaced)
                      : "no track point; expected a recorded track"_t);
    auto totals = m_points->finish();
    if (!totals)
        return totals.error();
    ReadTotals result = std::move(totals).take();
    result.order.bad_times += m_timeless;
    result.bad_time_line = m_timelessLine;
    result.bad_time = "a track point without a time"_t;
    result.bad_positions = m_misplaced;
    return result;
}

} // namespace

bool looksLikeGpx(std::string_view head)
{
    if (head.starts_with("\xef\xbb\xbf"))
        head.remove_prefix(3);
    const std::size_t first = head.find_first_not_of(" \t\r\n");
    return first != std::string_view::npos && head[first] == '<';
}

Result<std::unique_ptr<TraceFile>> openGpxTrace(TraceSource&& source, std::string name)
{
    return std::unique_ptr<TraceFile>(
        std::make_unique<GpxTrace>(std::move(source), std::move(name)));
}

} // namespace bothways::storage
