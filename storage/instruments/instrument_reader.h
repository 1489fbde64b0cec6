// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/address.h"
#include "storage/instruments/instrument_output.h"
#include "storage/instruments/reader_clock.h"

#include <boost/asio/io_context.hpp>

#include <memory>

/// What reads one instrument. Made before the reader's thread begins, gone after it has ended.
namespace bothways::storage {

class InstrumentReader {
public:
    virtual ~InstrumentReader() = default;
    virtual void start() = 0;
    /// Ends what waits; from any thread.
    virtual void stop() {}
};

struct ReaderPlace {
    boost::asio::io_context& io;
    const ReaderClock& clock;
    InstrumentOutput& output;
    RigPace pace;
};

[[nodiscard]] std::unique_ptr<InstrumentReader>
makeStreamReader(const ReaderPlace& place, const Instrument& instrument, const Address& address);
[[nodiscard]] std::unique_ptr<InstrumentReader>
makeModbusReader(const ReaderPlace& place, const Instrument& instrument, const Address& address);
/// @param start       shared by the replays of a rig
/// @param alone       times are those of the recordings
[[nodiscard]] std::unique_ptr<InstrumentReader>
makeReplayReader(const ReaderPlace& place, const Instrument& instrument, const Address& address,
                 ReplayStart& start, std::size_t replay, bool alone);

} // namespace bothways::storage
