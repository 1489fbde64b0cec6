// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

/// Bytes as they come, made lines: in whatever cuts they come, the lines are the same.
namespace bothways::storage {

class LineSplitter {
public:
    static constexpr std::size_t kLongest = 4096; ///< no instrument prints longer lines

    /// A new connection. @param inTheMiddle  it may have begun in the middle of a line
    void begin(bool inTheMiddle)
    {
        m_line.clear();
        m_tooLong = false;
        m_suspect = inTheMiddle;
    }

    /// Calls take(line, suspect) for each line that ends here, with CR, LF or both; empty ones are
    /// passed over. The first one of a connection that may have begun within it is `suspect`.
    template <class Take>
    void feed(std::string_view bytes, Take&& take)
    {
        while (!bytes.empty()) {
            const std::size_t end = bytes.find_first_of("\r\n");
            add(bytes.substr(0, end));
            if (end == std::string_view::npos)
                return;
            finish(take);
            bytes.remove_prefix(end + 1);
        }
    }
    /// The end of a datagram ends its line.
    template <class Take>
    void finish(Take&& take)
    {
        if (m_tooLong)
            ++m_longLines;
        else if (!m_line.empty())
            take(std::string_view(m_line), m_suspect);
        if (m_tooLong || !m_line.empty())
            m_suspect = false;
        m_line.clear();
        m_tooLong = false;
    }

    [[nodiscard]] std::int64_t lostBytes() const { return m_lostBytes; }
    [[nodiscard]] std::int64_t longLines() const { return m_longLines; }

private:
    void add(std::string_view piece);

    std::string m_line;
    bool m_tooLong = false, m_suspect = true;
    std::int64_t m_lostBytes = 0, m_longLines = 0;
};

} // namespace bothways::storage
