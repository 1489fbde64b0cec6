// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/line_parser.h"
#include "storage/instruments/obd_table.h"
#include "storage/instruments/rig.h"

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// The conversation with a car's diagnostic socket through a serial adapter with AT commands. It
/// only ever reads current data (SAE J1979, service 01).
namespace bothways::storage {

/// One thing that may be sent. There is no way to make another: neither clearing of faults nor
/// writing to a control unit is among them.
class ObdRequest {
public:
    enum class Setup { reset, echoOff, linefeedsOff, spacesOff, headersOff, protocolAuto };
    static constexpr std::size_t kSetups = 6;
    [[nodiscard]] static ObdRequest setup(Setup step);
    /// "01" and the value's number.
    [[nodiscard]] static ObdRequest currentData(std::uint8_t pid);
    /// As it is sent, with its end.
    [[nodiscard]] const std::string& bytes() const { return m_bytes; }

private:
    explicit ObdRequest(std::string bytes) : m_bytes(std::move(bytes)) {}
    std::string m_bytes;
};

class ObdDialogue {
public:
    using Send = std::function<void(const ObdRequest&)>;
    using Find = std::function<std::vector<std::uint32_t>(
        std::string_view source, std::string_view name, std::string_view unit, bool derived)>;

    ObdDialogue(const Instrument& instrument, Send send, Find find);
    /// The port is open.
    void begin(double now_s);
    /// Bytes of the adapter; what they say is appended.
    void take(std::string_view bytes, double now_s, std::vector<ParsedLine>& said);
    /// To be called several times a second: what is not answered is asked again.
    void look(double now_s);

    [[nodiscard]] core::Message notice() const;
    [[nodiscard]] std::int64_t answers() const { return m_answers; }
    [[nodiscard]] std::int64_t garbage() const { return m_garbage; }
    [[nodiscard]] std::int64_t lostBytes() const { return m_lostBytes; }

private:
    enum class Step { setup, supported, asking, waiting };
    void send(const ObdRequest& request, double now_s, double patience_s);
    void askNext(double now_s);
    void takeReply(double now_s, std::vector<ParsedLine>& said);
    void takeReplyLine(std::string line, std::vector<ParsedLine>& said);
    void takeSupported(const std::string& bytes);
    void takeValue(const std::string& bytes, std::vector<ParsedLine>& said);
    void takeDerived(const ObdPid& pid, double value, ParsedLine& answer);
    void chooseAsked();
    void restart(core::Message why, double now_s);

    Instrument m_instrument;
    const ObdFuel* m_fuel;
    Send m_send;
    Find m_find;

    Step m_step = Step::setup;
    std::size_t m_setup = 0;
    std::uint8_t m_pid = 0; ///< that is being asked for
    std::set<std::uint8_t> m_supported;
    std::vector<const ObdPid*> m_asked;
    std::size_t m_next = 0;
    bool m_derives = false, m_hasAnswer = false;
    std::optional<double> m_ratio; ///< of air, as the car says
    int m_unanswered = 0;
    double m_until_s = 0.0, m_round_s = 0.0;
    std::string m_reply, m_sent;
    core::Message m_trouble, m_replyTrouble, m_missing;
    std::int64_t m_answers = 0, m_garbage = 0, m_lostBytes = 0;
};

} // namespace bothways::storage
