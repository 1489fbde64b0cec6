// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/byte_quality.h"
#include "storage/instruments/drift_meter.h"
#include "storage/instruments/instrument_reader.h"
#include "storage/instruments/line_splitter.h"
#include "storage/instruments/obd_dialogue.h"
#include "storage/instruments/port.h"

#include <boost/asio/post.hpp>
#include <boost/asio/steady_timer.hpp>

#include <algorithm>
#include <chrono>

namespace bothways::storage {
namespace {

constexpr double kLongestSilence_s = 60.0;
constexpr std::chrono::milliseconds kTick{50};

/// An instrument behind a port, opened again whenever it is lost. What its bytes mean is for the
/// kinds derived from it.
class StreamReader : public InstrumentReader {
public:
    StreamReader(const ReaderPlace& place, const Instrument& instrument, const Address& address,
                 bool prompt)
        : m_clock(place.clock),
          m_output(place.output),
          m_address(address),
          m_name(instrument.name),
          m_pace(place.pace),
          m_timer(place.io)
    {
        PortEvents events;
        events.opened = [this](bool inTheMiddle) { opened(inTheMiddle); };
        events.came = [this](std::string_view bytes) { return came(bytes); };
        events.failed = [this](core::Message why) { failed(std::move(why)); };
        events.lost = [this](core::Message why) { lost(std::move(why)); };
        events.ended = [this](core::Message why) { ended(std::move(why)); };
        m_port = makePort(place.io, address, std::move(events), prompt);
    }

    void start() override
    {
        boost::asio::post(m_timer.get_executor(), [this] {
            m_port->open();
            tick();
        });
    }

protected:
    virtual void begin(bool inTheMiddle, double now_s) = 0;
    virtual void read(std::string_view bytes, double now_s) = 0;
    virtual void look(double) {}
    /// What is to be said while it is read; empty: nothing.
    [[nodiscard]] virtual core::Message notice() const { return {}; }

    const ReaderClock& m_clock;
    InstrumentOutput& m_output;
    Address m_address;
    std::string m_name;
    std::unique_ptr<Port> m_port;

private:
    void opened(bool inTheMiddle)
    {
        const double now_s = m_clock.elapsed_s();
        m_isOpen = true;
        m_quality.begin();
        m_lastCame_s = now_s;
        m_usual_s = 0.0;
        m_output.change([&](InstrumentState& state) {
            state.is = InstrumentState::Is::reading;
            state.reconnects += m_wasOpen;
            state.trouble = {};
        });
        m_wasOpen = true;
        begin(inTheMiddle, now_s);
    }

    bool came(std::string_view bytes)
    {
        if (!bytes.empty()) {
            const double now_s = m_clock.elapsed_s();
            const double passed_s = now_s - m_lastCame_s;
            // The usual time between pieces: the longest lately.
            m_usual_s = std::max(passed_s < kLongestSilence_s ? passed_s : 0.0, m_usual_s * 0.98);
            m_lastCame_s = now_s;
            m_quality.take(bytes);
            read(bytes, now_s);
            const core::Message said = troubleNow();
            m_output.change([&](InstrumentState& state) {
                state.is = InstrumentState::Is::reading;
                state.bytes += static_cast<std::int64_t>(bytes.size());
                state.trouble = said;
            });
        }
        return !m_port->waits() || !m_output.isFull();
    }

    core::Message troubleNow() const
    {
        if (!m_quality.mostlyOdd())
            return notice();
        if (m_address.kind == Address::Kind::serial)
            return core::message("what comes is no text: is {} baud right?"_t, m_address.baud);
        return "what comes is no text"_t;
    }

    void failed(core::Message why)
    {
        m_again_s = m_clock.elapsed_s() + m_pace.try_again_s;
        m_output.change([&](InstrumentState& state) {
            state.is = InstrumentState::Is::failed;
            state.trouble = std::move(why);
        });
    }

    void lost(core::Message why)
    {
        m_isOpen = false;
        m_again_s = m_clock.elapsed_s() + m_pace.try_again_s;
        ended(std::move(why));
    }

    void ended(core::Message why)
    {
        m_output.change([&](InstrumentState& state) {
            state.is = InstrumentState::Is::opening;
            state.trouble = std::move(why);
        });
    }

    void tick()
    {
        const double now_s = m_clock.elapsed_s();
        if (m_again_s && now_s >= *m_again_s) {
            m_again_s.reset();
            m_port->open();
        }
        if (m_isOpen) {
            look(now_s);
            lookForSilence(now_s);
        }
        m_timer.expires_after(kTick);
        m_timer.async_wait([this](const boost::system::error_code& problem) {
            if (!problem)
                tick();
        });
    }

