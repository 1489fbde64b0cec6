// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/obd_dialogue.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace bothways::storage {
namespace {

constexpr std::size_t kLongestReply = 4096;
constexpr double kSetupPatience_s = 3.0;
constexpr double kSearchPatience_s = 15.0; ///< the adapter tries protocol after protocol
constexpr double kAnswerPatience_s = 2.0;
constexpr double kAfterTrouble_s = 1.0;
constexpr int kMostUnanswered = 5; ///< in a row, before the adapter is set up again
constexpr std::uint8_t kSupportedStep = 0x20, kLastSupported = 0x60;

bool isHex(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'F') || (c >= 'a' && c <= 'f');
}

int hexDigit(char c)
{
    return c <= '9' ? c - '0' : (c | 0x20) - 'a' + 10;
}

/// Bytes of a text of hexadecimal digits; nothing where it is none.
std::optional<std::string> bytesOf(std::string_view hex)
{
    if (hex.empty() || hex.size() % 2 != 0 || !std::all_of(hex.begin(), hex.end(), isHex))
        return std::nullopt;
    std::string bytes;
    for (std::size_t i = 0; i < hex.size(); i += 2)
        bytes += static_cast<char>(hexDigit(hex[i]) * 16 + hexDigit(hex[i + 1]));
    return bytes;
}

int byteAt(const std::string& bytes, std::size_t i)
{
    return i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0;
}

/// What an adapter says in words, and what we say of it.
struct AdapterWord {
    std::string_view begins; ///< without blanks
    core::Text<0> meaning;
};
constexpr AdapterWord kTroubles[] = {
    {"UNABLETOCONNECT", "the car does not answer: is the ignition on?"_t},
    {"NODATA", "the car gives no data"_t},
    {"STOPPED", "the adapter was interrupted"_t},
    {"CANERROR", "the adapter cannot read the car's bus"_t},
    {"BUSERROR", "the adapter cannot read the car's bus"_t},
    {"BUSINIT", "the adapter cannot read the car's bus"_t},
    {"BUSBUSY", "the adapter cannot read the car's bus"_t},
    {"FBERROR", "the adapter cannot read the car's bus"_t},
    {"DATAERROR", "the adapter cannot read the car's bus"_t},
    {"BUFFERFULL", "the adapter cannot keep up"_t},
    {"LVRESET", "the adapter lost its supply"_t},
    {"ACTALERT", "the adapter lost its supply"_t},
    {"?", "the adapter does not know what it was asked"_t},
    {"ERROR", "the adapter reports an error"_t},
};

/// Takes away what an adapter puts before an answer while it looks for the car's protocol.
void takeSearching(std::string& line)
{
    for (const std::string_view word : {"SEARCHING", "BUSINIT:OK", "BUSINIT:...OK"})
        if (line.starts_with(word))
            line.erase(0, word.size());
    line.erase(0, std::min(line.find_first_not_of('.'), line.size()));
    if (line.starts_with("OK") && line.size() > 2)
        line.erase(0, 2);
}

} // namespace

ObdRequest ObdRequest::setup(Setup step)
{
    static constexpr std::array<const char*, kSetups> words = {"ATZ",  "ATE0", "ATL0",
                                                               "ATS0", "ATH0", "ATSP0"};
    return ObdRequest(std::string(words[static_cast<std::size_t>(step)]) + "\r");
}

ObdRequest ObdRequest::currentData(std::uint8_t pid)
{
    return ObdRequest(fmt::format("01{:02X}\r", pid));
}

ObdDialogue::ObdDialogue(const Instrument& instrument, Send send, Find find)
    : m_instrument(instrument),
      m_fuel(obdFuel(instrument.fuel)),
      m_send(std::move(send)),
      m_find(std::move(find))
{
}

void ObdDialogue::begin(double now_s)
{
    m_step = Step::setup;
    m_setup = 0;
    m_unanswered = 0;
    m_reply.clear();
    m_supported.clear();
    m_asked.clear();
    send(ObdRequest::setup(ObdRequest::Setup::reset), now_s, kSetupPatience_s);
}

void ObdDialogue::send(const ObdRequest& request, double now_s, double patience_s)
{
    m_reply.clear();
    m_replyTrouble = {};
    m_hasAnswer = false;
    m_sent = request.bytes().substr(0, request.bytes().size() - 1);
    m_until_s = now_s + patience_s;
    m_send(request);
}

