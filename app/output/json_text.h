// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/finding.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <vector>

/// What the JSON writers share. Private to app/output: it brings nlohmann's header with it.
namespace bothways::app {

using Json = nlohmann::ordered_json; // keys stay in the order of the contract

template <class T>
[[nodiscard]] Json orNull(const std::optional<T>& value)
{
    return value ? Json(*value) : Json(nullptr);
}

/// Two blanks a level, a line break at the end. Bytes that are no UTF-8 become U+FFFD.
[[nodiscard]] std::string jsonText(const Json& json);

[[nodiscard]] Json findingsArray(const std::vector<core::Finding>& findings);

} // namespace bothways::app
