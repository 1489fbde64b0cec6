// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/modbus_source.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <numeric>
#include <optional>

namespace bothways::storage {
namespace {

constexpr int kMostRegisters = 125;
constexpr int kRegisters = 65536;

core::Error noSource(std::string_view text)
{
    return {core::ErrorCode::badInput,
            core::message("'{}' is no register; expected TABLE:REGISTER:TYPE such as holding:3:u16 "
                          "or input:0x10:f32:cdab, with the tables holding, input, the types u16, "
                          "s16, u32, s32, f32 and the word orders abcd, cdab, badc, dcba"_t,
                          text),
            {}};
}

std::string_view takePart(std::string_view& text)
{
    const std::size_t colon = text.find(':');
    const std::string_view part = text.substr(0, colon);
    text.remove_prefix(colon == std::string_view::npos ? text.size() : colon + 1);
    return part;
}

std::optional<int> registerNumber(std::string_view text)
{
    const bool hex = text.starts_with("0x") || text.starts_with("0X");
    if (hex)
        text.remove_prefix(2);
    const auto number = core::wholeNumber<int>(text, hex ? 16 : 10);
    return number && *number >= 0 && *number < kRegisters ? number : std::nullopt;
}

std::optional<ModbusSource::Type> typeFrom(std::string_view text)
{
    using Type = ModbusSource::Type;
    constexpr std::pair<std::string_view, Type> types[] = {{"u16", Type::u16},
                                                           {"s16", Type::s16},
                                                           {"u32", Type::u32},
                                                           {"s32", Type::s32},
                                                           {"f32", Type::f32}};
    for (const auto& [name, type] : types)
        if (name == text)
            return type;
    return std::nullopt;
}

} // namespace

core::Result<ModbusSource> parseModbusSource(std::string_view text)
{
    std::string_view rest = text;
    ModbusSource source;
    const std::string_view table = takePart(rest);
    const auto address = registerNumber(takePart(rest));
    const auto type = typeFrom(takePart(rest));
    if ((table != "holding" && table != "input") || !address || !type)
        return noSource(text);
    source.table = table == "holding" ? ModbusSource::Table::holding : ModbusSource::Table::input;
    source.address = *address;
    source.type = *type;
    if (!rest.empty()) {
        source.order = rest;
        if (source.registers() == 1 ||
            (rest != "abcd" && rest != "cdab" && rest != "badc" && rest != "dcba"))
            return noSource(text);
    }
    if (source.address + source.registers() > kRegisters)
        return noSource(text);
    return source;
}

TypedNumber modbusValue(const ModbusSource& source, std::span<const std::uint16_t> registers)
{
    using Type = ModbusSource::Type;
    if (source.type == Type::u16)
        return typedNumber(registers[0], 0);
    if (source.type == Type::s16)
        return typedNumber(static_cast<std::int16_t>(registers[0]), 0);
    const std::uint32_t came[] = {static_cast<std::uint32_t>(registers[0] >> 8),
                                  static_cast<std::uint32_t>(registers[0] & 0xff),
                                  static_cast<std::uint32_t>(registers[1] >> 8),
                                  static_cast<std::uint32_t>(registers[1] & 0xff)};
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i)
        value |= came[i] << (8 * ('d' - source.order[i]));
    if (source.type == Type::u32)
        return typedNumber(value, 0);
    if (source.type == Type::s32)
        return typedNumber(static_cast<std::int32_t>(value), 0);
    return oddNumber(static_cast<double>(std::bit_cast<float>(value)));
}

std::vector<ModbusRequest> modbusRequests(const std::vector<ModbusSource>& sources)
{
    std::vector<std::size_t> order(sources.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return std::pair(sources[a].table, sources[a].address) <
               std::pair(sources[b].table, sources[b].address);
    });
    std::vector<ModbusRequest> requests;
    for (const std::size_t i : order) {
        const ModbusSource& source = sources[i];
        const int end = source.address + source.registers();
        ModbusRequest* last = requests.empty() ? nullptr : &requests.back();
        if (!last || last->table != source.table ||
            source.address > last->address + last->registers ||
            end - last->address > kMostRegisters) {
            requests.push_back({source.table, source.address, source.registers(), {i}});
            continue;
        }
        last->registers = std::max(last->registers, end - last->address);
        last->sources.push_back(i);
    }
    return requests;
}

} // namespace bothways::storage