    void lookForSilence(double now_s)
    {
        if (now_s - m_lastCame_s < std::max(m_pace.silence_s, 3.0 * m_usual_s))
            return;
        core::Message why = m_port->whySilent();
        if (why.empty())
            why = "nothing comes"_t;
        m_output.change([&](InstrumentState& state) {
            if (state.is != InstrumentState::Is::reading)
                return;
            state.is = InstrumentState::Is::silent;
            ++state.silences;
            state.trouble = std::move(why);
        });
    }

    RigPace m_pace;
    boost::asio::steady_timer m_timer;
    bool m_isOpen = false, m_wasOpen = false;
    std::optional<double> m_again_s;
    double m_lastCame_s = 0.0, m_usual_s = 0.0;
    ByteQuality m_quality;
};

/// Kinds `lines` and `nmea`.
class LinesReader final : public StreamReader {
public:
    LinesReader(const ReaderPlace& place, const Instrument& instrument, const Address& address)
        : StreamReader(place, instrument, address, false)
    {
        const FindChannels find = [this](std::string_view source, std::string_view name,
                                         std::string_view unit) {
            return m_output.find(source, name, unit);
        };
        m_parser = instrument.kind == InstrumentKind::nmea ? makeSentenceParser(find)
                                                           : makeNumbersParser(find);
    }

private:
    void begin(bool inTheMiddle, double now_s) override
    {
        m_splitter.begin(inTheMiddle);
        m_times.begin(now_s);
    }

    void read(std::string_view bytes, double now_s) override
    {
        std::int64_t lines = 0, garbage = 0, lineBytes = 0;
        const auto takeLine = [&](std::string_view line, bool suspect) {
            m_parser->take(line, suspect, m_parsed);
            ++lines;
            garbage += m_parsed.is == ParsedLine::Is::garbage;
            lineBytes += static_cast<std::int64_t>(line.size()) + 1;
            if (m_parsed.own)
                m_drift.take(*m_parsed.own, m_parsed.unit_s, now_s);
            if (!m_parsed.values.empty() || !m_parsed.mark.empty())
                m_times.addLine(m_parsed);
        };
        const std::int64_t longBefore = m_splitter.longLines(), lostBefore = m_splitter.lostBytes();
        m_splitter.feed(bytes, takeLine);
        if (m_port->isDatagrams())
            m_splitter.finish(takeLine);
        const std::size_t withoutRoom = m_times.finish(now_s, m_output);
        garbage += m_splitter.longLines() - longBefore;
        m_output.change([&](InstrumentState& state) {
            state.lines += lines;
            state.garbage_lines += garbage;
            state.lost_bytes += m_splitter.lostBytes() - lostBefore;
            if (withoutRoom > 0) // the lines that had no room
                state.lost_bytes += lineBytes;
            state.clock_drift_s = m_drift.drift_s();
        });
    }

    core::Message notice() const override { return m_parser->notice(); }

    LineSplitter m_splitter;
    std::unique_ptr<LineParser> m_parser;
    ParsedLine m_parsed;
    PieceTimes m_times;
    DriftMeter m_drift;
};

/// Kind `obd`.
class CarReader final : public StreamReader {
public:
    CarReader(const ReaderPlace& place, const Instrument& instrument, const Address& address)
        : StreamReader(place, instrument, address, true),
          m_dialogue(
              instrument, [this](const ObdRequest& request) { m_port->write(request.bytes()); },
              [this](std::string_view source, std::string_view name, std::string_view unit,
                     bool derived) { return m_output.find(source, name, unit, {}, derived); })
    {
    }

private:
    void begin(bool, double now_s) override
    {
        m_times.begin(now_s);
        m_dialogue.begin(now_s);
    }
    void read(std::string_view bytes, double now_s) override
    {
        m_dialogue.take(bytes, now_s, m_parsed);
        tell(now_s);
    }
    void look(double now_s) override
    {
        m_dialogue.look(now_s);
        tell(now_s);
    }
    void tell(double now_s)
    {
        for (const ParsedLine& answer : m_parsed)
            m_times.addLine(answer);
        if (!m_parsed.empty())
            static_cast<void>(m_times.finish(now_s, m_output));
        m_parsed.clear();
        m_output.change([&](InstrumentState& state) {
            state.lines = m_dialogue.answers();
            state.garbage_lines = m_dialogue.garbage();
            state.lost_bytes = m_dialogue.lostBytes();
        });
    }
    core::Message notice() const override { return m_dialogue.notice(); }

    ObdDialogue m_dialogue;
    std::vector<ParsedLine> m_parsed;
    PieceTimes m_times;
};

} // namespace

std::unique_ptr<InstrumentReader>
makeStreamReader(const ReaderPlace& place, const Instrument& instrument, const Address& address)
{
    if (instrument.kind == InstrumentKind::obd)
        return std::make_unique<CarReader>(place, instrument, address);
    return std::make_unique<LinesReader>(place, instrument, address);
}

} // namespace bothways::storage
