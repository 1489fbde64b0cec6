// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/line_splitter.h"

#include <algorithm>

namespace bothways::storage {

void LineSplitter::add(std::string_view piece)
{
    // A port that opens, and a break, give bytes of zero before the line.
    if (m_line.empty() && !m_tooLong)
        piece.remove_prefix(std::min(piece.find_first_not_of('\0'), piece.size()));
    if (!m_tooLong && m_line.size() + piece.size() > kLongest) {
        m_tooLong = true;
        m_lostBytes += static_cast<std::int64_t>(m_line.size());
        m_line.clear();
    }
    if (m_tooLong)
        m_lostBytes += static_cast<std::int64_t>(piece.size());
    else
        m_line += piece;
}

} // namespace bothways::storage
