// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "storage/instruments/typed_number.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What the lines of an instrument say. No port and no thread: lines in, numbers out.
namespace bothways::storage {

struct ParsedValue {
    std::uint32_t channel = 0;
    TypedNumber number;
};

/// What a line said.
struct ParsedLine {
    enum class Is {
        values,
        other,  ///< a header, a comment, a sentence of another type
        garbage ///< none of these
    };
    Is is = Is::other;
    std::vector<ParsedValue> values;
    std::string mark;             ///< words of a column "mark"
    std::optional<double> own;    ///< the source's own clock, in ...
    std::optional<double> unit_s; ///< ... so many seconds; unknown: to be told by its pace
    void clear()
    {
        is = Is::other;
        values.clear();
        mark.clear();
        own.reset();
        unit_s.reset();
    }
};

/// Places of the channels that a source of that name fills; none where the rig does not want it.
using FindChannels = std::function<std::vector<std::uint32_t>(
    std::string_view source, std::string_view name, std::string_view unit)>;

class LineParser {
public:
    virtual ~LineParser() = default;
    /// @param suspect  its beginning may be missing
    virtual void take(std::string_view line, bool suspect, ParsedLine& parsed) = 0;
    /// What is to be told of the source now; empty: nothing.
    [[nodiscard]] virtual core::Message notice() const { return {}; }
};

/// Kind `lines`.
[[nodiscard]] std::unique_ptr<LineParser> makeNumbersParser(FindChannels find);
/// Kind `nmea`.
[[nodiscard]] std::unique_ptr<LineParser> makeSentenceParser(FindChannels find);

} // namespace bothways::storage
