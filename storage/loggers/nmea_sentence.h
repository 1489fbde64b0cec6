// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

/// Sentences of NMEA 0183: "$", a talker and a type, fields, "*" and the exclusive or of all bytes
/// between "$" and "*" as two hexadecimal digits.
namespace bothways::storage {

enum class SentenceFault { none, notASentence, noChecksum, wrongChecksum };

struct Sentence {
    static constexpr std::size_t kMostFields = 40;
    std::string_view type; ///< three letters: "RMC"; empty for proprietary ones
    std::array<std::string_view, kMostFields> fields{};
    std::size_t count = 0;
    SentenceFault fault = SentenceFault::none;
    [[nodiscard]] std::string_view field(std::size_t i) const
    {
        return i < count ? fields[i] : std::string_view();
    }
};

/// @param line  without its end; what stands before the '$' is passed over
[[nodiscard]] Sentence parseSentence(std::string_view line);

/// "hhmmss" or "hhmmss.sss" as microseconds since midnight.
[[nodiscard]] std::optional<std::int64_t> sentenceTime_us(std::string_view field);
/// "ddmmyy" as microseconds since 1970-01-01; years from 80 on are of the last century.
[[nodiscard]] std::optional<std::int64_t> sentenceDate_us(std::string_view field);
/// "ddmm.mmmm" and "N" (or "dddmm.mmmm" and "E") as degrees, to 1e-9.
[[nodiscard]] std::optional<double> sentenceDegrees(std::string_view field,
                                                    std::string_view hemisphere);
[[nodiscard]] std::optional<double> sentenceNumber(std::string_view field);

} // namespace bothways::storage
