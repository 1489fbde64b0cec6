// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/instruments/typed_number.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// A value of a Modbus device: where it is and what its registers hold.
namespace bothways::storage {

struct ModbusSource {
    enum class Table { holding, input }; ///< functions 03 and 04
    enum class Type { u16, s16, u32, s32, f32 };
    Table table = Table::holding;
    int address = 0; ///< as it is sent, from 0
    Type type = Type::u16;
    /// Where each of the bytes a b c d of a value of 32 bits comes in the two registers.
    std::string order = "abcd";
    [[nodiscard]] int registers() const { return type == Type::u16 || type == Type::s16 ? 1 : 2; }
    friend bool operator==(const ModbusSource&, const ModbusSource&) = default;
};

/// "holding:3:u16", "input:0x10:f32:cdab".
[[nodiscard]] core::Result<ModbusSource> parseModbusSource(std::string_view text);
/// @param registers  as many as it has
[[nodiscard]] TypedNumber modbusValue(const ModbusSource& source,
                                      std::span<const std::uint16_t> registers);

/// Registers that are asked for together.
struct ModbusRequest {
    ModbusSource::Table table = ModbusSource::Table::holding;
    int address = 0;
    int registers = 0;
    std::vector<std::size_t> sources; ///< places in the list
    friend bool operator==(const ModbusRequest&, const ModbusRequest&) = default;
};
/// Neighbouring registers in one request, 125 at most (Modbus Application Protocol V1.1b3, 6.3).
[[nodiscard]] std::vector<ModbusRequest> modbusRequests(const std::vector<ModbusSource>& sources);

} // namespace bothways::storage