void ObdDialogue::take(std::string_view bytes, double now_s, std::vector<ParsedLine>& said)
{
    for (const char c : bytes) {
        if (c == '>') {
            takeReply(now_s, said);
        } else if (c != '\0') {
            if (m_reply.size() < kLongestReply)
                m_reply += c;
            else
                ++m_lostBytes;
        }
    }
}

/// The adapter waits for the next request.
void ObdDialogue::takeReply(double now_s, std::vector<ParsedLine>& said)
{
    const std::string reply = std::move(m_reply);
    m_reply.clear();
    if (m_step == Step::waiting) // it said something unasked
        return;
    std::string line;
    for (const char c : reply + '\r') {
        if (c != '\r' && c != '\n') {
            if (c != ' ')
                line += c;
            continue;
        }
        if (!line.empty())
            takeReplyLine(std::move(line), said);
        line.clear();
    }
    m_unanswered = m_hasAnswer ? 0 : m_unanswered + (m_step != Step::setup);
    // One value that a car says it has and does not give is no trouble while others come.
    if (m_step == Step::supported || m_unanswered >= kMostUnanswered)
        m_trouble = m_replyTrouble;
    askNext(now_s);
}

/// @param line  without blanks
void ObdDialogue::takeReplyLine(std::string line, std::vector<ParsedLine>& said)
{
    if (line == m_sent) // its echo
        return;
    ++m_answers;
    if (m_step == Step::setup) { // "OK", and its name after a reset
        m_hasAnswer = true;
        return;
    }
    takeSearching(line);
    if (line.empty() || line == "OK")
        return;
    if (const auto bytes = bytesOf(line)) {
        if (byteAt(*bytes, 0) != 0x41 || bytes->size() < 3 || byteAt(*bytes, 1) != m_pid) {
            m_garbage += byteAt(*bytes, 0) != 0x7f; // 7F: the unit declines, politely
            return;
        }
        if (m_step == Step::supported)
            takeSupported(bytes->substr(2));
        else
            takeValue(bytes->substr(2), said);
        return;
    }
    for (const AdapterWord& word : kTroubles)
        if (line.starts_with(word.begins)) {
            m_replyTrouble = word.meaning;
            return;
        }
    ++m_garbage;
}

void ObdDialogue::takeSupported(const std::string& bytes)
{
    if (bytes.size() < 4)
        return;
    m_hasAnswer = true;
    m_trouble = {};
    for (int i = 0; i < 32; ++i)
        if (byteAt(bytes, static_cast<std::size_t>(i / 8)) & (0x80 >> (i % 8)))
            m_supported.insert(static_cast<std::uint8_t>(m_pid + 1 + i));
}

/// Where several control units answer, the first counts.
void ObdDialogue::takeValue(const std::string& bytes, std::vector<ParsedLine>& said)
{
    const ObdPid* pid = obdPid(m_pid);
    if (!pid || m_hasAnswer)
        return;
    if (bytes.size() < pid->bytes) {
        ++m_garbage;
        return;
    }
    m_hasAnswer = true;
    m_trouble = {};
    ParsedLine answer;
    answer.is = ParsedLine::Is::values;
    const TypedNumber number = pid->value(byteAt(bytes, 0), byteAt(bytes, 1));
    for (const std::uint32_t channel : m_find(obdPidName(pid->pid), pid->name, pid->unit, false))
        answer.values.push_back({channel, number});
    takeDerived(*pid, number.value(), answer);
    if (!answer.values.empty())
        said.push_back(std::move(answer));
}

void ObdDialogue::takeDerived(const ObdPid& pid, double value, ParsedLine& answer)
{
    if (pid.pid == kPidRatio)
        m_ratio = value;
    if (pid.pid != kPidAirMass || !m_derives || (m_fuel->lean && !(m_ratio && *m_ratio > 0.0)))
        return;
    const double ratio = m_fuel->lean ? *m_ratio : 1.0;
    const double fuel = fuelFromAir_l_per_h(*m_fuel, value, ratio);
    for (const std::uint32_t channel :
         m_find(obdPidName(kPidFuelRate), "fuel_rate_l_per_h", "L/h", true))
        answer.values.push_back({channel, oddNumber(std::round(fuel * 1e4) / 1e4)});
}

