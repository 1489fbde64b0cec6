// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <string_view>

/// Whether what comes looks like text at all: at a wrong speed of a serial port it does not.
namespace bothways::storage {

class ByteQuality {
public:
    void take(std::string_view bytes)
    {
        m_bytes += bytes.size();
        m_odd += static_cast<std::size_t>(std::count_if(bytes.begin(), bytes.end(), isOdd));
        if (m_bytes < kWindow)
            return;
        m_mostlyOdd = m_odd * 4 > m_bytes;
        m_bytes = m_odd = 0;
    }
    [[nodiscard]] bool mostlyOdd() const { return m_mostlyOdd; }
    void begin()
    {
        m_bytes = m_odd = 0;
        m_mostlyOdd = false;
    }

private:
    static constexpr std::size_t kWindow = 64;
    static bool isOdd(char c)
    {
        const auto byte = static_cast<unsigned char>(c);
        return byte >= 0x7f || (byte < 0x20 && c != '\n' && c != '\r' && c != '\t');
    }
    std::size_t m_bytes = 0, m_odd = 0;
    bool m_mostlyOdd = false;
};

} // namespace bothways::storage
