// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/address.h"

#include "core/base/number_text.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <optional>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;

constexpr std::array kBauds = {300,     600,     1200,    2400,    4800,    9600,
                               19200,   38400,   57600,   115200,  230400,  460800,
                               500000,  576000,  921600,  1000000, 1152000, 1500000,
                               2000000, 2500000, 3000000, 3500000, 4000000};

Error noAddress(std::string_view text)
{
    return {ErrorCode::wrongUse,
            core::message("'{}' is no address; expected serial:PORT,BAUD, tcp:HOST:PORT, "
                          "udp:*:PORT or file:PATH"_t,
                          text),
            {}};
}

/// "8N1": data bits, parity, stop bits.
bool takeForm(std::string_view form, Address& address)
{
    if (form.size() != 3 || form[0] != '8' || (form[2] != '1' && form[2] != '2'))
        return false;
    switch (form[1]) {
    case 'N':
    case 'n': address.parity = Address::Parity::none; break;
    case 'E':
    case 'e': address.parity = Address::Parity::even; break;
    case 'O':
    case 'o': address.parity = Address::Parity::odd; break;
    default: return false;
    }
    address.stop_bits = form[2] - '0';
    return true;
}

core::Result<Address> serialAddress(std::string_view text, std::string_view rest)
{
    Address address;
    address.kind = Address::Kind::serial;
    std::size_t comma = rest.rfind(',');
    if (comma != std::string_view::npos && takeForm(rest.substr(comma + 1), address)) {
        rest = rest.substr(0, comma);
        comma = rest.rfind(',');
    }
    const auto baud = comma == std::string_view::npos
                          ? std::nullopt
                          : core::wholeNumber<int>(rest.substr(comma + 1));
    if (!baud || comma == 0)
        return noAddress(text);
    if (std::find(kBauds.begin(), kBauds.end(), *baud) == kBauds.end())
        return Error{ErrorCode::wrongUse,
                     core::message("'{}': no serial port has {} baud; expected one of {}"_t, text,
                                   *baud, fmt::format("{}", fmt::join(kBauds, ", "))),
                     {}};
    address.path = rest.substr(0, comma);
    address.baud = *baud;
    return address;
}

core::Result<Address> netAddress(std::string_view text, std::string_view rest, Address::Kind kind)
{
    const std::size_t colon = rest.rfind(':');
    const auto port = colon == std::string_view::npos
                          ? std::nullopt
                          : core::wholeNumber<int>(rest.substr(colon + 1));
    if (!port || *port < 1 || *port > 65535 || colon == 0)
        return noAddress(text);
    Address address;
    address.kind = kind;
    address.host = rest.substr(0, colon);
    if (address.host.size() > 2 && address.host.front() == '[' && address.host.back() == ']')
        address.host = address.host.substr(1, address.host.size() - 2); // IPv6
    address.port = static_cast<std::uint16_t>(*port);
    return address;
}

} // namespace

core::Result<Address> parseAddress(std::string_view text)
{
    const std::size_t colon = text.find(':');
    const std::string_view kind = text.substr(0, colon);
    const std::string_view rest =
        colon == std::string_view::npos ? std::string_view() : text.substr(colon + 1);
    if (rest.empty() || text.find('\0') != std::string_view::npos)
        return noAddress(text);
    if (kind == "serial")
        return serialAddress(text, rest);
    if (kind == "tcp" || kind == "udp")
        return netAddress(text, rest, kind == "tcp" ? Address::Kind::tcp : Address::Kind::udp);
    if (kind != "file")
        return noAddress(text);
    Address address;
    address.kind = Address::Kind::file;
    address.path = rest;
    return address;
}

std::string withWholePath(std::string_view address, const std::filesystem::path& folder)
{
    const std::size_t begin = address.find(':') + 1;
    const std::string_view kind = address.substr(0, begin);
    const std::string_view path = address.substr(begin);
    if ((kind != "file:" && kind != "serial:") || path.starts_with('/'))
        return std::string(address);
    return std::string(kind) + (folder / path).lexically_normal().string();
}

} // namespace bothways::storage
