// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/decimal_text.h"

#include <fmt/format.h>

namespace bothways::core {

Message decimalText(std::string_view number)
{
    const std::string_view digits = number.substr(number.starts_with('-') ? 1 : 0);
    const std::size_t point = number.find('.');
    if (digits.find_first_not_of("0123456789.") != std::string_view::npos ||
        point == std::string_view::npos || number.find('.', point + 1) != std::string_view::npos)
        return Message::verbatim(std::string(number));
    return message("{}{}{}"_t, number.substr(0, point), ".##decimal sign"_t,
                   number.substr(point + 1));
}

Message decimalText(double number)
{
    return decimalText(fmt::format("{}", number));
}

} // namespace bothways::core
