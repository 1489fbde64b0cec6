// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A device of several parts: two rotors, four wheels. A name carries its part after '@':
/// "rotor_rpm@left". (Method, section 9, "A device of several parts".)
namespace bothways::core {

/// "rotor_rpm@left": base "rotor_rpm", part "left". Without a part, or where what follows '@' is
/// none, `base` is the whole name.
struct PartedName {
    std::string_view base, part;
};
[[nodiscard]] PartedName partedName(std::string_view name);
/// Letters, digits, '_' and '-', and anything beyond ASCII; 1 to 40 bytes.
[[nodiscard]] bool isPartName(std::string_view part);
/// "rotor_rpm", "left": "rotor_rpm@left"; without a part the base alone.
[[nodiscard]] std::string ofPart(std::string_view base, std::string_view part);

/// Columns of the sheet that may carry a part; such cells are kept in Run::extra.
[[nodiscard]] bool mayHavePart(std::string_view column);
/// A number as it was noted, with a decimal point or a decimal comma.
[[nodiscard]] std::optional<double> notedNumber(std::string_view text);
/// What the run's sheet says of `column` ("rotor_rpm_max") for each part, in the sheet's order.
struct NotedPart {
    std::string part;
    double value = 0.0;
};
[[nodiscard]] std::vector<NotedPart> notedParts(const Run& run, std::string_view column);

} // namespace bothways::core
