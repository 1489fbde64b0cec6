// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <string>
#include <string_view>
#include <vector>

/// What a companion types while `bothways record` goes on.
namespace bothways::cli {

struct RecordOrder {
    enum class Kind {
        acknowledge,
        start,
        end,
        mark,
        on,
        weather,
        discard,
        forget,
        next,
        help,
        stop
    };
    Kind kind = Kind::acknowledge;
    std::vector<std::string> words; ///< after the order
};

/// One line: an order or its first letter, and words; those with blanks in quotes. An empty line
/// acknowledges. An Error (wrongUse) names the orders.
[[nodiscard]] Result<RecordOrder> recordOrderFrom(std::string_view line);
/// The orders, a line each.
[[nodiscard]] std::string recordOrdersText(const Language& in);

} // namespace bothways::cli
