// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/rig_reader.h"

#include "storage/instruments/address.h"
#include "storage/instruments/instrument_reader.h"
#include "storage/instruments/obd_table.h"
#include "storage/instruments/rig_check.h"

#include <boost/asio/executor_work_guard.hpp>
#include <boost/asio/io_context.hpp>

#include <algorithm>
#include <optional>
#include <thread>

namespace bothways::storage {

struct RigReader::Private {
    ReaderClock clock;
    ChannelBook book;
    boost::asio::io_context io{1};
    boost::asio::executor_work_guard<boost::asio::io_context::executor_type> work =
        boost::asio::make_work_guard(io);
    std::optional<ReplayStart> replays;
    bool replaysAlone = false;
    std::vector<std::unique_ptr<InstrumentOutput>> outputs;
    std::vector<std::unique_ptr<InstrumentReader>> readers;
    std::thread thread;

    void stop()
    {
        for (const auto& reader : readers)
            reader->stop();
        io.stop();
        if (thread.joinable())
            thread.join();
        readers.clear();
    }
    ~Private() { stop(); }
};

RigReader::RigReader(std::unique_ptr<Private> p) : d(std::move(p)) {}
RigReader::RigReader(RigReader&&) noexcept = default;
RigReader& RigReader::operator=(RigReader&&) noexcept = default;
RigReader::~RigReader() = default;

namespace {

/// Sources of service 01 as they are asked for: "0D" for "0x0d".
Instrument withPlainSources(Instrument instrument)
{
    if (instrument.kind == InstrumentKind::obd)
        for (RigChannel& channel : instrument.channels)
            channel.source = obdPidName(obdPid(channel.source)->pid); // checkRig() saw it
    return instrument;
}

} // namespace

core::Result<RigReader> RigReader::start(const Rig& rig, const RigPace& pace)
{
    if (const core::Outcome sound = checkRig(rig); !sound)
        return sound.error();
    auto made = std::make_unique<Private>();
    const auto isReplay = [](const Instrument& one) { return one.kind == InstrumentKind::replay; };
    const auto& instruments = rig.instruments;
    const auto first = std::find_if(instruments.begin(), instruments.end(), isReplay);
    const auto count =
        static_cast<std::size_t>(std::count_if(instruments.begin(), instruments.end(), isReplay));
    if (first != instruments.end())
        made->replays.emplace(count, first->speed);
    made->replaysAlone = count == instruments.size();
    std::size_t replay = 0;
    for (std::size_t i = 0; i < instruments.size(); ++i) {
        made->outputs.push_back(std::make_unique<InstrumentOutput>(
            made->book, static_cast<std::uint32_t>(i), withPlainSources(instruments[i])));
        const Address address = parseAddress(instruments[i].address).value(); // checkRig() saw it
        const ReaderPlace place{made->io, made->clock, *made->outputs.back(), pace};
        if (isReplay(instruments[i]))
            made->readers.push_back(makeReplayReader(place, instruments[i], address, *made->replays,
                                                     replay++, made->replaysAlone));
        else if (instruments[i].kind == InstrumentKind::modbus)
            made->readers.push_back(makeModbusReader(place, instruments[i], address));
        else
            made->readers.push_back(makeStreamReader(place, instruments[i], address));
    }
    made->thread = std::thread([p = made.get()] { p->io.run(); });
    for (const auto& reader : made->readers)
        reader->start();
    return RigReader(std::move(made));
}

double RigReader::clock_s() const
{
    return d->replaysAlone ? d->replays->time_s() : d->clock.elapsed_s();
}

void RigReader::take(std::vector<Reading>& readings)
{
    for (const auto& output : d->outputs)
        output->take(readings);
}

void RigReader::takeMarks(std::vector<ReadMark>& marks)
{
    for (const auto& output : d->outputs)
        output->takeMarks(marks);
}

std::vector<ReadChannel> RigReader::channels() const
{
    return d->book.all();
}

std::vector<InstrumentState> RigReader::states() const
{
    std::vector<InstrumentState> states;
    for (const auto& output : d->outputs)
        states.push_back(output->state());
    return states;
}

bool RigReader::ended() const
{
    // A recording that cannot be read is not tried again.
    return std::all_of(d->outputs.begin(), d->outputs.end(), [this](const auto& output) {
        const InstrumentState::Is is = output->state().is;
        return is == InstrumentState::Is::ended ||
               (d->replaysAlone && is == InstrumentState::Is::failed);
    });
}

void RigReader::stop()
{
    d->stop();
}

} // namespace bothways::storage
