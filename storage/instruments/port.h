// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "storage/instruments/address.h"

#include <boost/asio/io_context.hpp>

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <string_view>

/// A way that bytes come in. All of it happens on the thread of one io_context; nothing waits.
namespace bothways::storage {

/// What whoever uses a port is told.
struct PortEvents {
    std::function<void(bool inTheMiddle)> opened; ///< bytes may begin in the middle of a line
    /// As they came. @return  false: there is no room; the port asks again with nothing, and reads
    /// on when there is
    std::function<bool(std::string_view bytes)> came;
    std::function<void(core::Message why)> failed; ///< could not be opened
    std::function<void(core::Message why)> lost;   ///< was open, and is no more
    std::function<void(core::Message why)> ended;  ///< nobody writes now; it waits for the next
};

class Port {
public:
    virtual ~Port() = default;
    /// Ends in opened() or failed(); later in lost().
    virtual void open() = 0;
    virtual void close() = 0;
    /// Where bytes can be sent.
    virtual void write(std::string_view) {}
    /// Each piece is whole lines.
    [[nodiscard]] virtual bool isDatagrams() const { return false; }
    /// Whether whoever sends waits while nothing is read. (Then came() may say that there is no
    /// room; of others the bytes are lost.)
    [[nodiscard]] virtual bool waits() const { return true; }
    /// What is to be said where nothing comes; empty: nothing special.
    [[nodiscard]] virtual core::Message whySilent() const { return {}; }
};

/// @param prompt  reads again at once, for a conversation; else a few milliseconds later, so that
///                fast sources do not wake the computer for each line
[[nodiscard]] std::unique_ptr<Port> makePort(boost::asio::io_context& io, const Address& address,
                                             PortEvents events, bool prompt);

} // namespace bothways::storage