/// Of what the car gives, what the rig wants.
void ObdDialogue::chooseAsked()
{
    m_asked.clear();
    m_next = 0;
    std::string missing;
    const auto wants = [&](const ObdPid& pid) {
        const auto& channels = m_instrument.channels;
        return channels.empty() ||
               std::any_of(channels.begin(), channels.end(),
                           [&](const auto& one) { return obdPid(one.source) == &pid; });
    };
    m_derives = m_fuel && !m_supported.contains(kPidFuelRate) &&
                m_supported.contains(kPidAirMass) &&
                (!m_fuel->lean || m_supported.contains(kPidRatio));
    for (const ObdPid& pid : obdPids()) {
        const bool forFuel =
            m_derives && (pid.pid == kPidAirMass || (m_fuel->lean && pid.pid == kPidRatio));
        if (m_supported.contains(pid.pid) && (wants(pid) || forFuel))
            m_asked.push_back(&pid);
        else if (wants(pid) && !m_instrument.channels.empty())
            missing += (missing.empty() ? "" : ", ") + std::string(pid.name);
    }
    // The ratio of the air comes before the mass that it belongs to.
    std::stable_partition(m_asked.begin(), m_asked.end(),
                          [](const ObdPid* pid) { return pid->pid == kPidRatio; });
    m_missing = {};
    if (!missing.empty())
        m_missing = core::message("this car does not give {}"_t, missing);
    else if (m_fuel && m_fuel->lean && !m_derives && !m_supported.contains(kPidFuelRate))
        m_missing =
            "no fuel rate: a diesel burns with air left over, and this car does not say how "
            "much"_t;
    else if (m_asked.empty())
        m_missing = "this car gives none of the values that are read"_t;
}

void ObdDialogue::askNext(double now_s)
{
    if (m_unanswered >= kMostUnanswered)
        return restart(m_trouble, now_s);
    if (m_step == Step::setup && ++m_setup < ObdRequest::kSetups)
        return send(ObdRequest::setup(static_cast<ObdRequest::Setup>(m_setup)), now_s,
                    kSetupPatience_s);
    if (m_step == Step::setup) {
        m_step = Step::supported;
        m_pid = 0;
        return send(ObdRequest::currentData(m_pid), now_s, kSearchPatience_s);
    }
    if (m_step == Step::supported) {
        if (m_pid == 0 && m_supported.empty()) // no car yet: asked again after a while
            return restart(m_trouble, now_s);
        const auto further = static_cast<std::uint8_t>(m_pid + kSupportedStep);
        if (m_supported.contains(further) && further <= kLastSupported) {
            m_pid = further;
            return send(ObdRequest::currentData(m_pid), now_s, kAnswerPatience_s);
        }
        chooseAsked();
        m_round_s = now_s;
    } else if (++m_next >= m_asked.size()) {
        m_next = 0;
        m_round_s = std::max(m_round_s + m_instrument.poll_s, now_s);
    }
    m_step = Step::waiting;
    m_until_s = m_next == 0 ? m_round_s : now_s;
    if (m_asked.empty()) // ask the car again in a while: another ignition step may give more
        return restart({}, now_s + 10.0);
    look(now_s);
}

void ObdDialogue::restart(core::Message why, double now_s)
{
    m_trouble = std::move(why);
    m_step = Step::waiting;
    m_asked.clear();
    m_until_s = now_s + kAfterTrouble_s;
}

void ObdDialogue::look(double now_s)
{
    if (now_s < m_until_s)
        return;
    if (m_step == Step::waiting) {
        if (m_asked.empty())
            return begin(now_s);
        m_step = Step::asking;
        m_pid = m_asked[m_next]->pid;
        return send(ObdRequest::currentData(m_pid), now_s, kAnswerPatience_s);
    }
    // No prompt in all that time.
    m_trouble = "the adapter does not answer"_t;
    if (m_step != Step::asking || ++m_unanswered >= kMostUnanswered)
        return begin(now_s);
    askNext(now_s);
}

core::Message ObdDialogue::notice() const
{
    return m_trouble.empty() ? m_missing : m_trouble;
}

} // namespace bothways::storage
