// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <optional>
#include <string>
#include <string_view>

namespace bothways::app {

/// Between which values a channel may be, by the limits of the study, in the recording's unit.
struct ChannelBand {
    enum class Place { unknown, inside, near, outside };

    std::optional<double> low, high;           ///< beyond them a rule finds something
    std::optional<double> low_near, high_near; ///< from there it is nearly so
    [[nodiscard]] bool isSet() const { return low || high; }
    [[nodiscard]] Place of(std::optional<double> value) const;
    friend bool operator==(const ChannelBand&, const ChannelBand&) = default;
};

/// A part has its own limit ("overspeed@left.rpm") or else the common one.
[[nodiscard]] ChannelBand bandOf(const core::Study& study, std::string_view channel);

} // namespace bothways::app
